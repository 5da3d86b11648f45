/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Makes the walls of an outline, edge by edge: where a wall lies along an edge
 * already it is shared, split at corners where need be. */
#include "config.h"

#include "plan/pen-outline.h"

#include "base/ring.h"
#include "plan/split-wall.h"
#include "plan/wall-corners.h"

#include <math.h>

/* Less overlap than this is two walls meeting, not one leaning on the other. */
#define LEAST_SHARED_MM 10.0

typedef struct
{
  HcPlan *plan;
  HcLayout *layout;
  const HcWallValues *walls;
  HcNewIds *ids;
  GError **error;
} Builder;

typedef struct
{
  HcPoint from, to, normal;
} Edge;

static Edge
edge_of (const HcPoint *corners, guint n_corners, guint i)
{
  return (Edge){ corners[i], corners[(i + 1) % n_corners],
                 hc_ring_edge_normal (corners, n_corners, i) };
}

static double
inset_to (const Edge *edge, HcPoint at)
{
  return hc_point_dot (hc_point_subtract (at, edge->from), edge->normal);
}

static double
shared_mm (const Edge *edge, HcPoint a, HcPoint b)
{
  HcPoint way = hc_point_unit (hc_point_subtract (edge->to, edge->from));
  double length = hc_point_distance (edge->from, edge->to);
  double one = hc_point_dot (hc_point_subtract (a, edge->from), way);
  double other = hc_point_dot (hc_point_subtract (b, edge->from), way);

  return MIN (MAX (one, other), length) - MAX (MIN (one, other), 0);
}

/* An outer face is a wall's thickness away from the wall's line. */
static gboolean
leans_on (const HcLayout *layout, const HcWall *wall, const Edge *edge, double *inset_mm)
{
  HcPoint a, b, way;

  if (!hc_layout_get_wall_line (layout, wall, &a, &b))
    return FALSE;
  way = hc_wall_get_way (layout, wall);
  *inset_mm = inset_to (edge, a);
  return fabs (hc_point_dot (way, edge->normal)) < 1e-4
         && fabs (*inset_mm) <= hc_wall_get (wall)->thickness_mm + HC_WALL_JOIN_MM
         && shared_mm (edge, a, b) > LEAST_SHARED_MM;
}

/* An edge that ends close by a corner runs through it. */
static gboolean
ends_near (const HcLayout *layout, const HcWall *wall, const Edge *edge, double *inset_mm)
{
  double reach_mm = (hc_wall_get (wall)->thickness_mm + HC_WALL_JOIN_MM) * G_SQRT2;
  HcPoint ends[2];

  if (!hc_layout_get_wall_line (layout, wall, &ends[0], &ends[1]))
    return FALSE;
  for (guint i = 0; i < 2; i++)
    if (hc_point_distance (ends[i], edge->from) <= reach_mm
        || hc_point_distance (ends[i], edge->to) <= reach_mm)
      {
        *inset_mm = inset_to (edge, ends[i]);
        return TRUE;
      }
  return FALSE;
}

static double
inset_of_edge (const HcLayout *layout, const Edge *edge)
{
  HcParts *walls = hc_layout_get (layout)->walls;
  double inset_mm;

  for (guint i = 0; i < walls->len; i++)
    if (leans_on (layout, walls->pdata[i], edge, &inset_mm))
      return inset_mm;
  for (guint i = 0; i < walls->len; i++)
    if (ends_near (layout, walls->pdata[i], edge, &inset_mm))
      return inset_mm;
  return 0;
}

/**
 * hc_outline_lean_on_walls: (skip)
 * @layout: a layout
 * @corners: (array length=n_corners): an outline as it was drawn
 * @n_corners: how many
 *
 * An edge drawn along either face of a wall is meant to lean on it.
 *
 * Returns: (transfer full): the outline with such edges on the walls' lines
 */
HcPoint *
hc_outline_lean_on_walls (const HcLayout *layout, const HcPoint *corners, guint n_corners)
{
  g_autofree double *insets = g_new0 (double, n_corners);

  for (guint i = 0; i < n_corners; i++)
    {
      Edge edge = edge_of (corners, n_corners, i);

      insets[i] = inset_of_edge (layout, &edge);
    }
  return hc_ring_inset (corners, n_corners, insets);
}

static void
take_layout (Builder *self, HcLayout *layout)
{
  hc_layout_unref (self->layout);
  self->layout = layout;
}

static const char *
add_corner (Builder *self, HcPoint at)
{
  g_auto (HcLayoutValues) values = hc_edit_hold_layout (self->layout);
  const char *id = hc_new_ids_take (self->ids, self->plan, self->error);
  HcCornerValues place = { at.x_mm, at.y_mm };
  g_autoptr (HcCorner) corner = NULL;

  if (id == NULL || !hc_edit_accepts (self->plan, &hc_corner_class, &place, self->error))
    return NULL;
  corner = hc_corner_new (id, &place);
  hc_edit_put (&values.corners, corner);
  take_layout (self, hc_layout_with (self->layout, &values));
  return id;
}

