/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Fittings from the side: as wide, as high and as far off the floor as they are. */
#include "config.h"

#include "side-fitting.h"

#include "drawing/side-wall.h"

#include "supply/stand.h"

#include <math.h>

/* A fitting shows its front when it is turned less than 45° away. */
#define FRONT_SHOWS 0.7
#define NEST_BOARD_MM 15.0
#define NEST_LIP_MM 100.0
#define ROUNDED_MM 20.0

typedef struct
{
  const HcInk *ink;
  const HcFitting *fitting;
  const HcFittingValues *values;
  HcBox box;
  double faces;
  double leans;
} Thing;

/**
 * hc_draw_side_bar: (skip)
 * @ink: the ink, x along the cut, y down from the floor
 * @item: one bar of a roost
 *
 * Draws a bar, its edges rounded for the birds' feet.
 */
void
hc_draw_side_bar (const HcInk *ink, const HcSectionItem *item)
{
  HcBox box = hc_side_item_get_box (item);

  hc_ink_rounded (ink, box.x_mm, box.y_mm, box.width_mm, box.depth_mm, ROUNDED_MM);
  hc_ink_fill (ink, item->cut ? HC_PAINT_WOOD_DARK : HC_PAINT_WOOD);
  hc_ink_stroke (ink, item->cut ? HC_LINE_MEDIUM : HC_LINE_FINE, HC_PAINT_INK);
}

static void
draw_box (const Thing *thing, HcPaint paint)
{
  const HcBox *box = &thing->box;

  hc_ink_rectangle (thing->ink, box->x_mm, box->y_mm, box->width_mm, box->depth_mm);
  hc_ink_fill (thing->ink, paint);
  hc_ink_stroke (thing->ink, HC_LINE_FINE, HC_PAINT_INK);
}

/* What is in it shows as a band along its rim. */
static void
draw_trough (const Thing *thing, HcPaint body, HcPaint held)
{
  const HcBox *box = &thing->box;

  hc_ink_rounded (thing->ink, box->x_mm, box->y_mm, box->width_mm, box->depth_mm, ROUNDED_MM);
  hc_ink_fill (thing->ink, body);
  hc_ink_stroke (thing->ink, HC_LINE_FINE, HC_PAINT_INK);
  hc_ink_rectangle (thing->ink, box->x_mm + box->width_mm * 0.06,
                    box->y_mm + box->depth_mm * 0.15, box->width_mm * 0.88,
                    box->depth_mm * 0.18);
  hc_ink_fill (thing->ink, held);
}

static void
draw_drinker (const Thing *thing)
{
  draw_trough (thing, HC_PAINT_METAL_PALE, HC_PAINT_WATER);
}

static void
draw_feeder (const Thing *thing)
{
  draw_trough (thing, HC_PAINT_METAL, HC_PAINT_FEED);
}

static void
draw_hopper (const Thing *thing)
{
  draw_trough (thing, HC_PAINT_WOOD, HC_PAINT_SHELL);
}

static void
draw_dust_bath (const Thing *thing)
{
  draw_trough (thing, HC_PAINT_WOOD_PALE, HC_PAINT_DUST);
}

static void
draw_nest (const Thing *thing, double left, double floor_mm, double width, double height)
{
  double lip = MIN (NEST_LIP_MM, height / 3);

  hc_ink_rectangle (thing->ink, left, -floor_mm - height, width, height);
  hc_ink_fill (thing->ink, HC_PAINT_DIM_INSIDE);
  if (thing->values->lined)
    {
      hc_ink_rectangle (thing->ink, left, -floor_mm - lip * 1.4, width, lip * 1.4);
      hc_ink_fill (thing->ink, HC_PAINT_STRAW);
    }
  hc_ink_rectangle (thing->ink, left, -floor_mm - lip, width, lip);
  hc_ink_fill (thing->ink, HC_PAINT_WOOD);
  hc_ink_stroke (thing->ink, HC_LINE_HAIR, HC_PAINT_INK);
}

