/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Two plans for the same birds, need by need. */
#include "config.h"

#include "needs/compare.h"

static void
compare_need (HcNeedMove *move, const HcCheck *before, const HcCheck *after)
{
  move->applied = hc_check_applies (before, move->need);
  move->applies = hc_check_applies (after, move->need);
  move->before = hc_check_get_need_level (before, move->need);
  move->after = hc_check_get_need_level (after, move->need);
  move->served_before = hc_check_get_served (before, move->need, HC_LEVEL_GOOD);
  move->served_after = hc_check_get_served (after, move->need, HC_LEVEL_GOOD);
}

/**
 * hc_comparison_make: (skip)
 * @self: (out caller-allocates): filled with what moved
 * @cache: what was worked out before
 * @book: the trade
 * @before: a plan
 * @after: another, for instance with another variant chosen
 * @flock: the birds both are judged for
 * @condition: when
 */
void
hc_comparison_make (HcComparison *self, HcCheckCache *cache, HcBook *book, HcPlan *before,
                    HcPlan *after, HcFlock *flock, HcCondition condition)
{
  g_autoptr (HcCheck) one = hc_check_plan (cache, before, book, condition, flock);
  g_autoptr (HcCheck) other = hc_check_plan (cache, after, book, condition, flock);

  *self = (HcComparison){ 0 };
  for (HcNeedId need = 0; need < HC_N_NEEDS; need++)
    {
      self->needs[need].need = need;
      compare_need (&self->needs[need], one, other);
    }
  hc_headline_work_out (cache, before, book, flock, &self->before);
  hc_headline_work_out (cache, after, book, flock, &self->after);
}

/**
 * hc_comparison_has_moved: (skip)
 * @self: a comparison
 * @need: a need
 *
 * Returns: whether the need is met otherwise after than before
 */
gboolean
hc_comparison_has_moved (const HcComparison *self, HcNeedId need)
{
  const HcNeedMove *move = &self->needs[need];

  if (!move->applied && !move->applies)
    return FALSE;
  return move->applied != move->applies || move->before != move->after
         || move->served_before != move->served_after;
}
