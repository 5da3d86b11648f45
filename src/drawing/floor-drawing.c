/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Lays the parts of the drawing over each other, lowest first. */
#include "config.h"

#include "floor-drawing.h"

#include "drawing/bird.h"
#include "drawing/dimension.h"
#include "drawing/fitting-drawing.h"
#include "drawing/floor-labels.h"
#include "drawing/open-line.h"
#include "drawing/opening-drawing.h"
#include "drawing/pen-floor.h"
#include "drawing/wall-drawing.h"
#include "drawing/wall-outline.h"

#define LOOSE_FADES 0.6
#define HANGING_FADES 0.25

static HcBox
box_of_fitting (const HcFitting *fitting)
{
  const HcFittingValues *values = hc_fitting_get (fitting);
  double reach = MAX (values->width_mm, values->depth_mm) / 2;

  return hc_box_grow ((HcBox){ values->x_mm, values->y_mm, 0, 0 }, reach);
}

static HcBox
box_of_opening (const HcLayout *layout, const HcOpening *opening)
{
  const HcOpeningValues *values = hc_opening_get (opening);
  HcWall *wall = hc_layout_get_wall (layout, values->wall);
  HcWallFaces faces;
  HcPoint ends[2];

  if (wall == NULL || !hc_wall_faces (layout, wall, &faces)
      || hc_opening_get_reach_mm (opening) == 0)
    return hc_box_empty ();
  for (guint i = 0; i < 2; i++)
    ends[i] = hc_wall_faces_at (&faces, values->along_mm + (i - 0.5) * values->width_mm,
                                -faces.outer_mm - hc_opening_get_reach_mm (opening));
  return hc_box_around (ends, 2);
}

/**
 * hc_floor_get_bounds:
 * @layout: a layout
 *
 * Returns: the box round all walls, open doors and loose fittings, in the plan's space; an empty
 *   one for an empty layout
 */
HcBox
hc_floor_get_bounds (const HcLayout *layout)
{
  const HcLayoutValues *values = hc_layout_get (layout);
  HcBox bounds = hc_box_empty ();

  for (guint i = 0; i < values->walls->len; i++)
    {
      HcPoint outline[4];

      if (hc_wall_outline (layout, values->walls->pdata[i], outline))
        bounds = hc_box_join (bounds, hc_box_around (outline, 4));
    }
  for (guint i = 0; i < values->openings->len; i++)
    bounds = hc_box_join (bounds, box_of_opening (layout, values->openings->pdata[i]));
  for (guint i = 0; i < values->loose->len; i++)
    bounds = hc_box_join (bounds, box_of_fitting (values->loose->pdata[i]));
  return bounds;
}

static void
draw_pen_floors (const HcInk *ink, const HcLayout *layout)
{
  HcParts *pens = hc_layout_get (layout)->pens;

  for (guint i = 0; i < pens->len; i++)
    {
      g_autoptr (GArray) ring = hc_layout_get_pen_ring (layout, pens->pdata[i]);

      hc_draw_pen_floor (ink, hc_pen_get (pens->pdata[i]), (const HcPoint *) ring->data,
                         ring->len);
    }
}

static gboolean
hangs (const HcFittingValues *values)
{
  return values->kind == HC_FITTING_HEAT_PLATE || values->kind == HC_FITTING_HEAT_LAMP;
}

static int
compare_bases (gconstpointer a, gconstpointer b)
{
  const HcFittingValues *one = hc_fitting_get (*(HcFitting *const *) a);
  const HcFittingValues *other = hc_fitting_get (*(HcFitting *const *) b);

  return (one->base_mm > other->base_mm) - (one->base_mm < other->base_mm);
}

/* What stands in the pens, lowest first. */
static GPtrArray *
list_fittings (const HcLayout *layout)
{
  HcParts *pens = hc_layout_get (layout)->pens;
  GPtrArray *list = g_ptr_array_new ();

  for (guint i = 0; i < pens->len; i++)
    {
      HcParts *fittings = hc_pen_get (pens->pdata[i])->fittings;

      for (guint j = 0; j < fittings->len; j++)
        g_ptr_array_add (list, fittings->pdata[j]);
    }
  g_ptr_array_sort (list, compare_bases);
  return list;
}

