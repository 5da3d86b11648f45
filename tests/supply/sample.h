/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * One room with things in it, to ask offers of. */
#pragma once

#include "book/book.h"
#include "supply/offer.h"

/* A rectangular room whose first corner is the origin of its own measures,
 * which can be turned, moved and mirrored as a whole. */
typedef struct
{
  double width_mm, depth_mm, height_mm, ridge_mm;
  int roof_shape;
  double roof_turn_deg;
  double wall_height_mm;
  double turn_deg;
  HcPoint move;
  gboolean mirrored;
  int kind;
  int roof;
  GPtrArray *fittings;
  GArray *openings;
  HcBook *book;
  HcStandard *standard;
  HcFlock *flock;
  HcCondition condition;
  double coldest_night_c;
} Sample;

static inline void
sample_init (Sample *sample, double width_mm, double depth_mm)
{
  g_autoptr (GError) error = NULL;

  *sample = (Sample){ .width_mm = width_mm,
                      .depth_mm = depth_mm,
                      .height_mm = 2200,
                      .roof_shape = HC_ROOF_GABLE,
                      .roof_turn_deg = 270,
                      .kind = HC_PEN_INDOOR,
                      .roof = HC_ROOF_SOLID,
                      .coldest_night_c = -5 };
  sample->fittings = g_ptr_array_new_with_free_func (g_free);
  sample->openings = g_array_new (FALSE, FALSE, sizeof (HcOpeningValues));
  sample->book = hc_book_load_default (&error);
  g_assert_no_error (error);
  sample->standard = hc_standard_ref (
      hc_book_get_standard (sample->book, HC_BOOK_DEFAULT_STANDARD));
  sample->flock = hc_flock_of_kind (sample->book,
                                    hc_book_get_kind (sample->book, "medium_layer"), 1, "p");
}

static inline void
sample_clear (Sample *sample)
{
  g_ptr_array_unref (sample->fittings);
  g_array_unref (sample->openings);
  hc_flock_unref (sample->flock);
  hc_standard_unref (sample->standard);
  hc_book_unref (sample->book);
}

static inline void
sample_use_standard (Sample *sample, const char *id)
{
  hc_standard_unref (sample->standard);
  sample->standard = hc_standard_ref (hc_book_get_standard (sample->book, id));
}

/* Lets birds of that kind live there as well. */
static inline void
sample_add_kind (Sample *sample, const char *kind)
{
  HcFlock *more
      = hc_flock_with_hens (sample->flock, hc_book_get_kind (sample->book, kind), 1, "p");

  hc_flock_unref (sample->flock);
  sample->flock = more;
}

/* Returns the values to be changed further. */
static inline HcFittingValues *
sample_add (Sample *sample, HcFittingKind kind, double x_mm, double y_mm, double width_mm,
            double depth_mm)
{
  HcFittingValues *values = g_new0 (HcFittingValues, 1);

  hc_fitting_values_init (values);
  values->kind = kind;
  values->x_mm = x_mm;
  values->y_mm = y_mm;
  values->width_mm = width_mm;
  values->depth_mm = depth_mm;
  g_ptr_array_add (sample->fittings, values);
  return values;
}

static inline HcFittingValues *
sample_add_roost (Sample *sample, double x_mm, double y_mm, double length_mm, double depth_mm,
                  int bars)
{
  HcFittingValues *roost
      = sample_add (sample, HC_FITTING_ROOST, x_mm, y_mm, length_mm, depth_mm);

  roost->base_mm = 500;
  roost->height_mm = 50;
  roost->bars = bars;
  roost->bar_width_mm = 90;
  return roost;
}

static inline HcPoint
sample_place (const Sample *sample, HcPoint own)
{
  if (sample->mirrored)
    own.x_mm = sample->width_mm - own.x_mm;
  return hc_point_add (hc_point_turn (own, sample->turn_deg), sample->move);
}

/* A mirrored fitting turns the other way; its own x is the same line either
 * way, and its back stays at its back. */
static inline HcFitting *
sample_make_fitting (const Sample *sample, guint index)
{
  HcFittingValues values = *(HcFittingValues *) sample->fittings->pdata[index];
  HcPoint middle = sample_place (sample, hc_point (values.x_mm, values.y_mm));
  g_autofree char *id = g_strdup_printf ("f%u", index);

  values.x_mm = middle.x_mm;
  values.y_mm = middle.y_mm;
  values.turn_deg = sample->turn_deg + (sample->mirrored ? -values.turn_deg : values.turn_deg);
  return hc_fitting_new (id, &values);
}

