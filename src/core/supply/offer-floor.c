/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The floor that counts: wide enough, with headroom, with nothing on it. */
#include "config.h"

#include "supply/offer-private.h"

#include "base/shape-relate.h"
#include "base/whole.h"
#include "book/figure-names.h"
#include "supply/floor.h"

/* Floor measured for one headroom and one least width. */
typedef struct
{
  double headroom_mm;
  double width_mm;
  double area_mm2;
} Measured;

/* Floor is measured once for all headrooms that the same things take floor
 * from: a higher headroom never loses fewer of them. */
static double
measure (HcRoom *room, double headroom_mm, double width_mm, GArray *measured)
{
  Measured now = { headroom_mm, width_mm, 0 };
  g_autoptr (HcShape) floor = NULL;

  for (guint i = 0; i < measured->len; i++)
    {
      const Measured *before = &g_array_index (measured, Measured, i);

      if (before->width_mm == width_mm
          && hc_room_loses_same_floor (room, before->headroom_mm, headroom_mm))
        return before->area_mm2;
    }
  floor = hc_room_get_floor_that_counts (room, headroom_mm, width_mm);
  now.area_mm2 = hc_shape_get_area_mm2 (floor);
  g_array_append_val (measured, now);
  return now.area_mm2;
}

static double
headroom_of (const HcOfferContext *context, const HcBody *body, HcLevel level)
{
  const HcLimit *limit = hc_figure_for (context, HC_FIGURE_FLOOR_HEADROOM, body);
  double bound;

  return limit != NULL && hc_limit_get (limit, level, &bound) ? bound : 0;
}

/* What each body needs above it; where there are no birds, what any would. */
static void
find_headrooms (const HcOfferContext *context, HcLevel level, double headrooms[HC_MOST_BODIES])
{
  headrooms[0] = headroom_of (context, NULL, level);
  for (guint i = 0; i < hc_flock_get_n_bodies (context->flock); i++)
    headrooms[i] = headroom_of (context, hc_flock_get_body (context->flock, i), level);
}

/* The least headroom above @above that is asked for; FALSE when none is. */
static gboolean
find_next_headroom (const double headrooms[HC_MOST_BODIES], guint n, double above_mm,
                    double *headroom_mm)
{
  *headroom_mm = G_MAXDOUBLE;
  for (guint i = 0; i < n; i++)
    if (headrooms[i] > above_mm)
      *headroom_mm = MIN (*headroom_mm, headrooms[i]);
  return *headroom_mm < G_MAXDOUBLE;
}

static HcBodies
find_lower_bodies (const HcOfferContext *context, const double headrooms[HC_MOST_BODIES],
                   double headroom_mm)
{
  HcBodies who = 0;

  for (guint i = 0; i < hc_flock_get_n_bodies (context->flock); i++)
    if (headrooms[i] <= headroom_mm)
      who |= (HcBodies) 1 << i;
  return who;
}

static void
set_band (const HcOfferContext *context, GArray *bands, guint band, HcLevel level,
          double area_mm2, HcBodies who)
{
  HcPlace *place;

  if (band == bands->len)
    {
      g_array_set_size (bands, band + 1);
      place = &g_array_index (bands, HcPlace, band);
      hc_place_init (place, context, "");
      place->part = band;
      place->from = place->to = hc_room_get_middle (context->room);
    }
  place = &g_array_index (bands, HcPlace, band);
  place->amounts[level - HC_LEVEL_TIGHT] = hc_mm (area_mm2);
  place->suits[level - HC_LEVEL_TIGHT] = who;
}

/* One place for each band of headroom: what lower birds have and higher ones
 * have not is a place of its own. */
static void
find_bands (const HcOfferContext *context, HcLevel level, GArray *measured, GArray *bands)
{
  double width_mm = hc_figure_get_bound (context, HC_FIGURE_FLOOR_WIDTH, level);
  guint n = MAX (hc_flock_get_n_bodies (context->flock), 1);
  double headrooms[HC_MOST_BODIES];
  double headroom_mm, next_mm;
  gboolean more;

  find_headrooms (context, level, headrooms);
  more = find_next_headroom (headrooms, n, -1, &headroom_mm);
  for (guint band = 0; more; band++)
    {
      HcBodies who = find_lower_bodies (context, headrooms, headroom_mm);
      double area_mm2 = measure (context->room, headroom_mm, width_mm, measured);

      more = find_next_headroom (headrooms, n, headroom_mm, &next_mm);
      if (more)
        area_mm2 -= measure (context->room, next_mm, width_mm, measured);
      set_band (context, bands, band, level, area_mm2, who);
      headroom_mm = next_mm;
    }
}

static gboolean
is_platform_wide_enough (const HcOfferContext *context, const HcFittingValues *platform,
                         HcLevel level)
{
  return MIN (platform->width_mm, platform->depth_mm)
         >= hc_figure_get_bound (context, HC_FIGURE_FLOOR_WIDTH, level) - HC_SHAPE_TOUCH_MM;
}

static void
add_platform (const HcOfferContext *context, const HcFitting *platform, HcShape *footprint,
              HcOffer *offer)
{
  const HcFittingValues *values = hc_fitting_get (platform);
  double top_mm = values->base_mm + values->height_mm;
  HcPlace place;

  hc_place_init (&place, context, hc_fitting_get_id (platform));
  for (HcLevel level = HC_LEVEL_TIGHT; level <= HC_LEVEL_PLENTY; level++)
    if (is_platform_wide_enough (context, values, level))
      place.amounts[level - HC_LEVEL_TIGHT] = hc_mm (hc_shape_get_area_mm2 (footprint));
  hc_place_set_suits (&place, hc_bodies_all (context));
  hc_place_keep_within (&place, context, HC_FIGURE_FLOOR_HEADROOM,
                        hc_room_get_ceiling_over_mm (context->room, footprint) - top_mm);
  place.height_mm = top_mm;
  place.from = place.to = hc_point (values->x_mm, values->y_mm);
  hc_offer_add_place (offer, &place);
}

static void
add_platforms (const HcOfferContext *context, HcOffer *offer)
{
  HcParts *fittings = hc_room_get (context->room)->fittings;

  for (guint i = 0; i < fittings->len; i++)
    if (hc_fitting_get (fittings->pdata[i])->kind == HC_FITTING_PLATFORM)
      add_platform (context, fittings->pdata[i], hc_room_get_footprint (context->room, i),
                    offer);
}

void
hc_offer_make_floor (HcOfferKind kind, const HcOfferContext *context, HcOffer *offer)
{
  g_autoptr (GArray) measured = g_array_new (FALSE, FALSE, sizeof (Measured));
  g_autoptr (GArray) bands = g_array_new (FALSE, FALSE, sizeof (HcPlace));

  if (!hc_room_is_roofed (context->room))
    return;
  for (HcLevel level = HC_LEVEL_TIGHT; level <= HC_LEVEL_PLENTY; level++)
    find_bands (context, level, measured, bands);
  for (guint i = 0; i < bands->len; i++)
    hc_offer_add_place (offer, &g_array_index (bands, HcPlace, i));
  if (hc_standard_counts_platforms (context->standard))
    add_platforms (context, offer);
}
