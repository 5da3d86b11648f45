/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Rings of corners: their area, their faults, and the inside faces of walls. */
#include "config.h"

#include "base/ring.h"
#include "base/whole.h"

static const HcPoint room[] = { { 0, 0 }, { 4000, 0 }, { 4000, 3000 }, { 0, 3000 } };
static const HcPoint ell[] = { { 0, 0 },       { 5000, 0 },    { 5000, 2000 },
                               { 2000, 2000 }, { 2000, 4000 }, { 0, 4000 } };

typedef struct
{
  HcRingFault fault;
  guint first;
  guint second;
  guint n_points;
  HcPoint points[6];
} FaultRow;

static const FaultRow faults[] = {
  { HC_RING_SOUND, 0, 0, 4, { { 0, 0 }, { 9, 0 }, { 9, 9 }, { 0, 9 } } },
  { HC_RING_SOUND, 0, 0, 5, { { 0, 0 }, { 5, 0 }, { 9, 0 }, { 9, 9 }, { 0, 9 } } },
  { HC_RING_TOO_FEW_CORNERS, 0, 0, 0, { { 0, 0 } } },
  { HC_RING_TOO_FEW_CORNERS, 0, 0, 2, { { 0, 0 }, { 9, 0 } } },
  { HC_RING_REPEATED_CORNER, 1, 2, 4, { { 0, 0 }, { 9, 0 }, { 9, 0.0001 }, { 0, 9 } } },
  { HC_RING_REPEATED_CORNER, 0, 3, 5, { { 0, 0 }, { 9, 0 }, { 9, 9 }, { 0, 0 }, { 0, 9 } } },
  { HC_RING_SELF_CROSSING, 0, 2, 4, { { 0, 0 }, { 9, 9 }, { 9, 0 }, { 0, 9 } } },
  { HC_RING_SELF_CROSSING, 0, 1, 4, { { 0, 0 }, { 9, 0 }, { 4, 0 }, { 4, 9 } } },
  { HC_RING_SELF_CROSSING, 0, 2, 4, { { 0, 0 }, { 9, 0 }, { 9, 9 }, { 4, 0 } } },
  { HC_RING_SELF_CROSSING, 0, 3, 4, { { 0, 0 }, { 4, 0 }, { 4, 9 }, { 9, 0 } } },
  { HC_RING_SELF_CROSSING, 0, 2, 5, { { 0, 0 }, { 9, 0 }, { 9, 9 }, { 4, 0 }, { 0, 9 } } },
  { HC_RING_NO_AREA, 0, 0, 3, { { 0, 0 }, { 9, 0 }, { 20, 0 } } },
};

static void
the_first_fault_is_named (gconstpointer data)
{
  const FaultRow *row = data;
  guint first = 99, second = 99;

  g_assert_cmpint (hc_ring_find_fault (row->points, row->n_points, &first, &second), ==,
                   row->fault);
  g_assert_cmpuint (first, ==, row->first);
  g_assert_cmpuint (second, ==, row->second);
}

static void
area_has_the_sign_of_the_turn (void)
{
  HcPoint turned[4];

  for (guint i = 0; i < 4; i++)
    turned[i] = room[i];
  hc_ring_reverse (turned, 4);
  g_assert_cmpfloat (hc_ring_area_mm2 (room, 4), ==, 12e6);
  g_assert_cmpfloat (hc_ring_area_mm2 (turned, 4), ==, -12e6);
  g_assert_cmpfloat (hc_ring_area_mm2 (ell, 6), ==, 14e6);
  g_assert_cmpfloat (hc_ring_area_mm2 (room, 2), ==, 0);
}

static void
walls_stand_inside_their_centre_lines (void)
{
  const double half_mm[] = { 50, 100, 50, 300 };
  g_autofree HcPoint *inner = hc_ring_inset (room, 4, half_mm);

  g_assert_true (hc_point_equal (inner[0], hc_point (300, 50)));
  g_assert_true (hc_point_equal (inner[1], hc_point (3900, 50)));
  g_assert_true (hc_point_equal (inner[2], hc_point (3900, 2950)));
  g_assert_true (hc_point_equal (inner[3], hc_point (300, 2950)));
}

