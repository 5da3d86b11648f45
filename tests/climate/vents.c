/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * How far to open which vent, and with how many birds the air is well. */
#include "config.h"

#include "climate/bird-range.h"
#include "climate/risk.h"
#include "climate/vents.h"
#include "sample/demo-night.h"

static HcHouseNight *
night_with_vents (double open)
{
  g_autoptr (HcPlan) plan = demo_plan ();
  g_autoptr (HcPlan) changed = demo_with_vents (plan, open);

  return demo_night (changed);
}

static void
test_shut_vents_are_opened (void)
{
  g_autoptr (HcHouseNight) night = night_with_vents (0);
  HcNight after;
  g_autoptr (GArray) steps = hc_vents_solve (night, &after);

  g_assert_cmpuint (hc_night_count_faults (&night->night, HC_NIGHT_VENT_FAULTS), >, 0);
  g_assert_cmpuint (steps->len, >, 0);
  g_assert_cmpuint (hc_night_count_faults (&after, HC_NIGHT_VENT_FAULTS), ==, 0);
  for (guint i = 0; i < steps->len; i++)
    {
      const HcVentStep *step = &g_array_index (steps, HcVentStep, i);

      g_assert_cmpfloat (step->was, ==, 0);
      g_assert_cmpfloat (step->open, >, 0);
      g_assert_cmpfloat (step->open, <=, 1);
    }
}

static void
test_what_is_well_stays (void)
{
  g_autoptr (HcPlan) plan = demo_plan ();
  g_autoptr (HcHouseNight) night = demo_night (plan);
  HcNight after;
  g_autoptr (GArray) steps = hc_vents_solve (night, &after);

  g_assert_cmpuint (steps->len, ==, 0);
  g_assert_cmpfloat (after.spaces[0].air.t_c, ==, night->night.spaces[0].air.t_c);
}

/* None of the steps could be left out. */
static void
test_no_step_is_needless (void)
{
  g_autoptr (HcHouseNight) night = night_with_vents (0);
  HcNight after;
  g_autoptr (GArray) steps = hc_vents_solve (night, &after);

  for (guint left_out = 0; left_out < steps->len; left_out++)
    {
      g_autoptr (HcHouseAir) air = hc_house_air_new (&night->ask);
      HcNight other = { 0 };

      for (guint way = 0; way < air->ways->len; way++)
        for (guint i = 0; i < steps->len; i++)
          if (i != left_out
              && g_strcmp0 (hc_house_air_get_way (air, way)->id,
                            g_array_index (steps, HcVentStep, i).id)
                     == 0)
            hc_house_air_open (air, way, g_array_index (steps, HcVentStep, i).open);
      hc_night_settle (air, &night->ask, NULL, &other);
      g_assert_cmpfloat (
          hc_night_get_risk (air, &night->ask, &other, HC_NIGHT_VENT_FAULTS), >,
          hc_night_get_risk (air, &night->ask, &after, HC_NIGHT_VENT_FAULTS));
    }
}

/* A hole in a wall is no wall. */
static void
test_vents_take_area_from_their_walls (void)
{
  g_autoptr (HcHouseNight) night = night_with_vents (0);
  double shut_m2 = 0, open_m2 = 0, holes_m2 = 0;

  for (guint i = 0; i < night->air->surfaces->len; i++)
    shut_m2 += night->air->air.surfaces[i].area_m2;
  hc_house_air_open_vents (night->air, 1);
  for (guint i = 0; i < night->air->surfaces->len; i++)
    {
      open_m2 += night->air->air.surfaces[i].area_m2;
      g_assert_cmpfloat (night->air->air.surfaces[i].area_m2, >=, 0);
    }
  for (guint i = 0; i < night->air->ways->len; i++)
    if (hc_house_air_get_way (night->air, i)->is_vent)
      holes_m2 += hc_house_air_get_way (night->air, i)->face_m2;
  g_assert_cmpfloat (holes_m2, >, 0);
  g_assert_cmpfloat_with_epsilon (shut_m2 - open_m2, holes_m2, 1e-9);
}

static void
assert_well (const HcHouseNight *night, gint64 birds, gboolean well)
{
  g_autoptr (HcFlock) flock = hc_flock_scaled (night->ask.flock, birds);
  g_autoptr (HcHouseNight) other = hc_house_night_new (night->plan, NULL, flock, NULL);

  g_assert_cmpint (hc_night_count_faults (&other->night, HC_NIGHT_VENT_FAULTS) == 0, ==, well);
}

/* The ends of the interval hold, and one bird beyond does not. */
static void
test_bird_range (void)
{
  g_autoptr (HcHouseNight) night = night_with_vents (0.05);
  HcBirdRange range;

  hc_night_find_bird_range (night, &range);
  g_assert_cmpint (range.most, >=, range.least);
  g_assert_cmpint (range.least, >=, 1);
  assert_well (night, range.least, TRUE);
  assert_well (night, range.most, TRUE);
  if (!range.is_open)
    assert_well (night, range.most + 1, FALSE);
  if (range.least > 1)
    assert_well (night, range.least - 1, FALSE);
}

static void
test_no_birds_no_range (void)
{
  g_autoptr (HcPlan) plan = demo_plan ();
  g_autoptr (HcFlock) all = hc_flock_on (plan, demo_book (), hc_plan_get_day (plan));
  g_autoptr (HcFlock) none = hc_flock_scaled (all, 0);
  g_autoptr (HcHouseNight) night = hc_house_night_new (plan, NULL, none, NULL);
  HcBirdRange range;

  hc_night_find_bird_range (night, &range);
  g_assert_cmpint (range.most, ==, 0);
  g_assert_cmpuint (hc_night_get_faults (&night->night), ==, 0);
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/vents/opened", test_shut_vents_are_opened);
  g_test_add_func ("/vents/well", test_what_is_well_stays);
  g_test_add_func ("/vents/needless", test_no_step_is_needless);
  g_test_add_func ("/vents/walls", test_vents_take_area_from_their_walls);
  g_test_add_func ("/bird-range/ends", test_bird_range);
  g_test_add_func ("/bird-range/none", test_no_birds_no_range);
  return g_test_run ();
}
