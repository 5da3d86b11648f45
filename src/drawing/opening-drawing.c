/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * One way to draw each kind of opening. */
#include "config.h"

#include "opening-drawing.h"

#include "drawing/board.h"
#include "drawing/level-mark.h"
#include "drawing/wall-outline.h"

#include <math.h>

#define LEAF_MM 40.0
#define JAMB_MM 30.0
#define STUB_MM 260.0
#define FLAP_DEG 24.0
#define LOUVRES_APART_MM 60.0
#define MARK_UNITS 13.0

/* In here x runs along the wall, y inwards, the origin in the middle of the
 * opening. */
typedef struct
{
  const HcInk *ink;
  const HcOpeningValues *values;
  double width, thickness;
} Hole;

static void
draw_sill (const Hole *hole, HcPaint paint)
{
  const HcInk *ink = hole->ink;

  hc_ink_rectangle (ink, -hole->width / 2, -hole->thickness / 2, hole->width, hole->thickness);
  hc_ink_fill (ink, paint);
  cairo_new_path (ink->cr);
  for (int side = -1; side <= 1; side += 2)
    hc_ink_line (ink, -hole->width / 2, side * hole->thickness / 2, hole->width / 2,
                 side * hole->thickness / 2);
  hc_ink_stroke (ink, HC_LINE_FINE, HC_PAINT_SOFT_INK);
}

static void
draw_jambs (const Hole *hole)
{
  double jamb = MIN (JAMB_MM, hole->width / 10);

  for (int side = -1; side <= 1; side += 2)
    hc_draw_board (hole->ink, side * (hole->width / 2 - jamb / 2) - jamb / 2,
                   -hole->thickness / 2, jamb, hole->thickness, HC_PAINT_WOOD_DARK, 3);
}

static void
draw_swing (const Hole *hole, double hinge, double way)
{
  const HcInk *ink = hole->ink;
  double unit = 1 / ink->scale;
  double dashes[] = { 3 * unit, 2.5 * unit };
  double x = hinge * hole->width / 2, y = way * hole->thickness / 2;
  double start = hinge > 0 ? (way > 0 ? G_PI / 2 : G_PI) : (way > 0 ? 0 : -G_PI / 2);

  cairo_save (ink->cr);
  cairo_set_dash (ink->cr, dashes, 2, 0);
  cairo_new_path (ink->cr);
  cairo_arc (ink->cr, x, y, hole->width, start, start + G_PI / 2);
  hc_ink_stroke (ink, HC_LINE_FINE, HC_PAINT_SOFT_INK);
  cairo_restore (ink->cr);
}

static void
draw_leaf (const Hole *hole, double hinge, double way)
{
  double x = hinge * hole->width / 2 - (hinge > 0 ? LEAF_MM : 0);
  double y = way * hole->thickness / 2 - (way < 0 ? hole->width : 0);

  hc_draw_board (hole->ink, x, y, LEAF_MM, hole->width, HC_PAINT_WOOD, 8);
}

static void
draw_sliding_leaf (const Hole *hole)
{
  hc_draw_board (hole->ink, -hole->width * 0.2, -hole->thickness / 2 - LEAF_MM, hole->width,
                 LEAF_MM, HC_PAINT_WOOD, 8);
}

static void
draw_keeper_door (const Hole *hole)
{
  double hinge = hole->values->hinge == HC_HINGE_END ? 1 : -1;
  double way = hole->values->swing == HC_SWING_OUT ? -1 : 1;

  draw_sill (hole, HC_PAINT_WOOD_PALE);
  draw_jambs (hole);
  if (hole->values->swing == HC_SWING_SLIDES)
    {
      draw_sliding_leaf (hole);
      return;
    }
  draw_swing (hole, hinge, way);
  draw_leaf (hole, hinge, way);
}

/* A short ramp outside, with rungs. */
static void
draw_stub (const Hole *hole)
{
  const HcInk *ink = hole->ink;
  double length = MIN (STUB_MM, hole->width);
  double y = -hole->thickness / 2 - length;

  hc_draw_board (ink, -hole->width * 0.45, y, hole->width * 0.9, length, HC_PAINT_WOOD_PALE, 4);
  for (int rung = 1; rung <= 3; rung++)
    hc_draw_board (ink, -hole->width * 0.45, y + length * (rung - 0.5) / 3 - 9, hole->width * 0.9,
                   18, HC_PAINT_WOOD_DARK, (guint) rung);
}

static void
draw_pop_hole (const Hole *hole)
{
  draw_stub (hole);
  draw_sill (hole, HC_PAINT_WOOD_PALE);
  draw_jambs (hole);
  if (hole->values->shut_at_dusk)
    hc_draw_board (hole->ink, -hole->width / 2, hole->thickness / 2, hole->width, LEAF_MM / 2,
                   HC_PAINT_WOOD, 6);
}

static void
draw_window (const Hole *hole)
{
  const HcInk *ink = hole->ink;
  double gap = MIN (hole->thickness * 0.14, 25);

  draw_sill (hole, HC_PAINT_PAPER);
  hc_ink_rectangle (ink, -hole->width / 2, -gap, hole->width, 2 * gap);
  hc_ink_fill (ink, HC_PAINT_GLASS);
  hc_ink_stroke (ink, HC_LINE_FINE, HC_PAINT_INK);
  draw_jambs (hole);
}

