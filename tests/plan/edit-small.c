/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Edits of the flock, the rules, the place and the plan's own page. */
#include "config.h"

#include "plan/edit-flock.h"
#include "plan/edit-building.h"
#include "plan/edit-plan.h"
#include "plan/edit-rules.h"
#include "plan/edit-site.h"

#include "../sample/two-pens.h"

#include <math.h>

static HcBatch *
ducks (const char *pen)
{
  HcBatchValues values;

  hc_batch_values_init (&values);
  values.females = 5;
  values.pen = (char *) pen;
  return hc_batch_new ("ducks", &values);
}

static void
test_groups_come_and_go (void)
{
  g_autoptr (HcPlan) plan = two_pens_new ();
  g_autoptr (HcBatch) batch = ducks ("right");
  g_autoptr (HcPlan) with = hc_plan_add_batch (plan, batch, NULL);
  g_autoptr (HcPlan) without = hc_plan_remove_batch (with, "ducks");
  g_autoptr (HcPlan) same = hc_plan_remove_batch (plan, "ducks");

  g_assert_cmpuint (hc_plan_get (with)->batches->len, ==, 2);
  g_assert_true (hc_plan_equal (plan, without));
  g_assert_true (same == plan);
}

static void
test_groups_live_in_pens_that_are_there (void)
{
  g_autoptr (HcPlan) plan = two_pens_new ();
  g_autoptr (HcBatch) homeless = ducks ("");
  g_autoptr (HcBatch) lost = ducks ("byre");
  g_autoptr (HcPlan) with = hc_plan_add_batch (plan, homeless, NULL);
  g_autoptr (GError) error = NULL;

  g_assert_nonnull (with);
  assert_refused (hc_plan_add_batch (plan, lost, &error), &error);
}

static void
test_groups_change (void)
{
  g_autoptr (HcPlan) plan = two_pens_new ();
  HcBatchValues values = *hc_batch_get (hc_plan_get (plan)->batches->pdata[0]);
  g_autoptr (HcPlan) same = hc_plan_set_batch (plan, "hens", &values, NULL);
  g_autoptr (HcPlan) more = NULL;
  g_autoptr (GError) fewer = NULL;
  g_autoptr (GError) gone = NULL;

  values.females = 12;
  more = hc_plan_set_batch (plan, "hens", &values, NULL);
  g_assert_true (same == plan);
  g_assert_cmpint (hc_batch_get (hc_plan_get (more)->batches->pdata[0])->females, ==, 12);
  values.females = -1;
  assert_refused (hc_plan_set_batch (plan, "hens", &values, &fewer), &fewer);
  values.females = 1;
  assert_refused (hc_plan_set_batch (plan, "swans", &values, &gone), &gone);
}

static void
test_one_own_figure_for_each_figure (void)
{
  g_autoptr (HcPlan) plan = two_pens_new ();
  g_autoptr (HcPlan) one = hc_plan_set_own_figure (plan, "x", "roost.space", 0.25, "big", NULL);
  g_autoptr (HcPlan) two = hc_plan_set_own_figure (one, "y", "roost.space", 0.3, "bigger", NULL);
  g_autoptr (HcPlan) none = hc_plan_unset_own_figure (two, "roost.space");
  g_autoptr (HcPlan) same = hc_plan_unset_own_figure (plan, "roost.space");
  g_autoptr (GError) error = NULL;

  g_assert_cmpuint (hc_plan_get_rules (two)->own_figures->len, ==, 1);
  g_assert_cmpfloat (hc_own_figure_get (hc_plan_find_own_figure (two, "roost.space"))->value, ==,
                     0.3);
  g_assert_true (hc_plan_equal (plan, none));
  g_assert_true (same == plan);
  assert_refused (hc_plan_set_own_figure (plan, "x", "roost.space", NAN, "", &error), &error);
}

static void
test_standard_leaves_own_figures (void)
{
  g_autoptr (HcPlan) plan = two_pens_new ();
  g_autoptr (HcPlan) own = hc_plan_set_own_figure (plan, "x", "roost.space", 0.25, "", NULL);
  g_autoptr (HcPlan) other = hc_plan_set_standard (own, "eu-hens");

  g_assert_cmpstr (hc_plan_get_rules (other)->standard, ==, "eu-hens");
  g_assert_nonnull (hc_plan_find_own_figure (other, "roost.space"));
}

