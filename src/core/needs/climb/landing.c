/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A strip of floor in front of a ledge is as deep as nothing stands on it over
 * the width a bird needs, and no wall cuts it off. */
#include "config.h"

#include "needs/climb/landing.h"

#include "base/shape-relate.h"
#include "supply/stand.h"

#include <math.h>

/* Looked at as deep as this many times the drop: more than any rule asks. */
#define DEEPEST 2.0
/* What touches a front is beside the strip; a wall there is not. */
#define BESIDE_MM 1.0
#define HALVINGS 24

typedef struct
{
  const HcRoom *room;
  const HcLedge *ledge;
  const HcFront *front;
  GArray *near;
  double width_mm;
} Strip;

/* A stretch of the front that something takes. */
typedef struct
{
  double from_mm;
  double to_mm;
  const char *blocker;
} Taken;

static double
out_mm (const HcFront *front, HcPoint p)
{
  return hc_point_dot (hc_point_subtract (p, front->from), front->out);
}

static double
along_mm (const HcFront *front, HcPoint p)
{
  return hc_point_dot (hc_point_subtract (p, front->from), front->along);
}

/* Stretches @taken over the part of the line that lies in the strip. */
static void
take_line (const HcFront *front, HcPoint a, HcPoint b, double near_mm, double far_mm, Taken *taken)
{
  double a_mm = out_mm (front, a);
  double b_mm = out_mm (front, b);
  double first = 0;
  double last = 1;

  if (a_mm != b_mm)
    {
      double enters = (near_mm - a_mm) / (b_mm - a_mm);
      double leaves = (far_mm - a_mm) / (b_mm - a_mm);

      first = MAX (0, MIN (enters, leaves));
      last = MIN (1, MAX (enters, leaves));
    }
  else if (a_mm <= near_mm || a_mm >= far_mm)
    return;
  if (first >= last)
    return;
  for (int end = 0; end < 2; end++)
    {
      double at_mm = along_mm (front, hc_point_between (a, b, end == 0 ? first : last));

      taken->from_mm = MIN (taken->from_mm, at_mm);
      taken->to_mm = MAX (taken->to_mm, at_mm);
    }
}

static void
take_walls (const Strip *strip, double depth_mm, GArray *takens)
{
  double near_mm = strip->ledge->kind == HC_LEDGE_SILL ? BESIDE_MM : -BESIDE_MM;

  for (guint i = 0; i < hc_room_get_n_walls (strip->room); i++)
    {
      const HcRoomWall *wall = hc_room_get_wall (strip->room, i);
      Taken taken = { INFINITY, -INFINITY, NULL };

      take_line (strip->front, wall->from, wall->to, near_mm, depth_mm, &taken);
      if (taken.from_mm <= taken.to_mm)
        g_array_append_val (takens, taken);
    }
}

static void
take_thing (const Strip *strip, guint thing, double depth_mm, GArray *takens)
{
  HcShape *footprint = hc_room_get_footprint (strip->room, thing);
  HcFitting *fitting = hc_room_get (strip->room)->fittings->pdata[thing];
  Taken taken = { INFINITY, -INFINITY, hc_fitting_get_id (fitting) };
  guint n_points;
  const HcPoint *ring = hc_shape_get_ring (footprint, 0, 0, &n_points);

  for (guint i = 0; i < n_points; i++)
    take_line (strip->front, ring[i], ring[(i + 1) % n_points], BESIDE_MM, depth_mm, &taken);
  if (taken.from_mm < taken.to_mm)
    g_array_append_val (takens, taken);
}

/* How far what @fitting covers reaches out from the front. */
static double
reaches_mm (const Strip *strip, guint thing)
{
  guint n_points;
  const HcPoint *ring
      = hc_shape_get_ring (hc_room_get_footprint (strip->room, thing), 0, 0, &n_points);
  double far_mm = 0;

  for (guint i = 0; i < n_points; i++)
    far_mm = MAX (far_mm, out_mm (strip->front, ring[i]));
  return far_mm;
}

/* A bird coming down flies past bars, walks over what lies flat, and past the
 * edge of a board that it would not come down on. */
static gboolean
is_in_the_way (const Strip *strip, guint thing)
{
  HcFitting *fitting = hc_room_get (strip->room)->fittings->pdata[thing];

  if (thing == strip->ledge->thing || hc_fitting_get (fitting)->base_mm >= strip->ledge->height_mm)
    return FALSE;
  switch (hc_fitting_get (fitting)->kind)
    {
    case HC_FITTING_ROOST:
    case HC_FITTING_RAMP:
    case HC_FITTING_FLOOR_HEAT_PAD:
    case HC_FITTING_DUST_BATH:
      return FALSE;
    case HC_FITTING_DROPPINGS_BOARD:
    case HC_FITTING_PLATFORM:
      return reaches_mm (strip, thing) >= strip->ledge->height_mm;
    default:
      return TRUE;
    }
}

static int
compare_takens (gconstpointer a, gconstpointer b)
{
  const Taken *one = a;
  const Taken *other = b;

  return (one->from_mm > other->from_mm) - (one->from_mm < other->from_mm);
}

