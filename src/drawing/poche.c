/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Hatches for cut walls. */
#include "config.h"

#include "poche.h"

#include <math.h>

/* A wall thinner than this on the output is filled and not hatched. */
#define NARROWEST_UNITS 5.0
#define HATCH_UNITS 5.0

typedef struct
{
  const char *construction;
  HcPoche poche;
} Look;

static const Look looks[] = {
  { "steel_wall", HC_POCHE_METAL },       { "framed_wall", HC_POCHE_WOOL },
  { "foam_wall_25", HC_POCHE_WOOL },      { "foam_wall_50", HC_POCHE_WOOL },
  { "stone_wall", HC_POCHE_STONE },       { "brick_wall", HC_POCHE_BRICK },
  { "block_wall", HC_POCHE_BRICK },       { "straw_bale_wall", HC_POCHE_STRAW },
  { "glass_wall", HC_POCHE_GLASS },       { "twin_wall", HC_POCHE_GLASS },
  { "double_glass_wall", HC_POCHE_GLASS },
};

/**
 * hc_poche_for_construction:
 * @construction: (nullable): id of what a wall is built of
 *
 * Returns: how it looks cut through; wood when nothing better is known
 */
HcPoche
hc_poche_for_construction (const char *construction)
{
  for (guint i = 0; i < G_N_ELEMENTS (looks); i++)
    if (g_strcmp0 (looks[i].construction, construction) == 0)
      return looks[i].poche;
  return HC_POCHE_WOOD;
}

/**
 * hc_poche_get_paint:
 * @poche: a poché
 *
 * Returns: the paint under its hatch
 */
HcPaint
hc_poche_get_paint (HcPoche poche)
{
  static const HcPaint paints[HC_N_POCHES]
      = { HC_PAINT_WALL,  HC_PAINT_WOOD_PALE, HC_PAINT_STONE, HC_PAINT_WARMTH,
          HC_PAINT_STRAW, HC_PAINT_GLASS,     HC_PAINT_METAL };

  return paints[poche];
}

static void
hatch (const HcInk *ink, double length, double thickness, double lean, double apart)
{
  cairo_new_path (ink->cr);
  for (double x = -thickness; x < length + thickness; x += apart)
    hc_ink_line (ink, x, -thickness / 2, x + lean * thickness, thickness / 2);
  hc_ink_stroke (ink, HC_LINE_HAIR, HC_PAINT_INK);
}

/* Wool lies in waves between the boards. */
static void
hatch_waves (const HcInk *ink, double length, double thickness)
{
  double wave = MAX (thickness * 0.6, HATCH_UNITS / ink->scale);
  double y = thickness * 0.32;

  cairo_new_path (ink->cr);
  cairo_move_to (ink->cr, -thickness, 0);
  for (double x = -thickness; x < length + thickness; x += wave)
    {
      cairo_curve_to (ink->cr, x + wave * 0.2, -2 * y, x + wave * 0.3, -2 * y, x + wave / 2, 0);
      cairo_curve_to (ink->cr, x + wave * 0.7, 2 * y, x + wave * 0.8, 2 * y, x + wave, 0);
    }
  hc_ink_stroke (ink, HC_LINE_HAIR, HC_PAINT_INK);
}

static void
draw_stone (const HcInk *ink, double x, double y, double width, double depth, guint seed)
{
  double in = MIN (width, depth) * 0.06;

  hc_ink_rounded (ink, x + in, y + in, width - 2 * in, depth - 2 * in,
                  MIN (width, depth) * (0.15 + 0.25 * hc_chance (seed, 1)));
  hc_ink_wash (ink, HC_PAINT_PAPER, 0.1 + 0.3 * hc_chance (seed, 2));
  hc_ink_stroke (ink, HC_LINE_HAIR, HC_PAINT_INK);
}

/* Two faces of stones of uneven length, and hearting between where it is
 * thick enough. */
static void
lay_stones (const HcInk *ink, double length, double thickness, guint seed)
{
  double usual = MAX (thickness * 0.55, 14 / ink->scale);

  for (guint course = 0; course < 2; course++)
    {
      double x = -thickness - usual * hc_chance (seed, course + 50);

      for (guint i = 0; x < length + thickness; i++)
        {
          guint stone = seed + course * 5003 + i;
          double width = usual * (0.6 + 0.9 * hc_chance (stone, 3));
          double depth = thickness * (0.42 + 0.12 * hc_chance (stone, 4));

          draw_stone (ink, x, course ? thickness / 2 - depth : -thickness / 2, width, depth,
                      stone);
          x += width;
        }
    }
}

static void
lay_straw (const HcInk *ink, double length, double thickness, guint seed)
{
  guint straws = (guint) MIN ((length + 2 * thickness) * ink->scale / 2.5, 3000);

  cairo_new_path (ink->cr);
  for (guint i = 0; i < straws; i++)
    {
      double x = (length + 2 * thickness) * hc_chance (seed, 3 * i) - thickness;
      double y = thickness * (hc_chance (seed, 3 * i + 1) - 0.5);
      double turn = G_PI * hc_chance (seed, 3 * i + 2);
      double half = 4 / ink->scale;

      hc_ink_line (ink, x - half * cos (turn), y - half * sin (turn), x + half * cos (turn),
                   y + half * sin (turn));
    }
  hc_ink_stroke (ink, HC_LINE_HAIR, HC_PAINT_STRAW_DARK);
}

/**
 * hc_draw_poche:
 * @ink: the ink; clip it to the wall first, hatches run over the ends
 * @poche: what the wall is built of
 * @length_mm: length of the wall, along x from 0
 * @thickness_mm: its thickness, y from minus to plus half of it
 * @seed: walls of different seeds have different stones
 *
 * Hatches a wall in a frame of its own.
 */
void
hc_draw_poche (const HcInk *ink, HcPoche poche, double length_mm, double thickness_mm, guint seed)
{
  double apart = HATCH_UNITS / ink->scale;

  if (thickness_mm * ink->scale < NARROWEST_UNITS)
    return;
  if (poche == HC_POCHE_STONE)
    lay_stones (ink, length_mm, thickness_mm, seed);
  else if (poche == HC_POCHE_STRAW)
    lay_straw (ink, length_mm, thickness_mm, seed);
  else if (poche == HC_POCHE_WOOL)
    hatch_waves (ink, length_mm, thickness_mm);
  else if (poche == HC_POCHE_BRICK)
    hatch (ink, length_mm, thickness_mm, 1, apart);
  else if (poche == HC_POCHE_WOOD)
    hatch (ink, length_mm, thickness_mm, 0.5, apart * 1.4);
}
