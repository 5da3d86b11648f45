/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Splits a wall at a corner and joins two walls that meet at one; pens and
 * openings keep what they had. */
#include "config.h"

#include "plan/split-wall.h"

#include "plan/openings-follow.h"
#include "plan/wall-corners.h"

#include <glib/gi18n-lib.h>

static void
put_wall (HcLayoutValues *values, HcWall *wall, const char *id, const char *from, const char *to)
{
  HcWallValues ends = *hc_wall_get (wall);
  g_autoptr (HcWall) renamed = hc_part_with_id (wall, id);
  g_autoptr (HcWall) changed = NULL;

  ends.from = (char *) from;
  ends.to = (char *) to;
  changed = hc_wall_with (renamed, &ends);
  hc_edit_put (&values->walls, changed);
}

static void
put_corner (HcLayoutValues *values, const char *id, HcPoint at)
{
  HcCornerValues place = { at.x_mm, at.y_mm };
  g_autoptr (HcCorner) corner = hc_corner_new (id, &place);

  hc_edit_put (&values->corners, corner);
}

/* Whether the ring of @pen runs through wall @index from its start to its end. */
static gboolean
runs_forward (const HcLayout *layout, char **walls, guint index)
{
  guint n = g_strv_length (walls);
  HcWall *wall = hc_layout_get_wall (layout, walls[index]);
  HcWall *before = hc_layout_get_wall (layout, walls[(index + n - 1) % n]);

  return hc_wall_touches (before, hc_wall_get (wall)->from);
}

static char **
ring_with_half (const HcLayout *layout, char **walls, const char *wall, const char *half)
{
  g_autoptr (GStrvBuilder) ring = g_strv_builder_new ();

  for (guint i = 0; walls[i] != NULL; i++)
    {
      gboolean split = g_str_equal (walls[i], wall);
      gboolean forward = split && runs_forward (layout, walls, i);

      if (split && !forward)
        g_strv_builder_add (ring, half);
      g_strv_builder_add (ring, walls[i]);
      if (split && forward)
        g_strv_builder_add (ring, half);
    }
  return g_strv_builder_end (ring);
}

static char **
ring_without (char **walls, const char *wall)
{
  g_autoptr (GStrvBuilder) ring = g_strv_builder_new ();

  for (guint i = 0; walls[i] != NULL; i++)
    if (!g_str_equal (walls[i], wall))
      g_strv_builder_add (ring, walls[i]);
  return g_strv_builder_end (ring);
}

static void
put_ring (HcLayoutValues *values, HcPen *pen, char **walls)
{
  HcPenValues ring = *hc_pen_get (pen);
  g_autoptr (HcPen) changed = NULL;

  ring.walls = walls;
  changed = hc_pen_with (pen, &ring);
  hc_edit_put (&values->pens, changed);
}

static gboolean
has_room_for_corner (const HcLayout *layout, HcWall *wall, HcPoint at, GError **error)
{
  HcPoint from, to;

  if (wall == NULL || !hc_layout_get_wall_line (layout, wall, &from, &to))
    hc_edit_refuse (error, _("That wall is no longer in the plan. Choose another."));
  else if (hc_point_distance (at, from) < HC_WALL_JOIN_MM
           || hc_point_distance (at, to) < HC_WALL_JOIN_MM)
    hc_edit_refuse (error, _("There is a corner already. Choose a place between two corners."));
  else
    return TRUE;
  return FALSE;
}

static HcPoint
on_the_wall (const HcLayout *layout, const HcWall *wall, HcPoint at)
{
  HcPoint from = { 0, 0 };
  HcPoint to = { 0, 0 };

  hc_layout_get_wall_line (layout, wall, &from, &to);
  return hc_point_between (from, to, hc_point_along (at, from, to));
}

/**
 * hc_layout_split_wall: (skip)
 * @layout: a layout
 * @wall: id of a wall
 * @at: where it is split; the nearest place on the wall's line counts
 * @new_corner: an id for the corner
 * @new_wall: an id for the half that ends where the wall ended
 * @error: says why not
 *
 * Pens on both sides get both halves. Openings stay whole, in the half they
 * are in; one that stood across the corner moves aside.
 *
 * Returns: (transfer full): the layout with the wall split, or %NULL
 */
