/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What lets daylight into the rooms of a space: glass in windows and doors, less
 * the wire before it, and walls and roofs of glass or clear sheets. */
#include "config.h"

#include "needs/judges/daylight.h"

static gboolean
is_glass (const HcNeedContext *context, const char *id)
{
  const HcConstruction *construction
      = id != NULL ? hc_book_get_construction (context->about->book, id) : NULL;

  return construction != NULL && construction->glass;
}

static const HcOpeningValues *
find_opening (const HcRoom *room, const char *id)
{
  HcOpening *opening = hc_parts_find (hc_room_get_openings (room), id);

  return opening != NULL ? hc_opening_get (opening) : NULL;
}

/* Wire before a pane takes away what it covers of it. */
static double
share_through_mesh (const HcNeedContext *context, const HcOpeningValues *values)
{
  const HcMesh *mesh = values != NULL && values->mesh != NULL
                           ? hc_book_get_mesh (context->about->book, values->mesh)
                           : NULL;

  return mesh != NULL ? mesh->free_area : 1;
}

static double
sum_panes (const HcNeedContext *context, HcRoom *room, HcLevel level)
{
  HcOffer *offer = hc_need_context_get_offer (context, room, HC_OFFER_LIGHT, level);
  double sum_mm2 = 0;

  for (guint i = 0; i < hc_offer_get_n_places (offer); i++)
    {
      const HcPlace *place = hc_offer_get_place (offer, i);

      sum_mm2 += place->amounts[level - HC_LEVEL_TIGHT]
                 * share_through_mesh (context, find_opening (room, place->id));
    }
  return sum_mm2;
}

/* A glass wall, less what is let into it. */
static double
wall_mm2 (const HcRoom *room, const HcRoomWall *wall)
{
  HcParts *openings = hc_room_get_openings (room);
  double height_mm = hc_room_get_ceiling_along_mm (room, wall->from, wall->to);
  double area_mm2 = hc_point_distance (wall->from, wall->to) * height_mm;

  for (guint i = 0; i < openings->len; i++)
    {
      const HcOpeningValues *values = hc_opening_get (openings->pdata[i]);

      if (g_str_equal (values->wall, hc_wall_get_id (wall->wall)))
        area_mm2 -= values->width_mm * values->height_mm;
    }
  return MAX (area_mm2, 0);
}

static double
sum_walls (const HcNeedContext *context, const HcRoom *room)
{
  double sum_mm2 = 0;

  for (guint i = 0; i < hc_room_get_n_walls (room); i++)
    {
      const HcRoomWall *wall = hc_room_get_wall (room, i);

      if (hc_room_wall_is_outer (wall)
          && is_glass (context, hc_wall_get (wall->wall)->construction))
        sum_mm2 += wall_mm2 (room, wall);
    }
  return sum_mm2;
}

/* As it is seen from above, so that a steep roof lets in no more. */
static double
roof_mm2 (const HcNeedContext *context, const HcRoom *room)
{
  const HcPenValues *pen = hc_room_get (room);

  return is_glass (context, pen->roof_construction)
             ? hc_shape_get_area_mm2 (hc_room_get_outline (room))
             : 0;
}

double
hc_daylight_sum (const HcNeedContext *context, HcLevel level)
{
  double sum_mm2 = 0;

  for (guint i = 0; i < hc_need_context_get_n_rooms (context); i++)
    {
      HcRoom *room = hc_need_context_get_room (context, i);

      if (hc_room_is_roofed (room))
        sum_mm2 += sum_panes (context, room, level) + sum_walls (context, room)
                   + roof_mm2 (context, room);
    }
  return sum_mm2;
}
