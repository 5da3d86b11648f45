/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The answer in one line: in comfort, at most, and what runs out first. */
#include "config.h"

#include "needs/ladder.h"

#include "needs/capacity/ladder-private.h"

typedef struct
{
  gint64 most;
  HcNeedId need;
} Lowest;

static Lowest
find_lowest (HcCheckCache *cache, HcPlan *plan, HcBook *book, HcFlock *flock,
             HcCondition condition, HcLevel aim)
{
  g_autoptr (HcLadder) ladder
      = hc_ladder_climb_only (cache, plan, book, flock, HC_LADDER_THIS_MIX, NULL, condition, aim,
                              FALSE);

  if (hc_ladder_get_n_rungs (ladder) == 0)
    return (Lowest) { G_MAXINT64, HC_N_NEEDS };
  return (Lowest) { hc_ladder_get_most (ladder), hc_ladder_get_rung (ladder, 0)->need };
}

static void
find_mends (HcCheckCache *cache, HcPlan *plan, HcBook *book, HcFlock *flock,
            HcHeadline *headline)
{
  g_autoptr (HcCheck) check
      = hc_check_plan (cache, plan, book, HC_CONDITION_DAY, flock);

  for (guint id = 0; id < HC_N_NEEDS; id++)
    headline->mend_first[id] = hc_need_get (id)->sort != HC_NEED_COUNTING
                               && hc_check_applies (check, id)
                               && hc_check_get_need_level (check, id) == HC_LEVEL_SHORT;
}

/**
 * hc_headline_work_out: (skip)
 * @cache: what earlier checks worked out
 * @plan: a plan
 * @book: the book
 * @flock: the birds of the day
 * @headline: (out): the answer
 *
 * The mix scaled up or down, on the worse of an ordinary day and a day shut
 * in; the need that runs out first is that of the good level there. Where no
 * need runs out, it is %HC_N_NEEDS and the numbers are %G_MAXINT64.
 */
void
hc_headline_work_out (HcCheckCache *cache, HcPlan *plan, HcBook *book, HcFlock *flock,
                      HcHeadline *headline)
{
  Lowest day = find_lowest (cache, plan, book, flock, HC_CONDITION_DAY, HC_LEVEL_GOOD);
  Lowest shut_in = find_lowest (cache, plan, book, flock, HC_CONDITION_SHUT_IN, HC_LEVEL_GOOD);
  Lowest worse = shut_in.most < day.most ? shut_in : day;

  headline->good = worse.most;
  headline->need = worse.need;
  headline->worse = shut_in.most < day.most ? HC_CONDITION_SHUT_IN : HC_CONDITION_DAY;
  headline->least = MIN (
      find_lowest (cache, plan, book, flock, HC_CONDITION_DAY, HC_LEVEL_TIGHT).most,
      find_lowest (cache, plan, book, flock, HC_CONDITION_SHUT_IN, HC_LEVEL_TIGHT).most);
  headline->birds = hc_flock_get_total (flock);
  find_mends (cache, plan, book, flock, headline);
}
