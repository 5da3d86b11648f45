/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Fits a bare house out: whatever need is short gets more of what it asks for. */
#include "config.h"

#include "begin/furnish.h"

#include "begin/raise.h"
#include "needs/check.h"

/* Past this something other than room is in the way. */
#define MOST_TIMES 40
#define MOST_FOR_WALKS 6

/* An ordinary day judges every need, sleep and air too; nothing is put into
 * the run, so that a day shut in asks for nothing else. */
typedef struct
{
  HcCheckCache *cache;
  HcBook *book;
  HcFlock *flock;
  HcCheck *check;
} Judge;

static void
look (Judge *judge, HcPlan *plan)
{
  g_clear_pointer (&judge->check, hc_check_unref);
  judge->check
      = hc_check_plan (judge->cache, plan, judge->book, HC_CONDITION_DAY, judge->flock);
}

static HcLevel
level_of (const Judge *judge, HcNeedId need)
{
  return hc_check_applies (judge->check, need) ? hc_check_get_need_level (judge->check, need)
                                               : HC_LEVEL_PLENTY;
}

static gboolean
is_far (const HcCheck *check, const char *figure)
{
  for (guint i = 0; i < hc_check_get_n_findings (check, HC_NEED_CLEARANCE); i++)
    {
      const HcFinding *finding = hc_check_get_finding (check, HC_NEED_CLEARANCE, i);

      if (finding->figure != NULL && g_str_has_prefix (finding->figure, figure))
        return TRUE;
    }
  return FALSE;
}

/* Feed and water may be enough and still too far to walk; where a few more do
 * not help, more of them do not either. */
static gboolean
is_wanting (const Judge *judge, const HcRaise *raise, guint times)
{
  if (level_of (judge, raise->need) < HC_LEVEL_GOOD)
    return times < MOST_TIMES;
  return raise->walk != NULL && times < MOST_FOR_WALKS && is_far (judge->check, raise->walk);
}

/* More of one thing, unless it gets in the way of others; what birds cannot
 * do without comes first even so. */
static gboolean
try_raise (Judge *judge, HcPlan **plan, const HcRaise *raise)
{
  g_autoptr (HcPlan) more = raise->more (*plan, judge->book);
  HcLevel fit = level_of (judge, HC_NEED_CLEARANCE);
  gboolean without = level_of (judge, raise->need) == HC_LEVEL_SHORT;

  if (more == NULL || more == *plan)
    return FALSE;
  look (judge, more);
  if (without || level_of (judge, HC_NEED_CLEARANCE) >= MIN (fit, HC_LEVEL_TIGHT))
    {
      hc_plan_unref (*plan);
      *plan = g_steal_pointer (&more);
      return TRUE;
    }
  look (judge, *plan);
  return FALSE;
}

/**
 * hc_furnish: (skip)
 * @bare: a plan of a bare house
 * @book: the book of the trade
 *
 * The checker says what is short; a table says what to add for it.
 *
 * Returns: (transfer full): the house fitted out
 */
HcPlan *
hc_furnish (HcPlan *bare, HcBook *book)
{
  g_autoptr (HcCheckCache) cache = hc_check_cache_new ();
  g_autoptr (HcFlock) flock = hc_flock_on (bare, book, hc_plan_get_day (bare));
  Judge judge = { cache, book, flock, NULL };
  g_autoptr (HcPlan) plan = hc_plan_ref (bare);

  look (&judge, plan);
  for (guint i = 0; i < hc_raise_get_n (); i++)
    {
      const HcRaise *raise = hc_raise_get (i);

      for (guint times = 0; is_wanting (&judge, raise, times); times++)
        if (!try_raise (&judge, &plan, raise))
          break;
    }
  hc_check_unref (judge.check);
  return g_steal_pointer (&plan);
}
