/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The way out, daylight and vents: what openings offer. */
#include "config.h"

#include "sample.h"

static HcOpeningValues *
add_opening (Sample *sample, HcOpeningKind kind, double width_mm, double height_mm)
{
  HcOpeningValues values;

  hc_opening_values_init (&values);
  values.kind = kind;
  values.wall = (char *) "w0";
  values.along_mm = 1000;
  values.width_mm = width_mm;
  values.height_mm = height_mm;
  g_array_append_val (sample->openings, values);
  return &g_array_index (sample->openings, HcOpeningValues, sample->openings->len - 1);
}

/* 40 cm wide and 35 cm high: Council Directive 1999/74/EC, article 4. */
static void
test_a_pop_hole_of_the_law_lets_hens_out (void)
{
  Sample sample;
  HcOpeningValues *hole;

  sample_init (&sample, 3000, 3000);
  sample_use_standard (&sample, "eu-laying-hens");
  hole = add_opening (&sample, HC_OPENING_POP_HOLE, 400, 350);
  g_assert_cmpfloat (sample_total_for (&sample, HC_OFFER_WAY_OUT, HC_LEVEL_TIGHT, 0), ==, 400);
  hole->height_mm = 340;
  g_assert_cmpfloat (sample_total_for (&sample, HC_OFFER_WAY_OUT, HC_LEVEL_TIGHT, 0), ==, 0);
  sample_clear (&sample);
}

static void
test_shut_in_no_hole_leads_out_to_open_ground (void)
{
  Sample sample;

  sample_init (&sample, 3000, 3000);
  add_opening (&sample, HC_OPENING_POP_HOLE, 400, 400);
  sample.condition = HC_CONDITION_SHUT_IN;
  g_assert_cmpfloat (sample_total (&sample, HC_OFFER_WAY_OUT, HC_LEVEL_TIGHT), ==, 0);
  sample_clear (&sample);
}

static void
test_windows_let_in_light_and_doors_as_far_as_they_are_glass (void)
{
  Sample sample;

  sample_init (&sample, 3000, 3000);
  add_opening (&sample, HC_OPENING_WINDOW, 600, 500);
  add_opening (&sample, HC_OPENING_KEEPER_DOOR, 800, 1900);
  g_assert_cmpfloat (sample_total (&sample, HC_OFFER_LIGHT, HC_LEVEL_TIGHT), ==, 300000);
  add_opening (&sample, HC_OPENING_KEEPER_DOOR, 800, 2000)->glazed = 0.25;
  g_assert_cmpfloat (sample_total (&sample, HC_OFFER_LIGHT, HC_LEVEL_TIGHT), ==, 700000);
  sample_clear (&sample);
}

static void
test_vents_count_as_far_as_they_stand_open (void)
{
  Sample sample;
  HcOpeningValues *vent;

  sample_init (&sample, 3000, 3000);
  vent = add_opening (&sample, HC_OPENING_VENT, 500, 100);
  vent->open_winter = 0.2;
  vent->open_summer = 1;
  g_assert_cmpfloat (sample_total (&sample, HC_OFFER_VENTS_WINTER, HC_LEVEL_TIGHT), ==, 10000);
  g_assert_cmpfloat (sample_total (&sample, HC_OFFER_VENTS_SUMMER, HC_LEVEL_TIGHT), ==, 50000);
  sample_clear (&sample);
}

static void
test_mesh_takes_part_of_a_vent (void)
{
  Sample sample;
  const HcMesh *mesh;
  HcOpeningValues *vent;

  sample_init (&sample, 3000, 3000);
  mesh = hc_book_get_mesh_at (sample.book, 0);
  g_assert_cmpfloat (mesh->free_area, <, 1);
  vent = add_opening (&sample, HC_OPENING_VENT, 500, 100);
  vent->mesh = (char *) mesh->id;
  g_assert_cmpfloat_with_epsilon (
      sample_total (&sample, HC_OFFER_VENTS_SUMMER, HC_LEVEL_TIGHT), 50000 * mesh->free_area,
      0.01);
  sample_clear (&sample);
}

/* A vent must open well above sleeping birds: common practice, no source. */
static void
test_a_low_winter_vent_is_named (void)
{
  static const struct
  {
    double sill_mm;
    const char *why_not;
  } rows[] = { { 700, "air.vent-above-birds" }, { 1500, NULL } };

  for (guint i = 0; i < G_N_ELEMENTS (rows); i++)
    {
      Sample sample;
      g_autoptr (HcOffer) offer = NULL;

      sample_init (&sample, 3000, 3000);
      sample_add_roost (&sample, 1500, 1500, 2000, 100, 1);
      add_opening (&sample, HC_OPENING_VENT, 500, 100)->sill_mm = rows[i].sill_mm;
      offer = sample_offer (&sample, HC_OFFER_VENTS_WINTER);
      g_assert_cmpstr (hc_offer_get_place (offer, 0)->why_not, ==, rows[i].why_not);
      sample_clear (&sample);
    }
}

static void
test_openings_lie_where_the_wall_measures_them (void)
{
  Sample sample;
  g_autoptr (HcOffer) offer = NULL;
  const HcPlace *place;

  sample_init (&sample, 3000, 3000);
  add_opening (&sample, HC_OPENING_POP_HOLE, 400, 400);
  offer = sample_offer (&sample, HC_OFFER_WAY_OUT);
  place = hc_offer_get_place (offer, 0);
  g_assert_cmpfloat_with_epsilon (place->from.x_mm, 800, 0.01);
  g_assert_cmpfloat_with_epsilon (place->to.x_mm, 1200, 0.01);
  sample_clear (&sample);
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/openings/pop-hole", test_a_pop_hole_of_the_law_lets_hens_out);
  g_test_add_func ("/openings/shut-in", test_shut_in_no_hole_leads_out_to_open_ground);
  g_test_add_func ("/openings/light", test_windows_let_in_light_and_doors_as_far_as_they_are_glass);
  g_test_add_func ("/openings/vents", test_vents_count_as_far_as_they_stand_open);
  g_test_add_func ("/openings/mesh", test_mesh_takes_part_of_a_vent);
  g_test_add_func ("/openings/low-vent", test_a_low_winter_vent_is_named);
  g_test_add_func ("/openings/place", test_openings_lie_where_the_wall_measures_them);
  return g_test_run ();
}
