/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Rooms as values: what birds find inside the walls of a pen. */
#include "config.h"

#include "supply/room.h"

#include "supply/stand.h"

struct _HcRoom
{
  gatomicrefcount refs;
  HcPen *pen;
  HcRoof roof;
  HcShape *outline;
  GArray *walls;
  HcParts *openings;
  GPtrArray *footprints;
  HcNearby *nearby;
};

static void
clear_wall (gpointer wall)
{
  hc_wall_unref (((HcRoomWall *) wall)->wall);
}

static void
look_beyond (const HcLayout *layout, const HcPen *pen, const char *id, HcRoomWall *wall)
{
  HcPen *beside[2];
  const HcPen *other;

  hc_layout_get_pens_beside (layout, id, beside);
  other = beside[0] == pen ? beside[1] : beside[0];
  wall->beyond = g_intern_string (other != NULL ? hc_pen_get_id (other) : "");
  wall->beyond_is_run = other != NULL && hc_pen_get (other)->kind == HC_PEN_RUN;
  wall->beyond_is_covered = other != NULL && hc_pen_get (other)->roof == HC_ROOF_SOLID;
}

/* Its walls with their inside faces; none when they do not make a ring. */
static GArray *
find_walls (const HcLayout *layout, const HcPen *pen)
{
  g_autoptr (GArray) ring = hc_layout_get_pen_ring (layout, pen);
  GArray *walls = g_array_new (FALSE, TRUE, sizeof (HcRoomWall));
  char **ids = hc_pen_get (pen)->walls;

  g_array_set_clear_func (walls, clear_wall);
  for (guint i = 0; i < ring->len; i++)
    {
      HcRoomWall wall = { .wall = hc_wall_ref (hc_layout_get_wall (layout, ids[i])),
                          .from = g_array_index (ring, HcPoint, i),
                          .to = g_array_index (ring, HcPoint, (i + 1) % ring->len) };

      hc_layout_get_wall_line (layout, wall.wall, &wall.line_from, &wall.line_to);
      look_beyond (layout, pen, ids[i], &wall);
      g_array_append_val (walls, wall);
    }
  return walls;
}

static HcParts *
find_openings (const HcLayout *layout, const HcPen *pen)
{
  HcParts *all = hc_layout_get (layout)->openings;
  const char *const *walls = (const char *const *) hc_pen_get (pen)->walls;
  HcParts *openings = hc_parts_new ();

  for (guint i = 0; i < all->len; i++)
    if (g_strv_contains (walls, hc_opening_get (all->pdata[i])->wall))
      g_ptr_array_add (openings, hc_opening_ref (all->pdata[i]));
  return openings;
}

static HcShape *
make_outline (const GArray *walls)
{
  g_autofree HcPoint *ring = g_new (HcPoint, walls->len + 1);

  for (guint i = 0; i < walls->len; i++)
    ring[i] = g_array_index (walls, HcRoomWall, i).from;
  return walls->len < 3 ? hc_shape_new_empty () : hc_shape_new_polygon (ring, walls->len);
}

static void
lay_out_fittings (HcRoom *room)
{
  HcParts *fittings = hc_pen_get (room->pen)->fittings;
  g_autofree HcBox *boxes = g_new (HcBox, fittings->len + 1);

  room->footprints = g_ptr_array_new_with_free_func ((GDestroyNotify) hc_shape_unref);
  for (guint i = 0; i < fittings->len; i++)
    {
      HcShape *footprint = hc_stand_get_footprint (fittings->pdata[i]);

      boxes[i] = hc_shape_get_bounds (footprint);
      g_ptr_array_add (room->footprints, footprint);
    }
  room->nearby = hc_nearby_new (boxes, fittings->len);
}

/**
 * hc_room_new: (skip)
 * @layout: a layout
 * @pen: a pen of it
 * @roof: the roof over the pen
 *
 * Returns: (transfer full): the pen as birds find it
 */
