/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The small plan that tests of edits start from. */
#include "config.h"

#include "two-pens.h"

#include "base/error.h"
#include "plan/soundness.h"
#include "plan/wall-places.h"

static void
add_corner (HcParts *corners, const char *id, double x_mm, double y_mm)
{
  HcCornerValues values = { x_mm, y_mm };

  g_ptr_array_add (corners, hc_corner_new (id, &values));
}

static void
add_wall (HcParts *walls, const char *id, const char *from, const char *to)
{
  HcWallValues values;

  hc_wall_values_init (&values);
  values.from = (char *) from;
  values.to = (char *) to;
  g_ptr_array_add (walls, hc_wall_new (id, &values));
}

static void
add_pen (HcParts *pens, const char *id, const char *const *walls, HcFitting *fitting)
{
  g_autoptr (HcParts) fittings = hc_parts_new ();
  HcPenValues values;

  g_ptr_array_add (fittings, fitting);
  hc_pen_values_init (&values);
  values.name = (char *) id;
  values.walls = (char **) walls;
  values.fittings = fittings;
  g_ptr_array_add (pens, hc_pen_new (id, &values));
}

HcFitting *
sample_fitting (const char *id, double x_mm, double y_mm)
{
  HcFittingValues values;

  hc_fitting_values_init (&values);
  values.kind = HC_FITTING_FEEDER;
  values.x_mm = x_mm;
  values.y_mm = y_mm;
  values.width_mm = 600;
  values.depth_mm = 200;
  return hc_fitting_new (id, &values);
}

HcOpening *
sample_opening (const char *id, const char *wall, double along_mm, double width_mm)
{
  HcOpeningValues values;

  hc_opening_values_init (&values);
  values.kind = HC_OPENING_POP_HOLE;
  values.wall = (char *) wall;
  values.along_mm = along_mm;
  values.width_mm = width_mm;
  values.height_mm = 400;
  return hc_opening_new (id, &values);
}

static HcLayout *
layout_new (void)
{
  static const char *const left[] = { "a", "m", "c", "d", NULL };
  static const char *const right[] = { "e", "f", "g", "m", NULL };
  g_autoptr (HcParts) corners = hc_parts_new ();
  g_autoptr (HcParts) walls = hc_parts_new ();
  g_autoptr (HcParts) openings = hc_parts_new ();
  g_autoptr (HcParts) pens = hc_parts_new ();
  g_autoptr (HcParts) loose = hc_parts_new ();
  HcLayoutValues values = { NULL, corners, walls, openings, pens, loose };

  add_corner (corners, "k1", 0, 0);
  add_corner (corners, "k2", 3000, 0);
  add_corner (corners, "k3", 3000, 2000);
  add_corner (corners, "k4", 0, 2000);
  add_corner (corners, "k5", 6000, 0);
  add_corner (corners, "k6", 6000, 2000);
  add_wall (walls, "a", "k1", "k2");
  add_wall (walls, "m", "k3", "k2");
  add_wall (walls, "c", "k3", "k4");
  add_wall (walls, "d", "k4", "k1");
  add_wall (walls, "e", "k2", "k5");
  add_wall (walls, "f", "k5", "k6");
  add_wall (walls, "g", "k6", "k3");
  g_ptr_array_add (openings, sample_opening ("door", "a", 1500, 800));
  g_ptr_array_add (openings, sample_opening ("hole", "c", 700, 300));
  add_pen (pens, "left", left, sample_fitting ("feeder", 1000, 1000));
  add_pen (pens, "right", right, sample_fitting ("drinker", 5000, 1000));
  g_ptr_array_add (loose, sample_fitting ("post", 9000, 9000));
  return hc_layout_new ("main", &values);
}

HcPlan *
two_pens_new (void)
{
  g_autoptr (HcPlan) empty = hc_plan_new_empty ("plan", "Two pens");
  g_autoptr (HcLayout) layout = layout_new ();
  g_autoptr (HcPlan) built = hc_plan_with_layout (empty, layout);
  g_autoptr (HcParts) batches = hc_parts_new ();
  HcPlanValues values = *hc_plan_get (built);
  HcBatchValues hens;

  hc_batch_values_init (&hens);
  hens.name = (char *) "Hens";
  hens.breed = (char *) "orpington";
  hens.females = 9;
  hens.pen = (char *) "left";
  g_ptr_array_add (batches, hc_batch_new ("hens", &hens));
  values.batches = batches;
  return hc_plan_with (built, &values);
}

const HcFittingValues *
fitting_in (HcPlan *plan, const char *id)
{
  HcFitting *fitting = hc_layout_get_fitting (hc_plan_get_layout (plan), id, NULL);

  g_assert_nonnull (fitting);
  return hc_fitting_get (fitting);
}

const HcOpeningValues *
opening_in (HcPlan *plan, const char *id)
{
  HcOpening *opening = hc_layout_get_opening (hc_plan_get_layout (plan), id);

  g_assert_nonnull (opening);
  return hc_opening_get (opening);
}

/* The id of the pen it stands in, "" when it stands loose. */
const char *
home_of_fitting (HcPlan *plan, const char *id)
{
  HcPen *pen;

  g_assert_nonnull (hc_layout_get_fitting (hc_plan_get_layout (plan), id, &pen));
  return pen != NULL ? hc_pen_get_id (pen) : "";
}

/* Where the middle of an opening is in the plan. */
HcPoint
place_of (HcPlan *plan, const char *opening)
{
  const HcOpeningValues *values = opening_in (plan, opening);

  return hc_point_rounded (
      hc_layout_get_place_in_wall (hc_plan_get_layout (plan), values->wall, values->along_mm));
}

void
assert_sound (HcPlan *plan)
{
  g_autoptr (GError) error = NULL;

  hc_plan_is_sound (plan, &error);
  g_assert_no_error (error);
}

/* An edit says no with a sentence: no small letter first, a full stop last. */
void
assert_refused (HcPlan *plan, GError **error)
{
  g_assert_null (plan);
  g_assert_error (*error, HC_ERROR, HC_ERROR_EDIT);
  g_assert_false (g_unichar_islower (g_utf8_get_char ((*error)->message)));
  g_assert_true (g_str_has_suffix ((*error)->message, "."));
}
