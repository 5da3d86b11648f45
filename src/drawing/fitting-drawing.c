/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * One symbol for every kind of fitting. */
#include "config.h"

#include "fitting-drawing.h"

#include "drawing/level-mark.h"
#include "drawing/symbols/symbol.h"

#define MARK_UNITS 13.0

/* Narrower than this on the output there is no room for a symbol. */
#define NARROWEST_UNITS 4.0

/**
 * Symbol:
 * @draw: draws it
 * @paint: what it is mostly made of, for when it is too small to draw
 */
typedef struct
{
  void (*draw) (const HcInk *ink, const HcFittingValues *values);
  HcPaint paint;
} Symbol;

static const Symbol symbols[HC_N_FITTING_KINDS] = {
  [HC_FITTING_ROOST] = { hc_symbol_roost, HC_PAINT_WOOD },
  [HC_FITTING_DROPPINGS_BOARD] = { hc_symbol_droppings_board, HC_PAINT_WOOD_PALE },
  [HC_FITTING_NEST_BOXES] = { hc_symbol_nest_boxes, HC_PAINT_STRAW },
  [HC_FITTING_FEEDER] = { hc_symbol_feeder, HC_PAINT_FEED },
  [HC_FITTING_DRINKER] = { hc_symbol_drinker, HC_PAINT_WATER },
  [HC_FITTING_FLOOR_HEAT_PAD] = { hc_symbol_floor_heat_pad, HC_PAINT_GLOW },
  [HC_FITTING_HEAT_PLATE] = { hc_symbol_heat_plate, HC_PAINT_WARMTH },
  [HC_FITTING_HEAT_LAMP] = { hc_symbol_heat_lamp, HC_PAINT_CAUTION },
  [HC_FITTING_HOPPER] = { hc_symbol_hopper, HC_PAINT_METAL },
  [HC_FITTING_DUST_BATH] = { hc_symbol_dust_bath, HC_PAINT_DUST },
  [HC_FITTING_RAMP] = { hc_symbol_ramp, HC_PAINT_WOOD_PALE },
  [HC_FITTING_PLATFORM] = { hc_symbol_platform, HC_PAINT_WOOD_PALE },
  [HC_FITTING_STORE_BIN] = { hc_symbol_store_bin, HC_PAINT_WOOD },
  [HC_FITTING_POST] = { hc_symbol_post, HC_PAINT_WALL },
};

static gboolean
can_draw (const HcInk *ink, const HcFittingValues *values)
{
  return ink->scale > 0 && values->width_mm > 0 && values->depth_mm > 0;
}

static gboolean
is_too_small (const HcInk *ink, const HcFittingValues *values)
{
  return MIN (values->width_mm, values->depth_mm) * ink->scale < NARROWEST_UNITS;
}

static void
draw_plainly (const HcInk *ink, const HcFittingValues *values, HcPaint paint)
{
  HcSymbolFrame f = hc_symbol_frame (ink, values);

  hc_ink_rectangle (ink, f.left, f.top, f.width, f.depth);
  hc_ink_fill (ink, paint);
  hc_symbol_outline (ink, values);
}

/**
 * hc_fitting_drawing_place:
 * @ink: ink whose user space is the plan's
 * @values: a fitting
 *
 * Moves and turns the user space so that the fitting's own frame is at its
 * place in the plan. Wrap it in cairo_save() and cairo_restore().
 */
void
hc_fitting_drawing_place (const HcInk *ink, const HcFittingValues *values)
{
  cairo_translate (ink->cr, values->x_mm, values->y_mm);
  cairo_rotate (ink->cr, values->turn_deg * G_PI / 180);
}

/**
 * hc_draw_fitting:
 * @ink: the ink
 * @values: the fitting; its place and turn are not looked at
 *
 * Draws a fitting in its own frame: origin in its middle, x along its width, y
 * along its depth (the back at negative y). All ink stays within
 * @values' width and depth.
 */
void
hc_draw_fitting (const HcInk *ink, const HcFittingValues *values)
{
  g_return_if_fail ((guint) values->kind < HC_N_FITTING_KINDS);

  if (!can_draw (ink, values))
    return;
  cairo_save (ink->cr);
  cairo_set_line_join (ink->cr, CAIRO_LINE_JOIN_MITER);
  cairo_set_line_cap (ink->cr, CAIRO_LINE_CAP_BUTT);
  if (is_too_small (ink, values))
    draw_plainly (ink, values, symbols[values->kind].paint);
  else
    symbols[values->kind].draw (ink, values);
  cairo_restore (ink->cr);
}

/**
 * hc_draw_fitting_surroundings:
 * @ink: the ink
 * @values: the fitting
 *
 * Draws, in the fitting's own frame, what it does around itself: the circle a
 * lamp warms and the ring to keep clear. Goes below the fittings.
 */
void
hc_draw_fitting_surroundings (const HcInk *ink, const HcFittingValues *values)
{
  if (values->kind == HC_FITTING_HEAT_LAMP && can_draw (ink, values))
    hc_symbol_heat_lamp_surroundings (ink, values);
}

/**
 * hc_draw_fitting_mark:
 * @ink: the ink
 * @values: the fitting
 * @level: the level its findings give it
 *
 * Draws the mark of @level at the back right corner, in the fitting's own
 * frame, upright on the page whichever way the fitting is turned.
 */
void
hc_draw_fitting_mark (const HcInk *ink, const HcFittingValues *values, HcLevel level)
{
  cairo_save (ink->cr);
  cairo_translate (ink->cr, values->width_mm / 2, -values->depth_mm / 2);
  cairo_rotate (ink->cr, -values->turn_deg * G_PI / 180);
  hc_draw_level_mark (ink, 0, 0, MARK_UNITS / ink->scale, level);
  cairo_restore (ink->cr);
}
