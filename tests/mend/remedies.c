/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Remedies mend what they are for, spoil nothing unsaid, and lead somewhere. */
#include "config.h"

#include "begin/ready-house.h"
#include "mend/mend.h"
#include "plan/edit-fitting.h"
#include "plan/edit-flock.h"
#include "plan/edit-opening.h"
#include "plan/edit-pen.h"
#include "plan/soundness.h"
#include "words/remedy-words.h"

#define MOST_STEPS 20

static HcBook *book;

static HcCheck *
check_of (HcCheckCache *cache, HcPlan *plan)
{
  g_autoptr (HcFlock) flock = hc_flock_on (plan, book, hc_plan_get_day (plan));

  return hc_check_plan (cache, plan, book, HC_CONDITION_DAY, flock);
}

static gboolean
is_told (const HcRemedy *remedy, HcNeedId need)
{
  for (guint i = 0; i < remedy->changes->len; i++)
    if (g_array_index (remedy->changes, HcNeedChange, i).need == need)
      return TRUE;
  return FALSE;
}

static const HcFinding *
find_same (const HcCheck *check, HcNeedId need, const HcFinding *finding)
{
  for (guint i = 0; i < hc_check_get_n_findings (check, need); i++)
    {
      const HcFinding *other = hc_check_get_finding (check, need, i);

      if (g_str_equal (other->code, finding->code)
          && g_strcmp0 (other->ids[0], finding->ids[0]) == 0)
        return other;
    }
  return NULL;
}

/* Judged anew with nothing kept: the remedy holds what it says. */
static void
assert_mends (HcCheck *before, HcNeedId need, const HcFinding *finding, const HcRemedy *remedy)
{
  g_autoptr (HcCheckCache) cache = hc_check_cache_new ();
  g_autoptr (HcCheck) after = check_of (cache, remedy->plan);
  g_autofree char *label
      = hc_words_remedy (hc_check_get_plan (before), remedy, HC_UNITS_METRIC);
  const HcFinding *same = find_same (after, need, finding);
  g_autoptr (GError) error = NULL;

  g_test_message ("%s: %s", finding->code, label);
  g_assert_nonnull (label);
  hc_plan_is_sound (remedy->plan, &error);
  g_assert_no_error (error);
  g_assert_true ((same != NULL) == (remedy->after > 0));
  for (guint other = 0; other < HC_N_NEEDS; other++)
    {
      if (hc_check_get_need_level (after, other) < hc_check_get_need_level (before, other))
        g_assert_true (is_told (remedy, other));
      if (hc_check_get_need_level (after, other) == HC_LEVEL_SHORT)
        g_assert_cmpint (hc_check_get_need_level (before, other), ==, HC_LEVEL_SHORT);
    }
}

static void
assert_all_mend (HcPlan *plan)
{
  g_autoptr (HcCheckCache) cache = hc_check_cache_new ();
  g_autoptr (HcCheck) check = check_of (cache, plan);

  for (guint need = 0; need < HC_N_NEEDS; need++)
    for (guint i = 0; i < hc_check_get_n_findings (check, need); i++)
      {
        const HcFinding *finding = hc_check_get_finding (check, need, i);
        g_autoptr (GPtrArray) remedies
            = hc_mend_finding (cache, book, check, need, finding);

        for (guint remedy = 0; remedy < remedies->len; remedy++)
          {
            const HcRemedy *each = remedies->pdata[remedy];

            assert_mends (check, need, finding, each);
            if (g_str_equal (each->code, "birds.fewer"))
              g_assert_cmpuint (remedy, ==, remedies->len - 1);
          }
      }
}

/* The first remedy of the worst finding that has one. */
static HcPlan *
take_step (HcCheckCache *cache, HcPlan *plan, HcLevel up_to)
{
  g_autoptr (HcCheck) check = check_of (cache, plan);

  for (HcLevel level = HC_LEVEL_SHORT; level <= up_to; level++)
    for (guint need = 0; need < HC_N_NEEDS; need++)
      for (guint i = 0; i < hc_check_get_n_findings (check, need); i++)
        {
          const HcFinding *finding = hc_check_get_finding (check, need, i);
          g_autoptr (GPtrArray) remedies = NULL;

          if (finding->level != level)
            continue;
          remedies = hc_mend_finding (cache, book, check, need, finding);
          if (remedies->len > 0)
            return hc_plan_ref (((HcRemedy *) remedies->pdata[0])->plan);
        }
  return NULL;
}

