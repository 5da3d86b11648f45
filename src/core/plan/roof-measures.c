/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Heights, areas and volumes under a roof. */
#include "config.h"

#include "plan/roof.h"

#include "base/ring.h"

#include <math.h>

/**
 * hc_roof_is_sloped: (skip)
 * @roof: a roof
 *
 * Returns: whether it is higher in some places than in others
 */
gboolean
hc_roof_is_sloped (const HcRoof *roof)
{
  return roof->ridge_mm > roof->eaves_mm;
}

/* How far it is from the eaves to the ridge on one side, seen from above. */
static double
run_mm (const HcRoof *roof, gboolean far_side)
{
  return far_side ? roof->to_mm - roof->ridge_at_mm : roof->ridge_at_mm - roof->from_mm;
}

/* How much it rises for each mm towards the ridge. */
static double
slope (const HcRoof *roof, gboolean far_side)
{
  double run = run_mm (roof, far_side);

  return run > 0 ? (roof->ridge_mm - roof->eaves_mm) / run : 0;
}

static double
height_at_mm (const HcRoof *roof, double at_mm)
{
  double fallen_mm = fabs (at_mm - roof->ridge_at_mm) * slope (roof, at_mm > roof->ridge_at_mm);

  return MAX (roof->ridge_mm - fallen_mm, roof->eaves_mm);
}

/**
 * hc_roof_get_height_mm: (skip)
 * @roof: a roof
 * @at: a place under it
 *
 * Returns: how high its underside is there, above the floor
 */
double
hc_roof_get_height_mm (const HcRoof *roof, HcPoint at)
{
  return hc_roof_is_sloped (roof) ? height_at_mm (roof, hc_point_dot (at, roof->across))
                                  : roof->eaves_mm;
}

/**
 * hc_roof_find_band: (skip)
 * @roof: a roof
 * @height_mm: a height
 * @from_mm: (out): where the roof becomes so high, along its way across
 * @to_mm: (out): where it ends being so high
 *
 * Returns: whether it is so high anywhere
 */
gboolean
hc_roof_find_band (const HcRoof *roof, double height_mm, double *from_mm, double *to_mm)
{
  double missing = 0;

  if (height_mm > roof->ridge_mm)
    return FALSE;
  if (hc_roof_is_sloped (roof))
    missing = CLAMP ((roof->ridge_mm - height_mm) / (roof->ridge_mm - roof->eaves_mm), 0, 1);
  *from_mm = roof->ridge_at_mm - missing * run_mm (roof, FALSE);
  *to_mm = roof->ridge_at_mm + missing * run_mm (roof, TRUE);
  return TRUE;
}

/* The part of a ring on one side of the ridge; dents leave seams of no area. */
static GArray *
cut_at_ridge (const HcRoof *roof, const HcPoint *ring, guint n_points, gboolean far_side)
{
  GArray *kept = g_array_new (FALSE, FALSE, sizeof (HcPoint));

  for (guint i = 0; i < n_points; i++)
    {
      HcPoint next = ring[(i + 1) % n_points];
      double here_mm = hc_point_dot (ring[i], roof->across) - roof->ridge_at_mm;
      double there_mm = hc_point_dot (next, roof->across) - roof->ridge_at_mm;

      if (far_side ? here_mm >= 0 : here_mm <= 0)
        g_array_append_val (kept, ring[i]);
      if (here_mm * there_mm < 0)
        {
          HcPoint on_ridge = hc_point_between (ring[i], next, here_mm / (here_mm - there_mm));

          g_array_append_val (kept, on_ridge);
        }
    }
  return kept;
}

/* Area times height, the height changing evenly: a triangle from the first
 * corner to each edge weighs its mean height. */
