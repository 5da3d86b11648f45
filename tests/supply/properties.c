/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What holds for any room: turning, mirroring and moving it changes nothing,
 * and taking a thing away never gives more of what it offers. */
#include "config.h"

#include "sample.h"

#include <math.h>

#define ROUNDS 30
#define ROOM_WIDTH_MM 5000
#define ROOM_DEPTH_MM 4000

static const HcOfferKind counted[] = {
  HC_OFFER_FLOOR,       HC_OFFER_ROOST,      HC_OFFER_NESTS,       HC_OFFER_FEED_LONG,
  HC_OFFER_FEED_ROUND,  HC_OFFER_WATER_LONG, HC_OFFER_WATER_ROUND, HC_OFFER_NIPPLES,
  HC_OFFER_GROUP_NESTS, HC_OFFER_WARMTH,
};

/* Rounding corners to 0.001 mm moves the ends of stretches a little. */
static double
get_slack (HcOfferKind kind)
{
  return kind == HC_OFFER_FLOOR || kind == HC_OFFER_WARMTH || kind == HC_OFFER_GROUP_NESTS
             ? 500
             : 0.5;
}

static const struct
{
  HcFittingKind kind;
  HcFittingForm form;
  double width_mm, depth_mm, height_mm, base_mm;
} things[] = {
  { HC_FITTING_ROOST, HC_FORM_LONG, 1800, 600, 50, 600 },
  { HC_FITTING_ROOST, HC_FORM_LONG, 1200, 100, 50, 450 },
  { HC_FITTING_DROPPINGS_BOARD, HC_FORM_LONG, 1500, 600, 20, 300 },
  { HC_FITTING_NEST_BOXES, HC_FORM_LONG, 900, 350, 400, 400 },
  { HC_FITTING_FEEDER, HC_FORM_LONG, 1000, 150, 120, 600 },
  { HC_FITTING_FEEDER, HC_FORM_ROUND, 380, 380, 450, 600 },
  { HC_FITTING_DRINKER, HC_FORM_LONG, 600, 150, 120, 100 },
  { HC_FITTING_DRINKER, HC_FORM_NIPPLES, 1000, 60, 60, 300 },
  { HC_FITTING_HEAT_PLATE, HC_FORM_LONG, 400, 300, 60, 100 },
  { HC_FITTING_STORE_BIN, HC_FORM_LONG, 500, 500, 900, 0 },
  { HC_FITTING_POST, HC_FORM_LONG, 100, 100, 2200, 0 },
};

/* A quarter of a millimetre keeps gaps off the very width that begins to count. */
static double
random_measure (double most)
{
  return round (g_test_rand_double_range (0, most)) + 0.25;
}

static double
random_turn (void)
{
  return g_test_rand_bit () ? 90.0 * g_test_rand_int_range (0, 4)
                            : g_test_rand_int_range (0, 360);
}

static void
fill_at_random (Sample *sample)
{
  int n = g_test_rand_int_range (1, 9);

  sample_add_kind (sample, "heavy_breed");
  for (int i = 0; i < n; i++)
    {
      guint which = (guint) g_test_rand_int_range (0, G_N_ELEMENTS (things));
      HcFittingValues *values
          = sample_add (sample, things[which].kind, random_measure (ROOM_WIDTH_MM),
                        random_measure (ROOM_DEPTH_MM), things[which].width_mm,
                        things[which].depth_mm);

      values->form = things[which].form;
      values->height_mm = things[which].height_mm;
      values->base_mm = things[which].base_mm;
      values->turn_deg = random_turn ();
      values->bars = things[which].kind == HC_FITTING_ROOST ? g_test_rand_int_range (1, 4) : 1;
      values->bar_width_mm = 90;
      values->columns = 3;
      values->places = 4;
      values->water_mm = 60;
    }
}

/* Where bars cross, which one keeps its seats may depend on the side they are
 * seen from, and taking one away may free another. */
static void
set_parallel (Sample *sample)
{
  for (guint i = 0; i < sample->fittings->len; i++)
    {
      HcFittingValues *values = sample->fittings->pdata[i];

      if (values->kind == HC_FITTING_ROOST)
        values->turn_deg = 0;
    }
}