static const char *
split_wall (Builder *self, HcWall *wall, HcPoint at)
{
  const char *corner = hc_new_ids_take (self->ids, self->plan, self->error);
  const char *half = corner != NULL ? hc_new_ids_take (self->ids, self->plan, self->error) : NULL;
  HcLayout *split;

  if (half == NULL)
    return NULL;
  split = hc_layout_split_wall (self->layout, hc_wall_get_id (wall), at, corner, half,
                                self->error);
  if (split == NULL)
    return NULL;
  take_layout (self, split);
  return corner;
}

/* The id of the corner at @at: one that is there, one put into a wall that runs
 * through it, or a new one. */
static const char *
corner_at (Builder *self, HcPoint at)
{
  HcCorner *corner = hc_layout_find_corner_at (self->layout, at);
  HcWall *wall = hc_layout_find_wall_at (self->layout, at);

  if (corner != NULL)
    return g_intern_string (hc_corner_get_id (corner));
  return wall != NULL ? split_wall (self, wall, at) : add_corner (self, at);
}

static const char *
add_wall (Builder *self, const char *from, const char *to)
{
  g_auto (HcLayoutValues) values = hc_edit_hold_layout (self->layout);
  const char *id = hc_new_ids_take (self->ids, self->plan, self->error);
  HcWallValues built = *self->walls;
  g_autoptr (HcWall) wall = NULL;

  if (id == NULL)
    return NULL;
  built.from = (char *) from;
  built.to = (char *) to;
  wall = hc_wall_new (id, &built);
  hc_edit_put (&values.walls, wall);
  take_layout (self, hc_layout_with (self->layout, &values));
  return id;
}

typedef struct
{
  const char *id;
  double along;
} Stop;

static int
by_place (gconstpointer a, gconstpointer b)
{
  const Stop *one = a;
  const Stop *other = b;

  return (one->along > other->along) - (one->along < other->along);
}

/* The corners an edge runs through, its own two first and last. */
static GArray *
stops_between (const HcLayout *layout, HcPoint from, HcPoint to)
{
  HcParts *corners = hc_layout_get (layout)->corners;
  GArray *stops = g_array_new (FALSE, FALSE, sizeof (Stop));

  for (guint i = 0; i < corners->len; i++)
    {
      const char *id = hc_corner_get_id (corners->pdata[i]);
      HcPoint at = hc_corner_get_point (layout, id);
      Stop stop = { g_intern_string (id), hc_point_along (at, from, to) };

      if (hc_point_distance_to_line (at, from, to) <= HC_WALL_JOIN_MM)
        g_array_append_val (stops, stop);
    }
  g_array_sort (stops, by_place);
  return stops;
}

static gboolean
build_edge (Builder *self, const char *from, const char *to, GStrvBuilder *ring)
{
  g_autoptr (GArray) stops = stops_between (self->layout, hc_corner_get_point (self->layout, from),
                                            hc_corner_get_point (self->layout, to));

  for (guint i = 0; i + 1 < stops->len; i++)
    {
      const char *start = g_array_index (stops, Stop, i).id;
      const char *end = g_array_index (stops, Stop, i + 1).id;
      HcWall *shared = hc_corners_get_wall (self->layout, start, end);
      const char *wall = shared != NULL ? hc_wall_get_id (shared) : add_wall (self, start, end);

      if (wall == NULL)
        return FALSE;
      g_strv_builder_add (ring, wall);
    }
  return TRUE;
}

/* All corners first: each may split a wall that an edge then shares a half of. */
static GPtrArray *
build_corners (Builder *self, const HcPoint *corners, guint n_corners)
{
  g_autoptr (GPtrArray) ids = g_ptr_array_new ();

  for (guint i = 0; i < n_corners; i++)
    {
      const char *id = corner_at (self, corners[i]);

      if (id == NULL)
        return NULL;
      g_ptr_array_add (ids, (char *) id);
    }
  return g_steal_pointer (&ids);
}

static char **
build_ring (Builder *self, const HcPoint *corners, guint n_corners)
{
  g_autoptr (GPtrArray) ids = build_corners (self, corners, n_corners);
  g_autoptr (GStrvBuilder) ring = g_strv_builder_new ();

  for (guint i = 0; ids != NULL && i < n_corners; i++)
    if (!build_edge (self, ids->pdata[i], ids->pdata[(i + 1) % n_corners], ring))
      return NULL;
  return ids != NULL ? g_strv_builder_end (ring) : NULL;
}

/**
 * hc_layout_with_outline: (skip)
 * @plan: a plan
 * @walls: what new walls are built of
 * @corners: (array length=n_corners): the outline, along walls' lines
 * @n_corners: how many
 * @ids: ids for what is new
 * @ring: (out) (transfer full): ids of the outline's walls in ring order
 * @error: says why not
 *
 * Returns: (transfer full): the layout with walls all round, or %NULL
 */
HcLayout *
hc_layout_with_outline (HcPlan *plan, const HcWallValues *walls, const HcPoint *corners,
                        guint n_corners, HcNewIds *ids, char ***ring, GError **error)
{
  Builder builder = { plan, hc_layout_ref (hc_plan_get_layout (plan)), walls, ids, error };

  *ring = build_ring (&builder, corners, n_corners);
  if (*ring == NULL)
    g_clear_pointer (&builder.layout, hc_layout_unref);
  return builder.layout;
}
