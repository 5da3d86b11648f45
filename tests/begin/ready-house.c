/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Ready houses open and work, at their own size and stretched; the demo opens
 * with two honest findings. */
#include "config.h"

#include "begin/ready-house.h"
#include "begin/stretch.h"
#include "base/error.h"
#include "needs/check.h"
#include "plan/soundness.h"

static HcBook *book;

static HcPlan *
open_house (guint house)
{
  g_autoptr (GError) error = NULL;
  HcPlan *plan = hc_ready_house_open (hc_ready_house_get (house)->id, "new-plan", &error);

  g_assert_no_error (error);
  return plan;
}

static guint
count_findings (HcPlan *plan, HcCondition condition, HcLevel up_to)
{
  g_autoptr (HcCheckCache) cache = hc_check_cache_new ();
  g_autoptr (HcFlock) flock = hc_flock_on (plan, book, hc_plan_get_day (plan));
  g_autoptr (HcCheck) check = hc_check_plan (cache, plan, book, condition, flock);
  guint n = 0;

  for (guint need = 0; need < HC_N_NEEDS; need++)
    for (guint i = 0; i < hc_check_get_n_findings (check, need); i++)
      {
        const HcFinding *finding = hc_check_get_finding (check, need, i);

        if (finding->level > up_to)
          continue;
        g_test_message ("%s about %s", finding->code,
                        finding->ids != NULL ? finding->ids[0] : "all");
        n++;
      }
  return n;
}

static void
assert_works (HcPlan *plan)
{
  g_autoptr (GError) error = NULL;

  hc_plan_is_sound (plan, &error);
  g_assert_no_error (error);
  for (HcCondition condition = HC_CONDITION_DAY; condition <= HC_CONDITION_SHUT_IN; condition++)
    g_assert_cmpuint (count_findings (plan, condition, HC_LEVEL_SHORT), ==, 0);
}

static void
test_each_works (void)
{
  for (guint i = 0; i < hc_ready_house_get_n (); i++)
    {
      g_autoptr (HcPlan) plan = open_house (i);

      g_assert_cmpstr (hc_plan_get_id (plan), ==, "new-plan");
      assert_works (plan);
    }
}

static void
test_its_own_size_is_no_change (void)
{
  for (guint i = 0; i < hc_ready_house_get_n (); i++)
    {
      g_autoptr (HcPlan) plan = open_house (i);
      double width_mm, length_mm;
      g_autoptr (HcPlan) same = NULL;

      hc_ready_house_get_outside (plan, &width_mm, &length_mm);
      same = hc_ready_house_stretch (plan, width_mm, length_mm, NULL);
      g_assert_true (hc_plan_equal (plan, same));
    }
}

static void
test_stretched_still_works (void)
{
  for (guint i = 0; i < 20; i++)
    {
      g_autoptr (HcPlan) plan = open_house (i % hc_ready_house_get_n ());
      double width_mm, length_mm, after_mm, after_length_mm;
      g_autoptr (HcPlan) stretched = NULL;
      g_autoptr (GError) error = NULL;

      hc_ready_house_get_outside (plan, &width_mm, &length_mm);
      width_mm = 10 * (int) (width_mm * g_test_rand_double_range (0.96, 1.99) / 10);
      length_mm = 10 * (int) (length_mm * g_test_rand_double_range (0.96, 1.99) / 10);
      g_test_message ("%s, %g by %g mm", hc_plan_get (plan)->title, width_mm, length_mm);
      stretched = hc_ready_house_stretch (plan, width_mm, length_mm, &error);
      g_assert_no_error (error);
      hc_ready_house_get_outside (stretched, &after_mm, &after_length_mm);
      g_assert_cmpfloat_with_epsilon (after_mm, width_mm, 0.01);
      g_assert_cmpfloat_with_epsilon (after_length_mm, length_mm, 0.01);
      assert_works (stretched);
    }
}

static void
test_too_small_is_refused (void)
{
  g_autoptr (HcPlan) plan = open_house (0);
  g_autoptr (GError) error = NULL;

  g_assert_null (hc_ready_house_stretch (plan, 500, 500, &error));
  g_assert_error (error, HC_ERROR, HC_ERROR_EDIT);
}

static void
test_demo_has_two_honest_findings (void)
{
  g_autoptr (GError) error = NULL;
  g_autoptr (HcPlan) plan = hc_demo_open ("skerry-croft", &error);
  HcParts *pens;
  guint fittings = 0;

  g_assert_no_error (error);
  hc_plan_is_sound (plan, &error);
  g_assert_no_error (error);
  pens = hc_layout_get (hc_plan_get_layout (plan))->pens;
  for (guint i = 0; i < pens->len; i++)
    fittings += hc_pen_get (pens->pdata[i])->fittings->len;
  g_assert_cmpuint (pens->len, >=, 4);
  g_assert_cmpuint (fittings, >=, 40);
  g_assert_cmpuint (count_findings (plan, HC_CONDITION_DAY, HC_LEVEL_TIGHT), ==, 2);
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  book = hc_book_load_default (NULL);
  g_assert_nonnull (book);
  g_test_add_func ("/ready-house/each-works", test_each_works);
  g_test_add_func ("/ready-house/its-own-size", test_its_own_size_is_no_change);
  g_test_add_func ("/ready-house/stretched-still-works", test_stretched_still_works);
  g_test_add_func ("/ready-house/too-small-is-refused", test_too_small_is_refused);
  g_test_add_func ("/demo/two-honest-findings", test_demo_has_two_honest_findings);
  return g_test_run ();
}
