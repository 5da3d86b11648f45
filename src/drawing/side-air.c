/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The air of a night on a house seen from the side: its way through vents, what sweats
 * or freezes, and where the roost is. */
#include "config.h"

#include "drawing/side-air.h"

#include "drawing/side-scene.h"
#include "drawing/side-wall.h"
#include "drawing/text.h"

#include <glib/gi18n-lib.h>
#include <math.h>

/* The widest arrow, and how long arrows are, in the house. */
#define WIDEST_MM 190.0
#define THINNEST_MM 24.0
#define ARROW_MM 620.0
#define HEAD_MM 190.0

/* Less than this share of the largest flow is no arrow. */
#define LEAST_SHARE 0.02

/* Figures of vents beside each other stand below one another. */
#define LABEL_MM 120.0

#define HATCH_MM 110.0
#define BAND_MM 190.0

/* Room beside the space for arrows. */
#define AROUND_MM 700.0

#define KG_S_M3_H (3600 / 1.3)

typedef struct
{
  const HcInk *ink;
  const HcHouseNight *night;
  const GArray *items;
  guint space;
  double most_kg_s;
  guint n_told;
} Picture;

/* Whether a fitting stands in the space, or its wall or opening is one of the space's. */
static gboolean
is_of_space (const HcHouseNight *night, const char *id, guint space)
{
  const HcLayout *layout = hc_plan_get_layout (night->plan);
  const HcOpening *opening = hc_layout_get_opening (layout, id);
  const char *wall = opening != NULL ? hc_opening_get (opening)->wall : id;
  HcPen *beside[2];
  HcPen *inside = NULL;
  guint n = hc_layout_get_pens_beside (layout, wall, beside);
  guint other;

  if (hc_layout_get_fitting (layout, id, &inside) != NULL && inside != NULL)
    return hc_house_night_find_space (night, hc_pen_get_id (inside), &other) && other == space;
  for (guint i = 0; i < n; i++)
    if (hc_house_night_find_space (night, hc_pen_get_id (beside[i]), &other) && other == space)
      return TRUE;
  return FALSE;
}

static HcAirFlow
flow_of (const HcHouseNight *night, const char *id)
{
  HcAirFlow flow = { 0 };

  for (guint i = 0; i < night->air->ways->len; i++)
    if (g_strcmp0 (hc_house_air_get_way (night->air, i)->id, id) == 0)
      flow = hc_air_state_get_flow (&night->night.state, &night->air->air,
                                    &night->air->air.paths[i]);
  return flow;
}

static double
find_most_kg_s (const HcHouseNight *night)
{
  double most = 0;

  for (guint i = 0; i < night->air->paths->len; i++)
    {
      HcAirFlow flow = hc_air_state_get_flow (&night->night.state, &night->air->air,
                                              &night->air->air.paths[i]);

      if (*hc_house_air_get_way (night->air, i)->id != '\0')
        most = MAX (most, MAX (flow.in_kg_s, flow.out_kg_s));
    }
  return most;
}

/* Arrows from @tail to @tip, as wide as the flow. */
static void
draw_arrow (const HcInk *ink, HcPoint tail, HcPoint tip, double width, HcPaint paint)
{
  HcPoint way = hc_point_unit (hc_point_subtract (tip, tail));
  HcPoint aside = hc_point (-way.y_mm, way.x_mm);
  HcPoint neck = hc_point_subtract (tip, hc_point_scale (way, HEAD_MM));
  double head = width / 2 + 70;
  const HcPoint outline[] = {
    hc_point_add (tail, hc_point_scale (aside, width / 2)),
    hc_point_add (neck, hc_point_scale (aside, width / 2)),
    hc_point_add (neck, hc_point_scale (aside, head)),
    tip,
    hc_point_subtract (neck, hc_point_scale (aside, head)),
    hc_point_subtract (neck, hc_point_scale (aside, width / 2)),
    hc_point_subtract (tail, hc_point_scale (aside, width / 2)),
  };

  cairo_new_path (ink->cr);
  hc_ink_ring (ink, outline, G_N_ELEMENTS (outline));
  hc_ink_wash (ink, paint, 0.85);
  cairo_new_path (ink->cr);
  hc_ink_ring (ink, outline, G_N_ELEMENTS (outline));
  hc_ink_stroke (ink, HC_LINE_FINE, HC_PAINT_INK);
}

