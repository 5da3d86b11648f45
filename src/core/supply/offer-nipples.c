/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Nipples and cups with room to stand in front of them. */
#include "config.h"

#include "supply/offer-private.h"

#include "supply/stand.h"
#include "supply/standing.h"

static gboolean
drinks_from_nipples (const HcBody *body)
{
  return body->kind->nipples_alone;
}

static HcBodies
find_bodies_at (const GArray *pieces, double along_mm)
{
  HcBodies bodies = 0;

  for (guint i = 0; i < pieces->len; i++)
    {
      const HcStandingPiece *piece = &g_array_index (pieces, HcStandingPiece, i);

      if (piece->stretch.from_mm <= along_mm && along_mm <= piece->stretch.to_mm)
        bodies |= piece->bodies;
    }
  return bodies;
}

static void
add_nipple (const HcOfferContext *context, const HcFitting *line, guint nipple,
            HcBodies bodies, HcOffer *offer)
{
  const HcFittingValues *values = hc_fitting_get (line);
  double own_x = values->width_mm * ((nipple + 0.5) / values->places - 0.5);
  HcPlace place;

  hc_place_init (&place, context, hc_fitting_get_id (line));
  place.part = nipple;
  place.height_mm = values->base_mm;
  place.from = place.to = hc_stand_to_plan (line, hc_point (own_x, 0));
  hc_place_set_amount (&place, 1);
  hc_place_set_suits (&place, bodies & hc_bodies_which (context, drinks_from_nipples));
  hc_offer_add_place (offer, &place);
}

/* Nipples are spread evenly; birds come to them from either side. */
static void
add_line (const HcOfferContext *context, guint fitting, HcOffer *offer)
{
  const HcFitting *line = hc_room_get (context->room)->fittings->pdata[fitting];
  const HcFittingValues *values = hc_fitting_get (line);
  GArray *sides[2];
  HcPoint from, to;

  for (guint side = 0; side < 2; side++)
    {
      hc_standing_get_side (line, side, &from, &to);
      sides[side] = hc_standing_get_pieces (context, fitting, from, to);
    }
  for (guint i = 0; i < (guint) values->places; i++)
    {
      double along_mm = values->width_mm * (i + 0.5) / values->places;
      HcBodies bodies = find_bodies_at (sides[0], along_mm)
                        | find_bodies_at (sides[1], values->width_mm - along_mm);

      if (bodies != 0)
        add_nipple (context, line, i, bodies, offer);
    }
  for (guint side = 0; side < 2; side++)
    g_array_unref (sides[side]);
}

void
hc_offer_make_nipples (HcOfferKind kind, const HcOfferContext *context, HcOffer *offer)
{
  HcParts *fittings = hc_room_get (context->room)->fittings;

  for (guint i = 0; i < fittings->len; i++)
    {
      const HcFittingValues *values = hc_fitting_get (fittings->pdata[i]);

      if (values->kind == HC_FITTING_DRINKER
          && (values->form == HC_FORM_NIPPLES || values->form == HC_FORM_CUPS))
        add_line (context, i, offer);
    }
}
