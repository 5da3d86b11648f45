/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A partition parts a pen in two. */
#include "config.h"

#include "plan/edit-partition.h"

#include "base/ring.h"
#include "plan/edit-homes.h"
#include "plan/edit-opening.h"
#include "plan/edit-sound.h"
#include "plan/new-ids.h"
#include "plan/pen-name.h"
#include "plan/split-wall.h"
#include "plan/wall-corners.h"

#include <glib/gi18n-lib.h>
#include <math.h>

/* What rounding corners to 0.001 mm may change of a pen of 100 m. */
#define FORGIVEN_MM2 1000.0

static const char *
corner_at (const HcLayout *layout, char **walls, guint index)
{
  guint n = g_strv_length (walls);

  return hc_layout_get_shared_corner (hc_layout_get_wall (layout, walls[(index + n - 1) % n]),
                                      hc_layout_get_wall (layout, walls[index % n]));
}

static HcPen *
find (const HcLayout *layout, const char *pen, GError **error)
{
  HcPen *found = hc_layout_get_pen (layout, pen);
  g_autoptr (GArray) ring = found != NULL ? hc_layout_get_pen_corners (layout, found) : NULL;

  if (ring != NULL && ring->len > 2)
    return found;
  return hc_edit_refuse (error, _("That pen is no longer in the plan. Choose another."));
}

/* The nearest place on the walls round the pen. */
static const char *
find_nearest_wall (const HcLayout *layout, char **walls, HcPoint *at)
{
  const char *nearest = NULL;
  double nearest_mm = INFINITY;
  HcPoint asked = *at;

  for (guint i = 0; walls[i] != NULL; i++)
    {
      HcPoint from = { 0, 0 };
      HcPoint to = { 0, 0 };
      double distance_mm;

      hc_layout_get_wall_line (layout, hc_layout_get_wall (layout, walls[i]), &from, &to);
      distance_mm = hc_point_distance_to_line (asked, from, to);
      if (distance_mm >= nearest_mm)
        continue;
      nearest_mm = distance_mm;
      nearest = walls[i];
      *at = hc_point_between (from, to, hc_point_along (asked, from, to));
    }
  return nearest;
}

static const char *
find_corner_of_wall (const HcLayout *layout, const char *wall, HcPoint at)
{
  const HcWallValues *values = hc_wall_get (hc_layout_get_wall (layout, wall));

  if (hc_point_distance (at, hc_corner_get_point (layout, values->from)) < HC_WALL_JOIN_MM)
    return values->from;
  if (hc_point_distance (at, hc_corner_get_point (layout, values->to)) < HC_WALL_JOIN_MM)
    return values->to;
  return NULL;
}

/* The corner the partition ends at, made where there is none. */
static const char *
end_at (HcPlan *plan, HcLayout **layout, const char *pen, HcPoint at, HcNewIds *ids,
        GError **error)
{
  const char *wall
      = find_nearest_wall (*layout, hc_pen_get (hc_layout_get_pen (*layout, pen))->walls, &at);
  const char *corner = find_corner_of_wall (*layout, wall, at);
  const char *new_wall;
  HcLayout *split;

  if (corner != NULL)
    return corner;
  corner = hc_new_ids_take (ids, plan, error);
  new_wall = corner != NULL ? hc_new_ids_take (ids, plan, error) : NULL;
  split = new_wall != NULL ? hc_layout_split_wall (*layout, wall, at, corner, new_wall, error)
                           : NULL;
  if (split == NULL)
    return NULL;
  hc_layout_unref (*layout);
  *layout = split;
  return corner;
}

/* The walls from one corner of the ring to another, and the partition back. */
static char **
half_of_ring (const HcLayout *layout, char **walls, const char *from, const char *to,
              const char *partition)
{
  g_autoptr (GStrvBuilder) ring = g_strv_builder_new ();
  guint n = g_strv_length (walls);
  guint start = 0;

  while (start < n && !g_str_equal (corner_at (layout, walls, start), from))
    start++;
  for (guint i = start; i < start + n; i++)
    {
      if (i > start && g_str_equal (corner_at (layout, walls, i), to))
        break;
      g_strv_builder_add (ring, walls[i % n]);
    }
  g_strv_builder_add (ring, partition);
  return g_strv_builder_end (ring);
}

static HcLayout *
with_wall (HcLayout *layout, const char *id, const HcWallValues *like, const char *from,
           const char *to)
{
  g_auto (HcLayoutValues) values = hc_edit_hold_layout (layout);
  HcWallValues wall_values = *like;
  g_autoptr (HcWall) wall = NULL;

  wall_values.from = (char *) from;
  wall_values.to = (char *) to;
  wall = hc_wall_new (id, &wall_values);
  hc_edit_put (&values.walls, wall);
  return hc_layout_with (layout, &values);
}

static double
area_mm2 (const HcLayout *layout, HcPen *pen, char **ring)
{
  HcPenValues values = *hc_pen_get (pen);
  g_autoptr (HcPen) ringed = NULL;
  g_autoptr (GArray) corners = NULL;

  values.walls = ring;
  ringed = hc_pen_with (pen, &values);
  corners = hc_layout_get_pen_corners (layout, ringed);
  return hc_ring_area_mm2 ((const HcPoint *) corners->data, corners->len);
}

