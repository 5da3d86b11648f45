/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The three sets of colours. */
#include "config.h"

#include "palette.h"

#define N_COATS 8

struct _HcPalette
{
  guint32 paints[HC_N_PAINTS];
  guint32 coats[N_COATS];
};

/* Straw, fox red, slate, cream, partridge brown, soot, pearl, wheat. */
#define COATS_BY_DAY                                                                  \
  { 0xc9a063, 0xa4633c, 0x848d94, 0xefe2c6, 0x8a6644, 0x5c544e, 0xd5d3cb, 0xdcb981 }
#define COATS_BY_LAMP                                                                 \
  { 0xb58d55, 0x95573a, 0x76808a, 0xd9ccb1, 0x83603f, 0x6a625d, 0xb9b8b2, 0xc6a46f }

static const HcPalette light = {
  .paints = {
    [HC_PAINT_PAPER] = 0xf7f0e2,
    [HC_PAINT_INK] = 0x352a21,
    [HC_PAINT_SOFT_INK] = 0x6f6152,
    [HC_PAINT_FAINT_INK] = 0xbfb19b,
    [HC_PAINT_WOOD_PALE] = 0xe6cfa6,
    [HC_PAINT_WOOD] = 0xcfa872,
    [HC_PAINT_WOOD_DARK] = 0x8c6840,
    [HC_PAINT_DIM_INSIDE] = 0x5b4936,
    [HC_PAINT_METAL_PALE] = 0xe3e2dc,
    [HC_PAINT_METAL] = 0xb9bab4,
    [HC_PAINT_METAL_DARK] = 0x787a77,
    [HC_PAINT_WATER] = 0xa9ccd2,
    [HC_PAINT_WATER_DEEP] = 0x5f98a6,
    [HC_PAINT_FEED] = 0xd9ac52,
    [HC_PAINT_FEED_DARK] = 0x9b6f23,
    [HC_PAINT_STRAW] = 0xe9d48f,
    [HC_PAINT_STRAW_DARK] = 0xb3913f,
    [HC_PAINT_SHELL] = 0xf3e3cd,
    [HC_PAINT_DUST] = 0xc6ab87,
    [HC_PAINT_DUST_DARK] = 0x957652,
    [HC_PAINT_WARMTH] = 0xd98a5f,
    [HC_PAINT_GLOW] = 0xf0c27b,
    [HC_PAINT_CAUTION] = 0xb4492f,
    [HC_PAINT_CONCRETE] = 0xe0dacd,
    [HC_PAINT_EARTH] = 0xdcc7a6,
    [HC_PAINT_GRASS] = 0xd9dcb4,
    [HC_PAINT_GRASS_DARK] = 0x8d9a5b,
    [HC_PAINT_WALL] = 0x9c7d58,
    [HC_PAINT_STONE] = 0xb3aa9a,
    [HC_PAINT_GLASS] = 0xbfd6d3,
    [HC_PAINT_COMB] = 0xb5402f,
    [HC_PAINT_BEAK] = 0xd79a3c,
    [HC_PAINT_DOWN] = 0xf2cf4e,
    [HC_PAINT_SHORT] = 0xa5321f,
    [HC_PAINT_TIGHT] = 0xb06a00,
    [HC_PAINT_GOOD] = 0x4f6f2c,
    [HC_PAINT_PLENTY] = 0x1f6a66,
    [HC_PAINT_LOOSE] = 0x9d968c,
  },
  .coats = COATS_BY_DAY,
};

static const HcPalette dark = {
  .paints = {
    [HC_PAINT_PAPER] = 0x25201b,
    [HC_PAINT_INK] = 0xeadfca,
    [HC_PAINT_SOFT_INK] = 0xb5a78f,
    [HC_PAINT_FAINT_INK] = 0x5d5245,
    [HC_PAINT_WOOD_PALE] = 0x8f7145,
    [HC_PAINT_WOOD] = 0x77592f,
    [HC_PAINT_WOOD_DARK] = 0x473521,
    [HC_PAINT_DIM_INSIDE] = 0x14100c,
    [HC_PAINT_METAL_PALE] = 0x84857f,
    [HC_PAINT_METAL] = 0x666863,
    [HC_PAINT_METAL_DARK] = 0x444642,
    [HC_PAINT_WATER] = 0x3f6b74,
    [HC_PAINT_WATER_DEEP] = 0x7fb2bd,
    [HC_PAINT_FEED] = 0x9a732b,
    [HC_PAINT_FEED_DARK] = 0xd7ac5b,
    [HC_PAINT_STRAW] = 0x8a753b,
    [HC_PAINT_STRAW_DARK] = 0xcbb06a,
    [HC_PAINT_SHELL] = 0xcfbfa5,
    [HC_PAINT_DUST] = 0x66523a,
    [HC_PAINT_DUST_DARK] = 0x9b8263,
    [HC_PAINT_WARMTH] = 0xa85f3a,
    [HC_PAINT_GLOW] = 0xc98f45,
    [HC_PAINT_CAUTION] = 0xe08066,
    [HC_PAINT_CONCRETE] = 0x3b3731,
    [HC_PAINT_EARTH] = 0x41352a,
    [HC_PAINT_GRASS] = 0x34391f,
    [HC_PAINT_GRASS_DARK] = 0x73803f,
    [HC_PAINT_WALL] = 0x6d5335,
    [HC_PAINT_STONE] = 0x6a6459,
    [HC_PAINT_GLASS] = 0x57736f,
    [HC_PAINT_COMB] = 0xbf4a38,
    [HC_PAINT_BEAK] = 0xd79a3c,
    [HC_PAINT_DOWN] = 0xdcb945,
    [HC_PAINT_SHORT] = 0xf08d77,
    [HC_PAINT_TIGHT] = 0xe9b04c,
    [HC_PAINT_GOOD] = 0xa8c473,
    [HC_PAINT_PLENTY] = 0x74c2b8,
    [HC_PAINT_LOOSE] = 0x7d766b,
  },
  .coats = COATS_BY_LAMP,
};

