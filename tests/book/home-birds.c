/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The home standard's figures for grown birds, against the table they were
 * settled in: common practice, no source, but where the data name one. */
#include "config.h"

#include "shelf.h"

#define NONE -1.0

static const char *const kinds[] = { "bantam",    "light_layer", "medium_layer", "heavy_breed",
                                     "meat_fast", "meat_slow",   "duck",         "goose" };

typedef struct
{
  const char *name;
  HcFigureUnit unit;
  double levels[G_N_ELEMENTS (kinds)][HC_N_ASKED_LEVELS];
} Row;

/* What ten birds share or ask, as stated for one bird. */
static const Row each_rows[] = {
  { "floor.area",
    HC_FIGURE_M2,
    { { .09, .19, .28 },
      { .14, .28, .37 },
      { .19, .37, .46 },
      { .28, .42, .56 },
      { .09, .16, .28 },
      { .14, .23, .33 },
      { .28, .42, .56 },
      { .56, .93, 1.39 } } },
  { "run.area",
    HC_FIGURE_M2,
    { { .37, .74, 2 },
      { .74, .93, 4 },
      { .93, 1.4, 4 },
      { .93, 1.4, 4 },
      { 0, .37, 1 },
      { .37, .93, 2 },
      { .93, 1.9, 4.5 },
      { 1.7, 5, 15 } } },
  { "roost.seat",
    HC_FIGURE_CM,
    { { 12, 15, 20 },
      { 15, 20, 25 },
      { 18, 22, 28 },
      { 22, 28, 35 },
      { NONE },
      { 15, 20, 25 },
      { NONE },
      { NONE } } },
  { "feed.long-edge",
    HC_FIGURE_CM,
    { { 5, 8, 10 },
      { 8, 10, 12 },
      { 8, 10, 12 },
      { 10, 12, 14.5 },
      { 4, 5, 7 },
      { 5, 8, 10 },
      { 10, 12, 15 },
      { 12, 15, 20 } } },
  { "feed.round-edge",
    HC_FIGURE_CM,
    { { 2, 3, 4 },
      { 4, 4, 5 },
      { 4, 4, 5 },
      { 4, 5, 6 },
      { 2, 2.4, 3 },
      { 3, 3, 4 },
      { 4, 5, 6 },
      { 5, 6, 8 } } },
  { "water.long-edge",
    HC_FIGURE_CM,
    { { 1.5, 2.5, 3 },
      { 2.5, 2.5, 4 },
      { 2.5, 2.5, 4 },
      { 2.5, 3, 4 },
      { 1.5, 2, 2.5 },
      { 2, 2.5, 3 },
      { 3, 4, 6 },
      { 4, 5, 8 } } },
};

/* How many birds share one. */
static const Row shared_rows[] = {
  { "nests.boxes",
    HC_FIGURE_COUNT,
    { { 6, 5, 4 }, { 5, 4, 3 }, { 5, 4, 3 }, { 5, 4, 3 }, { NONE }, { NONE }, { 5, 4, 3 },
      { 4, 3, 2 } } },
  { "water.nipples",
    HC_FIGURE_COUNT,
    { { 10, 8, 6 }, { 10, 8, 6 }, { 10, 8, 6 }, { 10, 8, 6 }, { 15, 10, 8 }, { 12, 10, 8 },
      { NONE }, { NONE } } },
};

/* Good and most, or least alone: good comes second, as in the data. */
static const Row limit_rows[] = {
  { "roost.bar-height",
    HC_FIGURE_CM,
    { { 120, 60 }, { 120, 75 }, { 100, 60 }, { 60, 45 }, { NONE }, { 45, 30 }, { NONE },
      { NONE } } },
  { "nests.height",
    HC_FIGURE_CM,
    { { 60, 45 }, { 75, 45 }, { 60, 45 }, { 30, 20 }, { NONE }, { NONE }, { 0, 0 }, { 0, 0 } } },
  { "nests.box-width",
    HC_FIGURE_CM,
    { { 25, 25 }, { 30, 30 }, { 30, 30 }, { 35, 35 }, { NONE }, { NONE }, { 30, 30 },
      { 60, 60 } } },
  { "nests.box-depth",
    HC_FIGURE_CM,
    { { 25, 25 }, { 30, 30 }, { 30, 30 }, { 35, 35 }, { NONE }, { NONE }, { 45, 45 },
      { 70, 70 } } },
  { "nests.box-height",
    HC_FIGURE_CM,
    { { 25, 25 }, { 35, 35 }, { 35, 35 }, { 40, 40 }, { NONE }, { NONE }, { NONE }, { NONE } } },
  { "way-out.pop-hole-width",
    HC_FIGURE_CM,
    { { 20, 20 }, { 25, 25 }, { 30, 30 }, { 35, 35 }, { 30, 30 }, { 30, 30 }, { 40, 40 },
      { 50, 50 } } },
  { "way-out.pop-hole-height",
    HC_FIGURE_CM,
    { { 25, 25 }, { 30, 30 }, { 35, 35 }, { 40, 40 }, { 35, 35 }, { 35, 35 }, { 40, 40 },
      { 70, 70 } } },
  { "company.females-per-male",
    HC_FIGURE_BIRDS,
    { { 6, 6 }, { 12, 10 }, { 12, 10 }, { 10, 8 }, { NONE }, { 10, 8 }, { 6, 5 }, { 5, 3 } } },
};