static void
test_site (void)
{
  g_autoptr (HcPlan) plan = two_pens_new ();
  HcSiteValues values = *hc_plan_get_site (plan);
  g_autoptr (HcPlan) same = hc_plan_set_site (plan, &values, NULL);
  g_autoptr (HcPlan) feet = NULL;
  g_autoptr (GError) error = NULL;

  g_assert_true (same == plan);
  values.units = HC_UNITS_FEET;
  feet = hc_plan_set_site (plan, &values, NULL);
  g_assert_cmpint (hc_plan_get_site (feet)->units, ==, HC_UNITS_FEET);
  values.coldest_night_c = -300;
  assert_refused (hc_plan_set_site (plan, &values, &error), &error);
}

static void
test_page (void)
{
  g_autoptr (HcPlan) plan = two_pens_new ();
  g_autoptr (HcPlan) titled = hc_plan_set_title (plan, "Byre");
  g_autoptr (HcPlan) noted = hc_plan_set_notes (titled, "Drains to the burn");
  g_autoptr (HcPlan) dated = hc_plan_set_day (noted, 739000);
  g_autoptr (HcPlan) copy = hc_plan_copy_as (dated, "other", NULL);

  g_assert_cmpstr (hc_plan_get (dated)->title, ==, "Byre");
  g_assert_cmpstr (hc_plan_get (dated)->notes, ==, "Drains to the burn");
  g_assert_cmpuint (hc_plan_get_day (dated), ==, 739000);
  g_assert_cmpstr (hc_plan_get_id (copy), ==, "other");
  g_assert_true (hc_plan_get (copy)->variants == hc_plan_get (dated)->variants);
}

static void
test_buildings_go_when_empty (void)
{
  g_autoptr (HcPlan) plan = two_pens_new ();
  HcBuildingValues values = { (char *) "Byre", HC_BUILDING_HOUSE };
  g_autoptr (HcBuilding) byre = hc_building_new ("byre", &values);
  g_autoptr (HcPlan) with = hc_plan_put_building (plan, byre);
  g_autoptr (HcPlan) without = hc_plan_remove_building (with, "byre", NULL);
  HcPenValues pen = *hc_pen_get (hc_layout_get_pen (hc_plan_get_layout (with), "left"));
  g_autoptr (HcPen) housed = NULL;
  g_autoptr (HcParts) pens = NULL;
  g_autoptr (HcLayout) layout = NULL;
  g_autoptr (HcPlan) lived_in = NULL;
  HcLayoutValues layout_values = *hc_layout_get (hc_plan_get_layout (with));
  g_autoptr (GError) error = NULL;

  g_assert_true (hc_plan_equal (plan, without));
  pen.building = (char *) "byre";
  housed = hc_pen_new ("left", &pen);
  pens = hc_parts_with (layout_values.pens, housed);
  layout_values.pens = pens;
  layout = hc_layout_new ("main", &layout_values);
  lived_in = hc_plan_with_layout (with, layout);
  assert_refused (hc_plan_remove_building (lived_in, "byre", &error), &error);
}

static void
test_a_building_comes_with_its_first_pen_and_goes_with_its_last (void)
{
  g_autoptr (HcPlan) plan = two_pens_new ();
  g_autoptr (HcPlan) one = hc_plan_give_building (plan, "left", "byre", NULL);
  g_autoptr (HcPlan) both = hc_plan_give_building (one, "right", "byre", NULL);
  g_autoptr (HcPlan) moved = hc_plan_give_building (both, "left", "shed", NULL);
  g_autoptr (HcPlan) left = hc_plan_give_building (moved, "right", "", NULL);
  g_autoptr (GError) error = NULL;

  g_assert_cmpuint (hc_plan_get (one)->buildings->len, ==, 1);
  g_assert_cmpuint (hc_plan_get (both)->buildings->len, ==, 1);
  g_assert_cmpuint (hc_plan_get (moved)->buildings->len, ==, 2);
  g_assert_cmpuint (hc_plan_get (left)->buildings->len, ==, 1);
  g_assert_nonnull (hc_parts_find (hc_plan_get (left)->buildings, "shed"));
  assert_refused (hc_plan_give_building (plan, "no-such-pen", "byre", &error), &error);
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/edit-flock/come-and-go", test_groups_come_and_go);
  g_test_add_func ("/edit-flock/live-in-pens", test_groups_live_in_pens_that_are_there);
  g_test_add_func ("/edit-flock/change", test_groups_change);
  g_test_add_func ("/edit-rules/one-own-figure", test_one_own_figure_for_each_figure);
  g_test_add_func ("/edit-rules/standard-leaves-own", test_standard_leaves_own_figures);
  g_test_add_func ("/edit-site/values", test_site);
  g_test_add_func ("/edit-plan/page", test_page);
  g_test_add_func ("/edit-plan/buildings", test_buildings_go_when_empty);
  g_test_add_func ("/edit-plan/buildings/come-and-go-with-pens",
                   test_a_building_comes_with_its_first_pen_and_goes_with_its_last);
  return g_test_run ();
}
