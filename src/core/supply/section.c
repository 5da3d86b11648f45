/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Walls, roof and things of a house as they are seen from a cut. */
#include "config.h"

#include "supply/section.h"

#include "base/shape-line.h"
#include "base/shape-relate.h"
#include "supply/stand.h"

#include <math.h>

/* Where the cut runs, and the way it is looked: to the right of its own way on
 * screen, y running down. */
typedef struct
{
  HcPoint from;
  HcPoint to;
  HcPoint along;
  HcPoint into;
  GArray *items;
} Look;

/* What lies between two places along the cut, and how deep. */
typedef struct
{
  double left_mm, right_mm;
  double near_mm, far_mm;
} Reach;

static double
along_mm (const Look *look, HcPoint at)
{
  return hc_point_dot (hc_point_subtract (at, look->from), look->along);
}

static double
depth_mm (const Look *look, HcPoint at)
{
  return hc_point_dot (hc_point_subtract (at, look->from), look->into);
}

static Reach
reach_of (const Look *look, const HcPoint *points, guint n_points)
{
  Reach reach = { G_MAXDOUBLE, -G_MAXDOUBLE, G_MAXDOUBLE, -G_MAXDOUBLE };

  for (guint i = 0; i < n_points; i++)
    {
      reach.left_mm = MIN (reach.left_mm, along_mm (look, points[i]));
      reach.right_mm = MAX (reach.right_mm, along_mm (look, points[i]));
      reach.near_mm = MIN (reach.near_mm, depth_mm (look, points[i]));
      reach.far_mm = MAX (reach.far_mm, depth_mm (look, points[i]));
    }
  return reach;
}

static gboolean
is_seen (const Reach *reach)
{
  return reach->far_mm > -HC_SHAPE_TOUCH_MM;
}

/* An item with no outline yet. */
static HcSectionItem *
add_item (const Look *look, HcSectionKind kind, const char *id, const Reach *reach)
{
  HcSectionItem item = { kind, g_intern_string (id), reach->near_mm < -HC_SHAPE_TOUCH_MM,
                         MAX (reach->near_mm, 0),
                         g_array_new (FALSE, FALSE, sizeof (HcPoint)) };

  g_array_append_val (look->items, item);
  return &g_array_index (look->items, HcSectionItem, look->items->len - 1);
}

static void
add_point (HcSectionItem *item, double x_mm, double z_mm)
{
  HcPoint point = { x_mm, z_mm };

  g_array_append_val (item->outline, point);
}

static void
add_box (HcSectionItem *item, double left_mm, double right_mm, double bottom_mm, double top_mm)
{
  add_point (item, left_mm, bottom_mm);
  add_point (item, right_mm, bottom_mm);
  add_point (item, right_mm, top_mm);
  add_point (item, left_mm, top_mm);
}

/* An outer wall as high as the eaves bears the roof: its gable is part of it. */
static gboolean
bears_roof (const HcRoom *room, const HcRoomWall *wall)
{
  const HcWallValues *values = hc_wall_get (wall->wall);

  return values->kind == HC_WALL_SOLID && hc_room_get (room)->roof == HC_ROOF_SOLID
         && hc_room_wall_is_outer (wall)
         && values->height_mm >= hc_room_get_roof (room)->eaves_mm - HC_SHAPE_TOUCH_MM;
}

static double
wall_top_mm (const HcRoom *room, const HcRoomWall *wall, HcPoint at)
{
  double own_mm = hc_wall_get (wall->wall)->height_mm;
  double roof_mm = hc_roof_get_height_mm (hc_room_get_roof (room), at);

  return own_mm > 0 && !bears_roof (room, wall) ? MIN (own_mm, roof_mm) : roof_mm;
}

/* A wall the cut goes through is as thick as the cut is slanting to it. */
static void
add_cut_wall (const Look *look, const HcRoom *room, const HcRoomWall *wall, const Reach *reach)
{
  HcPoint way = hc_point_unit (hc_point_subtract (wall->line_to, wall->line_from));
  double share = depth_mm (look, wall->line_from)
                 / (depth_mm (look, wall->line_from) - depth_mm (look, wall->line_to));
  HcPoint at = hc_point_between (wall->line_from, wall->line_to, share);
  double half_mm = hc_wall_get (wall->wall)->thickness_mm / 2
                   / MAX (fabs (hc_point_dot (way, look->into)), 0.01);
  HcSectionItem *item
      = add_item (look, HC_SECTION_WALL, hc_wall_get_id (wall->wall), reach);

  add_box (item, along_mm (look, at) - half_mm, along_mm (look, at) + half_mm, 0,
           wall_top_mm (room, wall, at));
}

