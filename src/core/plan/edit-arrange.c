/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Fittings in line, evenly spaced, mirrored and locked. */
#include "config.h"

#include "plan/edit-arrange.h"

#include "plan/edit-movable.h"

#include <glib/gi18n-lib.h>

static HcBox
box_of_all (GPtrArray *fittings)
{
  HcBox box = hc_box_empty ();

  for (guint i = 0; i < fittings->len; i++)
    box = hc_box_join (box, hc_fitting_get_box (fittings->pdata[i]));
  return box;
}

static HcPoint
way_into_line (HcBox box, HcBox all, HcAlign align)
{
  HcPoint to_middle = hc_point_subtract (hc_box_centre (all), hc_box_centre (box));

  switch (align)
    {
    case HC_ALIGN_LEFT:
      return hc_point (all.x_mm - box.x_mm, 0);
    case HC_ALIGN_RIGHT:
      return hc_point (all.x_mm + all.width_mm - box.x_mm - box.width_mm, 0);
    case HC_ALIGN_TOP:
      return hc_point (0, all.y_mm - box.y_mm);
    case HC_ALIGN_BOTTOM:
      return hc_point (0, all.y_mm + all.depth_mm - box.y_mm - box.depth_mm);
    case HC_ALIGN_MIDDLE_UPRIGHT:
      return hc_point (to_middle.x_mm, 0);
    default:
      return hc_point (0, to_middle.y_mm);
    }
}

/* Takes each fitting as far as @ways says. */
static HcPlan *
move_each (HcPlan *plan, GPtrArray *fittings, const HcPoint *ways, GError **error)
{
  g_autoptr (GPtrArray) after = g_ptr_array_new_with_free_func (hc_part_unref);

  for (guint i = 0; i < fittings->len; i++)
    {
      const HcFittingValues *values = hc_fitting_get (fittings->pdata[i]);
      HcPoint to = hc_point_add (hc_point (values->x_mm, values->y_mm), ways[i]);
      HcFitting *moved = hc_edit_placed (fittings->pdata[i], to, values->turn_deg, plan, error);

      if (moved == NULL)
        return NULL;
      g_ptr_array_add (after, moved);
    }
  return hc_edit_house_all (plan, after);
}

/**
 * hc_plan_align_fittings:
 * @plan: a plan
 * @ids: (array zero-terminated=1): ids of fittings
 * @align: what comes into one line
 * @error: says why not: one of them is locked, for instance
 *
 * Returns: (transfer full): the changed plan, or %NULL and a %HC_ERROR_EDIT
 */
HcPlan *
hc_plan_align_fittings (HcPlan *plan, const char *const *ids, HcAlign align, GError **error)
{
  g_autoptr (GPtrArray) fittings = g_ptr_array_new ();
  g_autofree HcPoint *ways = NULL;
  HcBox all;

  if (!hc_edit_find_movable (plan, ids, fittings, error))
    return NULL;
  all = box_of_all (fittings);
  ways = g_new (HcPoint, fittings->len + 1);
  for (guint i = 0; i < fittings->len; i++)
    ways[i] = way_into_line (hc_fitting_get_box (fittings->pdata[i]), all, align);
  return move_each (plan, fittings, ways, error);
}

static double
start_of (HcBox box, HcPageWay way)
{
  return way == HC_WAY_ACROSS ? box.x_mm : box.y_mm;
}

static double
size_of (HcBox box, HcPageWay way)
{
  return way == HC_WAY_ACROSS ? box.width_mm : box.depth_mm;
}

static int
compare_middles (gconstpointer a, gconstpointer b, gpointer way)
{
  HcBox one = hc_fitting_get_box (*(HcFitting *const *) a);
  HcBox other = hc_fitting_get_box (*(HcFitting *const *) b);
  HcPageWay along = GPOINTER_TO_INT (way);
  double before = start_of (one, along) + size_of (one, along) / 2;
  double after = start_of (other, along) + size_of (other, along) / 2;

  return (before > after) - (before < after);
}

static double
gap_between_all (GPtrArray *fittings, HcPageWay way)
{
  double free_mm = size_of (box_of_all (fittings), way);

  for (guint i = 0; i < fittings->len; i++)
    free_mm -= size_of (hc_fitting_get_box (fittings->pdata[i]), way);
  return free_mm / (fittings->len - 1);
}

