/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What part of the floor is looked at. */
#include "config.h"

#include "app/floor/view.h"

HcPoint
hc_view_to_mm (const HcView *view, double x_px, double y_px)
{
  return (HcPoint){ (x_px - view->x_px) / view->scale, (y_px - view->y_px) / view->scale };
}

void
hc_view_to_px (const HcView *view, HcPoint mm, double *x_px, double *y_px)
{
  *x_px = view->x_px + mm.x_mm * view->scale;
  *y_px = view->y_px + mm.y_mm * view->scale;
}

/**
 * hc_view_fit:
 * @box: what is to be seen, mm
 * @width_px: room there is
 * @height_px: room there is
 * @margin_px: room kept free on every side
 *
 * Returns: a view with all of @box in the middle, as large as it fits
 */
HcView
hc_view_fit (HcBox box, double width_px, double height_px, double margin_px)
{
  double width_mm = MAX (box.width_mm, 500);
  double height_mm = MAX (box.depth_mm, 500);
  double free_x = MAX (width_px - 2 * margin_px, 50);
  double free_y = MAX (height_px - 2 * margin_px, 50);
  HcView view;

  view.scale = CLAMP (MIN (free_x / width_mm, free_y / height_mm), HC_VIEW_FARTHEST,
                      HC_VIEW_NEAREST);
  view.x_px = width_px / 2 - view.scale * hc_box_centre (box).x_mm;
  view.y_px = height_px / 2 - view.scale * hc_box_centre (box).y_mm;
  return view;
}

/**
 * hc_view_zoomed:
 * @view: a view
 * @factor: how many times larger
 * @x_px: the point that stays where it is
 * @y_px: the point that stays where it is
 *
 * Returns: the view zoomed, within what is still of use
 */
HcView
hc_view_zoomed (const HcView *view, double factor, double x_px, double y_px)
{
  double scale = CLAMP (view->scale * factor, HC_VIEW_FARTHEST, HC_VIEW_NEAREST);
  double real = scale / view->scale;

  return (HcView){ scale, x_px - (x_px - view->x_px) * real, y_px - (y_px - view->y_px) * real };
}

HcView
hc_view_panned (const HcView *view, double by_x_px, double by_y_px)
{
  return (HcView){ view->scale, view->x_px + by_x_px, view->y_px + by_y_px };
}

gboolean
hc_view_equal (const HcView *a, const HcView *b)
{
  return a->scale == b->scale && a->x_px == b->x_px && a->y_px == b->y_px;
}
