/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Refuses what cannot happen to birds and eggs, in the keeper's words. */
#include "config.h"

#include "plan/edit-possible.h"

#include "plan/edit.h"
#include "plan/soundness.h"

#include <glib/gi18n-lib.h>

static char *
refusal_of (const HcFault *fault)
{
  switch (fault->kind)
    {
    case HC_FAULT_EMPTY:
      return g_strdup (_("Say on which day."));
    case HC_FAULT_NO_SUCH:
      return g_strdup (_("That pen is no longer in the plan. Choose another for them."));
    case HC_FAULT_BEFORE_HATCH:
      return g_strdup (_("They have not hatched by then. Choose a later day."));
    case HC_FAULT_MORE_THAN_THERE:
      return g_strdup (_("That is more birds than there are by then. Put in fewer."));
    case HC_FAULT_LOW_ABOVE_HIGH:
      return g_strdup (_("The low end is above the high end. Exchange the two."));
    case HC_FAULT_MORE_THAN_SET:
      return g_strdup (_("That is more than the eggs that were set. Put in fewer."));
    default:
      return hc_fault_describe (fault);
    }
}

/**
 * hc_edit_possible: (skip)
 * @after: (transfer full): the outcome of an edit of birds or eggs
 * @error: says what in it cannot happen
 *
 * Returns: (transfer full): @after, or %NULL and a %HC_ERROR_EDIT
 */
HcPlan *
hc_edit_possible (HcPlan *after, GError **error)
{
  g_auto (HcFault) fault = { HC_FAULT_NONE };
  g_autofree char *sentence = NULL;

  if (!hc_plan_find_fault (after, &fault))
    return after;
  hc_plan_unref (after);
  sentence = refusal_of (&fault);
  return hc_edit_refuse (error, "%s", sentence);
}
