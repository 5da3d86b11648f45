/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Paints what is seen from a cut, farthest first, with the birds between. */
#include "config.h"

#include "side-drawing.h"

#include "drawing/scale-bar.h"
#include "drawing/side-bird.h"
#include "drawing/side-fitting.h"
#include "drawing/side-ground.h"
#include "drawing/side-heights.h"
#include "drawing/side-roof.h"
#include "drawing/side-wall.h"

#define BAR_MM 2000.0
#define BAR_BELOW_MM 280.0

/* The roofs lie over all else, and come last. */
static void
draw_item (const HcInk *ink, const HcSideScene *scene, const HcSectionItem *item)
{
  HcLayout *layout = hc_house_get_layout (scene->house);

  switch (item->kind)
    {
    case HC_SECTION_WALL:
      hc_draw_side_wall (ink, layout, item);
      break;
    case HC_SECTION_OPENING:
      hc_draw_side_opening (ink, layout, item);
      break;
    case HC_SECTION_FITTING:
      hc_draw_side_fitting (ink, layout, &scene->cut, item);
      break;
    case HC_SECTION_BAR:
      hc_draw_side_bar (ink, item);
      break;
    case HC_SECTION_ROOF:
      break;
    }
}

/* Draws the birds that are farther than @depth_mm; the first left is *@next. */
static void
draw_birds_beyond (const HcInk *ink, const HcSideScene *scene, const GArray *birds, guint *next,
                   double depth_mm)
{
  for (; *next < birds->len; (*next)++)
    {
      const HcSideBird *bird = &g_array_index (birds, HcSideBird, *next);

      if (bird->depth_mm <= depth_mm)
        return;
      if (!hc_side_scene_hides (scene, bird->at, bird->depth_mm))
        hc_draw_side_bird (ink, &scene->cut, bird);
    }
}

/**
 * hc_draw_side_house: (skip)
 * @ink: the ink, x along the cut, y down from the floor
 * @scene: what is seen
 * @places: (element-type HcBirdPlace): the birds in the plan
 *
 * Draws the house with what is in it, and the ground.
 */
void
hc_draw_side_house (const HcInk *ink, const HcSideScene *scene, const GArray *places)
{
  g_autoptr (GArray) birds = hc_side_birds_find (scene->house, &scene->cut, places);
  HcBox bounds = hc_side_scene_get_bounds (scene);
  guint next = 0;

  cairo_save (ink->cr);
  hc_ink_rectangle (ink, bounds.x_mm, bounds.y_mm, bounds.width_mm, bounds.depth_mm);
  cairo_clip (ink->cr);
  for (guint i = 0; i < scene->items->len; i++)
    {
      const HcSectionItem *item = hc_side_scene_get_item (scene, i);

      draw_birds_beyond (ink, scene, birds, &next, item->depth_mm);
      if (hc_side_scene_shows (scene, i))
        draw_item (ink, scene, item);
    }
  draw_birds_beyond (ink, scene, birds, &next, -1);
  hc_draw_side_roofs (ink, scene);
  hc_draw_side_ground (ink, scene);
  cairo_restore (ink->cr);
}

/**
 * hc_draw_side_measures: (skip)
 * @ink: the ink, x along the cut, y down from the floor
 * @scene: what is seen
 * @units: the keeper's units
 *
 * Draws the heights beside the house, and a person to judge them by.
 */
void
hc_draw_side_measures (const HcInk *ink, const HcSideScene *scene, HcUnits units)
{
  hc_draw_person (ink, scene);
  hc_draw_side_heights (ink, scene, units);
}

/**
 * hc_draw_side: (skip)
 * @ink: the ink, x along the cut, y down from the floor
 * @check: a plan judged
 * @scene: what is seen of its house
 *
 * Draws the house from the side, with its heights, its birds, a person and a
 * scale bar.
 */
void
hc_draw_side (const HcInk *ink, const HcCheck *check, const HcSideScene *scene)
{
  HcUnits units = (HcUnits) hc_plan_get_site (hc_check_get_plan (check))->units;
  g_autoptr (GArray) places = hc_bird_places (check);
  double length_mm = hc_point_distance (scene->cut.from, scene->cut.to);

  hc_draw_side_house (ink, scene, places);
  hc_draw_side_measures (ink, scene, units);
  hc_draw_scale_bar (ink, length_mm - BAR_MM, BAR_BELOW_MM, BAR_MM, units);
}