HcLayout *
hc_layout_split_wall (HcLayout *layout, const char *wall, HcPoint at, const char *new_corner,
                      const char *new_wall, GError **error)
{
  const char *const whole[] = { wall, NULL };
  const char *const halves[] = { wall, new_wall, NULL };
  g_auto (HcLayoutValues) values = hc_edit_hold_layout (layout);
  HcWall *split = hc_layout_get_wall (layout, wall);
  HcPen *beside[2];
  g_autoptr (HcLayout) after = NULL;

  if (!has_room_for_corner (layout, split, at, error))
    return NULL;
  put_corner (&values, new_corner, on_the_wall (layout, split, at));
  put_wall (&values, split, wall, hc_wall_get (split)->from, new_corner);
  put_wall (&values, split, new_wall, new_corner, hc_wall_get (split)->to);
  hc_layout_get_pens_beside (layout, wall, beside);
  for (guint i = 0; i < 2 && beside[i] != NULL; i++)
    {
      g_auto (GStrv) ring
          = ring_with_half (layout, hc_pen_get (beside[i])->walls, wall, new_wall);

      put_ring (&values, beside[i], ring);
    }
  after = hc_layout_with (layout, &values);
  return hc_openings_follow (layout, after, whole, halves, error);
}

static gboolean
have_same_pens (const HcLayout *layout, const HcWall *a, const HcWall *b)
{
  HcPen *one[2], *other[2];

  hc_layout_get_pens_beside (layout, hc_wall_get_id (a), one);
  hc_layout_get_pens_beside (layout, hc_wall_get_id (b), other);
  return one[0] == other[0] && one[1] == other[1];
}

static gboolean
are_built_alike (const HcWall *a, const HcWall *b)
{
  HcWallValues ends = *hc_wall_get (b);
  g_autoptr (HcWall) like_b = NULL;
  g_autoptr (HcWall) like_a = NULL;

  ends.from = hc_wall_get (a)->from;
  ends.to = hc_wall_get (a)->to;
  like_b = hc_wall_new ("", &ends);
  like_a = hc_wall_new ("", hc_wall_get (a));
  return hc_wall_equal (like_a, like_b);
}

/**
 * hc_layout_is_plain_corner: (skip)
 * @layout: a layout
 * @corner: id of a corner
 *
 * Returns: whether nothing would be lost without it: two walls built alike run
 *   on through it in one line, between the same pens
 */
gboolean
hc_layout_is_plain_corner (const HcLayout *layout, const char *corner)
{
  g_autoptr (GPtrArray) walls = hc_corner_get_walls (layout, corner);

  return walls->len == 2 && hc_walls_run_alike (layout, walls->pdata[0], walls->pdata[1])
         && are_built_alike (walls->pdata[0], walls->pdata[1])
         && have_same_pens (layout, walls->pdata[0], walls->pdata[1]);
}

static void
drop_wall (HcLayoutValues *values, const HcLayout *layout, const char *wall)
{
  HcPen *beside[2];

  hc_layout_get_pens_beside (layout, wall, beside);
  for (guint i = 0; i < 2 && beside[i] != NULL; i++)
    {
      g_auto (GStrv) ring = ring_without (hc_pen_get (beside[i])->walls, wall);

      put_ring (values, beside[i], ring);
    }
  hc_edit_drop (&values->walls, wall);
}

/**
 * hc_layout_join_walls_at: (skip)
 * @layout: a layout
 * @corner: id of a corner where two walls meet
 * @error: says why not
 *
 * The first wall runs on to where the second ended.
 *
 * Returns: (transfer full): the layout without the corner, or %NULL
 */
HcLayout *
hc_layout_join_walls_at (HcLayout *layout, const char *corner, GError **error)
{
  g_autoptr (GPtrArray) walls = hc_corner_get_walls (layout, corner);
  g_auto (HcLayoutValues) values = hc_edit_hold_layout (layout);
  g_autoptr (HcLayout) after = NULL;
  HcWall *kept, *gone;
  const char *far_end;

  if (walls->len != 2 || !have_same_pens (layout, walls->pdata[0], walls->pdata[1]))
    return hc_edit_refuse (error, _("Other walls meet at this corner, so it must stay."));
  kept = walls->pdata[0];
  gone = walls->pdata[1];
  far_end = hc_wall_get_other_end (gone, corner);
  if (g_str_equal (hc_wall_get (kept)->to, corner))
    put_wall (&values, kept, hc_wall_get_id (kept), hc_wall_get (kept)->from, far_end);
  else
    put_wall (&values, kept, hc_wall_get_id (kept), far_end, hc_wall_get (kept)->to);
  drop_wall (&values, layout, hc_wall_get_id (gone));
  hc_edit_drop (&values.corners, corner);
  after = hc_layout_with (layout, &values);
  return hc_openings_follow (
      layout, after, (const char *const[]){ hc_wall_get_id (kept), hc_wall_get_id (gone), NULL },
      (const char *const[]){ hc_wall_get_id (kept), NULL }, error);
}