static double
prism_mm3 (const HcRoof *roof, const GArray *ring)
{
  const HcPoint *points = (const HcPoint *) ring->data;
  double volume = 0;

  for (guint i = 1; i + 1 < ring->len; i++)
    {
      double doubled = hc_point_cross (hc_point_subtract (points[i], points[0]),
                                       hc_point_subtract (points[i + 1], points[0]));
      double heights = hc_roof_get_height_mm (roof, points[0])
                       + hc_roof_get_height_mm (roof, points[i])
                       + hc_roof_get_height_mm (roof, points[i + 1]);

      volume += doubled / 2 * heights / 3;
    }
  return fabs (volume);
}

/**
 * hc_roof_get_area_mm2: (skip)
 * @roof: a roof
 * @ring: (array length=n_points): the inside of walls under it
 * @n_points: how many corners
 *
 * Returns: the area of its underside over the ring, along its slope
 */
double
hc_roof_get_area_mm2 (const HcRoof *roof, const HcPoint *ring, guint n_points)
{
  double area = 0;

  if (!hc_roof_is_sloped (roof))
    return fabs (hc_ring_area_mm2 (ring, n_points));
  for (gboolean far_side = FALSE; far_side <= TRUE; far_side++)
    {
      g_autoptr (GArray) side = cut_at_ridge (roof, ring, n_points, far_side);

      area += fabs (hc_ring_area_mm2 ((const HcPoint *) side->data, side->len))
              * hypot (1, slope (roof, far_side));
    }
  return area;
}

/**
 * hc_roof_get_volume_mm3: (skip)
 * @roof: a roof
 * @ring: (array length=n_points): the inside of walls under it
 * @n_points: how many corners
 *
 * Returns: the room between the floor and the roof's underside
 */
double
hc_roof_get_volume_mm3 (const HcRoof *roof, const HcPoint *ring, guint n_points)
{
  double volume = 0;

  if (!hc_roof_is_sloped (roof))
    return fabs (hc_ring_area_mm2 (ring, n_points)) * roof->eaves_mm;
  for (gboolean far_side = FALSE; far_side <= TRUE; far_side++)
    {
      g_autoptr (GArray) side = cut_at_ridge (roof, ring, n_points, far_side);

      volume += prism_mm3 (roof, side);
    }
  return volume;
}

/* Where a wall passes under the ridge, as a share of its length; 1 when not. */
static double
find_ridge_on (const HcRoof *roof, HcPoint from, HcPoint to)
{
  double here_mm = hc_point_dot (from, roof->across) - roof->ridge_at_mm;
  double there_mm = hc_point_dot (to, roof->across) - roof->ridge_at_mm;

  return here_mm * there_mm < 0 ? here_mm / (here_mm - there_mm) : 1;
}

/**
 * hc_roof_get_wall_area_mm2: (skip)
 * @roof: a roof
 * @from: where a wall starts
 * @to: where it ends
 *
 * Returns: the face of the wall from the floor to the roof, its gable included
 */
double
hc_roof_get_wall_area_mm2 (const HcRoof *roof, HcPoint from, HcPoint to)
{
  double share = find_ridge_on (roof, from, to);
  double start_mm = hc_roof_get_height_mm (roof, from);
  double middle_mm = hc_roof_get_height_mm (roof, hc_point_between (from, to, share));
  double end_mm = hc_roof_get_height_mm (roof, to);

  return hc_point_distance (from, to)
         * (share * (start_mm + middle_mm) + (1 - share) * (middle_mm + end_mm)) / 2;
}

/**
 * hc_roof_get_highest_mm: (skip)
 * @roof: a roof
 * @from: where a wall starts
 * @to: where it ends
 *
 * Returns: how high the roof is over the wall where it is highest
 */
double
hc_roof_get_highest_mm (const HcRoof *roof, HcPoint from, HcPoint to)
{
  HcPoint under = hc_point_between (from, to, find_ridge_on (roof, from, to));

  return MAX (hc_roof_get_height_mm (roof, under),
              MAX (hc_roof_get_height_mm (roof, from), hc_roof_get_height_mm (roof, to)));
}
