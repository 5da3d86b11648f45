/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The way out, and daylight: what openings in outer walls offer. */
#include "config.h"

#include "supply/offer-private.h"

#include "book/figure-names.h"

static HcPoint
point_in_wall (const HcRoomWall *wall, const HcOpeningValues *values, double off_mm)
{
  HcPoint way = hc_point_unit (hc_point_subtract (wall->line_to, wall->line_from));

  return hc_point_add (wall->line_from, hc_point_scale (way, values->along_mm + off_mm));
}

static void
init_place (HcPlace *place, const HcOfferContext *context, const HcOpening *opening,
            const HcRoomWall *wall)
{
  const HcOpeningValues *values = hc_opening_get (opening);

  hc_place_init (place, context, hc_opening_get_id (opening));
  place->from = point_in_wall (wall, values, -values->width_mm / 2);
  place->to = point_in_wall (wall, values, values->width_mm / 2);
  place->height_mm = values->sill_mm;
}

/* A pop hole leads out; a keeper's door left open does where there is a run
 * behind it. Shut in, a way out leads to a run under a solid roof. */
static gboolean
leads_out (const HcOfferContext *context, const HcOpening *opening, const HcRoomWall *wall)
{
  if (!hc_opening_lets_birds_through (opening) || !hc_room_wall_is_outer (wall))
    return FALSE;
  if (context->condition == HC_CONDITION_SHUT_IN)
    return wall->beyond_is_run && wall->beyond_is_covered;
  return wall->beyond_is_run || hc_opening_get (opening)->kind == HC_OPENING_POP_HOLE;
}

void
hc_offer_make_way_out (HcOfferKind kind, const HcOfferContext *context, HcOffer *offer)
{
  HcParts *openings = hc_room_get_openings (context->room);

  for (guint i = 0; hc_room_is_roofed (context->room) && i < openings->len; i++)
    {
      const HcOpeningValues *values = hc_opening_get (openings->pdata[i]);
      const HcRoomWall *wall = hc_room_get_wall_of (context->room, openings->pdata[i]);
      HcPlace place;

      if (wall == NULL || !leads_out (context, openings->pdata[i], wall))
        continue;
      init_place (&place, context, openings->pdata[i], wall);
      hc_place_set_amount (&place, values->width_mm);
      hc_place_set_suits (&place, hc_bodies_all (context));
      hc_place_keep_within (&place, context, HC_FIGURE_POP_HOLE_WIDTH, values->width_mm);
      hc_place_keep_within (&place, context, HC_FIGURE_POP_HOLE_HEIGHT, values->height_mm);
      hc_offer_add_place (offer, &place);
    }
}

/* How much of an opening daylight comes in by. */
static double
glass_share (const HcOpeningValues *values)
{
  if (values->kind == HC_OPENING_WINDOW)
    return 1;
  return values->kind == HC_OPENING_KEEPER_DOOR ? values->glazed : 0;
}

void
hc_offer_make_light (HcOfferKind kind, const HcOfferContext *context, HcOffer *offer)
{
  HcParts *openings = hc_room_get_openings (context->room);

  for (guint i = 0; i < openings->len; i++)
    {
      const HcOpeningValues *values = hc_opening_get (openings->pdata[i]);
      const HcRoomWall *wall = hc_room_get_wall_of (context->room, openings->pdata[i]);
      HcPlace place;

      if (glass_share (values) <= 0 || wall == NULL || !hc_room_wall_is_outer (wall))
        continue;
      init_place (&place, context, openings->pdata[i], wall);
      hc_place_set_amount (&place, glass_share (values) * values->width_mm * values->height_mm);
      hc_place_set_suits (&place, hc_bodies_all (context));
      hc_offer_add_place (offer, &place);
    }
}
