/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Spots on bars, at troughs, in nests and round heaters. */
#include "config.h"

#include "bird-spot.h"

#include "drawing/ink.h"

#include <math.h>

/* How far a bird's beak reaches over the edge it eats from. */
#define REACH 0.1

/* The angle between neighbouring seeds of a sunflower head, in degrees. */
#define GOLDEN_DEG 137.508

static double
heading_of (HcPoint way)
{
  return atan2 (way.y_mm, way.x_mm) * 180 / G_PI;
}

static HcBirdSpot
to_plan (const HcFittingValues *fitting, HcPoint own, double own_heading_deg)
{
  return (HcBirdSpot){
    hc_point_add (hc_point (fitting->x_mm, fitting->y_mm),
                  hc_point_turn (own, fitting->turn_deg)),
    own_heading_deg + fitting->turn_deg,
  };
}

/**
 * hc_bird_spot_on_bar: (skip)
 * @from: where the stretch of bar starts
 * @to: where it ends
 * @part: how far along, 0 to 1
 * @towards: a place the bird would rather face
 *
 * Returns: a seat across the bar
 */
HcBirdSpot
hc_bird_spot_on_bar (HcPoint from, HcPoint to, double part, HcPoint towards)
{
  HcPoint at = hc_point_between (from, to, part);
  HcPoint way = hc_point_subtract (to, from);
  HcPoint across = hc_point (-way.y_mm, way.x_mm);

  if (hc_point_dot (across, hc_point_subtract (towards, at)) < 0)
    across = hc_point_scale (across, -1);
  return (HcBirdSpot){ at, heading_of (across) };
}

static HcBirdSpot
at_rim (const HcFittingValues *fitting, double stand_off, double chance)
{
  double turn = 2 * G_PI * chance;
  double out = fitting->width_mm / 2 + stand_off;

  return to_plan (fitting, hc_point (out * cos (turn), out * sin (turn)),
                  turn * 180 / G_PI + 180);
}

/* Both long sides have room; the ends of a trough are narrow. */
static HcBirdSpot
at_long_side (const HcFittingValues *fitting, double stand_off, double room, double chance)
{
  double side = chance < 0.5 ? -1 : 1;
  double along = (fmod (chance * 2, 1) - 0.5) * MAX (fitting->width_mm - room, 0);

  return to_plan (fitting, hc_point (along, side * (fitting->depth_mm / 2 + stand_off)),
                  side < 0 ? 90 : -90);
}

/**
 * hc_bird_spot_at_edge: (skip)
 * @fitting: a feeder or drinker
 * @look: the bird
 * @seed: another seed, another spot
 *
 * Returns: a spot to stand at its edge, facing it
 */
HcBirdSpot
hc_bird_spot_at_edge (const HcFittingValues *fitting, const HcBirdLook *look, guint seed)
{
  double stand_off = look->length_mm * (0.5 - REACH);

  if (fitting->form == HC_FORM_ROUND)
    return at_rim (fitting, stand_off, hc_chance (seed, 21));
  return at_long_side (fitting, stand_off, look->width_mm, hc_chance (seed, 22));
}

/**
 * hc_bird_spot_in_nest: (skip)
 * @fitting: nest boxes
 * @nest: which box, counted across; boxes above each other share a spot
 *
 * Returns: a spot in that box, facing out
 */
HcBirdSpot
hc_bird_spot_in_nest (const HcFittingValues *fitting, guint nest)
{
  int columns = MAX (fitting->columns, 1);
  double part = ((int) nest % columns + 0.5) / columns - 0.5;

  return to_plan (fitting, hc_point (part * fitting->width_mm, 0), 90);
}

/**
 * hc_bird_spot_in_bath: (skip)
 * @fitting: a dust bath
 * @seed: another seed, another spot
 *
 * Returns: a spot in the hollow
 */
HcBirdSpot
hc_bird_spot_in_bath (const HcFittingValues *fitting, guint seed)
{
  return to_plan (fitting,
                  hc_point ((hc_chance (seed, 31) - 0.5) * fitting->width_mm * 0.4,
                            (hc_chance (seed, 32) - 0.5) * fitting->depth_mm * 0.4),
                  360 * hc_chance (seed, 33));
}

/**
 * hc_bird_spot_by_heater: (skip)
 * @fitting: a heater
 * @which: which chick
 * @of: of how many
 * @beside: whether it lies round the heater and not within it
 *
 * Returns: a spot, spread as seeds in a sunflower head
 */
HcBirdSpot
hc_bird_spot_by_heater (const HcFittingValues *fitting, guint which, guint of, gboolean beside)
{
  double turn = which * GOLDEN_DEG * G_PI / 180;
  double out = sqrt ((which + 0.5) / MAX (of, 1));
  double reach = beside ? 0.62 + 0.28 * out : 0.42 * out;

  return to_plan (fitting,
                  hc_point (reach * fitting->width_mm * cos (turn),
                            reach * fitting->depth_mm * sin (turn)),
                  turn * 180 / G_PI + (beside ? 180 : 60) + 40 * hc_chance (which, 34));
}
