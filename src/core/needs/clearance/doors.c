/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Things in the swing of a door, or in front of a pop hole. */
#include "config.h"

#include "needs/clearance/clearance.h"

#include "base/shape-relate.h"
#include "book/figure-names.h"
#include "supply/doorway.h"
#include "supply/stand.h"

#include <math.h>

/* Corners of the quarter circle a door sweeps. */
#define SWEEP_STEPS 8

static HcShape *
sweep_of_door (const HcDoorway *doorway, const HcOpeningValues *values)
{
  double hinge_mm = values->hinge == HC_HINGE_START ? 0 : values->width_mm;
  double turn = values->hinge == HC_HINGE_START ? 1 : -1;
  HcPoint corners[SWEEP_STEPS + 2];

  corners[0] = hc_doorway_get_point (doorway, hinge_mm, 0);
  for (guint i = 0; i <= SWEEP_STEPS; i++)
    {
      double angle = G_PI / 2 * i / SWEEP_STEPS;

      corners[i + 1] = hc_doorway_get_point (doorway, hinge_mm + turn * values->width_mm * cos (angle),
                                       values->width_mm * sin (angle));
    }
  return hc_shape_new_polygon (corners, G_N_ELEMENTS (corners));
}

static void
tell_what_is_in (HcClearance *self, const HcOpening *opening, HcShape *area, const char *code,
                 gboolean (*lets_by) (const HcFittingValues *values))
{
  const HcOpeningValues *values = hc_opening_get (opening);
  g_autoptr (GArray) near = hc_room_find_fittings (self->room, hc_shape_get_bounds (area));
  HcFinding *finding = NULL;

  for (guint i = 0; i < near->len; i++)
    {
      guint fitting = g_array_index (near, guint, i);
      double bottom_mm;
      double top_mm;

      hc_stand_get_heights (self->fittings->pdata[fitting], &bottom_mm, &top_mm);
      if (lets_by (hc_clearance_get (self, fitting)) || top_mm <= values->sill_mm
          || bottom_mm >= values->sill_mm + values->height_mm
          || !hc_shape_overlaps (area, hc_room_get_footprint (self->room, fitting),
                                 HC_CLEARANCE_FORGIVEN_MM2))
        continue;
      if (finding == NULL)
        finding = hc_clearance_add (self, code, HC_LEVEL_SHORT, hc_opening_get_id (opening));
      hc_finding_add_id (finding, hc_fitting_get_id (self->fittings->pdata[fitting]));
    }
}

static gboolean
lets_door_by (const HcFittingValues *values)
{
  return values->kind == HC_FITTING_FLOOR_HEAT_PAD || values->kind == HC_FITTING_DUST_BATH;
}

/* Birds walk up a ramp to the hole, and over what lies flat. */
static gboolean
lets_birds_by (const HcFittingValues *values)
{
  return lets_door_by (values) || values->kind == HC_FITTING_RAMP
         || values->kind == HC_FITTING_PLATFORM;
}

/* 'In' is in from the open, and from a run into the house; between two pens of a
 * kind it is to the side that x turned towards y leads to from the wall's own
 * line, as it is drawn. */
static gboolean
swings_into (const HcClearance *self, const HcOpening *opening, const HcDoorway *doorway)
{
  const HcRoomWall *wall = hc_room_get_wall_of (self->room, opening);
  gboolean in = hc_opening_get (opening)->swing == HC_SWING_IN;

  if (hc_opening_get (opening)->swing == HC_SWING_SLIDES)
    return FALSE;
  if (*wall->beyond == '\0')
    return in;
  if (hc_room_is_roofed (self->room) == wall->beyond_is_run)
    return hc_room_is_roofed (self->room) == in;
  return (hc_point_cross (doorway->along, doorway->in) > 0) == in;
}

static void
look_at_door (HcClearance *self, const HcOpening *opening, const HcDoorway *doorway)
{
  g_autoptr (HcShape) sweep = NULL;

  if (!swings_into (self, opening, doorway))
    return;
  sweep = sweep_of_door (doorway, hc_opening_get (opening));
  tell_what_is_in (self, opening, sweep, "clearance.door-blocked", lets_door_by);
}

static void
look_at_pop_hole (HcClearance *self, const HcOpening *opening, const HcDoorway *doorway)
{
  const HcLimit *width = hc_standard_find_limit (self->standard, HC_FIGURE_FLOOR_WIDTH,
                                                 NULL, HC_WEEK_GROWN, HC_CONDITION_DAY);
  g_autoptr (HcShape) strip = NULL;
  double depth_mm;

  if (width == NULL || !hc_limit_get (width, HC_LEVEL_TIGHT, &depth_mm))
    return;
  strip = hc_doorway_get_strip (doorway, 0, depth_mm, 0);
  tell_what_is_in (self, opening, strip, "clearance.pop-hole-blocked", lets_birds_by);
}

void
hc_clearance_look_at_doors (HcClearance *self)
{
  HcParts *openings = hc_room_get_openings (self->room);

  for (guint i = 0; i < openings->len; i++)
    {
      int kind = hc_opening_get (openings->pdata[i])->kind;
      HcDoorway doorway;

      if (!hc_doorway_find (self->room, openings->pdata[i], &doorway))
        continue;
      if (kind == HC_OPENING_KEEPER_DOOR)
        look_at_door (self, openings->pdata[i], &doorway);
      if (kind == HC_OPENING_POP_HOLE)
        look_at_pop_hole (self, openings->pdata[i], &doorway);
    }
}
