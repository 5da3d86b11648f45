/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Whether one shape lies in another. */
#include "config.h"

#include "base/shape-relate.h"

#include "base/shape-line.h"
#include "base/shape-private.h"

#include <math.h>

/* The corners of a shape, to look up; a corner leads to itself in the shape. */
typedef GHashTable CornerTable;
G_DEFINE_AUTOPTR_CLEANUP_FUNC (CornerTable, g_hash_table_unref)

static guint
hash_corner (gconstpointer corner)
{
  const HcPoint *p = corner;
  gint64 x = llround (p->x_mm * 1000), y = llround (p->y_mm * 1000);

  return (guint) (x * 73856093 ^ y * 19349663);
}

static gboolean
corners_equal (gconstpointer a,
               gconstpointer b)
{
  return hc_point_equal (*(const HcPoint *) a, *(const HcPoint *) b);
}

static CornerTable *
list_corners (const HcShape *shape)
{
  CornerTable *table = g_hash_table_new (hash_corner, corners_equal);

  for (guint i = 0; i < shape->n_rings; i++)
    for (guint j = 0; j < shape->rings[i].n_points; j++)
      g_hash_table_add (table, &shape->points[shape->rings[i].start + j]);
  return table;
}

static gboolean
has_edge (CornerTable *table,
          HcPoint a,
          HcPoint b)
{
  const HcPoint *start = g_hash_table_lookup (table, &a);

  return start != NULL && hc_point_equal (start[1], b);
}

static gboolean
has_corner_deep_inside (const HcShape *shape,
                        const HcShape *within)
{
  g_autoptr (CornerTable) shared = list_corners (within);
  HcEdgeWalk walk = hc_edge_walk (shape);
  HcPoint a, b;

  while (hc_edge_walk_next (&walk, &a, &b))
    if (!g_hash_table_contains (shared, &a) && hc_shape_is_inside_rings (within, a)
        && !hc_shape_is_on_edge (within, a))
      return TRUE;
  return FALSE;
}

static gboolean
line_stays_inside (const HcShape *shape,
                   HcPoint a,
                   HcPoint b)
{
  g_autoptr (GArray) inside = hc_shape_clip_line (shape, a, b);

  return hc_point_distance (a, b) - hc_stretches_total_mm (inside) <= HC_SHAPE_TOUCH_MM;
}

/**
 * hc_shape_contains:
 * @self: a shape
 * @other: another
 *
 * Tells whether all of @other lies in @self, give or take
 * [const@HC_SHAPE_TOUCH_MM]; it may touch the edge from inside. Edges that both
 * have are known at once, so this is quick for shapes made from each other.
 *
 * Returns: whether it does; nothing contains an empty shape
 */
gboolean
hc_shape_contains (const HcShape *self,
                   const HcShape *other)
{
  g_autoptr (CornerTable) shared = NULL;
  HcEdgeWalk walk;
  HcPoint a, b;

  g_return_val_if_fail (self != NULL && other != NULL, FALSE);

  if (hc_shape_is_empty (other) || has_corner_deep_inside (self, other))
    return FALSE;
  shared = list_corners (self);
  walk = hc_edge_walk (other);
  while (hc_edge_walk_next (&walk, &a, &b))
    if (!has_edge (shared, a, b) && !line_stays_inside (self, a, b))
      return FALSE;
  return TRUE;
}