static void
draw_nests (const Thing *thing)
{
  int columns = thing->values->form == HC_FORM_GROUP ? 1 : MAX (thing->values->columns, 1);
  int rows = MAX (thing->values->rows, 1);
  double width = thing->box.width_mm / columns;
  double height = thing->box.depth_mm / rows;

  draw_box (thing, HC_PAINT_WOOD_PALE);
  if (thing->faces > -FRONT_SHOWS)
    return;
  for (int row = 0; row < rows; row++)
    for (int column = 0; column < columns; column++)
      draw_nest (thing, thing->box.x_mm + column * width + NEST_BOARD_MM,
                 hc_stand_get_nest_floor_mm (thing->fitting, (guint) row),
                 width - 2 * NEST_BOARD_MM, height - 2 * NEST_BOARD_MM);
}

/* It rises the way it is turned; seen from its end it is as wide as it is. */
static void
draw_ramp (const Thing *thing)
{
  const HcBox *box = &thing->box;
  double low = thing->leans > 0 ? box->x_mm : box->x_mm + box->width_mm;
  double high = thing->leans > 0 ? box->x_mm + box->width_mm : box->x_mm;

  if (fabs (thing->leans) < FRONT_SHOWS)
    {
      draw_box (thing, HC_PAINT_WOOD);
      return;
    }
  cairo_new_path (thing->ink->cr);
  hc_ink_line (thing->ink, low, box->y_mm + box->depth_mm, high, box->y_mm);
  hc_ink_stroke (thing->ink, HC_LINE_HEAVY, HC_PAINT_WOOD_DARK);
}

static void
draw_lamp (const Thing *thing)
{
  const HcBox *box = &thing->box;
  double middle = box->x_mm + box->width_mm / 2;

  cairo_new_path (thing->ink->cr);
  cairo_move_to (thing->ink->cr, middle, box->y_mm);
  cairo_line_to (thing->ink->cr, box->x_mm + box->width_mm, box->y_mm + box->depth_mm);
  cairo_line_to (thing->ink->cr, box->x_mm, box->y_mm + box->depth_mm);
  cairo_close_path (thing->ink->cr);
  hc_ink_fill (thing->ink, HC_PAINT_WARMTH);
  hc_ink_stroke (thing->ink, HC_LINE_FINE, HC_PAINT_INK);
}

static void
draw_board (const Thing *thing)
{
  draw_box (thing, HC_PAINT_WOOD);
}

static void
draw_warm (const Thing *thing)
{
  draw_box (thing, HC_PAINT_WARMTH);
}

static void
draw_bin (const Thing *thing)
{
  draw_box (thing, HC_PAINT_METAL);
}

/* A roost has no body: its bars are drawn one by one. */
static void (*const draws[HC_N_FITTING_KINDS]) (const Thing *) = {
  [HC_FITTING_DROPPINGS_BOARD] = draw_board,
  [HC_FITTING_NEST_BOXES] = draw_nests,
  [HC_FITTING_FEEDER] = draw_feeder,
  [HC_FITTING_DRINKER] = draw_drinker,
  [HC_FITTING_FLOOR_HEAT_PAD] = draw_warm,
  [HC_FITTING_HEAT_PLATE] = draw_warm,
  [HC_FITTING_HEAT_LAMP] = draw_lamp,
  [HC_FITTING_HOPPER] = draw_hopper,
  [HC_FITTING_DUST_BATH] = draw_dust_bath,
  [HC_FITTING_RAMP] = draw_ramp,
  [HC_FITTING_PLATFORM] = draw_board,
  [HC_FITTING_STORE_BIN] = draw_bin,
  [HC_FITTING_POST] = draw_board,
};

/**
 * hc_draw_side_fitting: (skip)
 * @ink: the ink, x along the cut, y down from the floor
 * @layout: the layout
 * @cut: the cut
 * @item: a fitting
 *
 * Draws a fitting at its height.
 */
void
hc_draw_side_fitting (const HcInk *ink, const HcLayout *layout, const HcSideCut *cut,
                      const HcSectionItem *item)
{
  const HcFitting *fitting = hc_layout_get_fitting (layout, item->id, NULL);
  const HcFittingValues *values = hc_fitting_get (fitting);
  HcPoint front = hc_point_turn (hc_point (0, 1), values->turn_deg);
  Thing thing = { ink, fitting, values, hc_side_item_get_box (item),
                  hc_point_dot (front, cut->into), hc_point_dot (front, cut->along) };

  if (draws[values->kind] != NULL)
    draws[values->kind] (&thing);
}
