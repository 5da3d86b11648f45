/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The floor that counts: what is wide enough for a bird. */
#include "config.h"

#include "base/opening.h"

#include "base/free-standing.h"
#include "base/linework.h"
#include "base/offset.h"
#include "base/shape-private.h"
#include "base/winding.h"

/* Eroding a slot by exactly half its width deletes it; a little less keeps it. */
#define WIDTH_SLACK_MM 1.0

/* How far into a corner a bird reaches, in halves of its width: what a square does
 * in a square corner, and a little more for walls out of true. A larger reach
 * would win back wedges and slots too narrow for any bird. */
#define CORNER_REACH 1.5

/* Things nearer than that to each other meet, by a hair's breadth more. */
#define MEETING_MM 1.0

/* Edges come back this much farther, in steps of the finest grid, so that they
 * do not run along the walls a hair inside. */
#define STEPS_FARTHER 4

static double
half_width_mm (double least_width_mm)
{
  return MAX (least_width_mm - WIDTH_SLACK_MM, 0) / 2;
}

static gboolean
is_too_narrow (const HcShape *outline,
               double half_mm)
{
  HcBox bounds = hc_shape_get_bounds (outline);

  return hc_shape_is_empty (outline) || 2 * half_mm > MIN (bounds.width_mm, bounds.depth_mm);
}

static HcLoops *
find_free_floor (const HcShape *outline,
                 const GPtrArray *footprints)
{
  g_autoptr (HcLoops) edges = hc_loops_new ();

  hc_loops_add_shape (edges, outline, FALSE);
  for (guint i = 0; i < footprints->len; i++)
    hc_loops_add_shape (edges, footprints->pdata[i], TRUE);
  return hc_winding_inside (edges);
}

/* Where the middle of a bird can be. */
static HcLoops *
find_middles (const HcLoops *floor,
              double half_mm)
{
  g_autoptr (HcLoops) moved = hc_loops_move_in (floor, half_mm, CORNER_REACH);

  return hc_winding_inside (moved);
}

static HcLoops *
open_floor (const HcLoops *floor,
            double half_mm,
            double farther_mm)
{
  g_autoptr (HcLoops) middles = find_middles (floor, half_mm);
  g_autoptr (HcLoops) reached = hc_loops_move_in (middles, -half_mm - farther_mm, CORNER_REACH);

  return hc_winding_inside_both (floor, reached);
}

/**
 * hc_shape_opening:
 * @self: a shape
 * @least_width_mm: how wide a bird needs it, in mm
 *
 * Leaves out all that is narrower than @least_width_mm, forgiving 1 mm. Corners
 * of 84 degrees and more stay sharp: a rectangle keeps its area to the last digit.
 *
 * What is returned is never more than @self, and of the same area however @self
 * is turned, mirrored or moved, but for passages within 0.001 mm of the width and
 * for about 1 of 2,000 rooms crammed with things askew, by 0.04 m² at most.
 * One thing more takes floor away and gives none back where all things stand
 * square; where they lie askew over each other, square corners in the middle of a
 * crowd can, in about 1 of 2,500 crammed rooms, count up to 0.1 m² they did not
 * before.
 *
 * Returns: (transfer full): the part that is wide enough
 */
HcShape *
hc_shape_opening (HcShape *self,
                  double least_width_mm)
{
  return hc_shape_free_floor (self, NULL, 0, least_width_mm);
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
  double half_mm = half_width_mm (least_width_mm);
  double farther_mm;
  g_autoptr (GPtrArray) free_standing = g_ptr_array_new ();
  g_autoptr (GPtrArray) others = g_ptr_array_new ();
  g_autoptr (HcLoops) floor = NULL;
  g_autoptr (HcLoops) opened = NULL;
  g_autoptr (HcShape) counted = NULL;

  g_return_val_if_fail (outline != NULL, NULL);

  if (is_too_narrow (outline, half_mm))
    return hc_shape_new_empty ();
  farther_mm = STEPS_FARTHER * hc_grid_step_mm (hc_shape_get_bounds (outline));
  hc_free_standing_sort (outline, footprints, n_footprints, CORNER_REACH * half_mm + MEETING_MM,
                         free_standing, others);
  floor = find_free_floor (outline, others);
  opened = half_mm == 0 ? g_steal_pointer (&floor) : open_floor (floor, half_mm, farther_mm);
  counted = hc_loops_to_shape (opened);
  return hc_free_standing_cut_out (counted, free_standing);
}
