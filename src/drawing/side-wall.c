/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Walls and openings: what is cut is heavy and hatched, what is beyond is pale. */
#include "config.h"

#include "side-wall.h"

#include "drawing/poche.h"

#define BOARD_MM 150.0
#define FRAME_MM 45.0
#define LOUVRE_MM 60.0
#define MESH_MM 120.0

/**
 * hc_side_item_get_box: (skip)
 * @item: something seen
 *
 * Returns: the box round it, in the space of the drawing: y runs down from the floor
 */
HcBox
hc_side_item_get_box (const HcSectionItem *item)
{
  HcBox box = hc_box_around ((const HcPoint *) item->outline->data, item->outline->len);

  box.y_mm = -box.y_mm - box.depth_mm;
  return box;
}

static void
trace (const HcInk *ink, const GArray *outline)
{
  cairo_new_path (ink->cr);
  for (guint i = 0; i < outline->len; i++)
    {
      const HcPoint *point = &g_array_index (outline, HcPoint, i);

      cairo_line_to (ink->cr, point->x_mm, -point->y_mm);
    }
  cairo_close_path (ink->cr);
}

static void
draw_upright_lines (const HcInk *ink, HcBox box, double apart, HcPaint paint)
{
  cairo_new_path (ink->cr);
  for (double x = box.x_mm + apart; x < box.x_mm + box.width_mm; x += apart)
    hc_ink_line (ink, x, box.y_mm, x, box.y_mm + box.depth_mm);
  hc_ink_stroke (ink, HC_LINE_HAIR, paint);
}

static void
draw_level_lines (const HcInk *ink, HcBox box, double apart, HcPaint paint)
{
  cairo_new_path (ink->cr);
  for (double y = box.y_mm + apart; y < box.y_mm + box.depth_mm; y += apart)
    hc_ink_line (ink, box.x_mm, y, box.x_mm + box.width_mm, y);
  hc_ink_stroke (ink, HC_LINE_HAIR, paint);
}

/* Boards and panels stand, stones and bales lie in courses. */
static void
draw_face (const HcInk *ink, HcPoche poche, HcBox box)
{
  if (poche == HC_POCHE_STONE || poche == HC_POCHE_BRICK || poche == HC_POCHE_STRAW)
    draw_level_lines (ink, box, BOARD_MM, HC_PAINT_FAINT_INK);
  else
    draw_upright_lines (ink, box, BOARD_MM, HC_PAINT_FAINT_INK);
}

static void
draw_wall_beyond (const HcInk *ink, const HcWallValues *wall, const HcSectionItem *item)
{
  HcPoche poche = hc_poche_for_construction (wall->construction);

  trace (ink, item->outline);
  hc_ink_fill (ink, HC_PAINT_PAPER);
  hc_ink_wash (ink, hc_poche_get_paint (poche), 0.35);
  cairo_save (ink->cr);
  cairo_clip (ink->cr);
  draw_face (ink, poche, hc_side_item_get_box (item));
  cairo_restore (ink->cr);
  trace (ink, item->outline);
  hc_ink_stroke (ink, HC_LINE_FINE, HC_PAINT_SOFT_INK);
}

static void
draw_mesh (const HcInk *ink, const HcSectionItem *item)
{
  HcBox box = hc_side_item_get_box (item);

  cairo_save (ink->cr);
  trace (ink, item->outline);
  cairo_clip (ink->cr);
  draw_upright_lines (ink, box, MESH_MM, HC_PAINT_FAINT_INK);
  draw_level_lines (ink, box, MESH_MM, HC_PAINT_FAINT_INK);
  cairo_restore (ink->cr);
  trace (ink, item->outline);
  hc_ink_stroke (ink, item->cut ? HC_LINE_MEDIUM : HC_LINE_FINE, HC_PAINT_SOFT_INK);
}

static void
draw_cut_wall (const HcInk *ink, const HcWallValues *wall, const HcSectionItem *item)
{
  HcPoche poche = hc_poche_for_construction (wall->construction);
  HcBox box = hc_side_item_get_box (item);

  trace (ink, item->outline);
  hc_ink_fill (ink, hc_poche_get_paint (poche));
  cairo_save (ink->cr);
  cairo_clip (ink->cr);
  cairo_translate (ink->cr, box.x_mm + box.width_mm / 2, box.y_mm);
  cairo_rotate (ink->cr, G_PI / 2);
  hc_draw_poche (ink, poche, box.depth_mm, box.width_mm, g_str_hash (item->id));
  cairo_restore (ink->cr);
  trace (ink, item->outline);
  hc_ink_stroke (ink, HC_LINE_HEAVY, HC_PAINT_INK);
}