/* Its gable has a point where it passes under the ridge. */
static void
add_wall_beyond (const Look *look, const HcRoom *room, const HcRoomWall *wall,
                 const Reach *reach)
{
  const HcRoof *roof = hc_room_get_roof (room);
  double here_mm = hc_point_dot (wall->from, roof->across) - roof->ridge_at_mm;
  double there_mm = hc_point_dot (wall->to, roof->across) - roof->ridge_at_mm;
  HcSectionItem *item
      = add_item (look, HC_SECTION_WALL, hc_wall_get_id (wall->wall), reach);

  add_point (item, along_mm (look, wall->from), 0);
  add_point (item, along_mm (look, wall->to), 0);
  add_point (item, along_mm (look, wall->to), wall_top_mm (room, wall, wall->to));
  if (here_mm * there_mm < 0)
    {
      HcPoint under = hc_point_between (wall->from, wall->to, here_mm / (here_mm - there_mm));

      add_point (item, along_mm (look, under), wall_top_mm (room, wall, under));
    }
  add_point (item, along_mm (look, wall->from), wall_top_mm (room, wall, wall->from));
}

static void
add_walls (const Look *look, const HcRoom *room)
{
  for (guint i = 0; i < hc_room_get_n_walls (room); i++)
    {
      const HcRoomWall *wall = hc_room_get_wall (room, i);
      Reach reach = reach_of (look, (HcPoint[]){ wall->from, wall->to }, 2);

      if (!is_seen (&reach))
        continue;
      if (reach.near_mm < -HC_SHAPE_TOUCH_MM)
        add_cut_wall (look, room, wall, &reach);
      else
        add_wall_beyond (look, room, wall, &reach);
    }
}

/* An opening is seen in the face of its wall, not behind it. */
static void
bring_to_face (const Look *look, const HcRoomWall *wall, Reach *reach)
{
  Reach face = reach_of (look, (HcPoint[]){ wall->from, wall->to }, 2);

  if (reach->near_mm >= -HC_SHAPE_TOUCH_MM && face.near_mm >= -HC_SHAPE_TOUCH_MM)
    reach->near_mm = MIN (reach->near_mm, face.near_mm);
}

static void
add_openings (const Look *look, const HcRoom *room)
{
  HcParts *openings = hc_room_get_openings (room);

  for (guint i = 0; i < openings->len; i++)
    {
      const HcOpeningValues *values = hc_opening_get (openings->pdata[i]);
      const HcRoomWall *wall = hc_room_get_wall_of (room, openings->pdata[i]);
      HcPoint way, ends[2];
      Reach reach;

      if (wall == NULL)
        continue;
      way = hc_point_unit (hc_point_subtract (wall->line_to, wall->line_from));
      for (int side = 0; side < 2; side++)
        ends[side] = hc_point_add (
            wall->line_from,
            hc_point_scale (way, values->along_mm + (side - 0.5) * values->width_mm));
      reach = reach_of (look, ends, 2);
      bring_to_face (look, wall, &reach);
      if (is_seen (&reach))
        add_box (add_item (look, HC_SECTION_OPENING, hc_opening_get_id (openings->pdata[i]),
                           &reach),
                 reach.left_mm, reach.right_mm, values->sill_mm,
                 values->sill_mm + values->height_mm);
    }
}

static void
add_bars (const Look *look, const HcFitting *roost)
{
  const HcFittingValues *values = hc_fitting_get (roost);

  for (int i = 0; i < values->bars; i++)
    {
      HcBar bar;
      HcPoint way, aside, corners[4];
      Reach reach;

      hc_stand_get_bar (roost, i, &bar);
      way = hc_point_unit (hc_point_subtract (bar.to, bar.from));
      aside = hc_point_scale (hc_point (-way.y_mm, way.x_mm), bar.width_mm / 2);
      corners[0] = hc_point_add (bar.from, aside);
      corners[1] = hc_point_subtract (bar.from, aside);
      corners[2] = hc_point_add (bar.to, aside);
      corners[3] = hc_point_subtract (bar.to, aside);
      reach = reach_of (look, corners, G_N_ELEMENTS (corners));
      if (is_seen (&reach))
        add_box (add_item (look, HC_SECTION_BAR, hc_fitting_get_id (roost), &reach),
                 reach.left_mm, reach.right_mm, bar.height_mm - values->height_mm,
                 bar.height_mm);
    }
}