HcRoom *
hc_room_new (const HcLayout *layout, HcPen *pen, const HcRoof *roof)
{
  HcRoom *room = g_new0 (HcRoom, 1);

  g_atomic_ref_count_init (&room->refs);
  room->pen = hc_pen_ref (pen);
  room->roof = *roof;
  room->walls = find_walls (layout, pen);
  room->outline = make_outline (room->walls);
  room->openings = find_openings (layout, pen);
  lay_out_fittings (room);
  return room;
}

HcRoom *
hc_room_ref (HcRoom *room)
{
  g_return_val_if_fail (room != NULL, NULL);
  g_atomic_ref_count_inc (&room->refs);
  return room;
}

void
hc_room_unref (HcRoom *room)
{
  g_return_if_fail (room != NULL);
  if (!g_atomic_ref_count_dec (&room->refs))
    return;
  hc_nearby_free (room->nearby);
  g_ptr_array_unref (room->footprints);
  g_ptr_array_unref (room->openings);
  g_array_unref (room->walls);
  hc_shape_unref (room->outline);
  hc_pen_unref (room->pen);
  g_free (room);
}

static gboolean
same_wall (const HcRoomWall *one, const HcRoomWall *other)
{
  return one->wall == other->wall && one->beyond == other->beyond
         && one->beyond_is_run == other->beyond_is_run
         && one->beyond_is_covered == other->beyond_is_covered
         && hc_point_equal (one->from, other->from)
         && hc_point_equal (one->line_from, other->line_from)
         && hc_point_equal (one->line_to, other->line_to);
}

static gboolean
same_walls (const GArray *a, const GArray *b)
{
  for (guint i = 0; i < a->len && a->len == b->len; i++)
    if (!same_wall (&g_array_index (a, HcRoomWall, i), &g_array_index (b, HcRoomWall, i)))
      return FALSE;
  return a->len == b->len;
}

static gboolean
same_pointers (const GPtrArray *a, const GPtrArray *b)
{
  for (guint i = 0; i < a->len && a->len == b->len; i++)
    if (a->pdata[i] != b->pdata[i])
      return FALSE;
  return a->len == b->len;
}

/**
 * hc_room_is_still: (skip)
 * @room: a room
 * @layout: another layout
 * @pen: a pen of it
 * @roof: the roof over the pen
 *
 * Returns: whether @pen in @layout is the same room: the same pen and walls,
 *   standing where they stood, with the same openings, roof and beyond
 */
gboolean
hc_room_is_still (const HcRoom *room, const HcLayout *layout, const HcPen *pen,
                  const HcRoof *roof)
{
  g_autoptr (GArray) walls = NULL;
  g_autoptr (HcParts) openings = NULL;

  if (room->pen != pen || !hc_roof_equal (&room->roof, roof))
    return FALSE;
  walls = find_walls (layout, pen);
  openings = find_openings (layout, pen);
  return same_walls (room->walls, walls) && same_pointers (room->openings, openings);
}

HcPen *
hc_room_get_pen (const HcRoom *room)
{
  return room->pen;
}

const HcPenValues *
hc_room_get (const HcRoom *room)
{
  return hc_pen_get (room->pen);
}

HcShape *
hc_room_get_outline (const HcRoom *room)
{
  return room->outline;
}

HcParts *
hc_room_get_openings (const HcRoom *room)
{
  return room->openings;
}

/**
 * hc_room_is_roofed: (skip)
 * @room: a room
 *
 * Returns: whether it is part of a house, and not a run
 */
gboolean
hc_room_is_roofed (const HcRoom *room)
{
  return hc_room_get (room)->kind == HC_PEN_INDOOR;
}

/**
 * hc_room_counts_shut_in: (skip)
 * @room: a room
 *
 * In bad weather, and under an order to keep birds in, a run counts only under
 * a solid roof: netting keeps out neither rain nor the droppings of wild birds.
 *
 * Returns: whether birds may use it then
 */
gboolean
hc_room_counts_shut_in (const HcRoom *room)
{
  return hc_room_is_roofed (room) || hc_room_get (room)->roof == HC_ROOF_SOLID;
}

