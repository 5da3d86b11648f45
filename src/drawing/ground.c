/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Floors, bedding, grass and netting, strewn by the same chance every time. */
#include "config.h"

#include "ground.h"

#include "drawing/board.h"

#include <math.h>

#define BOARD_MM 150.0
#define FLAG_MM 600.0
#define SLAT_MM 60.0
#define NET_UNITS 9.0
#define LEAST_CELL_UNITS 11.0
#define MOST_CELLS 6000.0

/* One mark of a strewn texture, drawn at the origin. */
typedef void (*Mark) (cairo_t *cr, double size, guint seed);

/* A cell of the strewing grid: coarse enough for the scale and the area. */
static double
cell_mm (const HcInk *ink, HcBox box, double usual_mm)
{
  double fewest = sqrt (box.width_mm * box.depth_mm / MOST_CELLS);

  return MAX (usual_mm, MAX (LEAST_CELL_UNITS / ink->scale, fewest));
}

/* Strews one mark in each cell of a grid that is fixed to the plan, so that a
 * pen that grows keeps the marks it had. */
static void
strew (const HcInk *ink, HcBox box, double usual_mm, double share, Mark mark)
{
  double cell = cell_mm (ink, box, usual_mm);
  int left = (int) floor (box.x_mm / cell), top = (int) floor (box.y_mm / cell);
  int right = (int) ceil ((box.x_mm + box.width_mm) / cell);
  int bottom = (int) ceil ((box.y_mm + box.depth_mm) / cell);

  cairo_new_path (ink->cr);
  for (int row = top; row < bottom; row++)
    for (int column = left; column < right; column++)
      {
        guint seed = (guint) column * 7919u + (guint) row * 104729u;

        if (hc_chance (seed, 0) >= share)
          continue;
        cairo_save (ink->cr);
        cairo_translate (ink->cr, cell * (column + hc_chance (seed, 1)),
                         cell * (row + hc_chance (seed, 2)));
        mark (ink->cr, MIN (cell, 1.6 * usual_mm), seed);
        cairo_restore (ink->cr);
      }
}

static void
mark_straw (cairo_t *cr, double size, guint seed)
{
  double turn = G_PI * hc_chance (seed, 3);
  double half = size * (0.3 + 0.25 * hc_chance (seed, 4));

  cairo_move_to (cr, -half * cos (turn), -half * sin (turn));
  cairo_line_to (cr, half * cos (turn), half * sin (turn));
}

static void
mark_shaving (cairo_t *cr, double size, guint seed)
{
  double turn = 2 * G_PI * hc_chance (seed, 3);

  cairo_new_sub_path (cr);
  cairo_arc (cr, 0, 0, size * (0.12 + 0.14 * hc_chance (seed, 4)), turn, turn + 2.2);
}

static void
mark_grain (cairo_t *cr, double size, guint seed)
{
  cairo_new_sub_path (cr);
  cairo_arc (cr, 0, 0, size * (0.03 + 0.04 * hc_chance (seed, 3)), 0, 2 * G_PI);
  cairo_close_path (cr);
}

static void
mark_stone (cairo_t *cr, double size, guint seed)
{
  cairo_rotate (cr, G_PI * hc_chance (seed, 3));
  cairo_scale (cr, 1, 0.7);
  cairo_new_sub_path (cr);
  cairo_arc (cr, 0, 0, size * (0.1 + 0.14 * hc_chance (seed, 4)), 0, 2 * G_PI);
  cairo_close_path (cr);
}

/* Three blades of grass. */
static void
mark_tuft (cairo_t *cr, double size, guint seed)
{
  for (int blade = -1; blade <= 1; blade++)
    {
      double lean = blade * 0.22 + 0.15 * (hc_chance (seed, 5) - 0.5);
      double tall = size * (0.26 + 0.12 * hc_chance (seed, (guint) (blade + 7)));

      cairo_move_to (cr, blade * size * 0.05, 0);
      cairo_curve_to (cr, blade * size * 0.06, -tall / 2, lean * size * 0.6, -tall * 0.8,
                      lean * size, -tall);
    }
}

static void
draw_ruled (const HcInk *ink, HcBox box, double apart, HcPaint paint)
{
  double top = floor (box.y_mm / apart) * apart;

  if (!hc_ink_shows (ink, apart / 2))
    return;
  cairo_new_path (ink->cr);
  for (double y = top; y < box.y_mm + box.depth_mm; y += apart)
    hc_ink_line (ink, box.x_mm, y, box.x_mm + box.width_mm, y);
  hc_ink_stroke (ink, HC_LINE_HAIR, paint);
}

/* Flags in courses, each course shifted by half a flag. */
static void
draw_flags (const HcInk *ink, HcBox box)
{
  int top = (int) floor (box.y_mm / FLAG_MM);

  draw_ruled (ink, box, FLAG_MM, HC_PAINT_SOFT_INK);
  cairo_new_path (ink->cr);
  for (int row = top; row * FLAG_MM < box.y_mm + box.depth_mm; row++)
    for (double x = floor (box.x_mm / FLAG_MM) * FLAG_MM + (row % 2 ? FLAG_MM / 2 : 0);
         x < box.x_mm + box.width_mm; x += FLAG_MM)
      hc_ink_line (ink, x, row * FLAG_MM, x, (row + 1) * FLAG_MM);
  hc_ink_stroke (ink, HC_LINE_HAIR, HC_PAINT_SOFT_INK);
}

static void
draw_grains (const HcInk *ink, HcBox box, double usual_mm, double share, HcPaint paint)
{
  strew (ink, box, usual_mm, share, mark_grain);
  hc_ink_set (ink, paint, 0.7);
  cairo_fill (ink->cr);
}

