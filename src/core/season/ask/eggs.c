/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * How many eggs to set for so many chicks, with a chance. */
#include "config.h"

#include "season/ask/asked.h"

#include <glib/gi18n-lib.h>

static double
get_chance (const HcHatchShares *shares, const HcYearQuestion *question, gint64 eggs)
{
  g_autoptr (HcOdds) odds = hc_hatch_get_odds (shares, (guint) eggs, question->who);

  return hc_odds_get_at_least (odds, question->wanted);
}

gboolean
hc_ask_eggs (HcAsked *asked, GError **error)
{
  const HcYearQuestion *question = asked->question;
  HcYearAnswer *answer = asked->answer;
  HcBook *book = hc_tallier_get_book (asked->tallier);
  HcClutch *clutch = hc_parts_find (hc_plan_get (asked->plan)->clutches, question->of);
  g_autoptr (HcTimeline) timeline = hc_timeline_of (asked->plan, book);
  guint32 set_on = clutch != NULL ? hc_clutch_get (clutch)->set_on : 0;
  HcHatchShares shares;

  answer->kind = clutch != NULL ? hc_clutch_get_kind_of (clutch, book) : question->kind;
  if (answer->kind == NULL)
    return hc_asked_refuse (error, _("Say which kind of bird shall hatch."));
  if (question->wanted == 0)
    return hc_asked_refuse (error, _("Say how many chicks are wanted."));
  if (clutch != NULL)
    hc_hatch_shares_init (&shares, asked->plan, book, clutch);
  else
    hc_hatch_shares_of_kind (&shares, asked->plan, book, answer->kind);
  answer->number = hc_hatch_find_eggs (&shares, question->wanted, question->who,
                                       question->chance);
  answer->limited = answer->number > 0;
  answer->day = set_on != 0 ? set_on : question->from;
  hc_in_hand_count (timeline, answer->kind, answer->day, &answer->in_hand);
  if (!answer->limited)
    return TRUE;
  answer->chance = get_chance (&shares, question, answer->number);
  answer->chance_before = get_chance (&shares, question, answer->number - 1);
  return TRUE;
}