static const HcDemand *
demand_of (const Row *row, guint kind)
{
  return hc_standard_find_demand (shelf_standard ("home-cold"), row->name,
                                  shelf_kind (kinds[kind]), HC_WEEK_GROWN, HC_CONDITION_DAY);
}

static void
test_each (gconstpointer data)
{
  const Row *row = data;

  for (guint kind = 0; kind < G_N_ELEMENTS (kinds); kind++)
    {
      const HcDemand *demand = demand_of (row, kind);

      if (row->levels[kind][0] == NONE)
        {
          g_assert_null (demand);
          continue;
        }
      g_assert_cmpint (demand->figure.unit, ==, row->unit);
      for (guint i = 0; i < HC_N_ASKED_LEVELS; i++)
        g_assert_cmpfloat_with_epsilon (
            hc_demand_required (demand, HC_LEVEL_TIGHT + i, 10, 20, NULL),
            10 * hc_figure_unit_to_used (row->unit, row->levels[kind][i]), 1e-6);
    }
}

static void
test_shared (gconstpointer data)
{
  const Row *row = data;

  for (guint kind = 0; kind < G_N_ELEMENTS (kinds); kind++)
    {
      const HcDemand *demand = demand_of (row, kind);

      if (row->levels[kind][0] == NONE)
        {
          g_assert_null (demand);
          continue;
        }
      for (guint i = 0; i < HC_N_ASKED_LEVELS; i++)
        g_assert_cmpint (hc_demand_most_birds (demand, HC_LEVEL_TIGHT + i, 10, 2, NULL), ==,
                         (gint64) (10 * row->levels[kind][i]));
    }
}

static void
test_limits (gconstpointer data)
{
  const Row *row = data;

  for (guint kind = 0; kind < G_N_ELEMENTS (kinds); kind++)
    {
      const HcLimit *limit
          = hc_standard_find_limit (shelf_standard ("home-cold"), row->name,
                                    shelf_kind (kinds[kind]), HC_WEEK_GROWN, HC_CONDITION_DAY);

      if (row->levels[kind][0] == NONE)
        {
          g_assert_null (limit);
          continue;
        }
      for (guint i = 0; i < 2; i++)
        {
          double bound;

          g_assert_true (hc_limit_get (limit, HC_LEVEL_TIGHT + i, &bound));
          g_assert_cmpfloat_with_epsilon (
              bound, hc_figure_unit_to_used (row->unit, row->levels[kind][i]), 1e-9);
        }
    }
}

static void
test_nipples_are_never_fewer_than_two (void)
{
  const HcDemand *demand = shelf_demand ("home-cold", "water.nipples", "heavy_breed", 40);

  g_assert_cmpfloat (hc_demand_required (demand, HC_LEVEL_GOOD, 3, 12, NULL), ==, 2);
}

static void
test_drops_are_shorter_for_heavy_birds (void)
{
  double light, heavy;

  hc_limit_get (shelf_limit ("home-cold", "climb.drop-to-floor", "light_layer"), HC_LEVEL_GOOD,
                &light);
  hc_limit_get (shelf_limit ("home-cold", "climb.drop-to-floor", "heavy_breed"), HC_LEVEL_GOOD,
                &heavy);
  g_assert_cmpfloat (light, ==, 750);
  g_assert_cmpfloat (heavy, ==, 450);
}

static void
add_rows (const char *group, const Row *rows, guint n, GTestDataFunc test)
{
  for (guint i = 0; i < n; i++)
    {
      g_autofree char *path = g_strdup_printf ("/home-birds/%s/%s", group, rows[i].name);

      g_test_add_data_func (path, &rows[i], test);
    }
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  add_rows ("each", each_rows, G_N_ELEMENTS (each_rows), test_each);
  add_rows ("shared", shared_rows, G_N_ELEMENTS (shared_rows), test_shared);
  add_rows ("limits", limit_rows, G_N_ELEMENTS (limit_rows), test_limits);
  g_test_add_func ("/home-birds/nipples-are-never-fewer-than-two",
                   test_nipples_are_never_fewer_than_two);
  g_test_add_func ("/home-birds/drops-are-shorter-for-heavy-birds",
                   test_drops_are_shorter_for_heavy_birds);
  return g_test_run ();
}