static void
flood (const HcInk *ink, HcBox box, HcPaint paint, double opacity)
{
  hc_ink_rectangle (ink, box.x_mm, box.y_mm, box.width_mm, box.depth_mm);
  hc_ink_set (ink, paint, opacity);
  cairo_fill (ink->cr);
}

static void
draw_board_floor (const HcInk *ink, HcBox box)
{
  flood (ink, box, HC_PAINT_WOOD_PALE, 0.75);
  draw_ruled (ink, box, BOARD_MM, HC_PAINT_WOOD);
}

static void
draw_slats (const HcInk *ink, HcBox box)
{
  flood (ink, box, HC_PAINT_WOOD_PALE, 0.6);
  draw_ruled (ink, box, SLAT_MM, HC_PAINT_WOOD_DARK);
}

static void
draw_concrete (const HcInk *ink, HcBox box)
{
  flood (ink, box, HC_PAINT_CONCRETE, 1);
  draw_grains (ink, box, 150, 0.5, HC_PAINT_FAINT_INK);
}

static void
draw_stone_floor (const HcInk *ink, HcBox box)
{
  flood (ink, box, HC_PAINT_CONCRETE, 1);
  draw_flags (ink, box);
}

static void
draw_earth (const HcInk *ink, HcBox box)
{
  flood (ink, box, HC_PAINT_EARTH, 1);
  draw_grains (ink, box, 110, 0.5, HC_PAINT_DUST_DARK);
}

static void
draw_gravel (const HcInk *ink, HcBox box)
{
  flood (ink, box, HC_PAINT_CONCRETE, 1);
  strew (ink, box, 120, 0.9, mark_stone);
  hc_ink_stroke (ink, HC_LINE_HAIR, HC_PAINT_SOFT_INK);
}

static void
draw_mesh_floor (const HcInk *ink, HcBox box)
{
  flood (ink, box, HC_PAINT_METAL_PALE, 0.7);
  hc_draw_netting (ink, box);
}

/**
 * hc_draw_floor_layer:
 * @ink: ink, clipped to the floor
 * @layer: (nullable): id of what the floor is of; earth when not known
 * @box: what to cover, in the plan's space
 */
void
hc_draw_floor_layer (const HcInk *ink, const char *layer, HcBox box)
{
  static const struct
  {
    const char *layer;
    void (*draw) (const HcInk *, HcBox);
  } floors[] = {
    { "boards", draw_board_floor }, { "plywood", draw_board_floor },
    { "pallets", draw_slats },      { "slats", draw_slats },
    { "concrete", draw_concrete },  { "stone", draw_stone_floor },
    { "pavers", draw_stone_floor }, { "gravel", draw_gravel },
    { "mesh", draw_mesh_floor },
  };

  for (guint i = 0; i < G_N_ELEMENTS (floors); i++)
    if (g_strcmp0 (floors[i].layer, layer) == 0)
      {
        floors[i].draw (ink, box);
        return;
      }
  draw_earth (ink, box);
}

static gboolean
is_long_stalked (const char *bedding)
{
  static const char *const stalks[] = { "straw", "straw_chopped", "hay", "leaves", NULL };

  return g_strv_contains (stalks, bedding);
}

/**
 * hc_draw_bedding:
 * @ink: ink, clipped to the floor
 * @bedding: id of the bedding
 * @box: what to cover, in the plan's space
 *
 * Strews stalks, grains or curls.
 */
void
hc_draw_bedding (const HcInk *ink, const char *bedding, HcBox box)
{
  if (g_strcmp0 (bedding, "sand") == 0 || g_strcmp0 (bedding, "peat") == 0)
    {
      flood (ink, box, HC_PAINT_DUST, 0.35);
      draw_grains (ink, box, 70, 0.8, HC_PAINT_DUST_DARK);
      return;
    }
  flood (ink, box, HC_PAINT_STRAW, 0.3);
  strew (ink, box, 85, 0.75, is_long_stalked (bedding) ? mark_straw : mark_shaving);
  hc_ink_set (ink, HC_PAINT_STRAW_DARK, 0.6);
  cairo_set_line_width (ink->cr, hc_ink_line_mm (ink, HC_LINE_HAIR));
  cairo_stroke (ink->cr);
}

/**
 * hc_draw_grass:
 * @ink: ink, clipped to the ground
 * @box: what to cover, in the plan's space
 */
void
hc_draw_grass (const HcInk *ink, HcBox box)
{
  flood (ink, box, HC_PAINT_GRASS, 1);
  strew (ink, box, 260, 0.55, mark_tuft);
  hc_ink_set (ink, HC_PAINT_GRASS_DARK, 0.85);
  cairo_set_line_width (ink->cr, hc_ink_line_mm (ink, HC_LINE_HAIR));
  cairo_stroke (ink->cr);
}

/**
 * hc_draw_netting:
 * @ink: ink, clipped to what it hangs over
 * @box: what to cover, in the plan's space
 *
 * Draws a faint lattice.
 */
void
hc_draw_netting (const HcInk *ink, HcBox box)
{
  double apart = MAX (NET_UNITS / ink->scale, 60);
  double reach = box.depth_mm;

  cairo_new_path (ink->cr);
  for (double x = box.x_mm - reach; x < box.x_mm + box.width_mm + reach; x += apart)
    {
      hc_ink_line (ink, x, box.y_mm, x + reach, box.y_mm + box.depth_mm);
      hc_ink_line (ink, x + reach, box.y_mm, x, box.y_mm + box.depth_mm);
    }
  hc_ink_set (ink, HC_PAINT_SOFT_INK, 0.16);
  cairo_set_line_width (ink->cr, hc_ink_line_mm (ink, HC_LINE_HAIR));
  cairo_stroke (ink->cr);
}
