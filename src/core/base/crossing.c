/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Where two straight lines meet. */
#include "config.h"

#include "base/crossing.h"

static int
side_of (HcPoint p,
         HcPoint a,
         HcPoint b)
{
  double cross = hc_point_cross (hc_point_subtract (b, a), hc_point_subtract (p, a));

  return (cross > 0) - (cross < 0);
}

static gboolean
lies_between (HcPoint p,
              HcPoint a,
              HcPoint b)
{
  return p.x_mm >= MIN (a.x_mm, b.x_mm) && p.x_mm <= MAX (a.x_mm, b.x_mm)
         && p.y_mm >= MIN (a.y_mm, b.y_mm) && p.y_mm <= MAX (a.y_mm, b.y_mm);
}

/**
 * hc_lines_touch: (skip)
 * @a: where the first line starts
 * @b: where it ends
 * @c: where the second starts
 * @d: where it ends
 *
 * Returns: whether they have at least a point in common, ends included
 */
gboolean
hc_lines_touch (HcPoint a,
                HcPoint b,
                HcPoint c,
                HcPoint d)
{
  int a_side, b_side, c_side, d_side;

  if (!hc_lines_may_touch (a, b, c, d, 0))
    return FALSE;
  a_side = side_of (a, c, d);
  b_side = side_of (b, c, d);
  c_side = side_of (c, a, b);
  d_side = side_of (d, a, b);
  if (a_side * b_side < 0 && c_side * d_side < 0)
    return TRUE;
  return (a_side == 0 && lies_between (a, c, d)) || (b_side == 0 && lies_between (b, c, d))
         || (c_side == 0 && lies_between (c, a, b)) || (d_side == 0 && lies_between (d, a, b));
}

/**
 * hc_lines_cross_at: (skip)
 * @a: where the first line starts
 * @b: where it ends
 * @c: where the second starts
 * @d: where it ends
 * @part: (out): how far along the first, from 0 to 1
 *
 * Finds where the first line is cut by the second. Lines that run alike have no
 * one such place.
 *
 * Returns: whether there is one
 */
gboolean
hc_lines_cross_at (HcPoint a,
                   HcPoint b,
                   HcPoint c,
                   HcPoint d,
                   double *part)
{
  HcPoint first = hc_point_subtract (b, a), second = hc_point_subtract (d, c);
  HcPoint apart = hc_point_subtract (c, a);
  double span = hc_point_cross (first, second);
  double along_second;

  if (span == 0)
    return FALSE;
  along_second = hc_point_cross (apart, first) / span;
  *part = hc_point_cross (apart, second) / span;
  return along_second >= 0 && along_second <= 1 && *part >= 0 && *part <= 1;
}
