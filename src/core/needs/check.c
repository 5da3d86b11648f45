/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Puts a plan to every need and keeps the answers. */
#include "config.h"

#include "needs/check.h"

#include "needs/answer.h"
#include "needs/context.h"

struct _HcCheck
{
  gatomicrefcount refs;
  HcPlan *plan;
  HcFlock *flock;
  HcHouse *house;
  HcCondition condition;
  HcAnswer answers[HC_N_NEEDS];
  GHashTable *part_levels;
};

static void
judge_space (HcCase *about, const HcNeed *need, guint space, HcAnswer *answer)
{
  HcNeedContext context;
  HcAnswer here;

  hc_need_context_init (&context, about, need, space);
  if (need->scope != HC_SCOPE_LAYOUT && hc_need_context_get_bodies (&context) == 0)
    return;
  hc_answer_init (&here);
  need->judge (&context, &here);
  hc_answer_merge (answer, &here);
  hc_answer_clear (&here);
}

static void
judge_need (HcCase *about, const HcNeed *need, HcAnswer *answer)
{
  if (!hc_case_judges (about, need))
    return;
  for (guint space = 0; space < hc_case_get_n_spaces (about, need); space++)
    judge_space (about, need, space, answer);
  hc_answer_sort_findings (answer);
  hc_answer_group_findings (answer);
}

static void
note_part_levels (HcCheck *check, const HcFinding *finding)
{
  for (char **id = finding->ids; *id != NULL; id++)
    {
      gpointer level = GINT_TO_POINTER (finding->level);
      gpointer known;

      if (!g_hash_table_lookup_extended (check->part_levels, *id, NULL, &known)
          || GPOINTER_TO_INT (level) < GPOINTER_TO_INT (known))
        g_hash_table_replace (check->part_levels, *id, level);
    }
}

static void
answer_need (HcCheck *check, HcCase *about, HcNeedId id, HcCheck *before)
{
  HcAnswer *answer = &check->answers[id];

  if (before != NULL && hc_need_get (id)->settles)
    hc_answer_merge (answer, &before->answers[id]);
  else
    judge_need (about, hc_need_get (id), answer);
  for (guint i = 0; i < answer->findings->len; i++)
    note_part_levels (check, answer->findings->pdata[i]);
}

static HcCheck *
answer_needs (HcCheckCache *cache, HcPlan *plan, HcBook *book, HcCondition condition,
              HcFlock *flock, guint needs, HcCheck *before)
{
  HcCheck *check = g_new0 (HcCheck, 1);
  HcCase about;

  hc_case_init (&about, cache, plan, book, condition, flock);
  about.follows = before != NULL;
  g_atomic_ref_count_init (&check->refs);
  check->plan = hc_plan_ref (plan);
  check->flock = hc_flock_ref (flock);
  check->house = hc_house_ref (about.house);
  check->condition = condition;
  check->part_levels = g_hash_table_new (g_str_hash, g_str_equal);
  for (guint id = 0; id < HC_N_NEEDS; id++)
    {
      hc_answer_init (&check->answers[id]);
      if (needs & HC_NEED_BIT (id))
        answer_need (check, &about, id, before);
    }
  hc_case_clear (&about);
  return check;
}

/**
 * hc_check_plan: (skip)
 * @cache: what earlier checks worked out
 * @plan: a plan
 * @book: the book
 * @condition: when
 * @flock: the birds of the day, of the same plan and book
 *
 * Judges every need that is felt in @condition. Needs of the day are judged
 * where birds go by day, needs of the night where they are shut in at dusk.
 *
 * Returns: (transfer full): the answers
 */
HcCheck *
hc_check_plan (HcCheckCache *cache, HcPlan *plan, HcBook *book, HcCondition condition,
               HcFlock *flock)
{
  return answer_needs (cache, plan, book, condition, flock, HC_NEEDS_ALL, NULL);
}

/**
 * hc_check_needs: (skip)
 * @cache: what earlier checks worked out
 * @plan: a plan
 * @book: the book
 * @condition: when
 * @flock: the birds of the day, of the same plan and book
 * @needs: which needs, HC_NEED_BIT() of each
 *
 * Judges a few needs, for who tries many plans. The others do not apply.
 *
 * Returns: (transfer full): their answers
 */
HcCheck *
hc_check_needs (HcCheckCache *cache, HcPlan *plan, HcBook *book, HcCondition condition,
                HcFlock *flock, guint needs)
{
  return answer_needs (cache, plan, book, condition, flock, needs, NULL);
}

/**
 * hc_check_follow: (skip)
 * @before: the plan judged before a drag began
 * @cache: what earlier checks worked out
 * @plan: the plan as the drag has it
 * @book: the book
 * @flock: the birds of the day, of the same plan and book
 *
 * Judges @plan in the condition of @before, in time for the next picture of the
 * drag: needs that settle keep the answer they had, and birds are taken to walk
 * straight.
 *
 * Returns: (transfer full): the answers
 */
HcCheck *
hc_check_follow (HcCheck *before, HcCheckCache *cache, HcPlan *plan, HcBook *book,
                 HcFlock *flock)
{
  return answer_needs (cache, plan, book, before->condition, flock, HC_NEEDS_ALL, before);
}

HcCheck *
hc_check_ref (HcCheck *check)
{
  g_return_val_if_fail (check != NULL, NULL);
  g_atomic_ref_count_inc (&check->refs);
  return check;
}

