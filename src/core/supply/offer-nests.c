/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Nest boxes and group nests, row by row. */
#include "config.h"

#include "supply/offer-private.h"

#include "book/figure-names.h"
#include "supply/stand.h"

static gboolean
lays (const HcBody *body)
{
  return body->at_lay;
}

static void
add_row (const HcOfferContext *context, const HcFitting *nest, guint row, HcOffer *offer)
{
  const HcFittingValues *values = hc_fitting_get (nest);
  gboolean is_group = values->form == HC_FORM_GROUP;
  HcPlace place;

  hc_place_init (&place, context, hc_fitting_get_id (nest));
  place.part = row;
  place.height_mm = hc_stand_get_nest_floor_mm (nest, row);
  place.from = hc_stand_to_plan (nest, hc_point (-values->width_mm / 2, 0));
  place.to = hc_stand_to_plan (nest, hc_point (values->width_mm / 2, 0));
  hc_place_set_amount (&place, is_group ? values->width_mm * values->depth_mm
                                        : values->columns);
  hc_place_set_suits (&place, hc_bodies_which (context, lays));
  hc_place_keep_within (&place, context, HC_FIGURE_NEST_WIDTH,
                        values->width_mm / (is_group ? 1 : values->columns));
  hc_place_keep_within (&place, context, HC_FIGURE_NEST_DEPTH, values->depth_mm);
  hc_place_keep_within (&place, context, HC_FIGURE_NEST_HEIGHT,
                        values->height_mm / values->rows);
  hc_place_keep_within (&place, context, HC_FIGURE_NEST_FLOOR_HEIGHT, place.height_mm);
  hc_offer_add_place (offer, &place);
}

void
hc_offer_make_nests (HcOfferKind kind, const HcOfferContext *context, HcOffer *offer)
{
  HcParts *fittings = hc_room_get (context->room)->fittings;
  gboolean want_group = kind == HC_OFFER_GROUP_NESTS;

  for (guint i = 0; i < fittings->len; i++)
    {
      const HcFittingValues *values = hc_fitting_get (fittings->pdata[i]);

      if (values->kind != HC_FITTING_NEST_BOXES
          || (values->form == HC_FORM_GROUP) != want_group)
        continue;
      for (guint row = 0; row < (guint) values->rows; row++)
        add_row (context, fittings->pdata[i], row, offer);
    }
}
