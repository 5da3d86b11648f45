/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A plan from three answers. */
#include "config.h"

#include "begin/three-questions.h"

#include "base/error.h"
#include "begin/bare-house.h"
#include "begin/furnish.h"
#include "begin/house-figure.h"

#include <glib/gi18n-lib.h>

static gboolean
side_is_possible (HcBook *book, double side_mm, HcUnits units, GError **error)
{
  double least_mm = hc_house_measure (book, "least_side_mm");
  double most_mm = hc_house_measure (book, "most_side_mm");
  g_autofree char *least = NULL;
  g_autofree char *most = NULL;

  if (side_mm >= least_mm && side_mm <= most_mm)
    return TRUE;
  least = hc_length_format (least_mm, units);
  most = hc_length_format (most_mm, units);
  g_set_error (error, HC_ERROR, HC_ERROR_TYPED,
               /* Translators: two lengths */
               _("A house like this is from %s to %s long and wide. Type its inside measures."),
               least, most);
  return FALSE;
}

static gboolean
birds_are_known (HcBook *book, const HcAnswers *answers, GError **error)
{
  gint64 birds = 0;

  for (guint i = 0; i < answers->n_birds; i++)
    {
      if (hc_book_get_breed (book, answers->birds[i].breed) == NULL)
        {
          g_set_error (error, HC_ERROR, HC_ERROR_TYPED,
                       _("The breed “%s” is not in the book. Choose one from the list."),
                       answers->birds[i].breed);
          return FALSE;
        }
      birds += MAX (answers->birds[i].count, 0);
    }
  if (birds > 0)
    return TRUE;
  g_set_error_literal (error, HC_ERROR, HC_ERROR_TYPED,
                       _("Say how many birds there are to be, at least one."));
  return FALSE;
}

/**
 * hc_plan_from_answers: (skip)
 * @book: the book of the trade
 * @answers: the answers
 * @uid: an id no other plan has
 * @error: says which answer cannot be
 *
 * Draws a rectangular house and fits it out for the birds until every need is
 * good or there is no room for more. Birds that do not fit by floor stay in
 * the plan: how many it carries is said by its headline.
 *
 * Returns: (transfer full): a plan that works, or %NULL and a %HC_ERROR_TYPED
 */
HcPlan *
hc_plan_from_answers (HcBook *book, const HcAnswers *answers, const char *uid, GError **error)
{
  g_autoptr (HcPlan) bare = NULL;

  if (!side_is_possible (book, answers->width_mm, answers->units, error)
      || !side_is_possible (book, answers->length_mm, answers->units, error)
      || !birds_are_known (book, answers, error))
    return NULL;
  bare = hc_bare_house (book, answers, uid, error);
  return bare != NULL ? hc_furnish (bare, book) : NULL;
}
