/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A thing is served from the floor along one whole side of it, or through a
 * door or egg door by an arm. */
#include "config.h"

#include "needs/reach/service.h"

#include "base/shape-relate.h"
#include "supply/doorway.h"
#include "supply/stand.h"

#include <math.h>

/* A side is asked for a hand at least this often. */
#define HAND_EVERY_MM 300.0
#define N_SIDES 4
#define LINE_WIDTH_MM 1.0

typedef struct
{
  const HcWayThrough *through;
  HcHouse *house;
  guint room;
  double arm_mm;
} Service;

/**
 * hc_service_is_wanted: (skip)
 * @fitting: something in a room
 *
 * Returns: whether somebody fills, empties, scrapes or looks after it
 */
gboolean
hc_service_is_wanted (const HcFitting *fitting)
{
  switch (hc_fitting_get (fitting)->kind)
    {
    case HC_FITTING_DUST_BATH:
    case HC_FITTING_RAMP:
    case HC_FITTING_PLATFORM:
    case HC_FITTING_POST:
      return FALSE;
    default:
      return TRUE;
    }
}

static gboolean
is_near_floor (const Service *service, HcPoint hand)
{
  const HcWalker *walker = hc_way_through_get_walker (service->through);
  GPtrArray *reached = hc_way_through_get_reached (service->through, service->room);

  for (guint i = 0; i < reached->len; i++)
    if (hc_shape_distance_to_point_mm (reached->pdata[i], hand)
        <= walker->width_mm / 2 + service->arm_mm)
      return TRUE;
  return FALSE;
}

/* The keeper stands outside, or on the floor of the room beyond. */
static gboolean
stands_beyond (const Service *service, const HcRoomWall *wall, const HcOpening *opening)
{
  const HcWalker *walker = hc_way_through_get_walker (service->through);
  GPtrArray *reached;
  HcDoorway doorway;
  HcPoint before;
  guint beyond;

  if (*wall->beyond == '\0')
    return TRUE;
  if (!hc_house_find_room (service->house, wall->beyond, &beyond)
      || !hc_doorway_find (hc_house_get_room (service->house, beyond), opening, &doorway))
    return FALSE;
  before = hc_doorway_get_point (&doorway, doorway.width_mm / 2, walker->width_mm / 2);
  reached = hc_way_through_get_reached (service->through, beyond);
  for (guint i = 0; i < reached->len; i++)
    if (hc_shape_distance_to_point_mm (reached->pdata[i], before) <= walker->width_mm / 2)
      return TRUE;
  return FALSE;
}

static gboolean
is_reached_through (const Service *service, const HcOpening *opening)
{
  const HcRoom *room = hc_house_get_room (service->house, service->room);
  const HcRoomWall *wall = hc_room_get_wall_of (room, opening);
  int kind = hc_opening_get (opening)->kind;

  return wall != NULL && (kind == HC_OPENING_KEEPER_DOOR || kind == HC_OPENING_EGG_DOOR)
         && stands_beyond (service, wall, opening);
}

static double
distance_to_doorway_mm (const HcDoorway *doorway, HcPoint p)
{
  HcPoint from_first = hc_point_subtract (p, doorway->first);
  double along_mm = CLAMP (hc_point_dot (from_first, doorway->along), 0, doorway->width_mm);

  return hc_point_distance (p, hc_doorway_get_point (doorway, along_mm, 0));
}

static gboolean
is_near_doorway (const Service *service, HcPoint hand)
{
  const HcRoom *room = hc_house_get_room (service->house, service->room);
  HcParts *openings = hc_room_get_openings (room);
  HcDoorway doorway;

  for (guint i = 0; i < openings->len; i++)
    if (is_reached_through (service, openings->pdata[i])
        && hc_doorway_find (room, openings->pdata[i], &doorway)
        && distance_to_doorway_mm (&doorway, hand) <= service->arm_mm)
      return TRUE;
  return FALSE;
}

/* The corners of a side, of a thing that stands with its front towards its own y. */
static void
find_side (const HcFitting *fitting, guint side, HcPoint *from, HcPoint *to)
{
  const HcFittingValues *values = hc_fitting_get (fitting);
  double x = values->width_mm / 2;
  double y = (values->form == HC_FORM_ROUND ? values->width_mm : values->depth_mm) / 2;
  const HcPoint corners[N_SIDES + 1] = { { x, y }, { -x, y }, { -x, -y }, { x, -y }, { x, y } };

  *from = hc_stand_to_plan (fitting, corners[side]);
  *to = hc_stand_to_plan (fitting, corners[side + 1]);
}

static gboolean
is_served_along (const Service *service, HcPoint from, HcPoint to,
                 gboolean (*is_near) (const Service *service, HcPoint hand))
{
  guint n = (guint) ceil (hc_point_distance (from, to) / HAND_EVERY_MM) + 1;

  for (guint i = 0; i < n; i++)
    if (!is_near (service, hc_point_between (from, to, (i + 0.5) / n)))
      return FALSE;
  return TRUE;
}

