/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A room cut in two: what is cut, what is beyond, and how high. */
#include "config.h"

#include "sample.h"

#include "supply/section.h"

static const HcSectionItem *
find (const GArray *items, HcSectionKind kind, const char *id, guint which)
{
  for (guint i = 0; i < items->len; i++)
    {
      const HcSectionItem *item = &g_array_index (items, HcSectionItem, i);

      if (item->kind == kind && g_str_equal (item->id, id) && which-- == 0)
        return item;
    }
  return NULL;
}

static HcPoint
point_of (const HcSectionItem *item, guint index)
{
  return g_array_index (item->outline, HcPoint, index);
}

static GArray *
look (Sample *sample, HcPoint from, HcPoint to)
{
  g_autoptr (HcLayout) layout = sample_make_layout (sample);
  g_autoptr (HcHouse) house = hc_house_new (layout, NULL);

  return hc_section_look (house, from, to);
}

/* 4 × 3 m under a gable of 2 to 3 m whose ridge runs along x at y = 1500. From x
 * = 1000, looking towards larger x means going up the page. */
static void
test_a_cut_across_the_ridge (void)
{
  Sample sample;
  g_autoptr (GArray) items = NULL;
  const HcSectionItem *roof, *wall;

  sample_init (&sample, 4000, 3000);
  sample.height_mm = 2000;
  sample.ridge_mm = 3000;
  items = look (&sample, hc_point (1000, 3500), hc_point (1000, -500));
  roof = find (items, HC_SECTION_ROOF, "p", 0);
  g_assert_cmpuint (roof->outline->len, ==, 3);
  g_assert_cmpfloat_with_epsilon (point_of (roof, 1).x_mm, 2000, 0.01);
  g_assert_cmpfloat_with_epsilon (point_of (roof, 1).y_mm, 3000, 0.01);
  g_assert_cmpfloat_with_epsilon (point_of (roof, 0).y_mm, 2000, 0.01);
  g_assert_true (find (items, HC_SECTION_WALL, "w0", 0)->cut);
  g_assert_cmpfloat_with_epsilon (point_of (find (items, HC_SECTION_WALL, "w0", 0), 2).y_mm, 2000,
                                  0.01);
  wall = find (items, HC_SECTION_WALL, "w1", 0);
  g_assert_false (wall->cut);
  g_assert_cmpfloat_with_epsilon (wall->depth_mm, 3000, 0.01);
  g_assert_cmpuint (wall->outline->len, ==, 5);
  g_assert_null (find (items, HC_SECTION_WALL, "w3", 0));
  sample_clear (&sample);
}

/* The gable wall of 4 × 3 m, whose ends are under the eaves, seen from inside. */
static double
top_of_gable_mm (double wall_height_mm)
{
  Sample sample;
  g_autoptr (GArray) items = NULL;
  double top_mm = 0;

  sample_init (&sample, 4000, 3000);
  sample.height_mm = 2000;
  sample.ridge_mm = 3000;
  sample.wall_height_mm = wall_height_mm;
  items = look (&sample, hc_point (1000, 3500), hc_point (1000, -500));
  for (guint i = 0; i < find (items, HC_SECTION_WALL, "w1", 0)->outline->len; i++)
    top_mm = MAX (top_mm, point_of (find (items, HC_SECTION_WALL, "w1", 0), i).y_mm);
  sample_clear (&sample);
  return top_mm;
}

static void
test_a_wall_as_high_as_the_eaves_bears_the_roof (void)
{
  g_assert_cmpfloat_with_epsilon (top_of_gable_mm (0), 3000, 0.01);
  g_assert_cmpfloat_with_epsilon (top_of_gable_mm (2000), 3000, 0.01);
  g_assert_cmpfloat_with_epsilon (top_of_gable_mm (1500), 1500, 0.01);
}

static void
test_bars_and_things_at_their_heights (void)
{
  Sample sample;
  HcFittingValues *roost, *board;
  g_autoptr (GArray) items = NULL;
  const HcSectionItem *back, *front, *below;

  sample_init (&sample, 4000, 3000);
  roost = sample_add_roost (&sample, 2500, 600, 2000, 600, 2);
  roost->rise_mm = 150;
  board = sample_add (&sample, HC_FITTING_DROPPINGS_BOARD, 1000, 600, 1000, 800);
  board->base_mm = 300;
  board->height_mm = 20;
  items = look (&sample, hc_point (1000, 3500), hc_point (1000, -500));
  back = find (items, HC_SECTION_BAR, "f0", 0);
  front = find (items, HC_SECTION_BAR, "f0", 1);
  below = find (items, HC_SECTION_FITTING, "f1", 0);
  g_assert_cmpfloat_with_epsilon (point_of (back, 2).y_mm, 650, 0.01);
  g_assert_cmpfloat_with_epsilon (point_of (front, 2).y_mm, 500, 0.01);
  g_assert_cmpfloat_with_epsilon (point_of (back, 1).x_mm - point_of (back, 0).x_mm, 90, 0.01);
  g_assert_false (back->cut);
  g_assert_cmpfloat_with_epsilon (back->depth_mm, 500, 0.01);
  g_assert_true (below->cut);
  g_assert_cmpfloat_with_epsilon (point_of (below, 0).y_mm, 300, 0.01);
  g_assert_cmpfloat_with_epsilon (point_of (below, 0).x_mm, 2500, 0.01);
  sample_clear (&sample);
}

static void
test_what_is_behind_is_not_seen_and_the_farthest_comes_first (void)
{
  Sample sample;
  g_autoptr (GArray) items = NULL;

  sample_init (&sample, 4000, 3000);
  sample_add (&sample, HC_FITTING_FEEDER, 500, 1500, 300, 300)->height_mm = 300;
  sample_add (&sample, HC_FITTING_FEEDER, 3000, 1500, 300, 300)->height_mm = 300;
  items = look (&sample, hc_point (1000, 3500), hc_point (1000, -500));
  g_assert_null (find (items, HC_SECTION_FITTING, "f0", 0));
  g_assert_nonnull (find (items, HC_SECTION_FITTING, "f1", 0));
  for (guint i = 0; i + 1 < items->len; i++)
    {
      const HcSectionItem *one = &g_array_index (items, HcSectionItem, i);
      const HcSectionItem *next = one + 1;

      g_assert_cmpint (one->cut, <=, next->cut);
      if (one->cut == next->cut)
        g_assert_cmpfloat (one->depth_mm, >=, next->depth_mm);
    }
  sample_clear (&sample);
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/section/across-the-ridge", test_a_cut_across_the_ridge);
  g_test_add_func ("/section/gable", test_a_wall_as_high_as_the_eaves_bears_the_roof);
  g_test_add_func ("/section/heights", test_bars_and_things_at_their_heights);
  g_test_add_func ("/section/order",
                   test_what_is_behind_is_not_seen_and_the_farthest_comes_first);
  return g_test_run ();
}
