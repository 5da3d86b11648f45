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
  guint needs;
  HcCheck *check;
} Judge;

static void
look (Judge *judge, HcPlan *plan)
{
  g_clear_pointer (&judge->check, hc_check_unref);
  judge->check = hc_check_needs (judge->cache, plan, judge->book, HC_CONDITION_DAY, judge->flock,
                                 judge->needs);
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

/* How far a need is met: by birds served, else by its worst figure. */
static double
share_met (const Judge *judge, HcNeedId need)
{
  gint64 birds = hc_check_get_birds (judge->check, need);
  const HcFinding *worst;

  if (hc_need_get (need)->sort == HC_NEED_COUNTING && birds > 0)
    return (double) hc_check_get_served (judge->check, need, HC_LEVEL_GOOD) / birds;
  if (hc_check_get_n_findings (judge->check, need) == 0)
    return 0;
  worst = hc_check_get_finding (judge->check, need, 0);
  return worst->measured < worst->required ? worst->measured / worst->required : 0;
}

/* If each one more does as much as those so far did, so many are wanted, and
 * no plan between need be looked at. */
static guint
guess_many (double met_at_first, double met, guint added)
{
  double each = added > 0 ? (met - met_at_first) / added : 0;

  return each > 0 ? CLAMP ((1 - met) / each, 1, MOST_TIMES) : 1;
}

static HcPlan *
add_many (Judge *judge, HcPlan *plan, const HcRaise *raise, guint *many)
{
  HcPlan *more = hc_plan_ref (plan);
  guint added = 0;

  for (; added < *many; added++)
    {
      HcPlan *next = raise->more (more, judge->book);

      if (next == NULL || next == more)
        {
          g_clear_pointer (&next, hc_plan_unref);
          break;
        }
      hc_plan_unref (more);
      more = next;
    }
  *many = added;
  return more;
}

/* More of one thing, unless it gets in the way of others; what birds cannot
 * do without comes first even so. Sets @many to how many there was room for. */
static gboolean
try_raise (Judge *judge, HcPlan **plan, const HcRaise *raise, guint *many)
{
  g_autoptr (HcPlan) more = add_many (judge, *plan, raise, many);
  HcLevel fit = level_of (judge, HC_NEED_CLEARANCE);
  gboolean without = level_of (judge, raise->need) == HC_LEVEL_SHORT;

  if (*many == 0)
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

/* As much of one thing as is wanted; where many at once are in the way, one
 * after the other. */
static void
raise_need (Judge *judge, HcPlan **plan, const HcRaise *raise)
{
  double met_at_first;
  guint most = MOST_TIMES;
  guint added = 0;

  judge->needs = HC_NEED_BIT (raise->need) | HC_NEED_BIT (HC_NEED_CLEARANCE);
  look (judge, *plan);
  met_at_first = share_met (judge, raise->need);
  while (is_wanting (judge, raise, added))
    {
      guint many
          = MIN (guess_many (met_at_first, share_met (judge, raise->need), added), most);

      if (try_raise (judge, plan, raise, &many))
        added += many;
      else if (many > 1)
        most = 1;
      else
        return;
    }
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
  Judge judge = { cache, book, flock, 0, NULL };
  g_autoptr (HcPlan) plan = hc_plan_ref (bare);

  for (guint i = 0; i < hc_raise_get_n (); i++)
    raise_need (&judge, &plan, hc_raise_get (i));
  hc_check_unref (judge.check);
  return g_steal_pointer (&plan);
}
