/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The home standard's places and distances, against the table they were settled
 * in: common practice, no source, but where the data name one. */
#include "config.h"

#include "shelf.h"

typedef struct
{
  const char *name;
  const char *kind;
  double levels[HC_N_ASKED_LEVELS];
} Row;

/* In cm unless the name says otherwise; a level left out asks what is below. */
static const Row rows[] = {
  { "floor.width", NULL, { 30, 30, 30 } },
  { "floor.headroom", NULL, { 45, 45, 60 } },
  { "roost.bar-to-bar", NULL, { 30, 35, 40 } },
  { "roost.bar-to-wall", NULL, { 20, 25, 30 } },
  { "roost.headroom", NULL, { 45, 60, 75 } },
  { "roost.bar-width", NULL, { 3.2, 5, 9 } },
  { "roost.bar-width-cold", NULL, { 3.2, 9, 9 } },
  { "roost.nest-below", NULL, { 10, 20, 30 } },
  { "climb.near-gap", "light_layer", { 50, 50, 50 } },
  { "climb.short-hop-rise", "light_layer", { 45, 35, 30 } },
  { "climb.long-hop-drop", "light_layer", { 50, 40, 25 } },
  { "climb.farthest-gap", "light_layer", { 80, 80, 80 } },
  { "climb.drop-to-floor", "medium_layer", { 100, 75, 60 } },
  { "climb.drop-to-floor", "heavy_breed", { 60, 45, 30 } },
  { "climb.soft-bedding", "light_layer", { 10, 10, 10 } },
  { "reach.keeper-way", NULL, { 50, 60, 76 } },
  { "reach.barrow-way", NULL, { 75, 91, 100 } },
  { "reach.headroom", NULL, { 160, 185, 200 } },
  { "reach.eggs", NULL, { 65, 60, 45 } },
  { "feed.from-water", NULL, { 50, 100, 150 } },
  { "feed.walk", NULL, { 800, 300, 200 } },
  { "water.walk", NULL, { 800, 300, 200 } },
  { "litter.depth", NULL, { 5, 10, 15 } },
  { "air.vent-above-birds", NULL, { 20, 30, 50 } },
  { "warmth.lamp-clearance", NULL, { 46, 46, 46 } },
  { "predators.apron", NULL, { 45, 60, 60 } },
  { "predators.dug", NULL, { 30, 60, 60 } },
};

static const Row plain_rows[] = {
  { "floor.shut-in-factor", NULL, { 1, 1.5, 2 } },
  { "floor.short-spell", NULL, { 3, 3, 3 } },
  { "roost.cold-night", NULL, { -10, -10, -10 } },
  { "climb.landing-strip", "light_layer", { .75, 1, 1.25 } },
  { "climb.ramp-slope", "light_layer", { 45, 35, 25 } },
  { "climb.ramp-slope", "duck", { 25, 20, 15 } },
  { "warmth.weeks", NULL, { 8, 8, 8 } },
  { "warmth.mild-night", NULL, { 10, 10, 10 } },
  { "warmth.mild-from", NULL, { 6, 6, 6 } },
  { "warmth.heated-share", NULL, { .5, .5, .5 } },
  { "warmth.lamp-hangers", NULL, { 2, 2, 2 } },
};

static void
check_levels (const Row *row, double unit)
{
  const HcLimit *limit = shelf_limit ("home-cold", row->name, row->kind);

  for (guint i = 0; i < HC_N_ASKED_LEVELS; i++)
    {
      double bound;

      g_assert_true (hc_limit_get (limit, HC_LEVEL_TIGHT + i, &bound));
      g_assert_cmpfloat_with_epsilon (bound, row->levels[i] * unit, 1e-9);
    }
}

static void
test_lengths (gconstpointer data)
{
  check_levels (data, 10);
}

static void
test_plain (gconstpointer data)
{
  check_levels (data, 1);
}

/* Vents and windows are shares of the floor. */
static void
test_openings (void)
{
  static const Row shares[] = {
    { "air.winter-vents", NULL, { 1, 2, 4 } },
    { "air.summer-vents", NULL, { 5, 10, 15 } },
    { "light.window-area", NULL, { 3, 5, 10 } },
  };
  HcBasis basis = { .ground_floor_mm2 = 12e6 };

  for (guint row = 0; row < G_N_ELEMENTS (shares); row++)
    for (guint i = 0; i < HC_N_ASKED_LEVELS; i++)
      g_assert_cmpfloat_with_epsilon (
          hc_demand_required (shelf_demand ("home-cold", shares[row].name, NULL, 40),
                              HC_LEVEL_TIGHT + i, 1, 2, &basis),
          shares[row].levels[i] / 100 * 12e6, 1e-6);
}

static void
test_platforms_are_no_floor (void)
{
  g_assert_false (hc_standard_counts_platforms (shelf_standard ("home-cold")));
  g_assert_true (hc_standard_counts_platforms (shelf_standard ("eu-laying-hens")));
}

static void
test_waterfowl_do_not_hop (void)
{
  g_assert_null (hc_standard_find_limit (shelf_standard ("home-cold"), "climb.short-hop-rise",
                                         shelf_kind ("duck"), 40, HC_CONDITION_DAY));
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  for (guint i = 0; i < G_N_ELEMENTS (rows); i++)
    {
      g_autofree char *path = g_strdup_printf ("/home-places/%s-%s", rows[i].name,
                                               rows[i].kind != NULL ? rows[i].kind : "any");

      g_test_add_data_func (path, &rows[i], test_lengths);
    }
  for (guint i = 0; i < G_N_ELEMENTS (plain_rows); i++)
    {
      g_autofree char *path
          = g_strdup_printf ("/home-places/%s-%s", plain_rows[i].name,
                             plain_rows[i].kind != NULL ? plain_rows[i].kind : "any");

      g_test_add_data_func (path, &plain_rows[i], test_plain);
    }
  g_test_add_func ("/home-places/openings", test_openings);
  g_test_add_func ("/home-places/platforms-are-no-floor", test_platforms_are_no_floor);
  g_test_add_func ("/home-places/waterfowl-do-not-hop", test_waterfowl_do_not_hop);
  return g_test_run ();
}
