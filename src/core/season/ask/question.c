/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Finds the most by doubling and halving, and keeps what one more fails by. */
#include "config.h"

#include "season/ask/asked.h"

#include "base/error.h"

gboolean
hc_asked_refuse (GError **error, const char *sentence)
{
  g_set_error_literal (error, HC_ERROR, HC_ERROR_TYPED, sentence);
  return FALSE;
}

/* The largest number that passes, where one more does not: whatever happens in
 * between, both are tried. */
void
hc_asked_find_most (HcAsked *asked, HcTrial passes, gpointer data)
{
  gint64 enough = 0;
  gint64 beyond = 1;

  while (beyond <= HC_ASK_MOST && passes (asked, beyond, data))
    {
      enough = beyond;
      beyond *= 2;
    }
  if (beyond > HC_ASK_MOST)
    return;
  while (beyond - enough > 1)
    {
      gint64 middle = enough + (beyond - enough) / 2;

      if (passes (asked, middle, data))
        enough = middle;
      else
        beyond = middle;
    }
  passes (asked, beyond, data);
  asked->answer->limited = TRUE;
  asked->answer->number = enough;
}

/**
 * hc_year_question_answer: (skip)
 * @self: a question
 * @tallier: what was worked out of the house before
 * @plan: a plan
 * @answer: (out caller-allocates): the answer, lent from @self, @plan and book
 * @error: says what the question lacks
 *
 * Nobody else may go short on account of the birds asked about: a house that
 * is too small already is taken as it is.
 *
 * Returns: whether the question could be asked
 */
gboolean
hc_year_question_answer (const HcYearQuestion *self, HcTallier *tallier, HcPlan *plan,
                         HcYearAnswer *answer, GError **error)
{
  static gboolean (*const ways[]) (HcAsked *, GError **) = {
    [HC_ASK_HATCH] = hc_ask_hatch, [HC_ASK_GONE] = hc_ask_gone, [HC_ASK_WINTER] = hc_ask_winter,
    [HC_ASK_WARMTH] = hc_ask_warmth, [HC_ASK_EGGS] = hc_ask_eggs,
  };
  HcAsked asked = { self, tallier, plan, answer };

  *answer = (HcYearAnswer) { .question = *self, .kind = self->kind };
  hc_tallier_look_at (tallier, plan);
  return ways[self->ask] (&asked, error);
}
