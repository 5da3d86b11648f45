/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Through the mesh of walls and fences, and over their tops. */
#include "config.h"

#include "supply/ways-in-private.h"

/* Over a wall is in where there is no roof, or a gap below the eaves; a wall up
 * to the eaves is closed up to a sloped roof. */
static gboolean
is_open_above (const HcProwl *prowl, double height_mm)
{
  const HcPenValues *pen = hc_room_get (prowl->here);

  return pen->roof == HC_ROOF_NONE
         || pen->height_mm - height_mm > prowl->intruder->animal->passes_mm;
}

static void
look_at_top (HcProwl *prowl, const HcRoomWall *wall, const char *pen)
{
  double height_mm = hc_prowl_get_wall_mm (prowl, wall);
  HcWayIn *way;

  if (!is_open_above (prowl, height_mm) || !hc_prowl_gets_up (prowl, height_mm))
    return;
  way = hc_prowl_add (prowl, HC_WAY_IN_OVER, wall, pen);
  way->have_mm = height_mm;
  way->want_mm = prowl->intruder->fence_mm;
}

static void
look_at_mesh (HcProwl *prowl, const HcRoomWall *wall, const char *pen)
{
  const HcWallValues *values = hc_wall_get (wall->wall);
  HcWayInCause cause;
  double have_mm;
  HcWayIn *way;

  if (values->kind == HC_WALL_SOLID
      || !hc_prowl_passes_mesh (prowl, values->mesh, values->fixing, &cause, &have_mm))
    return;
  way = hc_prowl_add (prowl, cause, wall, pen);
  way->have_mm = have_mm;
  way->want_mm = prowl->intruder->animal->passes_mm;
}

void
hc_prowl_round_walls (HcProwl *prowl)
{
  const char *pen = hc_pen_get_id (hc_room_get_pen (prowl->here));

  for (guint i = 0; i < hc_room_get_n_walls (prowl->here); i++)
    {
      const HcRoomWall *wall = hc_room_get_wall (prowl->here, i);

      look_at_mesh (prowl, wall, pen);
      look_at_top (prowl, wall, pen);
    }
}
