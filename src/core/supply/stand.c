/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Where fittings stand, worked out from their measures. */
#include "config.h"

#include "supply/stand.h"

#include <math.h>

/**
 * hc_stand_to_plan: (skip)
 * @fitting: a fitting
 * @own: a point measured from its middle along its own width and depth
 *
 * Returns: the point in the plan
 */
HcPoint
hc_stand_to_plan (const HcFitting *fitting, HcPoint own)
{
  const HcFittingValues *values = hc_fitting_get (fitting);

  return hc_point_add (hc_point (values->x_mm, values->y_mm),
                       hc_point_turn (own, values->turn_deg));
}

/* Circles are polygons: turned like anything else, so that turning a plan
 * changes no area to the last digit. */
static HcShape *
make_circle (const HcFittingValues *values)
{
  g_autoptr (HcShape) circle = hc_shape_new_circle (hc_point (0, 0), values->width_mm);

  return hc_shape_turn_and_move (circle, values->turn_deg,
                                 hc_point (values->x_mm, values->y_mm));
}

/**
 * hc_stand_get_footprint: (skip)
 * @fitting: a fitting
 *
 * Returns: (transfer full): what it covers seen from above
 */
HcShape *
hc_stand_get_footprint (const HcFitting *fitting)
{
  const HcFittingValues *values = hc_fitting_get (fitting);

  if (values->form == HC_FORM_ROUND)
    return make_circle (values);
  return hc_shape_new_rectangle (hc_point (values->x_mm, values->y_mm), values->width_mm,
                                 values->depth_mm, values->turn_deg);
}

/**
 * hc_stand_get_heights: (skip)
 * @fitting: a fitting
 * @bottom_mm: (out): its underside above the floor; for a roost the top of its
 *   lowest bar
 * @top_mm: (out): its top above the floor; for a roost the top of its highest bar
 */
void
hc_stand_get_heights (const HcFitting *fitting, double *bottom_mm, double *top_mm)
{
  const HcFittingValues *values = hc_fitting_get (fitting);
  gboolean is_roost = values->kind == HC_FITTING_ROOST;

  *bottom_mm = values->base_mm;
  *top_mm = values->base_mm
            + (is_roost ? (values->bars - 1) * values->rise_mm : values->height_mm);
}

/**
 * hc_stand_takes_floor: (skip)
 * @fitting: a fitting
 * @headroom_mm: what a bird needs above the floor
 *
 * A bar is no footprint, and birds stand on a heat pad and in a dust bath.
 * Everything else takes the floor under it, unless it is raised so high that
 * the bird has its headroom there.
 *
 * Returns: whether the floor under @fitting is lost to the bird
 */
gboolean
hc_stand_takes_floor (const HcFitting *fitting, double headroom_mm)
{
  const HcFittingValues *values = hc_fitting_get (fitting);

  switch (values->kind)
    {
    case HC_FITTING_ROOST:
    case HC_FITTING_FLOOR_HEAT_PAD:
    case HC_FITTING_DUST_BATH:
      return FALSE;
    default:
      return values->base_mm < headroom_mm;
    }
}

/**
 * hc_stand_get_bar: (skip)
 * @fitting: a roost
 * @bar: which bar, the first being the one at its back
 * @found: (out): the bar
 *
 * Each bar runs along the middle of its own share of the depth.
 */
void
hc_stand_get_bar (const HcFitting *fitting, guint bar, HcBar *found)
{
  const HcFittingValues *values = hc_fitting_get (fitting);
  double own_y = values->depth_mm * ((bar + 0.5) / values->bars - 0.5);
  double half_mm = values->width_mm / 2;

  *found = (HcBar){
    .from = hc_stand_to_plan (fitting, hc_point (-half_mm, own_y)),
    .to = hc_stand_to_plan (fitting, hc_point (half_mm, own_y)),
    .height_mm = values->base_mm + (values->bars - 1 - (int) bar) * values->rise_mm,
    .width_mm = values->bar_width_mm,
  };
}

/**
 * hc_stand_get_ramp: (skip)
 * @fitting: a ramp
 * @found: (out): how it runs
 */
void
hc_stand_get_ramp (const HcFitting *fitting, HcRamp *found)
{
  const HcFittingValues *values = hc_fitting_get (fitting);
  gboolean deep = values->depth_mm > values->width_mm;
  double run_mm = MAX (values->width_mm, values->depth_mm);
  HcPoint own_head = deep ? hc_point (0, -run_mm / 2) : hc_point (-run_mm / 2, 0);

  *found = (HcRamp){
    .foot = hc_stand_to_plan (fitting, hc_point_scale (own_head, -1)),
    .head = hc_stand_to_plan (fitting, own_head),
    .turn_deg = deep ? 0 : 90,
    .across_mm = MIN (values->width_mm, values->depth_mm),
    .slope_deg = atan2 (values->height_mm, run_mm) * 180 / G_PI,
  };
}

/**
 * hc_stand_get_nest_floor_mm: (skip)
 * @fitting: nest boxes
 * @row: which row, the first being the lowest
 *
 * Returns: the height of the floor of that row
 */
double
hc_stand_get_nest_floor_mm (const HcFitting *fitting, guint row)
{
  const HcFittingValues *values = hc_fitting_get (fitting);

  return values->base_mm + values->height_mm * row / values->rows;
}