static GArray *
find_taken (const Strip *strip, double depth_mm)
{
  GArray *takens = g_array_new (FALSE, FALSE, sizeof (Taken));

  take_walls (strip, depth_mm, takens);
  for (guint i = 0; i < strip->near->len; i++)
    take_thing (strip, g_array_index (strip->near, guint, i), depth_mm, takens);
  g_array_sort (takens, compare_takens);
  return takens;
}

static gboolean
is_clear (const Strip *strip, double depth_mm)
{
  g_autoptr (GArray) takens = find_taken (strip, depth_mm);
  double free_from_mm = 0;
  double widest_mm = 0;

  for (guint i = 0; i < takens->len; i++)
    {
      const Taken *taken = &g_array_index (takens, Taken, i);

      widest_mm = MAX (widest_mm, MIN (taken->from_mm, strip->front->length_mm) - free_from_mm);
      free_from_mm = MAX (free_from_mm, taken->to_mm);
    }
  widest_mm = MAX (widest_mm, strip->front->length_mm - free_from_mm);
  return widest_mm >= MIN (strip->width_mm, strip->front->length_mm) - HC_SHAPE_TOUCH_MM;
}

static gboolean
starts_inside (const Strip *strip)
{
  const HcFront *front = strip->front;
  HcPoint middle = hc_point_add (front->from, hc_point_scale (front->along, front->length_mm / 2));

  return hc_shape_contains_point (hc_room_get_outline (strip->room),
                                  hc_point_add (middle, hc_point_scale (front->out, BESIDE_MM)));
}

/* Rounded coarsely, so that turning a plan changes no level. */
static double
find_clear_mm (const Strip *strip, double deepest_mm)
{
  double clear_mm = 0;
  double not_mm = deepest_mm;

  if (!starts_inside (strip))
    return 0;
  if (is_clear (strip, deepest_mm))
    return deepest_mm;
  for (int i = 0; i < HALVINGS; i++)
    {
      double middle_mm = (clear_mm + not_mm) / 2;

      if (is_clear (strip, middle_mm))
        clear_mm = middle_mm;
      else
        not_mm = middle_mm;
    }
  return round (clear_mm * 10) / 10;
}

static const char *
find_blocker (const Strip *strip, double clear_mm)
{
  g_autoptr (GArray) takens = find_taken (strip, clear_mm + 2 * BESIDE_MM);
  const char *blocker = NULL;
  double widest_mm = 0;

  for (guint i = 0; i < takens->len; i++)
    {
      const Taken *taken = &g_array_index (takens, Taken, i);
      double width_mm = MIN (taken->to_mm, strip->front->length_mm) - MAX (taken->from_mm, 0);

      if (width_mm <= widest_mm)
        continue;
      widest_mm = width_mm;
      blocker = taken->blocker;
    }
  return blocker;
}

static GArray *
find_near (const Strip *strip, double deepest_mm)
{
  GArray *near = hc_room_find_fittings (
      strip->room, hc_box_grow (hc_shape_get_bounds (strip->ledge->shape), deepest_mm));

  for (guint i = near->len; i > 0; i--)
    if (!is_in_the_way (strip, g_array_index (near, guint, i - 1)))
      g_array_remove_index (near, i - 1);
  return near;
}

static double
find_room_mm (const Strip *strip, double deepest_mm)
{
  g_autoptr (GArray) nothing = g_array_new (FALSE, FALSE, sizeof (guint));
  Strip bare = *strip;

  bare.near = nothing;
  return find_clear_mm (&bare, deepest_mm);
}

static void
look_before_front (Strip *strip, guint front, double deepest_mm, HcLanding *landing)
{
  double clear_mm, room_mm;

  strip->front = &strip->ledge->fronts[front];
  strip->near = find_near (strip, deepest_mm);
  clear_mm = find_clear_mm (strip, deepest_mm);
  room_mm = clear_mm < deepest_mm ? find_room_mm (strip, deepest_mm) : deepest_mm;
  landing->clear_mm = MAX (landing->clear_mm, clear_mm);
  if (front == 0 || room_mm > landing->room_mm)
    {
      landing->front = front;
      landing->room_mm = room_mm;
      landing->clear_before_mm = clear_mm;
      landing->blocker = clear_mm < room_mm ? find_blocker (strip, clear_mm) : NULL;
    }
  g_array_unref (strip->near);
}

/* @width_mm: how wide a bird needs it. */
void
hc_landing_find (const HcRoom *room, HcLedge *ledge, double width_mm)
{
  Strip strip = { .room = room, .ledge = ledge, .width_mm = width_mm };
  double deepest_mm = DEEPEST * ledge->height_mm;

  ledge->landing = (HcLanding){ 0 };
  for (guint i = 0; i < ledge->n_fronts && ledge->landing.clear_mm < deepest_mm; i++)
    look_before_front (&strip, i, deepest_mm, &ledge->landing);
}

/* The floor that should be clear. */
HcShape *
hc_landing_get_strip (const HcLedge *ledge, double depth_mm)
{
  const HcFront *front = &ledge->fronts[ledge->landing.front];
  HcPoint to = hc_point_add (front->from, hc_point_scale (front->along, front->length_mm));
  HcPoint out = hc_point_scale (front->out, depth_mm);
  HcPoint corners[] = { front->from, to, hc_point_add (to, out), hc_point_add (front->from, out) };

  return hc_shape_new_polygon (corners, G_N_ELEMENTS (corners));
}
