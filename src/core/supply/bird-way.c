/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * How far birds walk: from what they walk to, from turn to turn, nearest first. */
#include "config.h"

#include "supply/bird-way.h"

#include "supply/doorway.h"
#include "supply/stand.h"

/* A bird eats from just before an edge, which may itself lie on a wall. */
#define BEFORE_EDGE_MM 1.0

/* A place where a way turns or leads through an opening, how far it is from
 * there, and to what. */
typedef struct
{
  guint room;
  HcPoint at;
  int beyond;
  double distance_mm;
  const HcFitting *nearest;
  gboolean settled;
} Stop;

typedef struct
{
  guint room;
  const HcFitting *fitting;
} Aim;

struct _HcBirdWay
{
  HcRoom *const *rooms;
  guint n_rooms;
  HcWalker bird;
  HcBirdFloor **floors;
  GArray *aims;
  GArray *stops;
};

/* The nearest place of a fitting's edge. */
static HcPoint
nearest_on (const HcFitting *fitting, HcPoint from)
{
  const HcFittingValues *values = hc_fitting_get (fitting);
  HcPoint own = hc_point_turn (
      hc_point_subtract (from, hc_point (values->x_mm, values->y_mm)), -values->turn_deg);
  double off_mm = hc_point_length (own);

  if (values->form == HC_FORM_ROUND)
    own = hc_point_scale (own, off_mm > 0 ? MIN (1, values->width_mm / 2 / off_mm) : 0);
  else
    own = hc_point (CLAMP (own.x_mm, -values->width_mm / 2, values->width_mm / 2),
                    CLAMP (own.y_mm, -values->depth_mm / 2, values->depth_mm / 2));
  return hc_stand_to_plan (fitting, own);
}

static void
find_aims (HcBirdWay *self, HcFittingKind kind)
{
  for (guint room = 0; room < self->n_rooms; room++)
    {
      HcParts *fittings = hc_room_get (self->rooms[room])->fittings;

      for (guint i = 0; i < fittings->len; i++)
        {
          Aim aim = { room, fittings->pdata[i] };

          if (hc_fitting_get (aim.fitting)->kind == (int) kind)
            g_array_append_val (self->aims, aim);
        }
    }
}

static const HcBirdFloor *
floor_of (HcBirdWay *self, guint room)
{
  if (self->floors[room] == NULL)
    self->floors[room] = hc_bird_floor_new (self->rooms[room], &self->bird);
  return self->floors[room];
}

static gboolean
is_clear (HcBirdWay *self, guint room, HcPoint from, HcPoint to)
{
  return hc_bird_floor_is_clear (floor_of (self, room), from, to);
}

static gboolean
can_go_straight (HcBirdWay *self, const Aim *aim, HcPoint from)
{
  HcPoint on = nearest_on (aim->fitting, from);
  HcPoint back = hc_point_unit (hc_point_subtract (from, on));

  return is_clear (self, aim->room, from,
                   hc_point_add (on, hc_point_scale (back, BEFORE_EDGE_MM)));
}

/* What can be gone to straight from a place, if that is nearer than is known. */
static void
look_straight (HcBirdWay *self, guint room, HcPoint from, const HcFitting **nearest,
               double *distance_mm)
{
  for (guint i = 0; i < self->aims->len; i++)
    {
      const Aim *aim = &g_array_index (self->aims, Aim, i);
      double straight_mm = hc_point_distance (from, nearest_on (aim->fitting, from));

      if (aim->room != room || straight_mm >= *distance_mm
          || !can_go_straight (self, aim, from))
        continue;
      *distance_mm = straight_mm;
      *nearest = aim->fitting;
    }
}

static guint
add_stop (HcBirdWay *self, guint room, HcPoint at)
{
  Stop stop = { room, at, -1, G_MAXDOUBLE, NULL, FALSE };

  look_straight (self, room, at, &stop.nearest, &stop.distance_mm);
  g_array_append_val (self->stops, stop);
  return self->stops->len - 1;
}

static void
add_turns (HcBirdWay *self, guint room)
{
  g_autoptr (GArray) turns = hc_bird_floor_find_turns (floor_of (self, room));

  for (guint i = 0; i < turns->len; i++)
    add_stop (self, room, g_array_index (turns, HcPoint, i));
}

static gboolean
find_room (const HcBirdWay *self, const char *pen, guint *room)
{
  for (*room = 0; *room < self->n_rooms; (*room)++)
    if (g_strcmp0 (hc_pen_get_id (hc_room_get_pen (self->rooms[*room])), pen) == 0)
      return TRUE;
  return FALSE;
}

static gboolean
find_step (const HcBirdWay *self, guint room, const HcOpening *opening, HcPoint *at)
{
  HcDoorway doorway;

  if (!hc_doorway_find (self->rooms[room], opening, &doorway))
    return FALSE;
  *at = hc_doorway_get_point (&doorway, doorway.width_mm / 2, self->bird.width_mm / 2);
  return TRUE;
}

/* A stop on each side of an opening, each knowing the other. Every opening is met
 * in both its rooms; it is gone through once. */
static void
go_through (HcBirdWay *self, guint room, const HcOpening *opening)
{
  const HcRoomWall *wall = hc_room_get_wall_of (self->rooms[room], opening);
  HcPoint here, there;
  guint other, one, two;

  if (wall == NULL || !hc_opening_lets_birds_through (opening)
      || !find_room (self, wall->beyond, &other) || other <= room
      || !find_step (self, room, opening, &here) || !find_step (self, other, opening, &there))
    return;
  one = add_stop (self, room, here);
  two = add_stop (self, other, there);
  g_array_index (self->stops, Stop, one).beyond = (int) two;
  g_array_index (self->stops, Stop, two).beyond = (int) one;
}

