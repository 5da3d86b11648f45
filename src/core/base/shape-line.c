/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Lines across shapes: which stretches of them lie inside. */
#include "config.h"

#include "base/shape-line.h"

#include "base/crossing.h"
#include "base/shape-private.h"
#include "base/shape-relate.h"
#include "base/whole.h"

static int
compare_parts (gconstpointer a,
               gconstpointer b)
{
  double first = *(const double *) a, second = *(const double *) b;

  return (first > second) - (first < second);
}

/* All places, as parts of the way from a to b, where an edge cuts the line. */
static GArray *
find_cuts (const HcShape *shape,
           HcPoint a,
           HcPoint b)
{
  GArray *cuts = g_array_new (FALSE, FALSE, sizeof (double));
  HcEdgeWalk walk = hc_edge_walk (shape);
  HcPoint c, d;
  double part = 0;

  g_array_append_val (cuts, part);
  while (hc_edge_walk_next (&walk, &c, &d))
    if (hc_lines_may_touch (a, b, c, d, HC_SHAPE_TOUCH_MM)
        && hc_lines_cross_at (a, b, c, d, &part))
      g_array_append_val (cuts, part);
  part = 1;
  g_array_append_val (cuts, part);
  g_array_sort (cuts, compare_parts);
  return cuts;
}

static void
append_stretch (GArray *stretches,
                double from_mm,
                double to_mm)
{
  HcStretch *last = stretches->len > 0
                        ? &g_array_index (stretches, HcStretch, stretches->len - 1)
                        : NULL;
  HcStretch stretch = { from_mm, to_mm };

  if (last != NULL && last->to_mm >= from_mm)
    last->to_mm = MAX (last->to_mm, to_mm);
  else
    g_array_append_val (stretches, stretch);
}

/**
 * hc_shape_clip_line: (skip)
 * @self: a shape
 * @a: where the line starts
 * @b: where it ends
 *
 * Finds the stretches of a line that lie inside. The edge of the shape counts
 * as inside, so a line along a wall is inside the room.
 *
 * Returns: (transfer full) (element-type HcStretch): the stretches in order,
 *   apart from each other, to 0.001 mm
 */
GArray *
hc_shape_clip_line (const HcShape *self,
                    HcPoint a,
                    HcPoint b)
{
  GArray *stretches = g_array_new (FALSE, FALSE, sizeof (HcStretch));
  double length_mm = hc_point_distance (a, b);
  g_autoptr (GArray) cuts = find_cuts (self, a, b);

  for (guint i = 0; i + 1 < cuts->len; i++)
    {
      double from = g_array_index (cuts, double, i);
      double to = g_array_index (cuts, double, i + 1);

      if (hc_mm (from * length_mm) < hc_mm (to * length_mm)
          && hc_shape_contains_point (self, hc_point_between (a, b, (from + to) / 2)))
        append_stretch (stretches, hc_mm (from * length_mm), hc_mm (to * length_mm));
    }
  return stretches;
}

/**
 * hc_stretches_without: (skip)
 * @stretches: (element-type HcStretch): stretches in order
 * @taken_off: (element-type HcStretch): other stretches of the same line, in order
 *
 * Returns: (transfer full) (element-type HcStretch): what is left of @stretches
 *   without @taken_off
 */
GArray *
hc_stretches_without (const GArray *stretches,
                      const GArray *taken_off)
{
  GArray *left = g_array_new (FALSE, FALSE, sizeof (HcStretch));

  for (guint i = 0; i < stretches->len; i++)
    {
      HcStretch rest = g_array_index (stretches, HcStretch, i);

      for (guint j = 0; j < taken_off->len && rest.from_mm < rest.to_mm; j++)
        {
          const HcStretch *off = &g_array_index (taken_off, HcStretch, j);

          if (off->to_mm <= rest.from_mm || off->from_mm >= rest.to_mm)
            continue;
          if (off->from_mm > rest.from_mm)
            append_stretch (left, rest.from_mm, off->from_mm);
          rest.from_mm = off->to_mm;
        }
      if (rest.from_mm < rest.to_mm)
        append_stretch (left, rest.from_mm, rest.to_mm);
    }
  return left;
}

/**
 * hc_stretches_total_mm: (skip)
 * @stretches: (element-type HcStretch): stretches apart from each other
 *
 * Returns: how long they are together, in mm
 */
double
hc_stretches_total_mm (const GArray *stretches)
{
  double total_mm = 0;

  for (guint i = 0; i < stretches->len; i++)
    {
      const HcStretch *stretch = &g_array_index (stretches, HcStretch, i);

      total_mm += stretch->to_mm - stretch->from_mm;
    }
  return hc_mm (total_mm);
}

/**
 * hc_stretches_longest_mm: (skip)
 * @stretches: (element-type HcStretch): stretches apart from each other
 *
 * Returns: how long the longest is, in mm; 0 when there are none
 */
double
hc_stretches_longest_mm (const GArray *stretches)
{
  double longest_mm = 0;

  for (guint i = 0; i < stretches->len; i++)
    {
      const HcStretch *stretch = &g_array_index (stretches, HcStretch, i);

      longest_mm = MAX (longest_mm, stretch->to_mm - stretch->from_mm);
    }
  return hc_mm (longest_mm);
}

/**
 * hc_shape_edge_inside_mm: (skip)
 * @self: a shape, such as a feeder
 * @within: another, such as the floor a bird can stand on
 *
 * Measures how much of the edge of @self lies in @within or on its edge: the
 * part of a feeder that birds can get at.
 *
 * Returns: the length, in mm
 */
double
hc_shape_edge_inside_mm (const HcShape *self,
                         const HcShape *within)
{
  HcEdgeWalk walk = hc_edge_walk (self);
  HcPoint a, b;
  double inside_mm = 0;

  while (hc_edge_walk_next (&walk, &a, &b))
    {
      g_autoptr (GArray) stretches = hc_shape_clip_line (within, a, b);

      inside_mm += hc_stretches_total_mm (stretches);
    }
  return hc_mm (inside_mm);
}
