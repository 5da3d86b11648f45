/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The laws' figures by their own worked numbers: Directive 1999/74/EC as the
 * French order of 1 February 2002 has it, the organic rules of Regulation
 * 2020/464, Directive 2007/43/EC and the German ordinance. */
#include "config.h"

#include "shelf.h"

static const HcBasis forty_m2 = { .ground_floor_mm2 = 40e6, .required_floor_mm2 = 40e6 };

static double
asked (const char *standard, const char *name, const char *kind, double birds, double kg)
{
  return hc_demand_required (shelf_demand (standard, name, kind, 40), HC_LEVEL_TIGHT, birds, kg,
                             &forty_m2);
}

/* Article 3 (4°): nine hens to a square metre of usable area. */
static void
test_forty_square_metres_hold_360_hens (void)
{
  const HcDemand *demand = shelf_demand ("eu-laying-hens", "floor.area", "light_layer", 40);

  g_assert_cmpint (hc_demand_most_birds (demand, HC_LEVEL_TIGHT, 40e6, 2, NULL), ==, 360);
  g_assert_cmpint (hc_demand_grade (demand, 40e6, 361, 722, NULL), ==, HC_LEVEL_SHORT);
}

typedef struct
{
  const char *name;
  double required;
} Asked;

/* Article 3, for 360 hens on 40 m²: 52 nests or 3 m² of group nest, 54 m of
 * perch, 36 m of trough or 14.4 m round, 9 m of drinker, 36 nipples, 13.33 m² of
 * litter. */
static void
test_what_360_hens_ask (gconstpointer data)
{
  const Asked *row = data;

  g_assert_cmpfloat_with_epsilon (
      asked ("eu-laying-hens", row->name, "medium_layer", 360, 720), row->required,
      1e-6 * row->required);
}

static const Asked of_360[] = {
  { "nests.boxes", 52 },         { "nests.group-area", 3.0e6 },  { "roost.seat", 54e3 },
  { "feed.long-edge", 36e3 },    { "feed.round-edge", 14.4e3 },  { "water.long-edge", 9e3 },
  { "water.round-edge", 3.6e3 }, { "water.nipples", 36 },        { "litter.area", 40e6 / 3 },
};

/* French order, article 3 (3°)(b): 2 m for 1000 hens; the ordinance, § 13a (8):
 * 1 m for 500. */
static void
test_a_thousand_hens_ask_two_metres_of_way_out (void)
{
  g_assert_cmpfloat (asked ("eu-laying-hens", "way-out.total-width", "bantam", 1000, 700), ==,
                     2000);
  g_assert_cmpfloat (asked ("de-ordinance", "way-out.total-width", "bantam", 1000, 700), ==,
                     2000);
}

/* German organic poultry leaflet, 2012: 600 hens at 6 to a square metre need
 * 4 m of pop holes, 3000 hens 20 m. */
static void
test_organic_way_out_follows_the_floor (void)
{
  const HcDemand *floor = shelf_demand ("eu-organic", "floor.area", "light_layer", 40);
  const HcDemand *holes = shelf_demand ("eu-organic", "way-out.total-width", "light_layer", 40);
  static const double hens[] = { 600, 3000 };
  static const double width_mm[] = { 4000, 20000 };

  for (guint i = 0; i < G_N_ELEMENTS (hens); i++)
    {
      HcBasis basis = { 0 };

      basis.required_floor_mm2
          = hc_demand_required (floor, HC_LEVEL_TIGHT, hens[i], 2 * hens[i], NULL);
      g_assert_cmpfloat_with_epsilon (
          hc_demand_required (holes, HC_LEVEL_TIGHT, hens[i], 2 * hens[i], &basis), width_mm[i],
          1e-6);
    }
}

/* Regulation 589/2008, annex II (1)(c): 4 m² a hen. */
static void
test_fifty_hens_range_over_200_square_metres (void)
{
  g_assert_cmpfloat (asked ("eu-organic", "run.area", "medium_layer", 50, 130), ==, 200e6);
}

/* Directive 2007/43/EC, article 3 (2): 33 kg to a square metre. */
static void
test_meat_chickens_are_counted_by_mass (void)
{
  g_assert_cmpfloat_with_epsilon (asked ("eu-meat-chickens", "floor.area", "meat_fast", 110, 330),
                                  10e6, 1e-3);
  g_assert_cmpfloat_with_epsilon (asked ("de-ordinance", "floor.area", "meat_slow", 100, 390),
                                  10e6, 1e-3);
}