static void
walls_of_one_line_step_by_the_thicker (void)
{
  const HcPoint corners[] = { { 0, 0 }, { 2000, 0 }, { 4000, 0 }, { 4000, 3000 }, { 0, 3000 } };
  const double half_mm[] = { 50, 50, 50, 50, 50 };
  g_autofree HcPoint *inner = hc_ring_inset (corners, 5, half_mm);

  g_assert_true (hc_point_equal (inner[1], hc_point (2000, 50)));
}

static void
an_inset_and_its_opposite_give_the_ring_again (void)
{
  for (guint round = 0; round < 500; round++)
    {
      double in_mm[6], out_mm[6];
      g_autofree HcPoint *inner = NULL;
      g_autofree HcPoint *again = NULL;

      for (guint i = 0; i < 6; i++)
        {
          in_mm[i] = hc_mm (g_test_rand_double_range (-400, 400));
          out_mm[i] = -in_mm[i];
        }
      inner = hc_ring_inset (ell, 6, in_mm);
      again = hc_ring_inset (inner, 6, out_mm);
      for (guint i = 0; i < 6; i++)
        g_assert_cmpfloat (hc_point_distance (again[i], ell[i]), <, 0.002);
    }
}

static void
either_way_round_has_the_same_inside (void)
{
  HcPoint turned[6];
  double half_mm[] = { 75, 75, 75, 75, 75, 75 };
  g_autofree HcPoint *inner = hc_ring_inset (ell, 6, half_mm);
  g_autofree HcPoint *other = NULL;

  for (guint i = 0; i < 6; i++)
    turned[i] = ell[i];
  hc_ring_reverse (turned, 6);
  other = hc_ring_inset (turned, 6, half_mm);
  hc_ring_reverse (other, 6);
  for (guint i = 0; i < 6; i++)
    g_assert_true (hc_point_equal (inner[i], other[i]));
}

static void
places_along_walls_are_found (void)
{
  double distance_mm = 0;
  HcPoint normal = hc_ring_edge_normal (ell, 6, 2);

  g_assert_true (hc_point_equal (normal, hc_point (0, -1)));
  g_assert_cmpfloat (hc_ring_edge_length_mm (ell, 6, 2), ==, 3000);
  g_assert_true (hc_point_equal (hc_ring_point_on_edge (ell, 6, 2, 500), hc_point (4500, 2000)));
  g_assert_cmpuint (hc_ring_nearest_edge (ell, 6, hc_point (3000, 1900), &distance_mm), ==, 2);
  g_assert_cmpfloat (distance_mm, ==, 100);
}

static void
inside_is_told_from_outside (void)
{
  g_assert_true (hc_ring_contains_point (ell, 6, hc_point (1000, 3000)));
  g_assert_true (hc_ring_contains_point (ell, 6, hc_point (4000, 1000)));
  g_assert_false (hc_ring_contains_point (ell, 6, hc_point (3000, 3000)));
  g_assert_false (hc_ring_contains_point (ell, 6, hc_point (-1, 1000)));
}

int
main (int argc,
      char **argv)
{
  g_test_init (&argc, &argv, NULL);
  for (guint i = 0; i < G_N_ELEMENTS (faults); i++)
    {
      g_autofree char *path = g_strdup_printf ("/ring/fault/%u", i);

      g_test_add_data_func (path, &faults[i], the_first_fault_is_named);
    }
  g_test_add_func ("/ring/area", area_has_the_sign_of_the_turn);
  g_test_add_func ("/ring/inset", walls_stand_inside_their_centre_lines);
  g_test_add_func ("/ring/inset-straight", walls_of_one_line_step_by_the_thicker);
  g_test_add_func ("/ring/inset-again", an_inset_and_its_opposite_give_the_ring_again);
  g_test_add_func ("/ring/inset-either-way", either_way_round_has_the_same_inside);
  g_test_add_func ("/ring/along", places_along_walls_are_found);
  g_test_add_func ("/ring/inside", inside_is_told_from_outside);
  return g_test_run ();
}
