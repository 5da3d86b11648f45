/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Puts names where nothing stands, and marks where something is wrong. */
#include "config.h"

#include "floor-labels.h"

#include "drawing/bird-places.h"
#include "drawing/fitting-drawing.h"
#include "drawing/level-mark.h"
#include "drawing/opening-drawing.h"
#include "drawing/text.h"

#include "base/box.h"
#include "base/ring.h"

#include <math.h>

#define HALO 0.72
#define HALO_UNITS 3.0
#define PEN_MARK_UNITS 18.0

/* Places tried for a name across and down a pen, and what speaks against one;
 * its distance from the middle counts up to 1. */
#define TRIES 9
#define COST_OF_FITTING 100.0
#define COST_OF_BIRD 10.0

typedef struct
{
  const char *name;
  char *area;
  double width;
  double depth;
} Label;

static HcBox
box_of_fitting (const HcFittingValues *values)
{
  double turn = values->turn_deg * G_PI / 180;
  double width = fabs (cos (turn)) * values->width_mm + fabs (sin (turn)) * values->depth_mm;
  double depth = fabs (sin (turn)) * values->width_mm + fabs (cos (turn)) * values->depth_mm;

  return (HcBox){ values->x_mm - width / 2, values->y_mm - depth / 2, width, depth };
}

static guint
count_birds_under (HcBox box, const GArray *birds)
{
  guint n = 0;

  for (guint i = 0; birds != NULL && i < birds->len; i++)
    {
      const HcBirdPlace *bird = &g_array_index (birds, HcBirdPlace, i);

      n += hc_box_contains_point (hc_box_grow (box, bird->look.width_mm / 2), bird->at);
    }
  return n;
}

static guint
count_fittings_under (HcBox box, const HcPenValues *pen)
{
  guint n = 0;

  for (guint i = 0; i < pen->fittings->len; i++)
    n += hc_box_touches (box, box_of_fitting (hc_fitting_get (pen->fittings->pdata[i])));
  return n;
}

static gboolean
is_inside (const GArray *ring, HcBox box)
{
  const HcPoint *points = (const HcPoint *) ring->data;

  for (guint i = 0; i < 4; i++)
    if (!hc_ring_contains_point (points, ring->len,
                                 hc_point (box.x_mm + (i % 2) * box.width_mm,
                                           box.y_mm + (i / 2) * box.depth_mm)))
      return FALSE;
  return TRUE;
}

/* Where a name hides least, the nearer the middle the better. */
static gboolean
find_place (const HcPenValues *pen, const GArray *ring, const GArray *birds, const Label *label,
            HcPoint *at)
{
  HcBox all = hc_box_around ((const HcPoint *) ring->data, ring->len);
  double least = G_MAXDOUBLE;

  for (guint i = 0; i < TRIES * TRIES; i++)
    {
      double across = (i % TRIES + 1.0) / (TRIES + 1), down = (i / TRIES + 1.0) / (TRIES + 1);
      HcPoint middle
          = hc_point (all.x_mm + across * all.width_mm, all.y_mm + down * all.depth_mm);
      HcBox box = { middle.x_mm - label->width / 2, middle.y_mm - label->depth / 2,
                    label->width, label->depth };
      double cost = COST_OF_FITTING * count_fittings_under (box, pen)
                    + COST_OF_BIRD * count_birds_under (box, birds)
                    + hypot (across - 0.5, down - 0.5);

      if (cost >= least || !is_inside (ring, box))
        continue;
      least = cost;
      *at = middle;
    }
  return least < G_MAXDOUBLE;
}

static void
write_label (const HcInk *ink, const Label *label, HcPoint at)
{
  hc_ink_rounded (ink, at.x_mm - label->width / 2, at.y_mm - label->depth / 2, label->width,
                  label->depth, 2 * HALO_UNITS / ink->scale);
  hc_ink_wash (ink, HC_PAINT_PAPER, HALO);
  cairo_new_path (ink->cr);
  hc_draw_text (ink, HC_HAND_HEADING, label->name, at.x_mm, at.y_mm, 0.5, 0.9, 0, HC_PAINT_INK);
  hc_draw_text (ink, HC_HAND_SMALL, label->area, at.x_mm, at.y_mm, 0.5, -0.15, 0,
                HC_PAINT_SOFT_INK);
}

static void
draw_pen_name (const HcInk *ink, const HcPenValues *pen, const GArray *ring,
               const GArray *birds, HcUnits units)
{
  g_autofree char *area = hc_area_format (
      fabs (hc_ring_area_mm2 ((const HcPoint *) ring->data, ring->len)), units);
  HcTextBox name = hc_text_measure (ink, HC_HAND_HEADING, pen->name, 0);
  HcTextBox small = hc_text_measure (ink, HC_HAND_SMALL, area, 0);
  Label label = { pen->name, area,
                  (MAX (name.width, small.width) + 2 * HALO_UNITS) / ink->scale,
                  (name.height + small.height + HALO_UNITS) / ink->scale };
  HcPoint at = { 0 };

  if (find_place (pen, ring, birds, &label, &at))
    write_label (ink, &label, at);
}