const HcRoof *
hc_room_get_roof (const HcRoom *room)
{
  return &room->roof;
}

static gboolean
is_open_to_the_sky (const HcRoom *room)
{
  return hc_room_get (room)->roof == HC_ROOF_NONE;
}

/**
 * hc_room_get_ceiling_mm: (skip)
 * @room: a room
 * @at: a place in it
 *
 * Returns: the height of the ceiling there; without end under the open sky
 */
double
hc_room_get_ceiling_mm (const HcRoom *room, HcPoint at)
{
  return is_open_to_the_sky (room) ? G_MAXDOUBLE : hc_roof_get_height_mm (&room->roof, at);
}

/**
 * hc_room_get_ceiling_over_mm: (skip)
 * @room: a room
 * @thing: what stands in it
 *
 * No roof is lower between two places than at the lower of them.
 *
 * Returns: the height of the ceiling over @thing where it is lowest
 */
double
hc_room_get_ceiling_over_mm (const HcRoom *room, const HcShape *thing)
{
  double lowest_mm = G_MAXDOUBLE;
  guint n_points = 0;

  for (guint part = 0; part < hc_shape_get_n_parts (thing); part++)
    {
      const HcPoint *ring = hc_shape_get_ring (thing, part, 0, &n_points);

      for (guint i = 0; i < n_points; i++)
        lowest_mm = MIN (lowest_mm, hc_room_get_ceiling_mm (room, ring[i]));
    }
  return lowest_mm;
}

/**
 * hc_room_get_ceiling_along_mm: (skip)
 * @room: a room
 * @from: where a wall of it starts
 * @to: where the wall ends
 *
 * Returns: the height of the ceiling along the wall where it is highest
 */
double
hc_room_get_ceiling_along_mm (const HcRoom *room, HcPoint from, HcPoint to)
{
  return is_open_to_the_sky (room) ? G_MAXDOUBLE
                                   : hc_roof_get_highest_mm (&room->roof, from, to);
}

guint
hc_room_get_n_walls (const HcRoom *room)
{
  return room->walls->len;
}

const HcRoomWall *
hc_room_get_wall (const HcRoom *room, guint wall)
{
  g_return_val_if_fail (wall < room->walls->len, NULL);
  return &g_array_index (room->walls, HcRoomWall, wall);
}

/**
 * hc_room_get_wall_of: (skip)
 * @room: a room
 * @opening: one of its openings
 *
 * Returns: (nullable) (transfer none): the wall it is in; %NULL when the walls
 *   do not make a ring
 */
const HcRoomWall *
hc_room_get_wall_of (const HcRoom *room, const HcOpening *opening)
{
  for (guint i = 0; i < room->walls->len; i++)
    if (g_str_equal (hc_wall_get_id (hc_room_get_wall (room, i)->wall),
                     hc_opening_get (opening)->wall))
      return hc_room_get_wall (room, i);
  return NULL;
}

/**
 * hc_room_wall_is_outer: (skip)
 * @wall: a wall of a room
 *
 * Returns: whether the open air is on its other side, a run being open air
 */
gboolean
hc_room_wall_is_outer (const HcRoomWall *wall)
{
  return *wall->beyond == '\0' || wall->beyond_is_run;
}

/**
 * hc_room_get_footprint: (skip)
 * @room: a room
 * @fitting: index of one of its pen's fittings
 *
 * Returns: (transfer none): what it covers seen from above
 */
HcShape *
hc_room_get_footprint (const HcRoom *room, guint fitting)
{
  return g_ptr_array_index (room->footprints, fitting);
}

/**
 * hc_room_find_fittings: (skip)
 * @room: a room
 * @box: a part of it
 *
 * Returns: (transfer full) (element-type guint): indices of the fittings whose
 *   surrounding box touches @box, in order
 */
GArray *
hc_room_find_fittings (const HcRoom *room, HcBox box)
{
  return hc_nearby_find (room->nearby, box);
}