static Stop *
nearest_open (HcBirdWay *self)
{
  Stop *best = NULL;

  for (guint i = 0; i < self->stops->len; i++)
    {
      Stop *stop = &g_array_index (self->stops, Stop, i);

      if (!stop->settled && stop->nearest != NULL
          && (best == NULL || stop->distance_mm < best->distance_mm))
        best = stop;
    }
  return best;
}

/* A stop is nearer by way of another that is settled. */
static void
come_from (HcBirdWay *self, Stop *stop, const Stop *by, gboolean through)
{
  double distance_mm = by->distance_mm + hc_point_distance (stop->at, by->at);

  if (stop->settled || distance_mm >= stop->distance_mm
      || (!through && !is_clear (self, stop->room, stop->at, by->at)))
    return;
  stop->distance_mm = distance_mm;
  stop->nearest = by->nearest;
}

static void
find_stops (HcBirdWay *self)
{
  Stop *by;

  self->stops = g_array_new (FALSE, FALSE, sizeof (Stop));
  for (guint room = 0; room < self->n_rooms; room++)
    {
      HcParts *openings = hc_room_get_openings (self->rooms[room]);

      add_turns (self, room);
      for (guint i = 0; i < openings->len; i++)
        go_through (self, room, openings->pdata[i]);
    }
  while ((by = nearest_open (self)) != NULL)
    {
      by->settled = TRUE;
      for (guint i = 0; i < self->stops->len; i++)
        {
          Stop *stop = &g_array_index (self->stops, Stop, i);

          if (by->beyond == (int) i || stop->room == by->room)
            come_from (self, stop, by, by->beyond == (int) i);
        }
    }
}

/**
 * hc_bird_way_new: (skip)
 * @rooms: (array length=n_rooms): rooms birds go to and fro between; they must
 *   outlive the way
 * @n_rooms: how many
 * @bird: how wide and how high the largest bird is
 * @kind: what it walks to
 *
 * Returns: (transfer full): ways to the nearest fitting of @kind
 */
HcBirdWay *
hc_bird_way_new (HcRoom *const *rooms, guint n_rooms, const HcWalker *bird, HcFittingKind kind)
{
  HcBirdWay *self = g_new0 (HcBirdWay, 1);

  self->rooms = rooms;
  self->n_rooms = n_rooms;
  self->bird = *bird;
  self->floors = g_new0 (HcBirdFloor *, n_rooms);
  self->aims = g_array_new (FALSE, FALSE, sizeof (Aim));
  find_aims (self, kind);
  return self;
}

void
hc_bird_way_free (HcBirdWay *self)
{
  for (guint room = 0; room < self->n_rooms; room++)
    g_clear_pointer (&self->floors[room], hc_bird_floor_free);
  g_clear_pointer (&self->stops, g_array_unref);
  g_array_unref (self->aims);
  g_free (self->floors);
  g_free (self);
}

static const Aim *
nearest_aim (const HcBirdWay *self, HcPoint from, double *distance_mm)
{
  const Aim *nearest = NULL;

  for (guint i = 0; i < self->aims->len; i++)
    {
      const Aim *aim = &g_array_index (self->aims, Aim, i);
      double straight_mm = hc_point_distance (from, nearest_on (aim->fitting, from));

      if (nearest != NULL && straight_mm >= *distance_mm)
        continue;
      *distance_mm = straight_mm;
      nearest = aim;
    }
  return nearest;
}

/**
 * hc_bird_way_find_straight: (skip)
 * @self: ways
 * @from: where a bird is
 * @distance_mm: (out): how far it is
 *
 * Returns: (transfer none) (nullable): the nearest fitting as the crow flies
 */
const HcFitting *
hc_bird_way_find_straight (const HcBirdWay *self, HcPoint from, double *distance_mm)
{
  const Aim *aim = nearest_aim (self, from, distance_mm);

  return aim != NULL ? aim->fitting : NULL;
}

/**
 * hc_bird_way_find: (skip)
 * @self: ways
 * @room: index of the room a bird is in
 * @from: where it is
 * @distance_mm: (out): how far it walks
 *
 * What nothing leads to is as far as it is straight: that it cannot be got to is
 * not told here.
 *
 * Returns: (transfer none) (nullable): the nearest fitting on foot
 */
const HcFitting *
hc_bird_way_find (HcBirdWay *self, guint room, HcPoint from, double *distance_mm)
{
  const Aim *straight = nearest_aim (self, from, distance_mm);
  const HcFitting *nearest = NULL;
  double walk_mm = G_MAXDOUBLE;

  if (straight == NULL)
    return NULL;
  if (straight->room == room && can_go_straight (self, straight, from))
    return straight->fitting;
  if (self->stops == NULL)
    find_stops (self);
  look_straight (self, room, from, &nearest, &walk_mm);
  for (guint i = 0; i < self->stops->len; i++)
    {
      const Stop *stop = &g_array_index (self->stops, Stop, i);
      double by_mm = stop->distance_mm + hc_point_distance (from, stop->at);

      if (stop->room != room || stop->nearest == NULL || by_mm >= walk_mm
          || !is_clear (self, room, from, stop->at))
        continue;
      walk_mm = by_mm;
      nearest = stop->nearest;
    }
  if (nearest == NULL)
    return straight->fitting;
  *distance_mm = walk_mm;
  return nearest;
}
