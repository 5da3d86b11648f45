/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * From the doors that lead outside, from piece of floor to piece of floor. */
#include "config.h"

#include "supply/way-through.h"

#include "base/shape-relate.h"
#include "supply/doorway.h"

/* Where the middle of somebody in a doorway may be off the floor it enters. */
#define STEP_MM 5.0

/* One piece of floor, cut off from the others of its room. */
typedef struct
{
  guint room;
  HcShape *floor;
  gboolean reached;
} Piece;

struct _HcWayThrough
{
  HcHouse *house;
  HcWalker walker;
  GArray *pieces;
  GPtrArray *reached;
};

static void
clear_piece (gpointer piece)
{
  hc_shape_unref (((Piece *) piece)->floor);
}

static void
add_pieces (HcWayThrough *through, guint room, HcShape *way)
{
  for (guint part = 0; part < hc_shape_get_n_parts (way); part++)
    {
      Piece piece = { room, hc_shape_get_part (way, part), FALSE };

      g_array_append_val (through->pieces, piece);
    }
}

static gboolean
lets_through (const HcWayThrough *through, const HcOpening *opening)
{
  return hc_opening_get (opening)->kind == HC_OPENING_KEEPER_DOOR
         && hc_opening_get (opening)->width_mm >= through->walker.width_mm;
}

static gboolean
is_before_door (const HcWayThrough *through, const Piece *piece, const HcOpening *door)
{
  double half_mm = through->walker.width_mm / 2;
  g_autoptr (HcShape) step = NULL;
  HcDoorway doorway;

  if (!hc_doorway_find (hc_house_get_room (through->house, piece->room), door, &doorway))
    return FALSE;
  step = hc_doorway_get_strip (&doorway, half_mm - STEP_MM, half_mm + STEP_MM,
                               half_mm - STEP_MM);
  return hc_shape_intersects (piece->floor, step);
}

/* Everybody is outside; inside, those who have come to the other side. */
static gboolean
is_beyond_door (const HcWayThrough *through, const HcRoomWall *wall, const HcOpening *door)
{
  guint room;

  if (*wall->beyond == '\0')
    return TRUE;
  return hc_house_find_room (through->house, wall->beyond, &room)
         && hc_way_through_gets_to (through, room, door);
}

static gboolean
comes_in (const HcWayThrough *through, const Piece *piece)
{
  const HcRoom *room = hc_house_get_room (through->house, piece->room);
  HcParts *openings = hc_room_get_openings (room);

  for (guint i = 0; i < openings->len; i++)
    {
      const HcRoomWall *wall = hc_room_get_wall_of (room, openings->pdata[i]);

      if (wall != NULL && lets_through (through, openings->pdata[i])
          && is_before_door (through, piece, openings->pdata[i])
          && is_beyond_door (through, wall, openings->pdata[i]))
        return TRUE;
    }
  return FALSE;
}

static gboolean
go_on (HcWayThrough *through)
{
  gboolean got_further = FALSE;

  for (guint i = 0; i < through->pieces->len; i++)
    {
      Piece *piece = &g_array_index (through->pieces, Piece, i);

      if (piece->reached || !comes_in (through, piece))
        continue;
      piece->reached = TRUE;
      got_further = TRUE;
      g_ptr_array_add (g_ptr_array_index (through->reached, piece->room), piece->floor);
    }
  return got_further;
}

/**
 * hc_way_through_new: (skip)
 * @house: a house
 * @walker: who walks through it
 * @find_way: (scope call): finds where @walker can stand in a room; what it
 *   returns is owned by whoever keeps it
 * @data: for @find_way
 *
 * Returns: (transfer full): how far @walker gets who comes from outside
 */
HcWayThrough *
hc_way_through_new (HcHouse *house, const HcWalker *walker, HcWayFunc find_way, gpointer data)
{
  HcWayThrough *through = g_new0 (HcWayThrough, 1);

  through->house = hc_house_ref (house);
  through->walker = *walker;
  through->pieces = g_array_new (FALSE, FALSE, sizeof (Piece));
  through->reached = g_ptr_array_new_with_free_func ((GDestroyNotify) g_ptr_array_unref);
  g_array_set_clear_func (through->pieces, clear_piece);
  for (guint room = 0; room < hc_house_get_n_rooms (house); room++)
    {
      add_pieces (through, room, find_way (hc_house_get_room (house, room), walker, data));
      g_ptr_array_add (through->reached, g_ptr_array_new ());
    }
  while (go_on (through))
    continue;
  return through;
}

void
hc_way_through_free (HcWayThrough *through)
{
  g_ptr_array_unref (through->reached);
  g_array_unref (through->pieces);
  hc_house_unref (through->house);
  g_free (through);
}

const HcWalker *
hc_way_through_get_walker (const HcWayThrough *through)
{
  return &through->walker;
}

/**
 * hc_way_through_get_reached: (skip)
 * @through: a way through a house
 * @room: index of a room
 *
 * Returns: (transfer none) (element-type HcShape): where the middle of the
 *   walker can be in it
 */
GPtrArray *
hc_way_through_get_reached (const HcWayThrough *through, guint room)
{
  return g_ptr_array_index (through->reached, room);
}

gboolean
hc_way_through_enters (const HcWayThrough *through, guint room)
{
  return hc_way_through_get_reached (through, room)->len > 0;
}

/**
 * hc_way_through_gets_to: (skip)
 * @through: a way through a house
 * @room: index of a room
 * @opening: a door in one of its walls
 *
 * Returns: whether the walker can stand inside @room before @opening
 */
gboolean
hc_way_through_gets_to (const HcWayThrough *through, guint room, const HcOpening *opening)
{
  for (guint i = 0; i < through->pieces->len; i++)
    {
      const Piece *piece = &g_array_index (through->pieces, Piece, i);

      if (piece->room == room && piece->reached && is_before_door (through, piece, opening))
        return TRUE;
    }
  return FALSE;
}