static HcPlan *
follow (HcPlan *plan, HcLevel up_to)
{
  g_autoptr (HcCheckCache) cache = hc_check_cache_new ();
  g_autoptr (GPtrArray) seen = g_ptr_array_new_with_free_func ((GDestroyNotify) hc_plan_unref);
  HcPlan *now = hc_plan_ref (plan);
  HcPlan *next;

  while ((next = take_step (cache, now, up_to)) != NULL)
    {
      for (guint i = 0; i < seen->len; i++)
        g_assert_false (hc_plan_equal (seen->pdata[i], next));
      g_ptr_array_add (seen, now);
      now = next;
      g_assert_cmpuint (seen->len, <=, MOST_STEPS);
    }
  return now;
}

static void
test_the_demo_is_mended (void)
{
  g_autoptr (HcPlan) demo = hc_demo_open ("skerry-croft", NULL);
  g_autoptr (HcCheckCache) cache = hc_check_cache_new ();
  g_autoptr (HcPlan) end = NULL;
  g_autoptr (HcCheck) check = NULL;

  assert_all_mend (demo);
  end = follow (demo, HC_LEVEL_TIGHT);
  check = check_of (cache, end);
  g_assert_cmpint (hc_check_get_level (check), >, HC_LEVEL_SHORT);
}

static void
test_ready_houses_are_mended (void)
{
  for (guint i = 0; i < hc_ready_house_get_n (); i++)
    {
      g_autoptr (HcPlan) plan = hc_ready_house_open (hc_ready_house_get (i)->id, "plan", NULL);
      g_autoptr (HcPlan) end = NULL;

      assert_all_mend (plan);
      end = follow (plan, HC_LEVEL_TIGHT);
    }
}

/* Takes over @plan. */
static HcPlan *
spoil (HcPlan *plan)
{
  g_autoptr (HcPlan) before = plan;
  const HcLayoutValues *layout = hc_layout_get (hc_plan_get_layout (before));
  HcPen *pen = layout->pens->pdata[g_test_rand_int_range (0, (gint32) layout->pens->len)];
  HcParts *fittings = hc_pen_get (pen)->fittings;
  HcOpening *opening
      = layout->openings->pdata[g_test_rand_int_range (0, (gint32) layout->openings->len)];
  HcBatch *batch = hc_plan_get (before)->batches->pdata[0];
  HcBatchValues birds = *hc_batch_get (batch);
  HcOpeningValues hole = *hc_opening_get (opening);
  HcPenValues values = *hc_pen_get (pen);
  const char *ids[] = { NULL, NULL };

  switch (g_test_rand_int_range (0, 6))
    {
    case 0:
      if (fittings->len == 0)
        return g_steal_pointer (&before);
      ids[0] = hc_part_get_id (fittings->pdata[g_test_rand_int_range (0, (gint32) fittings->len)]);
      return hc_plan_remove_fittings (before, ids, NULL);
    case 1:
      hole.shut_at_dusk = FALSE;
      return hc_plan_set_opening (before, hc_opening_get_id (opening), &hole, NULL);
    case 2:
      hole.mesh = (char *) "stock_fence";
      return hc_plan_set_opening (before, hc_opening_get_id (opening), &hole, NULL);
    case 3:
      values.apron_mm = 0;
      return hc_plan_set_pen (before, hc_pen_get_id (pen), &values, NULL);
    case 4:
      values.bedding_mm = 0;
      return hc_plan_set_pen (before, hc_pen_get_id (pen), &values, NULL);
    default:
      birds.females += g_test_rand_int_range (1, 6);
      return hc_plan_set_batch (before, hc_batch_get_id (batch), &birds, NULL);
    }
}

static void
test_faulty_plans_are_led_out_of_it (void)
{
  for (guint i = 0; i < 6; i++)
    {
      HcPlan *plan = hc_ready_house_open (hc_ready_house_get (i % hc_ready_house_get_n ())->id,
                                          "plan", NULL);
      g_autoptr (HcPlan) faulty = NULL;
      g_autoptr (HcPlan) end = NULL;
      g_autoptr (HcCheckCache) cache = hc_check_cache_new ();
      g_autoptr (HcCheck) check = NULL;

      for (guint faults = 0; faults < 3; faults++)
        plan = spoil (plan);
      faulty = plan;
      end = follow (faulty, HC_LEVEL_SHORT);
      check = check_of (cache, end);
      g_assert_true (hc_plan_is_sound (end, NULL));
    }
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  book = hc_book_load_default (NULL);
  g_test_add_func ("/remedies/demo", test_the_demo_is_mended);
  g_test_add_func ("/remedies/ready-houses", test_ready_houses_are_mended);
  g_test_add_func ("/remedies/faulty-plans", test_faulty_plans_are_led_out_of_it);
  return g_test_run ();
}