void
hc_check_unref (HcCheck *check)
{
  g_return_if_fail (check != NULL);
  if (!g_atomic_ref_count_dec (&check->refs))
    return;
  g_hash_table_unref (check->part_levels);
  for (guint id = 0; id < HC_N_NEEDS; id++)
    hc_answer_clear (&check->answers[id]);
  hc_house_unref (check->house);
  hc_flock_unref (check->flock);
  hc_plan_unref (check->plan);
  g_free (check);
}

HcPlan *
hc_check_get_plan (const HcCheck *check)
{
  return check->plan;
}

HcFlock *
hc_check_get_flock (const HcCheck *check)
{
  return check->flock;
}

HcHouse *
hc_check_get_house (const HcCheck *check)
{
  return check->house;
}

HcCondition
hc_check_get_condition (const HcCheck *check)
{
  return check->condition;
}

/**
 * hc_check_get_level: (skip)
 * @check: a check
 *
 * Returns: the worst level of all needs that apply
 */
HcLevel
hc_check_get_level (const HcCheck *check)
{
  HcLevel level = HC_LEVEL_PLENTY;

  for (guint id = 0; id < HC_N_NEEDS; id++)
    if (check->answers[id].applies)
      level = MIN (level, check->answers[id].level);
  return level;
}

/**
 * hc_check_applies: (skip)
 * @check: a check
 * @need: a need
 *
 * Returns: whether the need has anything to say: no chicks want no warmth
 */
gboolean
hc_check_applies (const HcCheck *check, HcNeedId need)
{
  g_return_val_if_fail (need < HC_N_NEEDS, FALSE);
  return check->answers[need].applies;
}

/**
 * hc_check_get_need_level: (skip)
 * @check: a check
 * @need: a need
 *
 * Returns: its level where it is worst, plenty where it does not apply
 */
HcLevel
hc_check_get_need_level (const HcCheck *check, HcNeedId need)
{
  g_return_val_if_fail (need < HC_N_NEEDS, HC_LEVEL_SHORT);
  return check->answers[need].level;
}

/**
 * hc_check_get_birds: (skip)
 * @check: a check
 * @need: a need
 *
 * Returns: the birds it concerns, 0 where it does not count birds
 */
gint64
hc_check_get_birds (const HcCheck *check, HcNeedId need)
{
  g_return_val_if_fail (need < HC_N_NEEDS, 0);
  return check->answers[need].birds;
}

/**
 * hc_check_get_served: (skip)
 * @check: a check
 * @need: a need
 * @aim: a level asked for, not %HC_LEVEL_SHORT
 *
 * Returns: birds served at that level
 */
gint64
hc_check_get_served (const HcCheck *check, HcNeedId need, HcLevel aim)
{
  g_return_val_if_fail (need < HC_N_NEEDS, 0);
  g_return_val_if_fail (aim >= HC_LEVEL_TIGHT && aim <= HC_LEVEL_PLENTY, 0);
  return check->answers[need].served[aim - HC_LEVEL_TIGHT];
}

guint
hc_check_get_n_findings (const HcCheck *check, HcNeedId need)
{
  g_return_val_if_fail (need < HC_N_NEEDS, 0);
  return check->answers[need].findings->len;
}

/**
 * hc_check_get_finding: (skip)
 * @check: a check
 * @need: a need
 * @finding: index, the worst first
 *
 * Returns: (transfer none): the finding
 */
const HcFinding *
hc_check_get_finding (const HcCheck *check, HcNeedId need, guint finding)
{
  g_return_val_if_fail (finding < hc_check_get_n_findings (check, need), NULL);
  return g_ptr_array_index (check->answers[need].findings, finding);
}

guint
hc_check_get_n_allotments (const HcCheck *check, HcNeedId need)
{
  g_return_val_if_fail (need < HC_N_NEEDS, 0);
  return check->answers[need].allotments->len;
}

/**
 * hc_check_get_allotment: (skip)
 * @check: a check
 * @need: a counting need
 * @allotment: index, one for each space
 *
 * Returns: (transfer none): who has which place at the level reached, or at
 *   the least where even that is missed
 */
HcAllotment *
hc_check_get_allotment (const HcCheck *check, HcNeedId need, guint allotment)
{
  g_return_val_if_fail (allotment < hc_check_get_n_allotments (check, need), NULL);
  return g_ptr_array_index (check->answers[need].allotments, allotment);
}

/**
 * hc_check_get_part_level: (skip)
 * @check: a check
 * @id: id of a pen, a fitting, an opening or a group of birds
 *
 * Returns: the worst level of the findings that name it, %HC_LEVEL_PLENTY
 *   where none does
 */
HcLevel
hc_check_get_part_level (const HcCheck *check, const char *id)
{
  gpointer level;

  if (id == NULL || !g_hash_table_lookup_extended (check->part_levels, id, NULL, &level))
    return HC_LEVEL_PLENTY;
  return GPOINTER_TO_INT (level);
}

/**
 * hc_check_get_pen_level: (skip)
 * @check: a check
 * @id: id of a pen
 *
 * Returns: the worst level of the findings that name it, or a group of birds
 *   that lives in it
 */
HcLevel
hc_check_get_pen_level (const HcCheck *check, const char *id)
{
  HcParts *batches = hc_plan_get (check->plan)->batches;
  HcLevel level = hc_check_get_part_level (check, id);

  for (guint i = 0; i < batches->len; i++)
    if (g_strcmp0 (hc_batch_get (batches->pdata[i])->pen, id) == 0)
      level = MIN (level, hc_check_get_part_level (check, hc_part_get_id (batches->pdata[i])));
  return level;
}
