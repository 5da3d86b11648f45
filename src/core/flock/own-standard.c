/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A standard of the book with a plan's own figures put over it. */
#include "config.h"

#include "flock/own-standard.h"

/**
 * hc_plan_get_own_standard:
 * @plan: a plan
 * @book: the book
 *
 * Returns: (transfer full): the standard the plan names, else the usual one,
 *   with the keeper's own figures in it
 */
HcStandard *
hc_plan_get_own_standard (const HcPlan *plan, HcBook *book)
{
  const HcRulesValues *rules = hc_plan_get_rules (plan);
  HcStandard *standard = hc_book_get_standard (book, rules->standard);
  g_autoptr (GArray) overrides = g_array_new (FALSE, FALSE, sizeof (HcOverride));

  if (standard == NULL)
    standard = hc_book_get_standard (book, HC_BOOK_DEFAULT_STANDARD);
  for (guint i = 0; i < rules->own_figures->len; i++)
    {
      const HcOwnFigureValues *own = hc_own_figure_get (rules->own_figures->pdata[i]);
      HcOverride override = { own->figure, own->value, own->reason };

      g_array_append_val (overrides, override);
    }
  return hc_standard_with_overrides (standard, (const HcOverride *) overrides->data,
                                     overrides->len);
}
