/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Gathers the lines that may catch fittings, corners and new pens. */
#include "config.h"

#include "plan/snap.h"

#include "plan/edit-movable.h"
#include "plan/snap-lines.h"
#include "plan/wall-corners.h"

static HcBox
moved_by (HcBox box, HcPoint by)
{
  box.x_mm += by.x_mm;
  box.y_mm += by.y_mm;
  return box;
}

static HcBox
box_of_all (const HcLayout *layout, const char *const *ids, HcPoint by)
{
  HcBox box = hc_box_empty ();

  for (guint i = 0; ids[i] != NULL; i++)
    {
      HcFitting *fitting = hc_layout_get_fitting (layout, ids[i], NULL);

      if (fitting != NULL)
        box = hc_box_join (box, moved_by (hc_fitting_get_box (fitting), by));
    }
  return box;
}

static void
add_neighbours (GArray *lines, HcParts *fittings, const char *const *dragged, HcBox box)
{
  g_autoptr (GArray) boxes = g_array_new (FALSE, FALSE, sizeof (HcBox));

  for (guint i = 0; i < fittings->len; i++)
    if (!g_strv_contains (dragged, hc_fitting_get_id (fittings->pdata[i])))
      {
        HcBox neighbour = hc_fitting_get_box (fittings->pdata[i]);

        hc_snap_lines_add_box (lines, neighbour);
        g_array_append_val (boxes, neighbour);
      }
  hc_snap_lines_add_gaps (lines, boxes, box);
}

/* One thing alone is caught by the rules: of several each has its own. */
static void
add_rules (GArray *lines, const HcSnapRules *rules, const HcLayout *layout, const HcPen *pen,
           const char *const *dragged, const GArray *ring)
{
  HcFitting *one = hc_layout_get_fitting (layout, dragged[0], NULL);

  if (rules != NULL && one != NULL && dragged[1] == NULL)
    hc_snap_lines_add_rules (lines, rules, one, hc_pen_get (pen)->fittings,
                             (const HcPoint *) ring->data, ring->len);
}

/* Walls first, then what the rules ask: of two places as near, the better one. */
static GArray *
lines_about (const HcLayout *layout, HcBox box, const char *const *dragged,
             const HcSnapRules *rules)
{
  GArray *lines = g_array_new (FALSE, FALSE, sizeof (HcSnapLine));
  HcPen *pen = hc_layout_find_pen_at (layout, hc_box_centre (box));
  g_autoptr (GArray) ring = NULL;

  if (pen == NULL)
    {
      add_neighbours (lines, hc_layout_get (layout)->loose, dragged, box);
      return lines;
    }
  ring = hc_layout_get_pen_ring (layout, pen);
  hc_snap_lines_add_ring (lines, (const HcPoint *) ring->data, ring->len);
  add_rules (lines, rules, layout, pen, dragged, ring);
  add_neighbours (lines, hc_pen_get (pen)->fittings, dragged, box);
  return lines;
}

/**
 * hc_snap_fittings: (skip)
 * @plan: the plan when the drag began
 * @ids: (array zero-terminated=1): ids of what is dragged
 * @by: how far the hand has moved
 * @reach_mm: how near a line must be to catch; 0 for not at all
 * @rules: (nullable): distances the rules ask for, which catch as well
 *
 * The walls of the pen under it, its middles, the edges and middles of what
 * stands there, and even gaps between catch it.
 *
 * Returns: how far to move it, and what caught it
 */
HcSnap
hc_snap_fittings (HcPlan *plan, const char *const *ids, HcPoint by, double reach_mm,
                  const HcSnapRules *rules)
{
  HcLayout *layout = hc_plan_get_layout (plan);
  HcBox box = box_of_all (layout, ids, by);
  g_autoptr (GArray) lines = NULL;
  HcSnap snap = { by, 0, { { 0 } } };

  if (hc_box_is_empty (box))
    return snap;
  lines = lines_about (layout, box, ids, rules);
  snap = hc_snap_lines_catch (lines, box, reach_mm);
  snap.by = hc_point_add (snap.by, by);
  return snap;
}

static GArray *
lines_of_corners (const HcLayout *layout, const char *except)
{
  HcParts *corners = hc_layout_get (layout)->corners;
  GArray *lines = g_array_new (FALSE, FALSE, sizeof (HcSnapLine));

  for (guint i = 0; i < corners->len; i++)
    {
      const char *id = hc_corner_get_id (corners->pdata[i]);
      HcPoint at = hc_corner_get_point (layout, id);

      if (g_strcmp0 (id, except) == 0)
        continue;
      hc_snap_lines_add (lines, HC_SNAP_CORNER, TRUE, at.x_mm, at.y_mm, at.y_mm);
      hc_snap_lines_add (lines, HC_SNAP_CORNER, FALSE, at.y_mm, at.x_mm, at.x_mm);
    }
  return lines;
}

/**
 * hc_snap_corner: (skip)
 * @plan: the plan when the drag began
 * @corner: (nullable): id of the corner dragged
 * @to: where the hand is
 * @reach_mm: how near a line must be to catch; 0 for not at all
 *
 * Returns: how far from @to it comes to rest, in line with other corners
 */
HcSnap
hc_snap_corner (HcPlan *plan, const char *corner, HcPoint to, double reach_mm)
{
  g_autoptr (GArray) lines = lines_of_corners (hc_plan_get_layout (plan), corner);

  return hc_snap_lines_catch (lines, hc_box_around (&to, 1), reach_mm);
}

static gboolean
find_wall_point (const HcLayout *layout, HcPoint at, double reach_mm, HcPoint *caught)
{
  HcParts *walls = hc_layout_get (layout)->walls;
  double nearest = reach_mm;
  gboolean found = FALSE;

  for (guint i = 0; i < walls->len; i++)
    {
      HcPoint from, to;
      double distance;

      if (!hc_layout_get_wall_line (layout, walls->pdata[i], &from, &to))
        continue;
      distance = hc_point_distance_to_line (at, from, to);
      if (distance > nearest)
        continue;
      nearest = distance;
      *caught = hc_point_between (from, to, hc_point_along (at, from, to));
      found = TRUE;
    }
  return found;
}

static gboolean
find_corner_point (const HcLayout *layout, HcPoint at, double reach_mm, HcPoint *caught)
{
  HcParts *corners = hc_layout_get (layout)->corners;
  double nearest = reach_mm;
  gboolean found = FALSE;

  for (guint i = 0; i < corners->len; i++)
    {
      HcPoint corner = hc_corner_get_point (layout, hc_corner_get_id (corners->pdata[i]));

      if (hc_point_distance (at, corner) > nearest)
        continue;
      nearest = hc_point_distance (at, corner);
      *caught = corner;
      found = TRUE;
    }
  return found;
}

/**
 * hc_snap_point: (skip)
 * @plan: a plan
 * @at: where the hand is while a pen is drawn
 * @reach_mm: how near something must be to catch; 0 for not at all
 *
 * Returns: the corner close by, else the place on a wall close by, else the
 *   place in line with other corners
 */
HcPoint
hc_snap_point (HcPlan *plan, HcPoint at, double reach_mm)
{
  HcLayout *layout = hc_plan_get_layout (plan);
  HcPoint caught = at;

  if (reach_mm <= 0 || find_corner_point (layout, at, reach_mm, &caught)
      || find_wall_point (layout, at, reach_mm, &caught))
    return hc_point_rounded (caught);
  return hc_point_rounded (hc_point_add (at, hc_snap_corner (plan, NULL, at, reach_mm).by));
}
