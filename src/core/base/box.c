/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * An upright box around a part of the plan. */
#include "config.h"

#include "base/box.h"

#include <math.h>

G_DEFINE_BOXED_TYPE (HcBox, hc_box, hc_box_copy, hc_box_free)

/**
 * hc_box_copy:
 * @self: a box
 *
 * Returns: (transfer full): the same box in memory of its own
 */
HcBox *
hc_box_copy (const HcBox *self)
{
  return g_memdup2 (self, sizeof *self);
}

/**
 * hc_box_free:
 * @self: (transfer full): a box made by [method@Box.copy]
 *
 * Frees it.
 */
void
hc_box_free (HcBox *self)
{
  g_free (self);
}

static HcBox
box_from_corners (double left,
                  double top,
                  double right,
                  double bottom)
{
  return (HcBox){ left, top, right - left, bottom - top };
}

/**
 * hc_box_empty: (skip)
 *
 * Returns: the box that holds nothing
 */
HcBox
hc_box_empty (void)
{
  return (HcBox){ 0, 0, -1, -1 };
}

/**
 * hc_box_around: (skip)
 * @points: (array length=n_points): points
 * @n_points: how many
 *
 * Returns: the smallest box around them; empty when there are none
 */
HcBox
hc_box_around (const HcPoint *points,
               guint n_points)
{
  double left = INFINITY, top = INFINITY, right = -INFINITY, bottom = -INFINITY;

  if (n_points == 0)
    return hc_box_empty ();
  for (guint i = 0; i < n_points; i++)
    {
      left = MIN (left, points[i].x_mm);
      right = MAX (right, points[i].x_mm);
      top = MIN (top, points[i].y_mm);
      bottom = MAX (bottom, points[i].y_mm);
    }
  return box_from_corners (left, top, right, bottom);
}

/**
 * hc_box_join: (skip)
 * @a: a box
 * @b: another
 *
 * Returns: the smallest box around both
 */
HcBox
hc_box_join (HcBox a,
             HcBox b)
{
  if (hc_box_is_empty (a))
    return b;
  if (hc_box_is_empty (b))
    return a;
  return box_from_corners (MIN (a.x_mm, b.x_mm), MIN (a.y_mm, b.y_mm),
                           MAX (a.x_mm + a.width_mm, b.x_mm + b.width_mm),
                           MAX (a.y_mm + a.depth_mm, b.y_mm + b.depth_mm));
}

/**
 * hc_box_grow: (skip)
 * @box: a box
 * @by_mm: how far out each side moves, in mm; negative moves them in
 *
 * Returns: the larger box; an empty one stays empty
 */
HcBox
hc_box_grow (HcBox box,
             double by_mm)
{
  if (hc_box_is_empty (box))
    return box;
  return (HcBox){ box.x_mm - by_mm, box.y_mm - by_mm, box.width_mm + 2 * by_mm,
                  box.depth_mm + 2 * by_mm };
}

/**
 * hc_box_is_empty: (skip)
 * @box: a box
 *
 * Returns: whether it holds nothing, not even a point
 */
gboolean
hc_box_is_empty (HcBox box)
{
  return box.width_mm < 0 || box.depth_mm < 0;
}

/**
 * hc_box_touches: (skip)
 * @a: a box
 * @b: another
 *
 * Returns: whether they have at least a point in common
 */
gboolean
hc_box_touches (HcBox a,
                HcBox b)
{
  return !hc_box_is_empty (a) && !hc_box_is_empty (b) && a.x_mm <= b.x_mm + b.width_mm
         && b.x_mm <= a.x_mm + a.width_mm && a.y_mm <= b.y_mm + b.depth_mm
         && b.y_mm <= a.y_mm + a.depth_mm;
}

/**
 * hc_box_contains_point: (skip)
 * @box: a box
 * @p: a point
 *
 * Returns: whether @p is inside or on its edge
 */
gboolean
hc_box_contains_point (HcBox box,
                       HcPoint p)
{
  return hc_box_touches (box, (HcBox){ p.x_mm, p.y_mm, 0, 0 });
}

/**
 * hc_box_centre: (skip)
 * @box: a box
 *
 * Returns: its middle
 */
HcPoint
hc_box_centre (HcBox box)
{
  return hc_point (box.x_mm + box.width_mm / 2, box.y_mm + box.depth_mm / 2);
}

/**
 * hc_box_distance: (skip)
 * @a: a box
 * @b: another
 *
 * Returns: how far apart they are, in mm; 0 when they touch, infinite when one
 *   is empty
 */
double
hc_box_distance (HcBox a,
                 HcBox b)
{
  double across = MAX (a.x_mm - (b.x_mm + b.width_mm), b.x_mm - (a.x_mm + a.width_mm));
  double along = MAX (a.y_mm - (b.y_mm + b.depth_mm), b.y_mm - (a.y_mm + a.depth_mm));

  if (hc_box_is_empty (a) || hc_box_is_empty (b))
    return INFINITY;
  return hypot (MAX (across, 0), MAX (along, 0));
}
