/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Warm floor for chicks: under plates, on pads, in the circle of a lamp. */
#include "config.h"

#include "supply/offer-private.h"

#include "base/shape-relate.h"
#include "book/figure-names.h"

static gboolean
needs_heat (const HcBody *body)
{
  return body->under_heat;
}

/* The floor a lamp warms is wider than its shade by a figure of the rules. */
static HcShape *
get_lamp_circle (const HcOfferContext *context, const HcFittingValues *lamp)
{
  double times = hc_figure_get_bound (context, HC_FIGURE_LAMP_CIRCLE, HC_LEVEL_TIGHT);

  return hc_shape_new_circle (hc_point (lamp->x_mm, lamp->y_mm),
                              lamp->width_mm * MAX (times, 1));
}

static double
get_warm_area_mm2 (const HcOfferContext *context, guint fitting)
{
  const HcFitting *heater = hc_room_get (context->room)->fittings->pdata[fitting];
  const HcFittingValues *values = hc_fitting_get (heater);
  g_autoptr (HcShape) circle = NULL;

  if (values->kind != HC_FITTING_HEAT_LAMP)
    return hc_shape_get_overlap_mm2 (hc_room_get_outline (context->room),
                                     hc_room_get_footprint (context->room, fitting));
  circle = get_lamp_circle (context, values);
  return hc_shape_get_overlap_mm2 (hc_room_get_outline (context->room), circle);
}

void
hc_offer_make_warmth (HcOfferKind kind, const HcOfferContext *context, HcOffer *offer)
{
  HcParts *fittings = hc_room_get (context->room)->fittings;

  for (guint i = 0; i < fittings->len; i++)
    {
      const HcFittingValues *values = hc_fitting_get (fittings->pdata[i]);
      HcPlace place;

      if (!hc_fitting_is_heater (fittings->pdata[i]))
        continue;
      hc_place_init (&place, context, hc_fitting_get_id (fittings->pdata[i]));
      hc_place_set_amount (&place, get_warm_area_mm2 (context, i));
      hc_place_set_suits (&place, hc_bodies_which (context, needs_heat));
      place.from = place.to = hc_point (values->x_mm, values->y_mm);
      place.height_mm = values->base_mm;
      hc_offer_add_place (offer, &place);
    }
}
