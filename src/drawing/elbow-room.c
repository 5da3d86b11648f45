/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Tries places in a sequence that covers a floor evenly, the same every time. */
#include "config.h"

#include "elbow-room.h"

#include "base/ring.h"

#include <math.h>

#define TRIES 48

typedef struct
{
  HcPen *pen;
  GArray *ring;
  HcBox box;
} Floor;

typedef struct
{
  HcPoint at;
  double radius;
} Taken;

struct _HcElbowRoom
{
  GArray *floors;
  GArray *taken;
};

static void
floor_clear (gpointer floor)
{
  g_array_unref (((Floor *) floor)->ring);
}

/**
 * hc_elbow_room_new: (skip)
 * @layout: a layout, which must outlive it
 *
 * Returns: its floors, with nobody on them
 */
HcElbowRoom *
hc_elbow_room_new (const HcLayout *layout)
{
  HcElbowRoom *self = g_new0 (HcElbowRoom, 1);
  HcParts *pens = hc_layout_get (layout)->pens;

  self->floors = g_array_new (FALSE, FALSE, sizeof (Floor));
  self->taken = g_array_new (FALSE, FALSE, sizeof (Taken));
  g_array_set_clear_func (self->floors, floor_clear);
  for (guint i = 0; i < pens->len; i++)
    {
      Floor floor = { pens->pdata[i], hc_layout_get_pen_ring (layout, pens->pdata[i]) };

      floor.box = hc_box_around ((const HcPoint *) floor.ring->data, floor.ring->len);
      g_array_append_val (self->floors, floor);
    }
  return self;
}

void
hc_elbow_room_free (HcElbowRoom *self)
{
  g_array_unref (self->floors);
  g_array_unref (self->taken);
  g_free (self);
}

static const Floor *
find_floor (const HcElbowRoom *self, const char *pen)
{
  for (guint i = 0; i < self->floors->len; i++)
    {
      const Floor *floor = &g_array_index (self->floors, Floor, i);

      if (floor->ring->len >= 3 && g_strcmp0 (hc_pen_get_id (floor->pen), pen) == 0)
        return floor;
    }
  return NULL;
}

static gboolean
is_inside (const Floor *floor, HcPoint at, double radius)
{
  const HcPoint *ring = (const HcPoint *) floor->ring->data;
  double to_wall;

  if (!hc_ring_contains_point (ring, floor->ring->len, at))
    return FALSE;
  hc_ring_nearest_edge (ring, floor->ring->len, at, &to_wall);
  return to_wall >= radius;
}

/* Birds walk below what hangs and over the edge of a dust bath, but a drawing
 * that shows them there would hide what they walk on. */
static gboolean
stands_on (const HcFittingValues *fitting, HcPoint at, double radius)
{
  HcPoint own = hc_point_turn (
      hc_point_subtract (at, hc_point (fitting->x_mm, fitting->y_mm)), -fitting->turn_deg);

  return fabs (own.x_mm) < fitting->width_mm / 2 + radius
         && fabs (own.y_mm) < fitting->depth_mm / 2 + radius;
}

static gboolean
is_clear_of_fittings (const Floor *floor, HcPoint at, double radius)
{
  HcParts *fittings = hc_pen_get (floor->pen)->fittings;

  for (guint i = 0; i < fittings->len; i++)
    if (stands_on (hc_fitting_get (fittings->pdata[i]), at, radius))
      return FALSE;
  return TRUE;
}

static gboolean
is_clear_of_birds (const HcElbowRoom *self, HcPoint at, double radius)
{
  for (guint i = 0; i < self->taken->len; i++)
    {
      const Taken *taken = &g_array_index (self->taken, Taken, i);

      if (hc_point_distance (taken->at, at) < taken->radius + radius)
        return FALSE;
    }
  return TRUE;
}

/**
 * hc_elbow_room_is_free: (skip)
 * @self: floors
 * @pen: id of a pen
 * @at: a place
 * @radius_mm: room wanted round it
 *
 * Returns: whether a bird that stands there is inside and touches nobody
 */
gboolean
hc_elbow_room_is_free (const HcElbowRoom *self, const char *pen, HcPoint at, double radius_mm)
{
  const Floor *floor = find_floor (self, pen);

  return floor != NULL && is_inside (floor, at, radius_mm)
         && is_clear_of_birds (self, at, radius_mm);
}

/* The fraction whose digits in @base are those of @index mirrored: van der
 * Corput's sequence, two bases of it Halton's (Numerische Mathematik 2, 1960). */
static double
mirrored (guint index, guint base)
{
  double part = 1, sum = 0;

  for (; index > 0; index /= base)
    {
      part /= base;
      sum += part * (index % base);
    }
  return sum;
}

/**
 * hc_elbow_room_find: (skip)
 * @self: floors
 * @pen: id of a pen
 * @radius_mm: room wanted round it
 * @seed: another seed finds another place
 * @at: (out): a free place, or a crowded one inside the pen when none is free
 *
 * Returns: whether there is any floor there to stand on
 */
gboolean
hc_elbow_room_find (const HcElbowRoom *self, const char *pen, double radius_mm, guint seed,
                    HcPoint *at)
{
  const Floor *floor = find_floor (self, pen);
  guint first = seed % 4096 + 1;
  gboolean found = FALSE;

  if (floor == NULL)
    return FALSE;
  for (guint i = 0; i < TRIES; i++)
    {
      HcPoint tried = hc_point (
          floor->box.x_mm + floor->box.width_mm * mirrored (first + i, 2),
          floor->box.y_mm + floor->box.depth_mm * mirrored (first + i, 3));

      if (!is_inside (floor, tried, MIN (radius_mm, floor->box.width_mm / 4)))
        continue;
      if (!found)
        *at = tried;
      found = TRUE;
      if (!is_clear_of_fittings (floor, tried, radius_mm * 0.8)
          || !is_clear_of_birds (self, tried, radius_mm))
        continue;
      *at = tried;
      return TRUE;
    }
  return found;
}

/**
 * hc_elbow_room_take: (skip)
 * @self: floors
 * @at: where a bird now is
 * @radius_mm: the room it takes round that
 */
void
hc_elbow_room_take (HcElbowRoom *self, HcPoint at, double radius_mm)
{
  Taken taken = { at, radius_mm };

  g_array_append_val (self->taken, taken);
}

/**
 * hc_elbow_room_get_area_mm2: (skip)
 * @self: floors
 * @pen: id of a pen
 *
 * Returns: the area inside its walls, 0 when they make no ring
 */
double
hc_elbow_room_get_area_mm2 (const HcElbowRoom *self, const char *pen)
{
  const Floor *floor = find_floor (self, pen);

  return floor ? fabs (hc_ring_area_mm2 ((const HcPoint *) floor->ring->data, floor->ring->len))
               : 0;
}