/**
 * hc_draw_side_wall: (skip)
 * @ink: the ink, x along the cut, y down from the floor
 * @layout: the layout
 * @item: a wall
 *
 * Draws a wall, cut or beyond the cut.
 */
void
hc_draw_side_wall (const HcInk *ink, const HcLayout *layout, const HcSectionItem *item)
{
  const HcWallValues *wall = hc_wall_get (hc_layout_get_wall (layout, item->id));

  if (wall->kind != HC_WALL_SOLID)
    draw_mesh (ink, item);
  else if (item->cut)
    draw_cut_wall (ink, wall, item);
  else
    draw_wall_beyond (ink, wall, item);
}

static void
draw_frame (const HcInk *ink, HcBox box)
{
  HcBox round = hc_box_grow (box, FRAME_MM);

  hc_ink_rectangle (ink, round.x_mm, round.y_mm, round.width_mm, round.depth_mm);
  hc_ink_fill (ink, HC_PAINT_WOOD_PALE);
  hc_ink_stroke (ink, HC_LINE_FINE, HC_PAINT_WOOD_DARK);
  hc_ink_rectangle (ink, box.x_mm, box.y_mm, box.width_mm, box.depth_mm);
}

static void
draw_window (const HcInk *ink, HcBox box)
{
  hc_ink_fill (ink, HC_PAINT_GLASS);
  hc_ink_stroke (ink, HC_LINE_FINE, HC_PAINT_INK);
  cairo_new_path (ink->cr);
  hc_ink_line (ink, box.x_mm + box.width_mm / 2, box.y_mm, box.x_mm + box.width_mm / 2,
               box.y_mm + box.depth_mm);
  hc_ink_line (ink, box.x_mm, box.y_mm + box.depth_mm / 2, box.x_mm + box.width_mm,
               box.y_mm + box.depth_mm / 2);
  hc_ink_stroke (ink, HC_LINE_MEDIUM, HC_PAINT_WOOD_DARK);
}

static void
draw_vent (const HcInk *ink, HcBox box)
{
  hc_ink_fill (ink, HC_PAINT_METAL_PALE);
  hc_ink_stroke (ink, HC_LINE_FINE, HC_PAINT_INK);
  draw_level_lines (ink, box, MIN (LOUVRE_MM, box.depth_mm / 3), HC_PAINT_INK);
}

static void
draw_leaf (const HcInk *ink, HcBox box)
{
  hc_ink_fill (ink, HC_PAINT_WOOD);
  hc_ink_stroke (ink, HC_LINE_FINE, HC_PAINT_INK);
  draw_upright_lines (ink, box, BOARD_MM, HC_PAINT_WOOD_DARK);
}

static void
draw_hole (const HcInk *ink)
{
  hc_ink_fill (ink, HC_PAINT_DIM_INSIDE);
  hc_ink_stroke (ink, HC_LINE_FINE, HC_PAINT_INK);
}

/* A wall is broken where it is cut through an opening. */
static void
draw_gap (const HcInk *ink, HcBox box, double thickness_mm)
{
  double middle = box.x_mm + box.width_mm / 2;

  hc_ink_rectangle (ink, middle - thickness_mm / 2, box.y_mm, thickness_mm, box.depth_mm);
  hc_ink_fill (ink, HC_PAINT_PAPER);
  hc_ink_stroke (ink, HC_LINE_MEDIUM, HC_PAINT_INK);
  cairo_new_path (ink->cr);
  hc_ink_line (ink, middle, box.y_mm, middle, box.y_mm + box.depth_mm);
  hc_ink_stroke (ink, HC_LINE_FINE, HC_PAINT_SOFT_INK);
}

/**
 * hc_draw_side_opening: (skip)
 * @ink: the ink, x along the cut, y down from the floor
 * @layout: the layout
 * @item: an opening
 *
 * Draws an opening as it is seen from inside; one seen edge-on does not show.
 */
void
hc_draw_side_opening (const HcInk *ink, const HcLayout *layout, const HcSectionItem *item)
{
  const HcOpeningValues *opening = hc_opening_get (hc_layout_get_opening (layout, item->id));
  const HcWallValues *wall = hc_wall_get (hc_layout_get_wall (layout, opening->wall));
  HcBox box = hc_side_item_get_box (item);

  if (item->cut)
    {
      draw_gap (ink, box, wall->thickness_mm);
      return;
    }
  if (box.width_mm < FRAME_MM)
    return;
  draw_frame (ink, box);
  if (opening->kind == HC_OPENING_WINDOW)
    draw_window (ink, box);
  else if (opening->kind == HC_OPENING_VENT)
    draw_vent (ink, box);
  else if (opening->kind == HC_OPENING_POP_HOLE)
    draw_hole (ink);
  else
    draw_leaf (ink, box);
}