/* The ordinance, § 13 (2): never less than 2.5 m²; § 13 (5) 3: two nipples for
 * ten hens, one more for each further ten. */
static void
test_the_ordinance_has_least_sizes (void)
{
  g_assert_cmpfloat (asked ("de-ordinance", "floor.area", "bantam", 3, 2), ==, 2.5e6);
  g_assert_cmpfloat (asked ("de-ordinance", "floor.area", "bantam", 90, 63), ==, 10e6);
  g_assert_cmpfloat (asked ("de-ordinance", "water.nipples", "bantam", 8, 6), ==, 2);
  g_assert_cmpfloat (asked ("de-ordinance", "water.nipples", "bantam", 25, 20), ==, 4);
}

/* The ordinance, § 13 (3): 3 % of 12 m² is 0.36 m² of window. */
static void
test_windows_follow_the_floor (void)
{
  HcBasis basis = { .ground_floor_mm2 = 12e6 };
  const HcDemand *demand = shelf_demand ("de-ordinance", "light.window-area", NULL, 40);

  g_assert_cmpfloat_with_epsilon (hc_demand_required (demand, HC_LEVEL_TIGHT, 1, 2, &basis),
                                  0.36e6, 1e-6);
}

static void
test_laws_are_silent_on_much (void)
{
  const HcLimit *limit = shelf_limit ("eu-laying-hens", "reach.keeper-way", NULL);

  g_assert_cmpstr (limit->figure.standard, ==, "home-cold");
  limit = shelf_limit ("eu-laying-hens", "roost.bar-to-bar", NULL);
  g_assert_cmpstr (limit->figure.standard, ==, "eu-laying-hens");
}

static void
test_laws_bind_their_own_birds_only (void)
{
  g_assert_cmpstr (shelf_demand ("eu-laying-hens", "floor.area", "duck", 40)->figure.standard, ==,
                   "home-cold");
  g_assert_cmpstr (
      shelf_demand ("eu-laying-hens", "floor.area", "light_layer", 10)->figure.standard, ==,
      "home-cold");
  g_assert_cmpstr (
      shelf_demand ("eu-meat-chickens", "floor.area", "light_layer", 40)->figure.standard, ==,
      "home-cold");
}

static void
test_laws_state_the_least_only (void)
{
  HcStandard *law = shelf_standard ("eu-laying-hens");
  const HcDemand *demand = shelf_demand ("eu-laying-hens", "roost.seat", "heavy_breed", 40);

  g_assert_true (hc_standard_is_minimum_only (law));
  g_assert_false (hc_standard_is_minimum_only (shelf_standard ("home-cold")));
  g_assert_cmpuint (demand->stated, ==, 1u << HC_LEVEL_TIGHT);
  g_assert_true (hc_standard_get_fallback (law) == shelf_standard ("home-cold"));
  g_assert_null (hc_standard_get_fallback (shelf_standard ("home-cold")));
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/laws/forty-square-metres-hold-360-hens",
                   test_forty_square_metres_hold_360_hens);
  for (guint i = 0; i < G_N_ELEMENTS (of_360); i++)
    {
      g_autofree char *path = g_strdup_printf ("/laws/what-360-hens-ask/%s", of_360[i].name);

      g_test_add_data_func (path, &of_360[i], test_what_360_hens_ask);
    }
  g_test_add_func ("/laws/a-thousand-hens-ask-two-metres-of-way-out",
                   test_a_thousand_hens_ask_two_metres_of_way_out);
  g_test_add_func ("/laws/organic-way-out-follows-the-floor",
                   test_organic_way_out_follows_the_floor);
  g_test_add_func ("/laws/fifty-hens-range-over-200-square-metres",
                   test_fifty_hens_range_over_200_square_metres);
  g_test_add_func ("/laws/meat-chickens-are-counted-by-mass",
                   test_meat_chickens_are_counted_by_mass);
  g_test_add_func ("/laws/the-ordinance-has-least-sizes", test_the_ordinance_has_least_sizes);
  g_test_add_func ("/laws/windows-follow-the-floor", test_windows_follow_the_floor);
  g_test_add_func ("/laws/are-silent-on-much", test_laws_are_silent_on_much);
  g_test_add_func ("/laws/bind-their-own-birds-only", test_laws_bind_their_own_birds_only);
  g_test_add_func ("/laws/state-the-least-only", test_laws_state_the_least_only);
  return g_test_run ();
}