/* Eggs are taken out at the front, or from behind through an egg door. */
static gboolean
is_served (const Service *service, const HcFitting *fitting)
{
  const HcFittingValues *values = hc_fitting_get (fitting);
  guint n_sides = values->kind == HC_FITTING_NEST_BOXES ? 1 : N_SIDES;
  HcPoint from, to;

  for (guint side = 0; side < n_sides; side++)
    {
      find_side (fitting, side, &from, &to);
      if (is_served_along (service, from, to, is_near_floor))
        return TRUE;
    }
  from = hc_stand_to_plan (fitting, hc_point (-values->width_mm / 2, 0));
  to = hc_stand_to_plan (fitting, hc_point (values->width_mm / 2, 0));
  return is_served_along (service, from, to, is_near_doorway);
}

/**
 * hc_service_reaches: (skip)
 * @through: how far the keeper gets
 * @house: the house
 * @room: index of a room
 * @fitting: index of something in it
 * @arm_mm: how far a hand reaches
 *
 * Returns: whether the keeper can serve it
 */
gboolean
hc_service_reaches (const HcWayThrough *through, HcHouse *house, guint room, guint fitting,
                    double arm_mm)
{
  Service service = { through, house, room, arm_mm };
  HcParts *fittings = hc_room_get (hc_house_get_room (house, room))->fittings;

  return is_served (&service, fittings->pdata[fitting]);
}

/**
 * hc_service_reaches_in: (skip)
 * @through: how far the keeper gets
 * @house: the house
 * @room: index of a room
 *
 * Returns: whether the keeper gets to a door of the room, be it only to put
 *   an arm through
 */
gboolean
hc_service_reaches_in (const HcWayThrough *through, HcHouse *house, guint room)
{
  Service service = { through, house, room, 0 };
  HcParts *openings = hc_room_get_openings (hc_house_get_room (house, room));

  for (guint i = 0; i < openings->len; i++)
    if (is_reached_through (&service, openings->pdata[i]))
      return TRUE;
  return FALSE;
}

/**
 * hc_service_has_outside_door: (skip)
 * @house: the house
 * @room: index of a room
 *
 * Returns: whether a keeper door leads straight outside
 */
gboolean
hc_service_has_outside_door (HcHouse *house, guint room)
{
  const HcRoom *here = hc_house_get_room (house, room);
  HcParts *openings = hc_room_get_openings (here);

  for (guint i = 0; i < openings->len; i++)
    {
      const HcRoomWall *wall = hc_room_get_wall_of (here, openings->pdata[i]);

      if (wall != NULL && *wall->beyond == '\0'
          && hc_opening_get (openings->pdata[i])->kind == HC_OPENING_KEEPER_DOOR)
        return TRUE;
    }
  return FALSE;
}

static HcPoint
find_nearest_reached (const Service *service, HcShape *footprint)
{
  GPtrArray *reached = hc_way_through_get_reached (service->through, service->room);
  HcPoint nearest = { 0, 0 };
  double least_mm = G_MAXDOUBLE;

  for (guint i = 0; i < reached->len; i++)
    {
      HcPoint on_floor, on_thing;
      double this_mm
          = hc_shape_find_nearest (reached->pdata[i], footprint, &on_floor, &on_thing);

      if (this_mm >= least_mm)
        continue;
      least_mm = this_mm;
      nearest = on_floor;
    }
  return nearest;
}

static HcShape *
make_line (HcPoint from, HcPoint to)
{
  HcPoint way = hc_point_subtract (to, from);

  return hc_shape_new_rectangle (hc_point_between (from, to, 0.5), hc_point_length (way),
                                 LINE_WIDTH_MM, atan2 (way.y_mm, way.x_mm) * 180 / G_PI);
}

/**
 * hc_service_find_blocker: (skip)
 * @through: how far the keeper gets, at least into the room
 * @house: the house
 * @room: index of a room
 * @fitting: index of something in it that cannot be served
 *
 * Returns: (nullable) (transfer none): id of what stands nearest to the
 *   straight way there from where the keeper can stand
 */
const char *
hc_service_find_blocker (const HcWayThrough *through, HcHouse *house, guint room, guint fitting)
{
  Service service = { through, house, room, 0 };
  const HcRoom *here = hc_house_get_room (house, room);
  HcParts *fittings = hc_room_get (here)->fittings;
  const HcFittingValues *wanted = hc_fitting_get (fittings->pdata[fitting]);
  HcPoint ends[2] = { find_nearest_reached (&service, hc_room_get_footprint (here, fitting)),
                      { wanted->x_mm, wanted->y_mm } };
  g_autoptr (HcShape) straight = make_line (ends[0], ends[1]);
  const char *blocker = NULL;
  double least_mm = hc_way_through_get_walker (through)->width_mm;

  for (guint i = 0; i < fittings->len; i++)
    {
      double this_mm;

      if (i == fitting
          || !hc_walker_is_stopped_by (hc_way_through_get_walker (through), fittings->pdata[i]))
        continue;
      this_mm = hc_shape_distance_mm (straight, hc_room_get_footprint (here, i));
      if (this_mm >= least_mm)
        continue;
      least_mm = this_mm;
      blocker = hc_fitting_get_id (fittings->pdata[i]);
    }
  return blocker;
}