static void
assert_same_offers (const Sample *one, const Sample *other)
{
  for (guint i = 0; i < G_N_ELEMENTS (counted); i++)
    for (HcLevel level = HC_LEVEL_TIGHT; level <= HC_LEVEL_PLENTY; level++)
      g_assert_cmpfloat_with_epsilon (sample_total (one, counted[i], level),
                                      sample_total (other, counted[i], level),
                                      get_slack (counted[i]));
}

static void
test_turning_and_moving_changes_nothing (void)
{
  for (guint round = 0; round < ROUNDS; round++)
    {
      Sample sample, turned;

      sample_init (&sample, ROOM_WIDTH_MM, ROOM_DEPTH_MM);
      fill_at_random (&sample);
      turned = sample;
      turned.turn_deg = random_turn ();
      turned.move = hc_point (random_measure (50000), random_measure (50000));
      assert_same_offers (&sample, &turned);
      sample_clear (&sample);
    }
}

static void
test_mirroring_changes_nothing (void)
{
  for (guint round = 0; round < ROUNDS; round++)
    {
      Sample sample, mirrored;

      sample_init (&sample, ROOM_WIDTH_MM, ROOM_DEPTH_MM);
      fill_at_random (&sample);
      set_parallel (&sample);
      mirrored = sample;
      mirrored.mirrored = TRUE;
      assert_same_offers (&sample, &mirrored);
      sample_clear (&sample);
    }
}

static gboolean
offers (const HcFittingValues *values, HcOfferKind kind)
{
  switch (kind)
    {
    case HC_OFFER_ROOST:
      return values->kind == HC_FITTING_ROOST;
    case HC_OFFER_NESTS:
      return values->kind == HC_FITTING_NEST_BOXES;
    case HC_OFFER_FEED_LONG:
      return values->kind == HC_FITTING_FEEDER && values->form == HC_FORM_LONG;
    case HC_OFFER_WATER_LONG:
      return values->kind == HC_FITTING_DRINKER && values->form == HC_FORM_LONG;
    case HC_OFFER_WARMTH:
      return values->kind == HC_FITTING_HEAT_PLATE;
    default:
      return FALSE;
    }
}

static void
assert_taking_away_gives_no_more (Sample *sample, guint fitting)
{
  double before[HC_N_OFFER_KINDS] = { 0 };
  HcFittingValues *taken = sample->fittings->pdata[fitting];

  for (HcLevel level = HC_LEVEL_TIGHT; level <= HC_LEVEL_PLENTY; level++)
    {
      for (guint i = 0; i < G_N_ELEMENTS (counted); i++)
        before[counted[i]] = sample_total (sample, counted[i], level);
      g_ptr_array_steal_index (sample->fittings, fitting);
      for (guint i = 0; i < G_N_ELEMENTS (counted); i++)
        if (offers (taken, counted[i]))
          g_assert_cmpfloat (sample_total (sample, counted[i], level), <=,
                             before[counted[i]] + get_slack (counted[i]));
      g_ptr_array_insert (sample->fittings, (int) fitting, taken);
    }
}

static gboolean
is_alone_of_its_sort (const Sample *sample, guint fitting)
{
  const HcFittingValues *values = sample->fittings->pdata[fitting];

  for (guint i = 0; i < sample->fittings->len; i++)
    if (i != fitting && values->kind != HC_FITTING_ROOST
        && ((HcFittingValues *) sample->fittings->pdata[i])->kind == values->kind)
      return FALSE;
  return TRUE;
}

static void
test_taking_away_never_gives_more (void)
{
  for (guint round = 0; round < ROUNDS; round++)
    {
      Sample sample;

      sample_init (&sample, ROOM_WIDTH_MM, ROOM_DEPTH_MM);
      fill_at_random (&sample);
      set_parallel (&sample);
      for (guint i = 0; i < sample.fittings->len; i++)
        if (is_alone_of_its_sort (&sample, i))
          assert_taking_away_gives_no_more (&sample, i);
      sample_clear (&sample);
    }
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/any-room/turned-and-moved", test_turning_and_moving_changes_nothing);
  g_test_add_func ("/any-room/mirrored", test_mirroring_changes_nothing);
  g_test_add_func ("/any-room/taking-away", test_taking_away_never_gives_more);
  return g_test_run ();
}
