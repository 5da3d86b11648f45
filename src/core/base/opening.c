/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The floor that counts: what is wide enough for a bird. */
#include "config.h"

#include "base/opening.h"

#include "base/free-standing.h"
#include "base/geos.h"
#include "base/shape-ops.h"
#include "base/shape-relate.h"

/* Eroding a slot by exactly half its width deletes it; a little less keeps it. */
#define WIDTH_SLACK_MM 1.0

/* How far into a corner a bird reaches, in halves of its width: what a square does
 * in a square corner, and a little more for walls out of true. A larger reach
 * would win back wedges and slots too narrow for any bird. */
#define CORNER_REACH 1.5

/* Things nearer than that to each other meet, by a hair's breadth more. */
#define MEETING_MM 1.0

/* What offsets out and back may take from a whole floor by rounding. */
#define ROUNDING_MM2 1.0

/* Where a short edge vanishes on the way in, sharp corners reach past the old
 * outline on the way out: what was not there before is cut off again. */
static HcShape *
keep_inside (HcShape *floor,
             HcShape *opened)
{
  double lost_mm2 = hc_shape_get_area_mm2 (floor) - hc_shape_get_area_mm2 (opened);

  if (hc_shape_is_empty (opened))
    return hc_shape_ref (opened);
  if (!hc_shape_contains (floor, opened))
    return hc_shape_intersection (opened, floor);
  return hc_shape_ref (lost_mm2 < ROUNDING_MM2 ? floor : opened);
}

static double
half_width_mm (double least_width_mm)
{
  return MAX (least_width_mm - WIDTH_SLACK_MM, 0) / 2;
}

static HcShape *
open_floor (const GEOSGeometry *geometry,
            double least_width_mm)
{
  double by_mm = half_width_mm (least_width_mm);
  g_autoptr (HcShape) floor = hc_geos_to_shape (geometry);
  g_autoptr (HcShape) opened = NULL;
  g_autoptr (GEOSGeometry) eroded = NULL;
  g_autoptr (GEOSGeometry) regrown = NULL;

  if (by_mm == 0 || hc_shape_is_empty (floor))
    return g_steal_pointer (&floor);
  eroded = hc_geos_grow (geometry, -by_mm, CORNER_REACH);
  regrown = hc_geos_grow (eroded, by_mm, CORNER_REACH);
  opened = hc_geos_to_shape (regrown);
  return keep_inside (floor, opened);
}

/**
 * hc_shape_opening:
 * @self: a shape
 * @least_width_mm: how wide a bird needs it, in mm
 *
 * Leaves out all that is narrower than @least_width_mm, forgiving 1 mm. Corners
 * of 84 degrees and more stay sharp: a rectangle keeps its area to the last digit.
 *
 * Returns: (transfer full): the part that is wide enough
 */
HcShape *
hc_shape_opening (HcShape *self,
                  double least_width_mm)
{
  return hc_shape_free_floor (self, NULL, 0, least_width_mm);
}

/* Only footprints that may touch each other need joining, which costs most. */
static GEOSGeometry *
take_off (GEOSGeometry *floor,
          GPtrArray *footprints,
          gboolean need_joining)
{
  g_autoptr (GEOSGeometry) whole = NULL;
  g_autoptr (GEOSGeometry) parts = NULL;
  g_autoptr (GEOSGeometry) taken = NULL;

  if (footprints->len == 0)
    return floor;
  whole = floor;
  parts = hc_geos_from_shapes ((HcShape **) footprints->pdata, footprints->len);
  taken = need_joining ? hc_geos_join (parts) : g_steal_pointer (&parts);
  return hc_geos_overlay (HC_OVERLAY_DIFFERENCE, whole, taken);
}

/**
 * hc_shape_free_floor: (skip)
 * @outline: the floor of a pen
 * @footprints: (array length=n_footprints): what stands on it
 * @n_footprints: how many
 * @least_width_mm: how wide floor must be to count, in mm; 0 counts all
 *
 * Takes all footprints off the floor and leaves out what is then too narrow, as
 * [method@Shape.opening] does.
 *
 * Returns: (transfer full): the floor that counts
 */
HcShape *
hc_shape_free_floor (HcShape *outline,
                     HcShape *const *footprints,
                     guint n_footprints,
                     double least_width_mm)
{
  double reach_mm = CORNER_REACH * half_width_mm (least_width_mm) + MEETING_MM;
  g_autoptr (GPtrArray) free_standing = g_ptr_array_new ();
  g_autoptr (GPtrArray) alone = g_ptr_array_new ();
  g_autoptr (GPtrArray) together = g_ptr_array_new ();
  g_autoptr (GEOSGeometry) floor = NULL;
  g_autoptr (HcShape) opened = NULL;

  g_return_val_if_fail (outline != NULL, NULL);

  hc_free_standing_sort (outline, footprints, n_footprints, reach_mm, free_standing, alone,
                         together);
  floor = take_off (hc_geos_from_shape (outline), alone, FALSE);
  floor = take_off (g_steal_pointer (&floor), together, TRUE);
  opened = open_floor (floor, least_width_mm);
  return hc_free_standing_cut_out (opened, free_standing);
}