static void
draw_placed (const HcInk *ink, const HcFittingValues *values,
             void (*draw) (const HcInk *, const HcFittingValues *))
{
  cairo_save (ink->cr);
  hc_fitting_drawing_place (ink, values);
  draw (ink, values);
  cairo_restore (ink->cr);
}

static void
draw_standing (const HcInk *ink, GPtrArray *fittings)
{
  for (guint i = 0; i < fittings->len; i++)
    draw_placed (ink, hc_fitting_get (fittings->pdata[i]), hc_draw_fitting_surroundings);
  for (guint i = 0; i < fittings->len; i++)
    if (!hangs (hc_fitting_get (fittings->pdata[i])))
      draw_placed (ink, hc_fitting_get (fittings->pdata[i]), hc_draw_fitting);
}

/* Chicks show through what hangs over them. */
static void
draw_hanging (const HcInk *ink, GPtrArray *fittings)
{
  HcInk faded = *ink;

  faded.fade = HANGING_FADES;
  for (guint i = 0; i < fittings->len; i++)
    {
      const HcFittingValues *values = hc_fitting_get (fittings->pdata[i]);

      if (hangs (values))
        draw_placed (&faded, values, hc_draw_fitting);
    }
}

static void
draw_loose (const HcInk *ink, const HcLayout *layout)
{
  HcParts *loose = hc_layout_get (layout)->loose;
  HcInk faded = *ink;

  faded.fade = LOOSE_FADES;
  for (guint i = 0; i < loose->len; i++)
    draw_placed (&faded, hc_fitting_get (loose->pdata[i]), hc_draw_fitting);
}

/**
 * hc_draw_bird_places:
 * @ink: the ink, in the plan's space
 * @places: (element-type HcBirdPlace): birds where they are
 *
 * Draws every bird at its place.
 */
void
hc_draw_bird_places (const HcInk *ink, const GArray *places)
{
  for (guint i = 0; i < places->len; i++)
    {
      const HcBirdPlace *place = &g_array_index (places, HcBirdPlace, i);

      cairo_save (ink->cr);
      cairo_translate (ink->cr, place->at.x_mm, place->at.y_mm);
      cairo_rotate (ink->cr, place->heading_deg * G_PI / 180);
      hc_draw_bird (ink, &place->look);
      cairo_restore (ink->cr);
    }
}

/**
 * hc_draw_floor:
 * @ink: the ink, in the plan's space
 * @plan: a plan
 * @check: (nullable): the plan judged; without it there are no birds and marks
 * @parts: what to draw besides house and fittings
 *
 * Draws the layout being worked on, from above.
 */
void
hc_draw_floor (const HcInk *ink, const HcPlan *plan, const HcCheck *check, HcFloorParts parts)
{
  HcLayout *layout = hc_plan_get_layout (plan);
  HcUnits units = (HcUnits) hc_plan_get_site (plan)->units;
  g_autoptr (GPtrArray) fittings = list_fittings (layout);
  g_autoptr (GArray) birds = check && parts & HC_FLOOR_BIRDS ? hc_bird_places (check) : NULL;

  draw_pen_floors (ink, layout);
  draw_standing (ink, fittings);
  draw_loose (ink, layout);
  if (birds != NULL)
    hc_draw_bird_places (ink, birds);
  draw_hanging (ink, fittings);
  hc_draw_walls (ink, layout);
  hc_draw_openings (ink, layout);
  if (parts & HC_FLOOR_DIMENSIONS)
    hc_draw_dimensions (ink, layout, units);
  if (parts & HC_FLOOR_NAMES)
    hc_draw_pen_names (ink, layout, units, birds);
  if (check != NULL && parts & HC_FLOOR_MARKS)
    {
      hc_draw_open_lines (ink, check);
      hc_draw_marks (ink, layout, check);
    }
}
