/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What part of a canvas is looked at. */
#include "config.h"

#include "app/canvas/sight.h"

HcPoint
hc_sight_to_mm (const HcSight *sight, double x_px, double y_px)
{
  return (HcPoint){ (x_px - sight->x_px) / sight->scale, (y_px - sight->y_px) / sight->scale };
}

void
hc_sight_to_px (const HcSight *sight, HcPoint mm, double *x_px, double *y_px)
{
  *x_px = sight->x_px + mm.x_mm * sight->scale;
  *y_px = sight->y_px + mm.y_mm * sight->scale;
}

/**
 * hc_sight_fit:
 * @box: what is to be seen, mm
 * @width_px: room there is
 * @height_px: room there is
 * @margin_px: room kept free on every side
 *
 * Returns: a sight with all of @box in the middle, as large as it fits
 */
HcSight
hc_sight_fit (HcBox box, double width_px, double height_px, double margin_px)
{
  double width_mm = MAX (box.width_mm, 500);
  double height_mm = MAX (box.depth_mm, 500);
  double free_x = MAX (width_px - 2 * margin_px, 50);
  double free_y = MAX (height_px - 2 * margin_px, 50);
  HcSight sight;

  sight.scale = CLAMP (MIN (free_x / width_mm, free_y / height_mm), HC_SIGHT_FARTHEST,
                      HC_SIGHT_NEAREST);
  sight.x_px = width_px / 2 - sight.scale * hc_box_centre (box).x_mm;
  sight.y_px = height_px / 2 - sight.scale * hc_box_centre (box).y_mm;
  return sight;
}

/**
 * hc_sight_zoomed:
 * @sight: a view
 * @factor: how many times larger
 * @x_px: the point that stays where it is
 * @y_px: the point that stays where it is
 *
 * Returns: the sight zoomed, within what is still of use
 */
HcSight
hc_sight_zoomed (const HcSight *sight, double factor, double x_px, double y_px)
{
  double scale = CLAMP (sight->scale * factor, HC_SIGHT_FARTHEST, HC_SIGHT_NEAREST);
  double real = scale / sight->scale;

  return (HcSight){ scale, x_px - (x_px - sight->x_px) * real, y_px - (y_px - sight->y_px) * real };
}

HcSight
hc_sight_panned (const HcSight *sight, double by_x_px, double by_y_px)
{
  return (HcSight){ sight->scale, sight->x_px + by_x_px, sight->y_px + by_y_px };
}

gboolean
hc_sight_equal (const HcSight *a, const HcSight *b)
{
  return a->scale == b->scale && a->x_px == b->x_px && a->y_px == b->y_px;
}
