/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Where a bird can go straight across the floor of a room: the middle of it keeps
 * half its width away from what stands there, and from walls. Plain arithmetic on
 * straight edges, since it is asked for thousands of lines. */
#include "config.h"

#include "supply/bird-floor.h"

#include "base/crossing.h"
#include "base/ring.h"
#include "supply/stand.h"

#include <math.h>

#define MOST_CORNERS 8

/* A bird that just touches is not in the way of itself. */
#define FORGIVEN_MM 1.0

/* What is left of a line in a thing is nothing below this part of it. */
#define TOUCH 1e-9

typedef struct
{
  HcPoint corners[MOST_CORNERS];
  guint n_corners;
} Thing;

struct _HcBirdFloor
{
  double half_mm;
  GArray *ring;
  gboolean has_nook;
  GArray *things;
  GArray *turns;
};

static void
add_corner (Thing *thing, const HcFitting *fitting, double x_mm, double y_mm)
{
  thing->corners[thing->n_corners++] = hc_stand_to_plan (fitting, hc_point (x_mm, y_mm));
}

/* An eight-cornered ring round what is round, four corners round all else. */
static Thing
outline_of (const HcFitting *fitting, double grow_mm)
{
  const HcFittingValues *values = hc_fitting_get (fitting);
  double half_width = values->width_mm / 2 + grow_mm, half_depth = values->depth_mm / 2 + grow_mm;
  Thing thing = { .n_corners = 0 };

  if (values->form != HC_FORM_ROUND)
    {
      add_corner (&thing, fitting, -half_width, -half_depth);
      add_corner (&thing, fitting, half_width, -half_depth);
      add_corner (&thing, fitting, half_width, half_depth);
      add_corner (&thing, fitting, -half_width, half_depth);
      return thing;
    }
  for (guint i = 0; i < MOST_CORNERS; i++)
    {
      double turn = (2 * i + 1) * G_PI / MOST_CORNERS;
      double reach = half_width / cos (G_PI / MOST_CORNERS);

      add_corner (&thing, fitting, reach * cos (turn), reach * sin (turn));
    }
  return thing;
}

/* How far to the inside of one edge of a thing, times the edge's length. */
static double
inside_edge (const Thing *thing, guint edge, HcPoint at)
{
  HcPoint from = thing->corners[edge], to = thing->corners[(edge + 1) % thing->n_corners];

  return hc_point_cross (hc_point_subtract (to, from), hc_point_subtract (at, from));
}

static gboolean
holds (const Thing *thing, HcPoint at)
{
  for (guint i = 0; i < thing->n_corners; i++)
    if (inside_edge (thing, i, at) <= 0)
      return FALSE;
  return TRUE;
}

static gboolean
is_cut_by (const Thing *thing, HcPoint from, HcPoint to)
{
  double enter = 0, leave = 1;

  for (guint i = 0; i < thing->n_corners; i++)
    {
      double before = inside_edge (thing, i, from), after = inside_edge (thing, i, to);

      if (before <= 0 && after <= 0)
        return FALSE;
      if (before < 0)
        enter = MAX (enter, before / (before - after));
      else if (after < 0)
        leave = MIN (leave, before / (before - after));
    }
  return leave - enter > TOUCH;
}

static HcPoint
corner_at (const HcBirdFloor *self, guint corner)
{
  return g_array_index (self->ring, HcPoint, corner % self->ring->len);
}

/* Where the walls come to a point into the room. */
static gboolean
is_nook (const HcBirdFloor *self, guint corner, double area_mm2)
{
  HcPoint at = corner_at (self, corner);
  HcPoint before = hc_point_subtract (at, corner_at (self, corner + self->ring->len - 1));
  HcPoint after = hc_point_subtract (corner_at (self, corner + 1), at);

  return hc_point_cross (before, after) * area_mm2 < 0;
}

static gboolean
stands_clear (const HcBirdFloor *self, HcPoint at)
{
  const HcPoint *ring = (const HcPoint *) self->ring->data;

  if (!hc_ring_contains_point (ring, self->ring->len, at))
    return FALSE;
  for (guint i = 0; i < self->ring->len; i++)
    if (hc_point_distance_to_line (at, ring[i], corner_at (self, i + 1))
        < self->half_mm - FORGIVEN_MM)
      return FALSE;
  for (guint i = 0; i < self->things->len; i++)
    if (holds (&g_array_index (self->things, Thing, i), at))
      return FALSE;
  return TRUE;
}