/* Air that comes in is cold and sinks; what goes out has risen. */
static void
draw_flow (Picture *picture, HcPoint at, double inward, double kg_s, gboolean comes_in)
{
  double share = kg_s / picture->most_kg_s;
  HcPoint inner = hc_point (at.x_mm + inward * ARROW_MM * 0.7, at.y_mm + ARROW_MM * 0.5);
  HcPoint outer = hc_point (at.x_mm - inward * ARROW_MM * 0.35, at.y_mm - ARROW_MM * 0.25);
  g_autofree char *amount = NULL;

  if (share < LEAST_SHARE)
    return;
  draw_arrow (picture->ink, comes_in ? outer : inner, comes_in ? inner : outer,
              MAX (WIDEST_MM * share, THINNEST_MM),
              comes_in ? HC_PAINT_WATER_DEEP : HC_PAINT_WARMTH);
  /* Translators: how much air comes in or goes out through a vent. */
  amount = g_strdup_printf (comes_in ? _("in %.0f m³/h") : _("out %.0f m³/h"),
                            kg_s * KG_S_M3_H);
  hc_draw_text (picture->ink, HC_HAND_SMALL, amount, inner.x_mm,
                inner.y_mm + 40 + LABEL_MM * (picture->n_told++ % 3), inward > 0 ? 0 : 1, 0, 0, HC_PAINT_INK);
}

static double
find_middle_mm (const GArray *items)
{
  double least = G_MAXDOUBLE, most = -G_MAXDOUBLE;

  for (guint i = 0; i < items->len; i++)
    {
      HcBox box = hc_side_item_get_box (&g_array_index (items, HcSectionItem, i));

      least = MIN (least, box.x_mm);
      most = MAX (most, box.x_mm + box.width_mm);
    }
  return (least + most) / 2;
}

static void
draw_opening (Picture *picture, const HcSectionItem *item, double middle_mm)
{
  HcAirFlow flow = flow_of (picture->night, item->id);
  HcPoint at = hc_box_centre (hc_side_item_get_box (item));
  double inward = at.x_mm < middle_mm ? 1 : -1;

  draw_flow (picture, at, inward, flow.out_kg_s, FALSE);
  draw_flow (picture, at, inward, flow.in_kg_s, TRUE);
}

/* A roof is seen from its edge: the band under it. */
static void
trace_surface (const HcInk *ink, const HcSectionItem *item)
{
  const HcPoint *points = (const HcPoint *) (gpointer) item->outline->data;
  guint n = item->outline->len;

  cairo_new_path (ink->cr);
  for (guint i = 0; i < n; i++)
    cairo_line_to (ink->cr, points[i].x_mm, -points[i].y_mm);
  for (guint i = n; item->kind == HC_SECTION_ROOF && i > 0; i--)
    cairo_line_to (ink->cr, points[i - 1].x_mm, -points[i - 1].y_mm + BAND_MM);
  cairo_close_path (ink->cr);
}

static void
hatch (const HcInk *ink, const HcSectionItem *item, HcPaint paint)
{
  HcBox box = hc_side_item_get_box (item);
  double bottom = box.y_mm + box.depth_mm + BAND_MM;
  double high = box.depth_mm + BAND_MM;

  cairo_save (ink->cr);
  trace_surface (ink, item);
  cairo_clip (ink->cr);
  for (double x = box.x_mm - high; x < box.x_mm + box.width_mm; x += HATCH_MM)
    {
      cairo_new_path (ink->cr);
      hc_ink_line (ink, x, bottom, x + high, box.y_mm);
      hc_ink_stroke (ink, HC_LINE_FINE, paint);
    }
  cairo_restore (ink->cr);
}

/* Which surface of the night a wall or roof is, wet or not; -1 for none. */
static int
find_wet_surface (const HcHouseNight *night, const char *part)
{
  for (guint i = 0; i < night->air->surfaces->len; i++)
    if (g_strcmp0 (night->air->parts->pdata[i], part) == 0
        && hc_night_is_sweating (&night->night, night->air, i))
      return (int) i;
  return -1;
}

static void
draw_surface (const Picture *picture, const HcSectionItem *item)
{
  const HcInk *ink = picture->ink;
  const HcHouseAir *air = picture->night->air;
  int surface = find_wet_surface (picture->night, item->id);
  HcPoint middle = hc_box_centre (hc_side_item_get_box (item));
  gboolean freezes;

  if (surface < 0)
    return;
  freezes = hc_air_state_get_surface_c (&picture->night->night.state, &air->air,
                                        &air->air.surfaces[surface])
            < 0;
  trace_surface (ink, item);
  hc_ink_wash (ink, freezes ? HC_PAINT_GLASS : HC_PAINT_WATER, 0.4);
  hatch (ink, item, HC_PAINT_WATER_DEEP);
  hc_draw_text (ink, HC_HAND_STRONG, freezes ? _("frost") : _("sweats"), middle.x_mm,
                middle.y_mm + (item->kind == HC_SECTION_ROOF ? BAND_MM : 0), 0.5, 0.5, 0,
                HC_PAINT_INK);
}

/* Where birds sleep: what the figures are about. */
static void
draw_roost (const Picture *picture)
{
  HcBox all = hc_box_empty ();

  for (guint i = 0; i < picture->items->len; i++)
    {
      const HcSectionItem *item = &g_array_index (picture->items, HcSectionItem, i);
      HcBox box = hc_side_item_get_box (item);

      if (item->kind != HC_SECTION_BAR
          || !is_of_space (picture->night, item->id, picture->space))
        continue;
      all = hc_box_join (all, box);
    }
  if (hc_box_is_empty (all))
    return;
  cairo_new_path (picture->ink->cr);
  hc_ink_rounded (picture->ink, all.x_mm - 120, all.y_mm - 420, all.width_mm + 240,
                  all.depth_mm + 520, 120);
  hc_ink_stroke (picture->ink, HC_LINE_MEDIUM, HC_PAINT_CAUTION);
  hc_draw_text (picture->ink, HC_HAND_STRONG, _("roost"), all.x_mm - 100, all.y_mm - 440, 0, 1,
                0, HC_PAINT_INK);
}

