/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Roofs lie on their walls and hang over the outer ones. */
#include "config.h"

#include "side-roof.h"

#include "base/box.h"

#include <math.h>

/* A roof not said what it is built of is as thick as this, and none is drawn
 * thinner than can be seen. */
#define USUAL_MM 70.0
#define LEAST_MM 20.0

/* Roofs whose ends are no farther apart than this are one roof over a wall. */
#define ONE_ROOF_MM 800.0

/* The air above the eaves is painted this high over the corner of the wall. */
#define AIR_MM 800.0

typedef struct
{
  const HcInk *ink;
  const HcPoint *under;
  guint n;
  double thick_mm;
  HcPoint ends[2];
} Roof;

/* Carries the slope from @inner to @outer on by @by_mm. */
static HcPoint
carried_on (HcPoint inner, HcPoint outer, double by_mm)
{
  HcPoint way = hc_point_subtract (outer, inner);

  return way.x_mm != 0 ? hc_point_add (outer, hc_point_scale (way, by_mm / fabs (way.x_mm)))
                       : outer;
}

static const HcPenValues *
pen_under (const HcLayout *layout, const HcSectionItem *item)
{
  return hc_pen_get (hc_layout_get_pen (layout, item->id));
}

static HcPoint
end_of (const HcSectionItem *item, gboolean last)
{
  return g_array_index (item->outline, HcPoint, last ? item->outline->len - 1 : 0);
}

/* A roof that goes on over a wall goes on at nearly the same height. */
static gboolean
goes_on (HcPoint end, HcPoint start)
{
  double apart_mm = fabs (start.x_mm - end.x_mm);

  return apart_mm < ONE_ROOF_MM && fabs (start.y_mm - end.y_mm) <= apart_mm;
}

/* Where a roof of the same kind goes on from the end of this one, or nothing. */
static const HcSectionItem *
find_next (const HcLayout *layout, const GArray *items, const HcSectionItem *item,
           gboolean last)
{
  for (guint i = 0; i < items->len; i++)
    {
      const HcSectionItem *other = &g_array_index (items, HcSectionItem, i);

      if (other->kind == HC_SECTION_ROOF && other != item
          && pen_under (layout, other)->roof == pen_under (layout, item)->roof
          && goes_on (end_of (item, last), end_of (other, !last)))
        return other;
    }
  return NULL;
}

/* How thick the cut wall is that stands at the end of a roof. */
static double
wall_at_mm (const GArray *items, double x_mm)
{
  for (guint i = 0; i < items->len; i++)
    {
      const HcSectionItem *item = &g_array_index (items, HcSectionItem, i);
      HcBox box = hc_box_around ((const HcPoint *) item->outline->data, item->outline->len);

      if (item->kind == HC_SECTION_WALL && item->cut
          && hc_box_distance (box, (HcBox){ x_mm, 0, 0, 0 }) < 1)
        return box.width_mm;
    }
  return 0;
}

static HcPoint
find_end (const HcLayout *layout, const GArray *items, const HcSectionItem *item, gboolean last)
{
  const HcSectionItem *next = find_next (layout, items, item, last);
  HcPoint end = end_of (item, last);
  HcPoint inner = g_array_index (item->outline, HcPoint, last ? item->outline->len - 2 : 1);

  if (next != NULL)
    return hc_point_between (end, end_of (next, !last), 0.5);
  return carried_on (inner, end,
                     wall_at_mm (items, end.x_mm) + pen_under (layout, item)->overhang_mm);
}

static void
trace_under (const Roof *roof)
{
  cairo_new_path (roof->ink->cr);
  cairo_line_to (roof->ink->cr, roof->ends[0].x_mm, -roof->ends[0].y_mm);
  for (guint i = 0; i < roof->n; i++)
    cairo_line_to (roof->ink->cr, roof->under[i].x_mm, -roof->under[i].y_mm);
  cairo_line_to (roof->ink->cr, roof->ends[1].x_mm, -roof->ends[1].y_mm);
}

/* Walls are as high as the eaves: what would stand out of the roof is air. */
static void
draw_air (const Roof *roof, HcPoint inner, HcPoint end)
{
  cairo_t *cr = roof->ink->cr;
  double line_mm = hc_ink_line_mm (roof->ink, HC_LINE_HEAVY);
  double edge_mm = end.x_mm + (end.x_mm < inner.x_mm ? -line_mm : line_mm);

  cairo_new_path (cr);
  cairo_move_to (cr, inner.x_mm, -inner.y_mm);
  cairo_line_to (cr, edge_mm, -end.y_mm);
  cairo_line_to (cr, edge_mm, -end.y_mm - AIR_MM);
  cairo_line_to (cr, inner.x_mm, -inner.y_mm - AIR_MM);
  cairo_close_path (cr);
  hc_ink_fill (roof->ink, HC_PAINT_PAPER);
}

static void
draw_solid (const Roof *roof)
{
  cairo_t *cr = roof->ink->cr;

  draw_air (roof, roof->under[0], roof->ends[0]);
  draw_air (roof, roof->under[roof->n - 1], roof->ends[1]);
  trace_under (roof);
  cairo_line_to (cr, roof->ends[1].x_mm, -roof->ends[1].y_mm - roof->thick_mm);
  for (guint i = roof->n; i-- > 0;)
    cairo_line_to (cr, roof->under[i].x_mm, -roof->under[i].y_mm - roof->thick_mm);
  cairo_line_to (cr, roof->ends[0].x_mm, -roof->ends[0].y_mm - roof->thick_mm);
  cairo_close_path (cr);
  hc_ink_fill (roof->ink, HC_PAINT_WOOD);
  hc_ink_stroke (roof->ink, HC_LINE_HEAVY, HC_PAINT_INK);
}

static double
thickness_mm (const HcSideScene *scene, const HcPenValues *pen)
{
  const HcConstruction *built
      = scene->book != NULL && pen->roof_construction != NULL
            ? hc_book_get_construction (scene->book, pen->roof_construction)
            : NULL;

  return built != NULL ? MAX (built->thickness_mm, LEAST_MM) : USUAL_MM;
}

/**
 * hc_draw_side_roofs: (skip)
 * @ink: the ink, x along the cut, y down from the floor
 * @scene: what is seen
 *
 * Draws the roofs, over their walls and as far out as they hang; netting and
 * mesh as a line.
 */
void
hc_draw_side_roofs (const HcInk *ink, const HcSideScene *scene)
{
  HcLayout *layout = hc_house_get_layout (scene->house);

  for (guint i = 0; i < scene->items->len; i++)
    {
      const HcSectionItem *item = hc_side_scene_get_item (scene, i);
      Roof roof = { ink };

      if (item->kind != HC_SECTION_ROOF)
        continue;
      roof.under = (const HcPoint *) item->outline->data;
      roof.n = item->outline->len;
      roof.thick_mm = thickness_mm (scene, pen_under (layout, item));
      roof.ends[0] = find_end (layout, scene->items, item, FALSE);
      roof.ends[1] = find_end (layout, scene->items, item, TRUE);
      if (pen_under (layout, item)->roof == HC_ROOF_SOLID)
        {
          draw_solid (&roof);
          continue;
        }
      trace_under (&roof);
      hc_ink_stroke (ink, HC_LINE_MEDIUM, HC_PAINT_SOFT_INK);
    }
}