static void
add_turn (HcBirdFloor *self, HcPoint at)
{
  if (stands_clear (self, at))
    g_array_append_val (self->turns, at);
}

static void
add_turns_at_nooks (HcBirdFloor *self)
{
  const HcPoint *ring = (const HcPoint *) self->ring->data;
  guint n = self->ring->len;
  double area_mm2 = hc_ring_area_mm2 (ring, n);

  for (guint i = 0; i < n; i++)
    {
      HcPoint off;

      if (!is_nook (self, i, area_mm2))
        continue;
      self->has_nook = TRUE;
      off = hc_point_add (hc_ring_edge_normal (ring, n, (i + n - 1) % n),
                          hc_ring_edge_normal (ring, n, i));
      add_turn (self, hc_point_add (ring[i], hc_point_scale (off, self->half_mm)));
    }
}

static void
add_things (HcBirdFloor *self, const HcRoom *room, double headroom_mm)
{
  HcParts *fittings = hc_room_get (room)->fittings;

  for (guint i = 0; i < fittings->len; i++)
    if (hc_stand_takes_floor (fittings->pdata[i], headroom_mm))
      {
        Thing thing = outline_of (fittings->pdata[i], self->half_mm - FORGIVEN_MM);

        g_array_append_val (self->things, thing);
      }
}

static void
add_turns_at_things (HcBirdFloor *self, const HcRoom *room, double headroom_mm)
{
  HcParts *fittings = hc_room_get (room)->fittings;

  for (guint i = 0; i < fittings->len; i++)
    if (hc_stand_takes_floor (fittings->pdata[i], headroom_mm))
      {
        Thing thing = outline_of (fittings->pdata[i], self->half_mm);

        for (guint corner = 0; corner < thing.n_corners; corner++)
          add_turn (self, thing.corners[corner]);
      }
}

/**
 * hc_bird_floor_new: (skip)
 * @room: a room
 * @bird: how wide and how high it is
 *
 * Returns: (transfer full): the floor of @room as @bird finds it
 */
HcBirdFloor *
hc_bird_floor_new (const HcRoom *room, const HcWalker *bird)
{
  HcBirdFloor *self = g_new0 (HcBirdFloor, 1);

  self->half_mm = bird->width_mm / 2;
  self->ring = g_array_new (FALSE, FALSE, sizeof (HcPoint));
  self->things = g_array_new (FALSE, FALSE, sizeof (Thing));
  self->turns = g_array_new (FALSE, FALSE, sizeof (HcPoint));
  for (guint i = 0; i < hc_room_get_n_walls (room); i++)
    g_array_append_val (self->ring, hc_room_get_wall (room, i)->from);
  add_things (self, room, bird->headroom_mm);
  if (self->ring->len < 3)
    return self;
  add_turns_at_nooks (self);
  add_turns_at_things (self, room, bird->headroom_mm);
  return self;
}

void
hc_bird_floor_free (HcBirdFloor *self)
{
  g_array_unref (self->ring);
  g_array_unref (self->things);
  g_array_unref (self->turns);
  g_free (self);
}

static gboolean
meets_a_wall (const HcBirdFloor *self, HcPoint from, HcPoint to)
{
  for (guint i = 0; self->has_nook && i < self->ring->len; i++)
    if (hc_lines_touch (from, to, corner_at (self, i), corner_at (self, i + 1)))
      return TRUE;
  return FALSE;
}

/**
 * hc_bird_floor_is_clear: (skip)
 * @self: a floor
 * @from: where a bird is
 * @to: where it wants to be
 *
 * A bird gets away from a thing it is squeezed against, and up to one.
 *
 * Returns: whether it can go there straight
 */
gboolean
hc_bird_floor_is_clear (const HcBirdFloor *self, HcPoint from, HcPoint to)
{
  for (guint i = 0; i < self->things->len; i++)
    {
      const Thing *thing = &g_array_index (self->things, Thing, i);

      if (is_cut_by (thing, from, to) && !holds (thing, from) && !holds (thing, to))
        return FALSE;
    }
  return !meets_a_wall (self, from, to);
}

/**
 * hc_bird_floor_find_turns: (skip)
 * @self: a floor
 *
 * Returns: (transfer full) (element-type HcPoint): where a way round something
 *   turns: any shortest way is straight from one of these to the next
 */
GArray *
hc_bird_floor_find_turns (const HcBirdFloor *self)
{
  return g_array_ref (self->turns);
}
