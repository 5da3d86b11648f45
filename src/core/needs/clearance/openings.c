/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Openings that do not fit their wall, or each other. */
#include "config.h"

#include "needs/clearance/clearance.h"

static double
wall_height_mm (const HcClearance *self, const HcRoomWall *wall, const HcOpeningValues *opening)
{
  double own_mm = hc_wall_get (wall->wall)->height_mm;
  HcPoint way = hc_point_unit (hc_point_subtract (wall->line_to, wall->line_from));
  HcPoint middle = hc_point_add (wall->line_from, hc_point_scale (way, opening->along_mm));
  HcPoint half = hc_point_scale (way, opening->width_mm / 2);

  if (own_mm > 0)
    return own_mm;
  return MIN (hc_room_get_ceiling_mm (self->room, hc_point_subtract (middle, half)),
              hc_room_get_ceiling_mm (self->room, hc_point_add (middle, half)));
}

static gboolean
sticks_out (const HcClearance *self, const HcOpening *opening)
{
  const HcOpeningValues *values = hc_opening_get (opening);
  const HcRoomWall *wall = hc_room_get_wall_of (self->room, opening);
  double length_mm;

  if (wall == NULL)
    return FALSE;
  length_mm = hc_point_distance (wall->line_from, wall->line_to);
  return values->along_mm - values->width_mm / 2 < -HC_CLEARANCE_FORGIVEN_MM
         || values->along_mm + values->width_mm / 2 > length_mm + HC_CLEARANCE_FORGIVEN_MM
         || values->sill_mm + values->height_mm
                > wall_height_mm (self, wall, values) + HC_CLEARANCE_FORGIVEN_MM;
}

static gboolean
meet (const HcOpeningValues *one, const HcOpeningValues *other)
{
  double beside_mm = ABS (one->along_mm - other->along_mm)
                     - (one->width_mm + other->width_mm) / 2;
  double above_mm = MAX (one->sill_mm, other->sill_mm)
                    - MIN (one->sill_mm + one->height_mm, other->sill_mm + other->height_mm);

  return g_str_equal (one->wall, other->wall) && beside_mm < -HC_CLEARANCE_FORGIVEN_MM
         && above_mm < -HC_CLEARANCE_FORGIVEN_MM;
}

/* A pop hole or a window may be cut in a door. */
static gboolean
may_share (const HcOpeningValues *one, const HcOpeningValues *other)
{
  return (one->kind == HC_OPENING_KEEPER_DOOR) != (other->kind == HC_OPENING_KEEPER_DOOR);
}

void
hc_clearance_look_at_openings (HcClearance *self)
{
  HcParts *openings = hc_room_get_openings (self->room);

  for (guint i = 0; i < openings->len; i++)
    {
      if (sticks_out (self, openings->pdata[i]))
        hc_clearance_add (self, "clearance.opening-sticks-out", HC_LEVEL_SHORT,
                          hc_opening_get_id (openings->pdata[i]));
      for (guint j = i + 1; j < openings->len; j++)
        {
          const HcOpeningValues *one = hc_opening_get (openings->pdata[i]);
          const HcOpeningValues *other = hc_opening_get (openings->pdata[j]);
          HcFinding *finding;

          if (!meet (one, other) || may_share (one, other))
            continue;
          finding = hc_clearance_add (self, "clearance.openings-overlap", HC_LEVEL_SHORT,
                                      hc_opening_get_id (openings->pdata[i]));
          hc_finding_add_id (finding, hc_opening_get_id (openings->pdata[j]));
        }
    }
}
