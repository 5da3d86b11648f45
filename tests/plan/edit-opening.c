/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Openings stay inside their wall and beside each other. */
#include "config.h"

#include "plan/edit-opening.h"
#include "plan/wall-places.h"

#include "../sample/two-pens.h"

#include <math.h>

static void
test_slides_inside_its_wall (void)
{
  static const struct
  {
    double wanted, gets;
  } rows[] = {
    { 1000, 1000 }, { 0, 400 }, { -900, 400 }, { 2900, 2600 }, { 1e9, 2600 },
  };
  g_autoptr (HcPlan) plan = two_pens_new ();

  for (guint i = 0; i < G_N_ELEMENTS (rows); i++)
    {
      g_autoptr (HcPlan) after = hc_plan_slide_opening (plan, "door", "a", rows[i].wanted, NULL);

      g_assert_cmpfloat (opening_in (after, "door")->along_mm, ==, rows[i].gets);
    }
}

static void
test_goes_to_the_nearest_free_place (void)
{
  static const struct
  {
    double wanted, gets;
  } rows[] = {
    { 1600, 2100 }, { 1400, 900 }, { 900, 900 }, { 2500, 2500 },
  };
  g_autoptr (HcPlan) plan = two_pens_new ();

  for (guint i = 0; i < G_N_ELEMENTS (rows); i++)
    {
      g_autoptr (HcOpening) hole = sample_opening ("new", "a", rows[i].wanted, 400);
      g_autoptr (HcPlan) after = hc_plan_add_opening (plan, hole, NULL);

      g_assert_cmpfloat (opening_in (after, "new")->along_mm, ==, rows[i].gets);
    }
}

static void
test_one_may_be_above_another (void)
{
  g_autoptr (HcPlan) plan = two_pens_new ();
  g_autoptr (HcOpening) low = sample_opening ("vent", "a", 1500, 400);
  HcOpeningValues values = *hc_opening_get (low);
  g_autoptr (HcOpening) high = NULL;
  g_autoptr (HcPlan) after = NULL;

  values.sill_mm = 400;
  high = hc_opening_with (low, &values);
  after = hc_plan_add_opening (plan, high, NULL);
  g_assert_cmpfloat (opening_in (after, "vent")->along_mm, ==, 1500);
}

static void
test_goes_into_another_wall (void)
{
  g_autoptr (HcPlan) plan = two_pens_new ();
  g_autoptr (HcPlan) after = hc_plan_slide_opening (plan, "door", "m", 50, NULL);

  g_assert_cmpstr (opening_in (after, "door")->wall, ==, "m");
  g_assert_cmpfloat (opening_in (after, "door")->along_mm, ==, 400);
}

static void
test_too_wide_is_refused (void)
{
  g_autoptr (HcPlan) plan = two_pens_new ();
  HcOpeningValues values = *opening_in (plan, "door");
  g_autoptr (GError) wide = NULL;
  g_autoptr (GError) nowhere = NULL;
  g_autoptr (GError) nothing = NULL;

  values.width_mm = 3100;
  assert_refused (hc_plan_set_opening (plan, "door", &values, &wide), &wide);
  assert_refused (hc_plan_slide_opening (plan, "door", "none", 50, &nowhere), &nowhere);
  assert_refused (hc_plan_slide_opening (plan, "door", "a", NAN, &nothing), &nothing);
}

static void
test_no_change_is_the_same_plan (void)
{
  g_autoptr (HcPlan) plan = two_pens_new ();
  g_autoptr (HcPlan) slid = hc_plan_slide_opening (plan, "door", "a", 1500, NULL);

  g_assert_true (slid == plan);
}

static void
test_removed (void)
{
  static const char *const both[] = { "door", "hole", NULL };
  g_autoptr (HcPlan) plan = two_pens_new ();
  g_autoptr (HcPlan) after = hc_plan_remove_openings (plan, both, NULL);

  g_assert_cmpuint (hc_layout_get (hc_plan_get_layout (after))->openings->len, ==, 0);
}

static gboolean
overlap (const HcOpeningValues *a, const HcOpeningValues *b)
{
  return g_str_equal (a->wall, b->wall)
         && fabs (a->along_mm - b->along_mm) < (a->width_mm + b->width_mm) / 2 - 0.01;
}

static void
assert_all_apart (HcPlan *plan)
{
  HcLayout *layout = hc_plan_get_layout (plan);
  HcParts *openings = hc_layout_get (layout)->openings;

  for (guint i = 0; i < openings->len; i++)
    {
      const HcOpeningValues *one = hc_opening_get (openings->pdata[i]);

      g_assert_cmpfloat (one->along_mm, >=, one->width_mm / 2 - 0.01);
      g_assert_cmpfloat (one->along_mm + one->width_mm / 2, <=,
                         hc_layout_get_wall_length (layout, one->wall) + 0.01);
      for (guint j = i + 1; j < openings->len; j++)
        g_assert_false (overlap (one, hc_opening_get (openings->pdata[j])));
    }
}

static void
test_any_row_of_slides_keeps_them_apart (void)
{
  static const char *const walls[] = { "a", "m", "c" };
  g_autoptr (HcPlan) plan = two_pens_new ();
  guint slid = 0;

  for (guint i = 0; i < 400; i++)
    {
      g_autofree char *id = g_strdup_printf ("new-%u", i);
      g_autoptr (HcOpening) opening
          = sample_opening (id, walls[i % 3], g_test_rand_double_range (0, 3000),
                            g_test_rand_double_range (100, 900));
      HcPlan *after = i < 9 ? hc_plan_add_opening (plan, opening, NULL)
                            : hc_plan_slide_opening (plan, i % 2 ? "door" : "hole", walls[i % 3],
                                                     g_test_rand_double_range (-100, 3100), NULL);

      if (after == NULL)
        continue;
      slid++;
      hc_plan_unref (plan);
      plan = after;
      assert_all_apart (plan);
    }
  g_assert_cmpuint (slid, >, 50);
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/edit-opening/slides-inside-its-wall", test_slides_inside_its_wall);
  g_test_add_func ("/edit-opening/nearest-free-place", test_goes_to_the_nearest_free_place);
  g_test_add_func ("/edit-opening/one-above-another", test_one_may_be_above_another);
  g_test_add_func ("/edit-opening/another-wall", test_goes_into_another_wall);
  g_test_add_func ("/edit-opening/too-wide-is-refused", test_too_wide_is_refused);
  g_test_add_func ("/edit-opening/no-change-is-the-same-plan", test_no_change_is_the_same_plan);
  g_test_add_func ("/edit-opening/removed", test_removed);
  g_test_add_func ("/edit-opening/any-row-of-slides", test_any_row_of_slides_keeps_them_apart);
  return g_test_run ();
}