static const HcPalette print = {
  .paints = {
    [HC_PAINT_PAPER] = 0xffffff,
    [HC_PAINT_INK] = 0x231c16,
    [HC_PAINT_SOFT_INK] = 0x5a4f44,
    [HC_PAINT_FAINT_INK] = 0xbdb4a6,
    [HC_PAINT_WOOD_PALE] = 0xf0e0c2,
    [HC_PAINT_WOOD] = 0xdcbd8e,
    [HC_PAINT_WOOD_DARK] = 0x8c6840,
    [HC_PAINT_DIM_INSIDE] = 0x6b5a48,
    [HC_PAINT_METAL_PALE] = 0xf0f0ec,
    [HC_PAINT_METAL] = 0xcbccc7,
    [HC_PAINT_METAL_DARK] = 0x787a77,
    [HC_PAINT_WATER] = 0xc3dde1,
    [HC_PAINT_WATER_DEEP] = 0x5f98a6,
    [HC_PAINT_FEED] = 0xe5c27a,
    [HC_PAINT_FEED_DARK] = 0x9b6f23,
    [HC_PAINT_STRAW] = 0xf2e5b6,
    [HC_PAINT_STRAW_DARK] = 0xb3913f,
    [HC_PAINT_SHELL] = 0xf8efe2,
    [HC_PAINT_DUST] = 0xdac6a8,
    [HC_PAINT_DUST_DARK] = 0x957652,
    [HC_PAINT_WARMTH] = 0xe2a382,
    [HC_PAINT_GLOW] = 0xf5d6a5,
    [HC_PAINT_CAUTION] = 0xb4492f,
    [HC_PAINT_CONCRETE] = 0xf2efe9,
    [HC_PAINT_EARTH] = 0xf1e7d6,
    [HC_PAINT_GRASS] = 0xeff0dd,
    [HC_PAINT_GRASS_DARK] = 0x9aa56d,
    [HC_PAINT_WALL] = 0xa98b66,
    [HC_PAINT_STONE] = 0xc9c2b5,
    [HC_PAINT_GLASS] = 0xd5e6e4,
    [HC_PAINT_COMB] = 0xb5402f,
    [HC_PAINT_BEAK] = 0xd79a3c,
    [HC_PAINT_DOWN] = 0xf2cf4e,
    [HC_PAINT_SHORT] = 0xa5321f,
    [HC_PAINT_TIGHT] = 0xb06a00,
    [HC_PAINT_GOOD] = 0x4f6f2c,
    [HC_PAINT_PLENTY] = 0x1f6a66,
    [HC_PAINT_LOOSE] = 0xa09a90,
  },
  .coats = COATS_BY_DAY,
};

static HcColour
colour_from_hex (guint32 hex)
{
  return (HcColour){ ((hex >> 16) & 0xff) / 255.0, ((hex >> 8) & 0xff) / 255.0,
                     (hex & 0xff) / 255.0 };
}

/**
 * hc_palette_get:
 * @kind: for daylight, lamplight or paper
 *
 * Returns: (transfer none): the palette
 */
const HcPalette *
hc_palette_get (HcPaletteKind kind)
{
  static const HcPalette *const palettes[] = { &light, &dark, &print };

  g_return_val_if_fail ((guint) kind < G_N_ELEMENTS (palettes), &light);

  return palettes[kind];
}

/**
 * hc_palette_get_colour:
 * @self: a palette
 * @paint: what is painted
 *
 * Returns: its colour
 */
HcColour
hc_palette_get_colour (const HcPalette *self, HcPaint paint)
{
  g_return_val_if_fail ((guint) paint < HC_N_PAINTS, (HcColour){ 0 });

  return colour_from_hex (self->paints[paint]);
}

/**
 * hc_palette_get_plumage:
 * @self: a palette
 * @coat: any number; coats repeat after hc_palette_get_n_coats()
 *
 * Returns: a muted colour of feathers
 */
HcColour
hc_palette_get_plumage (const HcPalette *self, guint coat)
{
  return colour_from_hex (self->coats[coat % N_COATS]);
}

/**
 * hc_palette_get_n_coats:
 *
 * Returns: how many colours of feathers a palette has
 */
guint
hc_palette_get_n_coats (void)
{
  return N_COATS;
}

/**
 * hc_paint_for_level:
 * @level: a level reached
 *
 * Colour is never the only cue: see hc_draw_level_mark() for its shape.
 *
 * Returns: the paint of the level
 */
HcPaint
hc_paint_for_level (HcLevel level)
{
  static const HcPaint paints[]
      = { HC_PAINT_SHORT, HC_PAINT_TIGHT, HC_PAINT_GOOD, HC_PAINT_PLENTY };

  g_return_val_if_fail ((guint) level < G_N_ELEMENTS (paints), HC_PAINT_INK);

  return paints[level];
}