static void
draw_vent (const Hole *hole)
{
  const HcInk *ink = hole->ink;
  guint louvres = (guint) CLAMP (hole->width / LOUVRES_APART_MM, 2, 60);

  draw_sill (hole, HC_PAINT_METAL_PALE);
  cairo_new_path (ink->cr);
  for (guint i = 0; i < louvres; i++)
    {
      double x = hole->width * ((i + 0.5) / louvres - 0.5);
      double lean = hole->width / louvres * 0.35;

      hc_ink_line (ink, x - lean, -hole->thickness / 2, x + lean, hole->thickness / 2);
    }
  hc_ink_stroke (ink, HC_LINE_FINE, HC_PAINT_INK);
  draw_jambs (hole);
}

/* The flap hangs outside, a little open. */
static void
draw_egg_door (const Hole *hole)
{
  const HcInk *ink = hole->ink;

  draw_sill (hole, HC_PAINT_SHELL);
  cairo_save (ink->cr);
  cairo_translate (ink->cr, -hole->width / 2, -hole->thickness / 2);
  cairo_rotate (ink->cr, -FLAP_DEG * G_PI / 180);
  hc_draw_board (ink, 0, -LEAF_MM / 2, hole->width, LEAF_MM / 2, HC_PAINT_WOOD, 7);
  cairo_restore (ink->cr);
  draw_jambs (hole);
}

/**
 * hc_draw_opening:
 * @ink: the ink
 * @values: the opening; its wall and place are not looked at
 * @thickness_mm: thickness of its wall
 *
 * Draws an opening in its own frame: origin in its middle, x along the wall, y
 * inwards. Doors and ramps reach beyond the wall.
 */
void
hc_draw_opening (const HcInk *ink, const HcOpeningValues *values, double thickness_mm)
{
  static void (*const draw[HC_N_OPENING_KINDS]) (const Hole *) = {
    [HC_OPENING_KEEPER_DOOR] = draw_keeper_door, [HC_OPENING_POP_HOLE] = draw_pop_hole,
    [HC_OPENING_WINDOW] = draw_window,           [HC_OPENING_VENT] = draw_vent,
    [HC_OPENING_EGG_DOOR] = draw_egg_door,
  };
  Hole hole = { ink, values, values->width_mm, MAX (thickness_mm, LEAF_MM) };

  g_return_if_fail ((guint) values->kind < HC_N_OPENING_KINDS);

  if (hole.width <= 0 || ink->scale <= 0)
    return;
  draw[values->kind] (&hole);
}

/**
 * hc_opening_get_reach_mm:
 * @opening: an opening
 *
 * Returns: how far beyond the outer face of its wall it is drawn, in mm: a door
 *   that swings out reaches as far as it is wide
 */
double
hc_opening_get_reach_mm (const HcOpening *opening)
{
  const HcOpeningValues *values = hc_opening_get (opening);

  return values->kind == HC_OPENING_KEEPER_DOOR && values->swing == HC_SWING_OUT
             ? values->width_mm
             : 0;
}

/**
 * hc_opening_drawing_place:
 * @ink: ink whose user space is the plan's
 * @layout: a layout
 * @opening: an opening of it
 * @thickness_mm: (out): thickness of its wall
 *
 * Moves the user space to the opening's own frame. Wrap it in cairo_save()
 * and cairo_restore().
 *
 * Returns: whether it has a wall to be in
 */
gboolean
hc_opening_drawing_place (const HcInk *ink, const HcLayout *layout, const HcOpening *opening,
                          double *thickness_mm)
{
  HcWall *wall = hc_layout_get_wall (layout, hc_opening_get (opening)->wall);
  HcWallFaces faces;
  cairo_matrix_t frame;

  if (wall == NULL || !hc_wall_faces (layout, wall, &faces))
    return FALSE;
  hc_wall_faces_get_frame (&faces, &frame);
  cairo_transform (ink->cr, &frame);
  cairo_translate (ink->cr, hc_opening_get (opening)->along_mm, 0);
  *thickness_mm = hc_wall_get (wall)->thickness_mm;
  return TRUE;
}

/**
 * hc_draw_opening_mark:
 * @ink: the ink, in the opening's own frame
 * @level: the level its findings give it
 *
 * Draws the mark of @level in the middle of the opening, upright on the page
 * whichever way its wall runs.
 */
void
hc_draw_opening_mark (const HcInk *ink, HcLevel level)
{
  cairo_matrix_t matrix;

  cairo_save (ink->cr);
  cairo_get_matrix (ink->cr, &matrix);
  cairo_rotate (ink->cr, -atan2 (matrix.yx, matrix.xx));
  hc_draw_level_mark (ink, 0, 0, MARK_UNITS / ink->scale, level);
  cairo_restore (ink->cr);
}

/**
 * hc_draw_openings:
 * @ink: the ink, in the plan's space
 * @layout: a layout
 *
 * Draws all openings at their places.
 */
void
hc_draw_openings (const HcInk *ink, const HcLayout *layout)
{
  HcParts *openings = hc_layout_get (layout)->openings;
  double thickness;

  for (guint i = 0; i < openings->len; i++)
    {
      cairo_save (ink->cr);
      if (hc_opening_drawing_place (ink, layout, openings->pdata[i], &thickness))
        hc_draw_opening (ink, hc_opening_get (openings->pdata[i]), thickness);
      cairo_restore (ink->cr);
    }
}
