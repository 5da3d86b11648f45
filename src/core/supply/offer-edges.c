/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Edges of feeders and drinkers that birds can get at. */
#include "config.h"

#include "supply/offer-private.h"

#include "base/whole.h"
#include "book/figure-names.h"
#include "supply/standing.h"

typedef struct
{
  HcFittingKind kind;
  HcFittingForm form;
} Sort;

static Sort
get_sort (HcOfferKind kind)
{
  gboolean feeds = kind == HC_OFFER_FEED_LONG || kind == HC_OFFER_FEED_ROUND;
  gboolean is_round = kind == HC_OFFER_FEED_ROUND || kind == HC_OFFER_WATER_ROUND;

  return (Sort){ feeds ? HC_FITTING_FEEDER : HC_FITTING_DRINKER,
                 is_round ? HC_FORM_ROUND : HC_FORM_LONG };
}

/* Birds reach over a rim whose underside is no higher than their backs. */
static HcBodies
find_reaching (const HcOfferContext *context, const HcFittingValues *values)
{
  HcBodies reaching = 0;

  for (guint i = 0; i < hc_flock_get_n_bodies (context->flock); i++)
    if (values->base_mm <= hc_body_get_back_mm (hc_flock_get_body (context->flock, i)))
      reaching |= (HcBodies) 1 << i;
  return reaching;
}

static void
add_edge (const HcOfferContext *context, const HcFitting *fitting, HcPlace *place,
          double length_mm, HcBodies bodies, HcOffer *offer)
{
  const HcFittingValues *values = hc_fitting_get (fitting);

  hc_place_set_amount (place, length_mm);
  hc_place_set_suits (place, bodies & find_reaching (context, values));
  if (values->kind == HC_FITTING_DRINKER)
    hc_place_keep_within (place, context, HC_FIGURE_WATER_DEPTH, values->water_mm);
  place->height_mm = values->base_mm;
  hc_offer_add_place (offer, place);
}

/* A piece narrower than a bird is of no use to it. */
static HcBodies
drop_wider (const HcOfferContext *context, HcBodies bodies, double length_mm)
{
  for (guint i = 0; i < hc_flock_get_n_bodies (context->flock); i++)
    if (hc_body_get_width_mm (hc_flock_get_body (context->flock, i)) > length_mm)
      bodies &= ~((HcBodies) 1 << i);
  return bodies;
}

static void
add_side (const HcOfferContext *context, guint fitting, guint side, HcOffer *offer)
{
  const HcFitting *trough = hc_room_get (context->room)->fittings->pdata[fitting];
  g_autoptr (GArray) pieces = NULL;
  HcPoint from, to;
  HcStrip line;

  hc_standing_get_side (trough, side, &from, &to);
  hc_strip_init (&line, from, to, 0, 0);
  pieces = hc_standing_get_pieces (context, fitting, from, to);
  for (guint i = 0; i < pieces->len; i++)
    {
      const HcStandingPiece *piece = &g_array_index (pieces, HcStandingPiece, i);
      double length_mm = hc_mm (piece->stretch.to_mm - piece->stretch.from_mm);
      HcBodies bodies = drop_wider (context, piece->bodies, length_mm);
      HcPlace place;

      if (bodies == 0)
        continue;
      hc_place_init (&place, context, hc_fitting_get_id (trough));
      place.part = side;
      place.from = hc_strip_get_point (&line, piece->stretch.from_mm, 0);
      place.to = hc_strip_get_point (&line, piece->stretch.to_mm, 0);
      add_edge (context, trough, &place, length_mm, bodies, offer);
    }
}

/* A share of a round rim, by who can stand there. */
typedef struct
{
  HcBodies bodies;
  double length_mm;
} Share;

static void
add_share (GArray *shares, HcBodies bodies, double length_mm)
{
  Share share = { bodies, length_mm };

  for (guint i = 0; i < shares->len; i++)
    if (g_array_index (shares, Share, i).bodies == bodies)
      {
        g_array_index (shares, Share, i).length_mm += length_mm;
        return;
      }
  g_array_append_val (shares, share);
}

static GArray *
find_shares (const HcOfferContext *context, guint fitting, double *rim_mm)
{
  HcShape *footprint = hc_room_get_footprint (context->room, fitting);
  GArray *shares = g_array_new (FALSE, FALSE, sizeof (Share));
  guint n;
  const HcPoint *ring = hc_shape_get_ring (footprint, 0, 0, &n);

  *rim_mm = hc_shape_get_perimeter_mm (footprint);
  for (guint i = 0; i < n; i++)
    {
      g_autoptr (GArray) pieces
          = hc_standing_get_pieces (context, fitting, ring[(i + 1) % n], ring[i]);

      for (guint j = 0; j < pieces->len; j++)
        {
          const HcStandingPiece *piece = &g_array_index (pieces, HcStandingPiece, j);

          add_share (shares, piece->bodies, piece->stretch.to_mm - piece->stretch.from_mm);
        }
    }
  return shares;
}

static void
add_rim (const HcOfferContext *context, guint fitting, HcOffer *offer)
{
  const HcFitting *dish = hc_room_get (context->room)->fittings->pdata[fitting];
  const HcFittingValues *values = hc_fitting_get (dish);
  double rim_mm;
  g_autoptr (GArray) shares = find_shares (context, fitting, &rim_mm);

  for (guint i = 0; i < shares->len; i++)
    {
      const Share *share = &g_array_index (shares, Share, i);
      HcPlace place;

      hc_place_init (&place, context, hc_fitting_get_id (dish));
      place.part = i;
      place.from = place.to = hc_point (values->x_mm, values->y_mm);
      add_edge (context, dish, &place, G_PI * values->width_mm * share->length_mm / rim_mm,
                share->bodies, offer);
    }
}

void
hc_offer_make_edges (HcOfferKind kind, const HcOfferContext *context, HcOffer *offer)
{
  HcParts *fittings = hc_room_get (context->room)->fittings;
  Sort sort = get_sort (kind);

  for (guint i = 0; i < fittings->len; i++)
    {
      const HcFittingValues *values = hc_fitting_get (fittings->pdata[i]);

      if (values->kind != (int) sort.kind || values->form != (int) sort.form)
        continue;
      if (sort.form == HC_FORM_ROUND)
        add_rim (context, i, offer);
      else
        for (guint side = 0; side < 2; side++)
          add_side (context, i, side, offer);
    }
}