/**
 * hc_draw_side_air: (skip)
 * @ink: the ink, x along the cut, y down from the floor
 * @night: a night of the house
 * @cut: where it is cut
 * @space: the space that is looked at
 *
 * Draws over the house: arrows as wide as the air that goes through each opening, walls
 * and roofs that sweat or freeze, tinted, hatched and named, and where the roost is.
 */
void
hc_draw_side_air (const HcInk *ink, const HcHouseNight *night, const HcSideCut *cut,
                  guint space)
{
  g_autoptr (GArray) items = hc_side_cut_look (cut, night->ask.house);
  Picture picture = { ink, night, items, space, 0, 0 };
  double middle_mm = find_middle_mm (items);

  if (night->air == NULL)
    return;
  picture.most_kg_s = MAX (find_most_kg_s (night), 1e-9);
  for (guint i = 0; i < items->len; i++)
    {
      const HcSectionItem *item = &g_array_index (items, HcSectionItem, i);

      if (item->kind == HC_SECTION_WALL || item->kind == HC_SECTION_ROOF)
        draw_surface (&picture, item);
    }
  draw_roost (&picture);
  for (guint i = 0; i < items->len; i++)
    if (g_array_index (items, HcSectionItem, i).kind == HC_SECTION_OPENING)
      draw_opening (&picture, &g_array_index (items, HcSectionItem, i), middle_mm);
}

static gboolean
is_vent (const HcHouseNight *night, const char *id)
{
  const HcOpening *opening = hc_layout_get_opening (hc_plan_get_layout (night->plan), id);

  return opening != NULL
         && (hc_opening_get (opening)->kind == HC_OPENING_VENT
             || hc_opening_get (opening)->kind == HC_OPENING_WINDOW);
}

/* Bars and vents are what the picture is for. */
static guint
get_worth (const HcHouseNight *night, guint space, const HcSideCut *cut)
{
  g_autoptr (GArray) items = hc_side_cut_look (cut, night->ask.house);
  guint worth = 0;

  for (guint i = 0; i < items->len; i++)
    {
      const HcSectionItem *item = &g_array_index (items, HcSectionItem, i);

      if ((item->kind == HC_SECTION_BAR
           || (item->kind == HC_SECTION_OPENING && is_vent (night, item->id)))
          && is_of_space (night, item->id, space))
        worth++;
    }
  return worth;
}

/**
 * hc_side_air_find_cut: (skip)
 * @night: a night of a house
 * @space: the space that is looked at
 * @cut: (out): the cut that shows most of its bars and vents
 *
 * Returns: whether the house has a wall to look at
 */
gboolean
hc_side_air_find_cut (const HcHouseNight *night, guint space, HcSideCut *cut)
{
  HcHouse *house = night->ask.house;
  gboolean found = hc_side_cut_find (house, NULL, cut);
  guint most = found ? get_worth (night, space, cut) : 0;

  for (guint i = 0; i < hc_house_get_n_rooms (house); i++)
    for (guint j = 0; j < hc_room_get_n_walls (hc_house_get_room (house, i)); j++)
      {
        const char *wall
            = hc_wall_get_id (hc_room_get_wall (hc_house_get_room (house, i), j)->wall);
        HcSideCut other;
        guint worth;

        if (!is_of_space (night, wall, space) || !hc_side_cut_find (house, wall, &other))
          continue;
        worth = get_worth (night, space, &other);
        if (worth <= most)
          continue;
        most = worth;
        *cut = other;
      }
  return found;
}

/**
 * hc_side_air_get_bounds: (skip)
 * @night: a night of a house
 * @cut: where it is cut
 * @space: the space that is looked at
 *
 * Returns: the box round that space in the drawing, all of the house where there is none
 */
HcBox
hc_side_air_get_bounds (const HcHouseNight *night, const HcSideCut *cut, guint space)
{
  g_autoptr (GArray) items = hc_side_cut_look (cut, night->ask.house);
  HcBox all = hc_side_get_bounds (cut, items);
  HcBox box = hc_box_empty ();

  for (guint i = 0; i < items->len; i++)
    {
      const HcSectionItem *item = &g_array_index (items, HcSectionItem, i);

      if (item->kind == HC_SECTION_WALL && is_of_space (night, item->id, space))
        box = hc_box_join (box, hc_side_item_get_box (item));
    }
  if (hc_box_is_empty (box))
    return all;
  return (HcBox){ box.x_mm - AROUND_MM, all.y_mm, box.width_mm + 2 * AROUND_MM, all.depth_mm };
}