/**
 * hc_plan_spread_fittings:
 * @plan: a plan
 * @ids: (array zero-terminated=1): ids of three fittings or more
 * @way: which way they stand in a row
 * @error: says why not
 *
 * The first and the last stay; the others stand with equal gaps between.
 *
 * Returns: (transfer full): the changed plan, or %NULL and a %HC_ERROR_EDIT
 */
HcPlan *
hc_plan_spread_fittings (HcPlan *plan, const char *const *ids, HcPageWay way, GError **error)
{
  g_autoptr (GPtrArray) fittings = g_ptr_array_new ();
  g_autofree HcPoint *ways = NULL;
  double gap_mm, at_mm;

  if (!hc_edit_find_movable (plan, ids, fittings, error))
    return NULL;
  if (fittings->len < 3)
    return hc_edit_refuse (error, _("Choose three things or more to spread them evenly."));
  g_ptr_array_sort_with_data (fittings, compare_middles, GINT_TO_POINTER (way));
  gap_mm = gap_between_all (fittings, way);
  at_mm = start_of (box_of_all (fittings), way);
  ways = g_new (HcPoint, fittings->len);
  for (guint i = 0; i < fittings->len; i++)
    {
      HcBox box = hc_fitting_get_box (fittings->pdata[i]);
      double by_mm = at_mm - start_of (box, way);

      ways[i] = way == HC_WAY_ACROSS ? hc_point (by_mm, 0) : hc_point (0, by_mm);
      at_mm += size_of (box, way) + gap_mm;
    }
  return move_each (plan, fittings, ways, error);
}

static HcFitting *
mirrored (HcFitting *fitting, HcPoint middle, HcPageWay way, HcPlan *plan, GError **error)
{
  const HcFittingValues *values = hc_fitting_get (fitting);
  HcPoint at = { values->x_mm, values->y_mm };
  double turn_deg = way == HC_WAY_ACROSS ? -values->turn_deg : 180 - values->turn_deg;

  if (way == HC_WAY_ACROSS)
    at.x_mm = 2 * middle.x_mm - at.x_mm;
  else
    at.y_mm = 2 * middle.y_mm - at.y_mm;
  return hc_edit_placed (fitting, at, hc_turn_within_circle (turn_deg), plan, error);
}

/**
 * hc_plan_mirror_fittings:
 * @plan: a plan
 * @ids: (array zero-terminated=1): ids of fittings
 * @way: whether left and right change places, or top and bottom
 * @error: says why not
 *
 * They are mirrored about the middle of them all; what stood with its back to
 * a wall has its back to the wall across.
 *
 * Returns: (transfer full): the changed plan, or %NULL and a %HC_ERROR_EDIT
 */
HcPlan *
hc_plan_mirror_fittings (HcPlan *plan, const char *const *ids, HcPageWay way, GError **error)
{
  g_autoptr (GPtrArray) fittings = g_ptr_array_new ();
  g_autoptr (GPtrArray) after = g_ptr_array_new_with_free_func (hc_part_unref);
  HcPoint middle;

  if (!hc_edit_find_movable (plan, ids, fittings, error))
    return NULL;
  middle = hc_box_centre (box_of_all (fittings));
  for (guint i = 0; i < fittings->len; i++)
    {
      HcFitting *one = mirrored (fittings->pdata[i], middle, way, plan, error);

      if (one == NULL)
        return NULL;
      g_ptr_array_add (after, one);
    }
  return hc_edit_house_all (plan, after);
}

/**
 * hc_plan_lock_fittings:
 * @plan: a plan
 * @ids: (array zero-terminated=1): ids of fittings
 * @locked: whether they are kept from moving
 * @error: says which is no longer there
 *
 * Returns: (transfer full): the changed plan, @plan when nothing changed, or
 *   %NULL and a %HC_ERROR_EDIT
 */
HcPlan *
hc_plan_lock_fittings (HcPlan *plan, const char *const *ids, gboolean locked, GError **error)
{
  g_autoptr (GPtrArray) after = g_ptr_array_new_with_free_func (hc_part_unref);

  for (guint i = 0; ids[i] != NULL; i++)
    {
      HcFitting *fitting = hc_edit_find_fitting (plan, ids[i], error);
      HcFittingValues values;

      if (fitting == NULL)
        return NULL;
      values = *hc_fitting_get (fitting);
      values.locked = locked;
      g_ptr_array_add (after, hc_fitting_with (fitting, &values));
    }
  return hc_edit_house_all (plan, after);
}