static inline HcParts *
sample_make_corners (const Sample *sample)
{
  HcPoint own[] = { { 0, 0 },
                    { sample->width_mm, 0 },
                    { sample->width_mm, sample->depth_mm },
                    { 0, sample->depth_mm } };
  HcParts *corners = hc_parts_new ();

  for (guint i = 0; i < 4; i++)
    {
      HcPoint at = sample_place (sample, own[i]);
      HcCornerValues values = { at.x_mm, at.y_mm };
      const char *ids[] = { "c0", "c1", "c2", "c3" };

      g_ptr_array_add (corners, hc_corner_new (ids[i], &values));
    }
  return corners;
}

static inline HcLayout *
sample_make_layout (const Sample *sample)
{
  static const char *const corner_ids[] = { "c0", "c1", "c2", "c3", "c0" };
  static const char *const wall_ids[] = { "w0", "w1", "w2", "w3", NULL };
  g_autoptr (HcParts) corners = sample_make_corners (sample);
  g_autoptr (HcParts) walls = hc_parts_new ();
  g_autoptr (HcParts) openings = hc_parts_new ();
  g_autoptr (HcParts) pens = hc_parts_new ();
  g_autoptr (HcParts) fittings = hc_parts_new ();
  HcLayoutValues layout;
  HcPenValues pen;

  for (guint i = 0; i < 4; i++)
    {
      HcWallValues wall;

      hc_wall_values_init (&wall);
      wall.from = (char *) corner_ids[i];
      wall.to = (char *) corner_ids[i + 1];
      wall.height_mm = sample->wall_height_mm;
      g_ptr_array_add (walls, hc_wall_new (wall_ids[i], &wall));
    }
  for (guint i = 0; i < sample->fittings->len; i++)
    g_ptr_array_add (fittings, sample_make_fitting (sample, i));
  for (guint i = 0; i < sample->openings->len; i++)
    {
      g_autofree char *id = g_strdup_printf ("o%u", i);

      g_ptr_array_add (openings, hc_opening_new (id, &g_array_index (sample->openings,
                                                                     HcOpeningValues, i)));
    }
  hc_pen_values_init (&pen);
  pen.kind = sample->kind;
  pen.roof = sample->roof;
  pen.height_mm = sample->height_mm;
  pen.ridge_mm = sample->ridge_mm;
  pen.roof_shape = sample->roof_shape;
  pen.roof_turn_deg = sample->roof_turn_deg;
  pen.walls = (char **) wall_ids;
  pen.fittings = fittings;
  g_ptr_array_add (pens, hc_pen_new ("p", &pen));
  hc_layout_values_init (&layout);
  layout.corners = corners;
  layout.walls = walls;
  layout.openings = openings;
  layout.pens = pens;
  return hc_layout_new ("main", &layout);
}

static inline HcOffer *
sample_offer (const Sample *sample, HcOfferKind kind)
{
  g_autoptr (HcLayout) layout = sample_make_layout (sample);
  HcRoof roof = hc_layout_get_roof (layout, "p");
  g_autoptr (HcRoom) room = hc_room_new (layout, hc_layout_get_pen (layout, "p"), &roof);
  HcOfferContext context = { room,
                             layout,
                             sample->flock,
                             sample->standard,
                             sample->condition,
                             sample->coldest_night_c };

  return hc_offer_new (kind, &context);
}

static inline double
sample_total (const Sample *sample, HcOfferKind kind, HcLevel level)
{
  g_autoptr (HcOffer) offer = sample_offer (sample, kind);
  double total = 0;

  for (guint i = 0; i < hc_offer_get_n_places (offer); i++)
    total += hc_offer_get_place (offer, i)->amounts[level - HC_LEVEL_TIGHT];
  return total;
}

/* What suits the body, of all that is offered. */
static inline double
sample_total_for (const Sample *sample, HcOfferKind kind, HcLevel level, guint body)
{
  g_autoptr (HcOffer) offer = sample_offer (sample, kind);
  double total = 0;

  for (guint i = 0; i < hc_offer_get_n_places (offer); i++)
    {
      const HcPlace *place = hc_offer_get_place (offer, i);

      if (place->suits[level - HC_LEVEL_TIGHT] >> body & 1)
        total += place->amounts[level - HC_LEVEL_TIGHT];
    }
  return total;
}
