/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What lets air in and out: vents, windows, and outer walls of mesh. */
#include "config.h"

#include "supply/offer-private.h"

#include "book/figure-names.h"
#include "supply/bars.h"

static double
get_free_share (const HcOfferContext *context, const char *mesh)
{
  const HcMesh *found = hc_book_get_mesh (hc_flock_get_book (context->flock), mesh);

  return found != NULL ? found->free_area : 1;
}

/* The back of the tallest bird on the highest bar; 0 where nobody roosts. */
static double
get_highest_back_mm (const HcOfferContext *context)
{
  g_autoptr (GArray) bars = hc_bars_of_room (context->room);
  double bar_mm = 0, back_mm = 0;

  for (guint i = 0; i < bars->len; i++)
    bar_mm = MAX (bar_mm, g_array_index (bars, HcRoomBar, i).bar.height_mm);
  for (guint i = 0; i < hc_flock_get_n_bodies (context->flock); i++)
    if (hc_flock_get_body (context->flock, i)->roosts)
      back_mm = MAX (back_mm, hc_body_get_back_mm (hc_flock_get_body (context->flock, i)));
  return bar_mm > 0 && back_mm > 0 ? bar_mm + back_mm : 0;
}

/* Air that comes in low blows on sleeping birds: the area counts all the same,
 * and the place says which figure it breaks. */
static void
note_draught (const HcOfferContext *context, double sill_mm, HcPlace *place)
{
  const HcLimit *limit = hc_figure_for (context, HC_FIGURE_WINTER_VENT_HEIGHT, NULL);
  double back_mm = get_highest_back_mm (context);

  if (limit != NULL && back_mm > 0
      && !hc_limit_is_met (limit, HC_LEVEL_TIGHT, sill_mm - back_mm))
    place->why_not = limit->figure.id;
}

static void
add_vent (HcOfferKind kind, const HcOfferContext *context, const HcOpening *opening,
          const HcRoomWall *wall, HcOffer *offer)
{
  const HcOpeningValues *values = hc_opening_get (opening);
  double open = kind == HC_OFFER_VENTS_WINTER ? values->open_winter : values->open_summer;
  HcPoint way = hc_point_unit (hc_point_subtract (wall->line_to, wall->line_from));
  HcPlace place;

  if (open <= 0)
    return;
  hc_place_init (&place, context, hc_opening_get_id (opening));
  hc_place_set_amount (&place, values->width_mm * values->height_mm * open
                                   * get_free_share (context, values->mesh));
  hc_place_set_suits (&place, hc_bodies_all (context));
  place.from = place.to
      = hc_point_add (wall->line_from, hc_point_scale (way, values->along_mm));
  place.height_mm = values->sill_mm;
  if (kind == HC_OFFER_VENTS_WINTER)
    note_draught (context, values->sill_mm, &place);
  hc_offer_add_place (offer, &place);
}

static void
add_open_wall (const HcOfferContext *context, const HcRoomWall *wall, HcOffer *offer)
{
  const HcWallValues *values = hc_wall_get (wall->wall);
  const HcRoof *roof = hc_room_get_roof (context->room);
  double face_mm2 = values->height_mm > 0
                        ? hc_point_distance (wall->from, wall->to) * values->height_mm
                        : hc_roof_get_wall_area_mm2 (roof, wall->from, wall->to);
  HcPlace place;

  hc_place_init (&place, context, hc_wall_get_id (wall->wall));
  hc_place_set_amount (&place, face_mm2 * get_free_share (context, values->mesh));
  hc_place_set_suits (&place, hc_bodies_all (context));
  place.from = wall->from;
  place.to = wall->to;
  hc_offer_add_place (offer, &place);
}

void
hc_offer_make_vents (HcOfferKind kind, const HcOfferContext *context, HcOffer *offer)
{
  HcParts *openings = hc_room_get_openings (context->room);

  if (!hc_room_is_roofed (context->room))
    return;
  for (guint i = 0; i < openings->len; i++)
    {
      const HcOpeningValues *values = hc_opening_get (openings->pdata[i]);
      const HcRoomWall *wall = hc_room_get_wall_of (context->room, openings->pdata[i]);

      if ((values->kind == HC_OPENING_VENT || values->kind == HC_OPENING_WINDOW)
          && wall != NULL && hc_room_wall_is_outer (wall))
        add_vent (kind, context, openings->pdata[i], wall, offer);
    }
  for (guint i = 0; i < hc_room_get_n_walls (context->room); i++)
    {
      const HcRoomWall *wall = hc_room_get_wall (context->room, i);

      if (hc_wall_get (wall->wall)->kind != HC_WALL_SOLID && hc_room_wall_is_outer (wall))
        add_open_wall (context, wall, offer);
    }
}
