/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Walls and roof space worked out in Building Poultry Houses, bulletin 274 of
 * the Cornell Agricultural Experiment Station, page 203, read in captions of
 * its page images. */
#include "config.h"

#include "plan/edit-pen.h"
#include "plan/roof.h"

#define FOOT_MM 304.8
#define TOUCH 1e-6

static HcPlan *
house_of_feet (double width, double depth, double eaves, double ridge)
{
  g_autoptr (HcPlan) empty = hc_plan_new_empty ("plan", "Published");
  g_auto (GStrv) ids = hc_pen_ids_new ();
  g_autoptr (GError) error = NULL;
  g_autoptr (HcPlan) drawn
      = hc_plan_add_pen (empty, HC_PEN_INDOOR, hc_point (0, 0),
                         hc_point (width * FOOT_MM, depth * FOOT_MM),
                         (const char *const *) ids, &error);
  HcPenValues pen;
  HcPlan *roofed;

  g_assert_no_error (error);
  pen = *hc_pen_get (hc_layout_get_pen (hc_plan_get_layout (drawn), ids[0]));
  pen.height_mm = eaves * FOOT_MM;
  pen.ridge_mm = ridge * FOOT_MM;
  roofed = hc_plan_set_pen (drawn, ids[0], &pen, &error);
  g_assert_no_error (error);
  return roofed;
}

static HcPen *
pen_of (HcPlan *plan)
{
  return hc_layout_get (hc_plan_get_layout (plan))->pens->pdata[0];
}

static double
walls_ft2 (HcPlan *plan)
{
  g_autoptr (GArray) ring = hc_layout_get_pen_ring (hc_plan_get_layout (plan), pen_of (plan));
  HcRoof roof = hc_layout_get_roof (hc_plan_get_layout (plan), hc_pen_get_id (pen_of (plan)));
  double area = 0;

  for (guint i = 0; i < ring->len; i++)
    area += hc_roof_get_wall_area_mm2 (&roof, g_array_index (ring, HcPoint, i),
                                       g_array_index (ring, HcPoint, (i + 1) % ring->len));
  return area / (FOOT_MM * FOOT_MM);
}

static double
volume_ft3 (HcPlan *plan)
{
  g_autoptr (GArray) ring = hc_layout_get_pen_ring (hc_plan_get_layout (plan), pen_of (plan));
  HcRoof roof = hc_layout_get_roof (hc_plan_get_layout (plan), hc_pen_get_id (pen_of (plan)));

  return hc_roof_get_volume_mm3 (&roof, (const HcPoint *) ring->data, ring->len)
         / (FOOT_MM * FOOT_MM * FOOT_MM);
}

static void
test_higher_side_walls (void)
{
  g_autoptr (HcPlan) low = house_of_feet (100, 15, 5, 0);
  g_autoptr (HcPlan) high = house_of_feet (100, 15, 7, 0);

  g_test_summary ("Building Poultry Houses, Cornell bulletin 274, page 203: side walls of 7 ft "
                  "instead of 5 ft round 100 × 15 ft take 460 ft² more");
  g_assert_cmpfloat_with_epsilon (walls_ft2 (high) - walls_ft2 (low), 460, TOUCH);
}

/* Printed there as 562. */
static void
test_roof_space_of_a_gable (void)
{
  g_autoptr (HcPlan) flat = house_of_feet (15, 15, 5, 0);
  g_autoptr (HcPlan) gable = house_of_feet (15, 15, 5, 10);

  g_test_summary ("Building Poultry Houses, Cornell bulletin 274, page 203: a gable of one-third "
                  "pitch over 15 × 15 ft encloses 562 ft³");
  g_assert_cmpfloat_with_epsilon (volume_ft3 (gable) - volume_ft3 (flat), 562.5, TOUCH);
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/cornell-274/side-walls", test_higher_side_walls);
  g_test_add_func ("/cornell-274/roof-space", test_roof_space_of_a_gable);
  return g_test_run ();
}
