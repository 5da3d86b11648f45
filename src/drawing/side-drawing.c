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

/* Room for the roof above and the ground below, in the house. */
#define ABOVE_MM 250.0
#define BELOW_MM 600.0
#define LEAST_HIGH_MM 2000.0
#define BAR_MM 2000.0
#define BAR_BELOW_MM 280.0
#define PERSON_FROM_END_MM 420.0

/**
 * hc_side_get_bounds: (skip)
 * @house: a house
 * @cut: the cut
 *
 * Returns: the box round the drawing without its heights, y running down from the floor
 */
HcBox
hc_side_get_bounds (const HcHouse *house, const HcSideCut *cut)
{
  g_autoptr (GArray) items = hc_side_cut_look (cut, house);
  double highest_mm = LEAST_HIGH_MM;

  for (guint i = 0; i < items->len; i++)
    highest_mm = MAX (highest_mm,
                      -hc_side_item_get_box (&g_array_index (items, HcSectionItem, i)).y_mm);
  return (HcBox){ 0, -highest_mm - ABOVE_MM, hc_point_distance (cut->from, cut->to),
                  highest_mm + ABOVE_MM + BELOW_MM };
}

/* A wall between two pens is seen from both; it is as high as the higher makes it. */
static gboolean
is_lower_part (const GArray *items, const HcSectionItem *item)
{
  double top_mm = hc_side_item_get_box (item).y_mm;

  for (guint i = 0; item->kind == HC_SECTION_WALL && i < items->len; i++)
    {
      const HcSectionItem *other = &g_array_index (items, HcSectionItem, i);

      if (other->kind == HC_SECTION_WALL && other->id == item->id
          && hc_side_item_get_box (other).y_mm < top_mm)
        return TRUE;
    }
  return FALSE;
}

/* The roofs lie over all else, and come last. */
static void
draw_item (const HcInk *ink, const HcLayout *layout, const HcSideCut *cut,
           const HcSectionItem *item)
{
  switch (item->kind)
    {
    case HC_SECTION_WALL:
      hc_draw_side_wall (ink, layout, item);
      break;
    case HC_SECTION_OPENING:
      hc_draw_side_opening (ink, layout, item);
      break;
    case HC_SECTION_FITTING:
      hc_draw_side_fitting (ink, layout, cut, item);
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
draw_birds_beyond (const HcInk *ink, const HcSideCut *cut, const GArray *birds, guint *next,
                   double depth_mm)
{
  for (; *next < birds->len; (*next)++)
    {
      const HcSideBird *bird = &g_array_index (birds, HcSideBird, *next);

      if (bird->depth_mm <= depth_mm)
        return;
      hc_draw_side_bird (ink, cut, bird);
    }
}

static void
draw_items (const HcInk *ink, const HcCheck *check, const HcSideCut *cut, const GArray *items)
{
  const HcHouse *house = hc_check_get_house (check);
  HcLayout *layout = hc_house_get_layout (house);
  g_autoptr (GArray) places = hc_bird_places (check);
  g_autoptr (GArray) birds = hc_side_birds_find (house, cut, places);
  guint next = 0;

  for (guint i = 0; i < items->len; i++)
    {
      const HcSectionItem *item = &g_array_index (items, HcSectionItem, i);

      draw_birds_beyond (ink, cut, birds, &next, item->depth_mm);
      if (!is_lower_part (items, item))
        draw_item (ink, layout, cut, item);
    }
  draw_birds_beyond (ink, cut, birds, &next, -1);
  hc_draw_side_roofs (ink, layout, items);
}

/**
 * hc_draw_side: (skip)
 * @ink: the ink, x along the cut, y down from the floor
 * @check: a plan judged
 * @cut: where it is cut
 *
 * Draws the house from the side, with its heights, its birds, a person and a
 * scale bar.
 */
void
hc_draw_side (const HcInk *ink, const HcCheck *check, const HcSideCut *cut)
{
  const HcHouse *house = hc_check_get_house (check);
  HcUnits units = (HcUnits) hc_plan_get_site (hc_check_get_plan (check))->units;
  g_autoptr (GArray) items = hc_side_cut_look (cut, house);
  double length_mm = hc_point_distance (cut->from, cut->to);

  draw_items (ink, check, cut, items);
  hc_draw_side_ground (ink, house, cut);
  hc_draw_person (ink, length_mm - PERSON_FROM_END_MM);
  hc_draw_side_heights (ink, items, units);
  hc_draw_scale_bar (ink, length_mm - BAR_MM, BAR_BELOW_MM, BAR_MM, units);
}
