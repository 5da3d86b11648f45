/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Finds what keeps a ring of corners from bounding a floor. */
#include "config.h"

#include "base/crossing.h"
#include "base/ring.h"

#include <math.h>

/* Less than a square of a thousandth of a millimetre by a metre is no floor. */
#define LEAST_AREA_MM2 1.0

static gboolean
find_repeated_corner (const HcPoint *points,
                      guint n_points,
                      guint *first,
                      guint *second)
{
  for (*first = 0; *first < n_points; (*first)++)
    for (*second = *first + 1; *second < n_points; (*second)++)
      if (hc_point_equal (hc_point_rounded (points[*first]), hc_point_rounded (points[*second])))
        return TRUE;
  return FALSE;
}

/* Neighbours share a corner; they are at fault only when one folds back. */
static gboolean
neighbours_fold (HcPoint a,
                 HcPoint shared,
                 HcPoint c)
{
  HcPoint back = hc_point_subtract (a, shared), on = hc_point_subtract (c, shared);

  return hc_point_cross (back, on) == 0 && hc_point_dot (back, on) > 0;
}

static gboolean
edges_are_at_fault (const HcPoint *points,
                    guint n_points,
                    guint i,
                    guint j)
{
  HcPoint a = points[i], b = points[(i + 1) % n_points];
  HcPoint c = points[j], d = points[(j + 1) % n_points];

  if (j == i + 1)
    return neighbours_fold (a, b, d);
  if (i == 0 && j == n_points - 1)
    return neighbours_fold (c, a, b);
  return hc_lines_touch (a, b, c, d);
}

static gboolean
find_crossing (const HcPoint *points,
               guint n_points,
               guint *first,
               guint *second)
{
  for (*first = 0; *first < n_points; (*first)++)
    for (*second = *first + 1; *second < n_points; (*second)++)
      if (edges_are_at_fault (points, n_points, *first, *second))
        return TRUE;
  return FALSE;
}

static HcRingFault
find_fault (const HcPoint *points,
            guint n_points,
            guint *first,
            guint *second)
{
  if (n_points < 3)
    return HC_RING_TOO_FEW_CORNERS;
  if (find_repeated_corner (points, n_points, first, second))
    return HC_RING_REPEATED_CORNER;
  if (n_points == 3 && fabs (hc_ring_area_mm2 (points, n_points)) < LEAST_AREA_MM2)
    return HC_RING_NO_AREA;
  if (find_crossing (points, n_points, first, second))
    return HC_RING_SELF_CROSSING;
  if (fabs (hc_ring_area_mm2 (points, n_points)) < LEAST_AREA_MM2)
    return HC_RING_NO_AREA;
  return HC_RING_SOUND;
}

/**
 * hc_ring_find_fault: (skip)
 * @points: (array length=n_points) (nullable): the corners
 * @n_points: how many
 * @first: (out) (optional): the first corner or edge at fault
 * @second: (out) (optional): the other one
 *
 * Looks for what keeps a ring of corners from bounding a floor. For a repeated
 * corner @first and @second are the two corners, for a crossing they are the two
 * edges (edge i runs from corner i to the next); otherwise both are 0.
 *
 * Returns: the first fault found
 */
HcRingFault
hc_ring_find_fault (const HcPoint *points,
                    guint n_points,
                    guint *first,
                    guint *second)
{
  guint i = 0, j = 0;
  HcRingFault fault = find_fault (points, n_points, &i, &j);
  gboolean names_two = fault == HC_RING_REPEATED_CORNER || fault == HC_RING_SELF_CROSSING;

  if (first != NULL)
    *first = names_two ? i : 0;
  if (second != NULL)
    *second = names_two ? j : 0;
  return fault;
}
