/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The colours of a drawing: warm paper, ink, wood, straw and water. */
#pragma once

#include "book/level.h"

G_BEGIN_DECLS

/**
 * HcPaint:
 * @HC_PAINT_PAPER: what everything is drawn on
 * @HC_PAINT_INK: outlines and text
 * @HC_PAINT_SOFT_INK: dimensions and notes
 * @HC_PAINT_FAINT_INK: grids and what is not looked at
 *
 * What is painted, not what it looks like: each palette has its own colour
 * for it.
 */
typedef enum
{
  HC_PAINT_PAPER,
  HC_PAINT_INK,
  HC_PAINT_SOFT_INK,
  HC_PAINT_FAINT_INK,
  HC_PAINT_WOOD_PALE,
  HC_PAINT_WOOD,
  HC_PAINT_WOOD_DARK,
  HC_PAINT_DIM_INSIDE,
  HC_PAINT_METAL_PALE,
  HC_PAINT_METAL,
  HC_PAINT_METAL_DARK,
  HC_PAINT_WATER,
  HC_PAINT_WATER_DEEP,
  HC_PAINT_FEED,
  HC_PAINT_FEED_DARK,
  HC_PAINT_STRAW,
  HC_PAINT_STRAW_DARK,
  HC_PAINT_SHELL,
  HC_PAINT_DUST,
  HC_PAINT_DUST_DARK,
  HC_PAINT_WARMTH,
  HC_PAINT_GLOW,
  HC_PAINT_CAUTION,
  HC_PAINT_CONCRETE,
  HC_PAINT_EARTH,
  HC_PAINT_GRASS,
  HC_PAINT_GRASS_DARK,
  HC_PAINT_WALL,
  HC_PAINT_STONE,
  HC_PAINT_GLASS,
  HC_PAINT_COMB,
  HC_PAINT_BEAK,
  HC_PAINT_DOWN,
  HC_PAINT_SHORT,
  HC_PAINT_TIGHT,
  HC_PAINT_GOOD,
  HC_PAINT_PLENTY,
  HC_PAINT_LOOSE,
  HC_N_PAINTS
} HcPaint;

/**
 * HcColour:
 * @red: 0 to 1
 * @green: 0 to 1
 * @blue: 0 to 1
 */
typedef struct
{
  double red;
  double green;
  double blue;
} HcColour;

/**
 * HcPaletteKind:
 * @HC_PALETTE_LIGHT: warm paper by daylight
 * @HC_PALETTE_DARK: the same house by lamplight
 * @HC_PALETTE_PRINT: white paper, less ink to pay for
 */
typedef enum
{
  HC_PALETTE_LIGHT,
  HC_PALETTE_DARK,
  HC_PALETTE_PRINT,
} HcPaletteKind;

/**
 * HcPalette:
 *
 * One set of colours. Constant: never freed.
 */
typedef struct _HcPalette HcPalette;

const HcPalette *hc_palette_get (HcPaletteKind kind);
HcColour hc_palette_get_colour (const HcPalette *self, HcPaint paint);
HcColour hc_palette_get_plumage (const HcPalette *self, guint coat);
guint hc_palette_get_n_coats (void);
HcPaint hc_paint_for_level (HcLevel level);

G_END_DECLS