/**
 * hc_draw_pen_names:
 * @ink: the ink, in the plan's space
 * @layout: a layout
 * @units: the keeper's units
 * @birds: (nullable) (element-type HcBirdPlace): birds not to write over
 *
 * Writes the name and the area of every pen that has room for them.
 */
void
hc_draw_pen_names (const HcInk *ink, const HcLayout *layout, HcUnits units,
                   const GArray *birds)
{
  HcParts *pens = hc_layout_get (layout)->pens;

  for (guint i = 0; i < pens->len; i++)
    {
      const HcPenValues *pen = hc_pen_get (pens->pdata[i]);
      g_autoptr (GArray) ring = hc_layout_get_pen_ring (layout, pens->pdata[i]);

      if (ring->len >= 3 && pen->name != NULL && *pen->name != '\0')
        draw_pen_name (ink, pen, ring, birds, units);
    }
}

static gboolean
falls_short (const HcCheck *check, const char *id, HcLevel *level)
{
  *level = hc_check_get_part_level (check, id);
  return *level == HC_LEVEL_SHORT || *level == HC_LEVEL_TIGHT;
}

static void
mark_fittings (const HcInk *ink, HcParts *fittings, const HcCheck *check)
{
  HcLevel level;

  for (guint i = 0; i < fittings->len; i++)
    {
      const HcFittingValues *values = hc_fitting_get (fittings->pdata[i]);

      if (!falls_short (check, hc_fitting_get_id (fittings->pdata[i]), &level))
        continue;
      cairo_save (ink->cr);
      hc_fitting_drawing_place (ink, values);
      hc_draw_fitting_mark (ink, values, level);
      cairo_restore (ink->cr);
    }
}

static void
mark_openings (const HcInk *ink, const HcLayout *layout, const HcCheck *check)
{
  HcParts *openings = hc_layout_get (layout)->openings;
  double thickness;
  HcLevel level;

  for (guint i = 0; i < openings->len; i++)
    {
      if (!falls_short (check, hc_opening_get_id (openings->pdata[i]), &level))
        continue;
      cairo_save (ink->cr);
      if (hc_opening_drawing_place (ink, layout, openings->pdata[i], &thickness))
        hc_draw_opening_mark (ink, level);
      cairo_restore (ink->cr);
    }
}

/* The corner at the right and the back, where marks of fittings are too; on the
 * walls, so that it is not taken for that of what stands in the corner. */
static HcPoint
back_right_corner (const GArray *ring)
{
  HcPoint best = g_array_index (ring, HcPoint, 0);

  for (guint i = 1; i < ring->len; i++)
    {
      HcPoint at = g_array_index (ring, HcPoint, i);

      if (at.x_mm - at.y_mm > best.x_mm - best.y_mm)
        best = at;
    }
  return best;
}

/**
 * hc_draw_pen_marks:
 * @ink: the ink, in the plan's space
 * @layout: a layout
 * @check: it judged
 *
 * Marks every pen that a finding names, or whose birds it names, as too little
 * or just enough.
 */
void
hc_draw_pen_marks (const HcInk *ink, const HcLayout *layout, const HcCheck *check)
{
  HcParts *pens = hc_layout_get (layout)->pens;
  double size = PEN_MARK_UNITS / ink->scale;

  for (guint i = 0; i < pens->len; i++)
    {
      HcLevel level = hc_check_get_pen_level (check, hc_pen_get_id (pens->pdata[i]));
      g_autoptr (GArray) ring = hc_layout_get_pen_ring (layout, pens->pdata[i]);
      HcPoint corner;

      if (level > HC_LEVEL_TIGHT || ring->len < 3)
        continue;
      corner = back_right_corner (ring);
      hc_draw_level_mark (ink, corner.x_mm, corner.y_mm, size, level);
    }
}

/**
 * hc_draw_marks:
 * @ink: the ink, in the plan's space
 * @layout: a layout
 * @check: it judged
 *
 * Marks everything that a finding names as too little or just enough.
 */
void
hc_draw_marks (const HcInk *ink, const HcLayout *layout, const HcCheck *check)
{
  HcParts *pens = hc_layout_get (layout)->pens;

  for (guint i = 0; i < pens->len; i++)
    mark_fittings (ink, hc_pen_get (pens->pdata[i])->fittings, check);
  mark_fittings (ink, hc_layout_get (layout)->loose, check);
  mark_openings (ink, layout, check);
  hc_draw_pen_marks (ink, layout, check);
}
