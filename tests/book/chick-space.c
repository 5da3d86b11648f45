/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What chicks, ducklings and goslings ask as they grow, and their warmth. */
#include "config.h"

#include "shelf.h"

#define SQUARE_FOOT 92903.04

typedef struct
{
  const char *kind;
  int week;
  double least_mm2;
  double good_mm2;
} Week;

/* Chicks: 'Space should increase as birds grow', Poultry Producer (0.25, 0.5,
 * 0.75 and 1 ft²), good being the next step up. Growers: half and three quarters
 * of the grown figure, common practice. */
static const Week weeks[] = {
  { "light_layer", 1, 0.25 * SQUARE_FOOT, 0.5 * SQUARE_FOOT },
  { "light_layer", 2, 0.5 * SQUARE_FOOT, 0.75 * SQUARE_FOOT },
  { "heavy_breed", 3, 0.5 * SQUARE_FOOT, 0.75 * SQUARE_FOOT },
  { "meat_fast", 4, 0.75 * SQUARE_FOOT, SQUARE_FOOT },
  { "bantam", 5, 0.75 * SQUARE_FOOT, SQUARE_FOOT },
  { "medium_layer", 6, SQUARE_FOOT, 1.5 * SQUARE_FOOT },
  { "medium_layer", 8, SQUARE_FOOT, 1.5 * SQUARE_FOOT },
  { "medium_layer", 9, 0.095e6, 0.185e6 },
  { "medium_layer", 12, 0.095e6, 0.185e6 },
  { "medium_layer", 13, 0.1425e6, 0.2775e6 },
  { "medium_layer", 17, 0.1425e6, 0.2775e6 },
  { "medium_layer", 18, 0.19e6, 0.37e6 },
  { "meat_fast", 6, 0.09e6, 0.16e6 },
  { "meat_slow", 8, SQUARE_FOOT, 1.5 * SQUARE_FOOT },
  { "meat_slow", 9, 0.14e6, 0.23e6 },
  { "duck", 18, 0.28e6, 0.42e6 },
  { "goose", 6, 0.28e6, 0.465e6 },
  { "goose", 13, 0.42e6, 0.6975e6 },
};

static void
test_week (gconstpointer data)
{
  const Week *row = data;
  const HcDemand *demand = shelf_demand ("home-cold", "floor.area", row->kind, row->week);

  g_assert_cmpfloat_with_epsilon (hc_demand_required (demand, HC_LEVEL_TIGHT, 10, 5, NULL),
                                  10 * row->least_mm2, 1e-3);
  g_assert_cmpfloat_with_epsilon (hc_demand_required (demand, HC_LEVEL_GOOD, 10, 5, NULL),
                                  10 * row->good_mm2, 1e-3);
}

/* Metzer Farms, space for ducks, 2018: up to three weeks 1 ft² a duckling and
 * never less than 5 ft². */
static void
test_few_ducklings_ask_for_a_whole_pen (void)
{
  const HcDemand *demand = shelf_demand ("home-cold", "floor.area", "duck", 3);
  static const int ducklings[] = { 4, 10, 100 };
  static const double square_feet[] = { 5, 10, 100 };

  for (guint i = 0; i < G_N_ELEMENTS (ducklings); i++)
    g_assert_cmpfloat_with_epsilon (
        hc_demand_required (demand, HC_LEVEL_TIGHT, ducklings[i], 1, NULL),
        square_feet[i] * SQUARE_FOOT, 1e-3);
}

/* University of Wisconsin, Poultry your way, figure 24: 700 in² for 100. */
static void
test_a_hundred_chicks_under_a_hover (void)
{
  const HcDemand *demand = shelf_demand ("home-cold", "warmth.cover", "light_layer", 2);
  double required = hc_demand_required (demand, HC_LEVEL_TIGHT, 100, 10, NULL);

  g_assert_cmpfloat_with_epsilon (required, 700 * 25.4 * 25.4, 0.01 * required);
}

static void
test_feathered_birds_ask_for_no_cover (void)
{
  g_assert_null (hc_standard_find_demand (shelf_standard ("home-cold"), "warmth.cover",
                                          shelf_kind ("light_layer"), 9, HC_CONDITION_NIGHT));
}

static void
test_chicks_do_not_roost (void)
{
  HcStandard *standard = shelf_standard ("home-cold");
  const HcKind *kind = shelf_kind ("light_layer");

  g_assert_null (
      hc_standard_find_demand (standard, "roost.seat", kind, 8, HC_CONDITION_NIGHT));
  g_assert_nonnull (
      hc_standard_find_demand (standard, "roost.seat", kind, 9, HC_CONDITION_NIGHT));
}

/* Colorado State University Extension 2.502: 33.9 °C in the first week, 21.1 °C
 * in the sixth. */
static void
test_brooders_cool_by_week (void)
{
  HcStandard *standard = shelf_standard ("home-cold");
  const HcKind *kind = shelf_kind ("medium_layer");
  double before = 40;

  for (int week = 1; week <= 8; week++)
    {
      double now;

      g_assert_true (hc_limit_get (hc_standard_find_limit (standard, "warmth.temperature", kind,
                                                           week, HC_CONDITION_DAY),
                                   HC_LEVEL_GOOD, &now));
      g_assert_cmpfloat (now, <=, before);
      before = now;
      if (week == 1)
        g_assert_cmpfloat (now, ==, 33.9);
      if (week == 6)
        g_assert_cmpfloat (now, ==, 21.1);
    }
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  for (guint i = 0; i < G_N_ELEMENTS (weeks); i++)
    {
      g_autofree char *path
          = g_strdup_printf ("/chick-space/%s-%d", weeks[i].kind, weeks[i].week);

      g_test_add_data_func (path, &weeks[i], test_week);
    }
  g_test_add_func ("/chick-space/few-ducklings-ask-for-a-whole-pen",
                   test_few_ducklings_ask_for_a_whole_pen);
  g_test_add_func ("/chick-space/a-hundred-chicks-under-a-hover",
                   test_a_hundred_chicks_under_a_hover);
  g_test_add_func ("/chick-space/feathered-birds-ask-for-no-cover",
                   test_feathered_birds_ask_for_no_cover);
  g_test_add_func ("/chick-space/chicks-do-not-roost", test_chicks_do_not_roost);
  g_test_add_func ("/chick-space/brooders-cool-by-week", test_brooders_cool_by_week);
  return g_test_run ();
}