static void
add_fitting (const Look *look, const HcRoom *room, guint index)
{
  HcFitting *fitting = hc_room_get (room)->fittings->pdata[index];
  HcShape *footprint = hc_room_get_footprint (room, index);
  double bottom_mm, top_mm;
  const HcPoint *ring;
  guint n_points;
  Reach reach;

  if (hc_fitting_get (fitting)->kind == HC_FITTING_ROOST)
    {
      add_bars (look, fitting);
      return;
    }
  if (hc_shape_is_empty (footprint))
    return;
  ring = hc_shape_get_ring (footprint, 0, 0, &n_points);
  reach = reach_of (look, ring, n_points);
  hc_stand_get_heights (fitting, &bottom_mm, &top_mm);
  if (is_seen (&reach))
    add_box (add_item (look, HC_SECTION_FITTING, hc_fitting_get_id (fitting), &reach),
             reach.left_mm, reach.right_mm, bottom_mm, top_mm);
}

static void
add_roof_point (HcSectionItem *item, const Look *look, const HcRoom *room, double at_mm)
{
  HcPoint at = hc_point_add (look->from, hc_point_scale (look->along, at_mm));

  add_point (item, at_mm, hc_roof_get_height_mm (hc_room_get_roof (room), at));
}

/* The roof's underside over each stretch of the cut that is inside. */
static void
add_roof (const Look *look, const HcRoom *room)
{
  const HcRoof *roof = hc_room_get_roof (room);
  g_autoptr (GArray) inside
      = hc_shape_clip_line (hc_room_get_outline (room), look->from, look->to);
  double rises = hc_point_dot (look->along, roof->across);
  double ridge_mm = rises != 0 ? (roof->ridge_at_mm - hc_point_dot (look->from, roof->across))
                                     / rises
                               : -1;

  for (guint i = 0; hc_room_get (room)->roof != HC_ROOF_NONE && i < inside->len; i++)
    {
      const HcStretch *stretch = &g_array_index (inside, HcStretch, i);
      Reach cut = { stretch->from_mm, stretch->to_mm, -1, 0 };
      HcSectionItem *item = add_item (look, HC_SECTION_ROOF,
                                      hc_pen_get_id (hc_room_get_pen (room)), &cut);

      add_roof_point (item, look, room, stretch->from_mm);
      if (ridge_mm > stretch->from_mm && ridge_mm < stretch->to_mm)
        add_roof_point (item, look, room, ridge_mm);
      add_roof_point (item, look, room, stretch->to_mm);
    }
}

static void
clear_item (gpointer item)
{
  g_array_unref (((HcSectionItem *) item)->outline);
}

static int
compare_depths (gconstpointer a, gconstpointer b)
{
  const HcSectionItem *one = a;
  const HcSectionItem *other = b;

  if (one->cut != other->cut)
    return one->cut - other->cut;
  return (one->depth_mm < other->depth_mm) - (one->depth_mm > other->depth_mm);
}

/**
 * hc_section_look: (skip)
 * @house: a house
 * @from: where the cut starts
 * @to: where it ends
 *
 * It is looked to the right of the way from @from to @to, as seen on screen;
 * what is behind is not seen.
 *
 * Returns: (transfer full) (element-type HcSectionItem): what is seen, farthest
 *   first and what is cut last, so that painting in order hides rightly
 */
GArray *
hc_section_look (const HcHouse *house, HcPoint from, HcPoint to)
{
  HcPoint along = hc_point_unit (hc_point_subtract (to, from));
  Look look = { from, to, along, { -along.y_mm, along.x_mm },
                g_array_new (FALSE, FALSE, sizeof (HcSectionItem)) };

  g_array_set_clear_func (look.items, clear_item);
  for (guint i = 0; i < hc_house_get_n_rooms (house); i++)
    {
      HcRoom *room = hc_house_get_room (house, i);

      add_walls (&look, room);
      add_openings (&look, room);
      add_roof (&look, room);
      for (guint j = 0; j < hc_room_get (room)->fittings->len; j++)
        add_fitting (&look, room, j);
    }
  g_array_sort (look.items, compare_depths);
  return look.items;
}