/* Half the floor each: a partition across a nook would take floor from outside. */
static gboolean
share_the_floor (const HcLayout *layout, HcPen *pen, char **one, char **other)
{
  double whole = area_mm2 (layout, pen, hc_pen_get (pen)->walls);
  double a = area_mm2 (layout, pen, one);
  double b = area_mm2 (layout, pen, other);

  return a * whole > 0 && b * whole > 0 && fabs (a + b - whole) < FORGIVEN_MM2;
}

static HcLayout *
with_two_pens (HcPlan *plan, HcLayout *layout, HcPen *pen, char **kept, char **parted,
               const char *new_id)
{
  g_auto (HcLayoutValues) values = hc_edit_hold_layout (layout);
  HcPenValues one = *hc_pen_get (pen);
  HcPenValues other = one;
  g_autofree char *name = hc_pen_name_new (plan, one.kind);
  g_autoptr (HcParts) empty = hc_parts_new ();
  g_autoptr (HcPen) smaller = NULL;
  g_autoptr (HcPen) larger = NULL;

  one.walls = kept;
  other.walls = parted;
  other.name = name;
  other.fittings = empty;
  larger = hc_pen_with (pen, &one);
  smaller = hc_pen_new (new_id, &other);
  hc_edit_put (&values.pens, larger);
  hc_edit_put (&values.pens, smaller);
  return hc_layout_with (layout, &values);
}

static HcLayout *
parted (HcPlan *plan, HcLayout *layout, const char *pen_id, const char *const ends[2],
        const char *partition, const char *new_pen, GError **error)
{
  HcPen *pen = hc_layout_get_pen (layout, pen_id);
  char **walls = hc_pen_get (pen)->walls;
  g_auto (GStrv) one = half_of_ring (layout, walls, ends[0], ends[1], partition);
  g_auto (GStrv) other = half_of_ring (layout, walls, ends[1], ends[0], partition);
  gboolean first_is_larger;

  if (g_strv_length (one) < 3 || g_strv_length (other) < 3)
    return hc_edit_refuse (error, _("A partition leads from one wall to another. End it at "
                                    "another wall."));
  if (!share_the_floor (layout, pen, one, other))
    return hc_edit_refuse (error, _("The partition would leave the pen on its way. Choose two "
                                    "places with floor between them."));
  first_is_larger
      = fabs (area_mm2 (layout, pen, one)) >= fabs (area_mm2 (layout, pen, other));
  return with_two_pens (plan, layout, pen, first_is_larger ? one : other,
                        first_is_larger ? other : one, new_pen);
}

static HcPlan *
with_door (HcPlan *plan, const HcOpeningValues *door, const char *partition, const char *id,
           GError **error)
{
  HcOpeningValues values = *door;
  g_autoptr (HcOpening) opening = NULL;

  values.wall = (char *) partition;
  opening = hc_opening_new (id, &values);
  return hc_plan_add_opening (plan, opening, error);
}

/**
 * hc_plan_split_pen:
 * @plan: a plan
 * @pen: id of a pen
 * @one: where the partition starts, near a wall of the pen
 * @other: where it ends, near another
 * @partition: what it is; its ends are made here
 * @door: (nullable): a door in it, measured along from @one
 * @new_ids: (array zero-terminated=1): ids from hc_pen_ids_new(), used in order
 * @error: says why not
 *
 * The larger part stays the pen it was, with the birds at home in it. What
 * stands in the other part belongs there; the roof stays one.
 *
 * Returns: (transfer full): the changed plan, or %NULL and a %HC_ERROR_EDIT
 */
HcPlan *
hc_plan_split_pen (HcPlan *plan, const char *pen, HcPoint one, HcPoint other,
                   const HcWallValues *partition, const HcOpeningValues *door,
                   const char *const *new_ids, GError **error)
{
  HcNewIds ids = { new_ids, 0 };
  g_autoptr (HcLayout) layout = hc_layout_ref (hc_plan_get_layout (plan));
  const char *new_pen, *new_wall, *new_door, *ends[2];
  g_autoptr (HcLayout) walled = NULL;
  g_autoptr (HcLayout) split = NULL;
  g_autoptr (HcPlan) after = NULL;
  g_autoptr (HcPlan) sound = NULL;

  if (find (layout, pen, error) == NULL
      || !hc_edit_accepts (plan, &hc_wall_class, partition, error)
      || (new_pen = hc_new_ids_take (&ids, plan, error)) == NULL
      || (new_wall = hc_new_ids_take (&ids, plan, error)) == NULL
      || (new_door = hc_new_ids_take (&ids, plan, error)) == NULL
      || (ends[0] = end_at (plan, &layout, pen, one, &ids, error)) == NULL
      || (ends[1] = end_at (plan, &layout, pen, other, &ids, error)) == NULL)
    return NULL;
  walled = with_wall (layout, new_wall, partition, ends[0], ends[1]);
  split = parted (plan, walled, pen, ends, new_wall, new_pen, error);
  if (split == NULL)
    return NULL;
  after = hc_plan_with_layout (plan, split);
  sound = hc_edit_if_sound (plan, hc_edit_rehouse_all (after), error);
  if (sound == NULL || door == NULL)
    return g_steal_pointer (&sound);
  return with_door (sound, door, new_wall, new_door, error);
}
