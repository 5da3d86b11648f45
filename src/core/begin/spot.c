/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A free spot for a thing in a pen. */
#include "config.h"

#include "begin/spot.h"

#include "base/box.h"
#include "begin/house-figure.h"

#include <math.h>

/* Spots tried lie this far apart. */
#define STEP_MM 50.0
#define MOST_STEPS 60
#define SLACK_MM 5.0
#define N_CORNERS 4

typedef struct
{
  const HcLayout *layout;
  const HcPen *pen;
  const HcSpotWish *wish;
  HcBox inside;
  double between_mm;
  double before_mm;
  gboolean is_small;
  double nearest_mm[N_CORNERS];
} Search;

static HcBox
box_of (const HcFittingValues *thing)
{
  gboolean sideways = ((int) (thing->turn_deg / 90 + 0.5)) % 2 == 1;
  double width_mm = sideways ? thing->depth_mm : thing->width_mm;
  double depth_mm = sideways ? thing->width_mm : thing->depth_mm;

  return (HcBox){ thing->x_mm - width_mm / 2, thing->y_mm - depth_mm / 2, width_mm, depth_mm };
}

static gboolean
boxes_overlap (HcBox a, HcBox b)
{
  return a.x_mm < b.x_mm + b.width_mm && b.x_mm < a.x_mm + a.width_mm
         && a.y_mm < b.y_mm + b.depth_mm && b.y_mm < a.y_mm + a.depth_mm;
}

/* The floor in front of an opening birds or keepers go through stays free. */
static HcBox
box_before (const HcLayout *layout, const HcOpeningValues *opening, double before_mm)
{
  double reach_mm
      = opening->swing == HC_SWING_IN ? MAX (opening->width_mm, before_mm) : before_mm;
  HcWall *wall = hc_layout_get_wall (layout, opening->wall);
  HcPoint from, to, way, at;

  if (wall == NULL || !hc_layout_get_wall_line (layout, wall, &from, &to))
    return hc_box_empty ();
  way = hc_point_unit (hc_point_subtract (to, from));
  at = hc_point_add (from, hc_point_scale (way, opening->along_mm));
  return (HcBox){ at.x_mm - ABS (way.x_mm) * opening->width_mm / 2 - ABS (way.y_mm) * reach_mm,
                  at.y_mm - ABS (way.y_mm) * opening->width_mm / 2 - ABS (way.x_mm) * reach_mm,
                  ABS (way.x_mm) * opening->width_mm + 2 * ABS (way.y_mm) * reach_mm,
                  ABS (way.y_mm) * opening->width_mm + 2 * ABS (way.x_mm) * reach_mm };
}

static gboolean
hangs_above (const HcFittingValues *other, const HcFittingValues *thing)
{
  return other->kind == HC_FITTING_NEST_BOXES
         && other->base_mm >= thing->base_mm + thing->height_mm;
}

/* Into a small house the keeper leans from the door, over what is before it. */
static gboolean
keeps_floor_free (const Search *search, const HcOpeningValues *opening)
{
  if (opening->kind == HC_OPENING_KEEPER_DOOR)
    return !search->is_small || opening->swing == HC_SWING_IN;
  return opening->kind == HC_OPENING_POP_HOLE;
}

static gboolean
is_clear (const Search *search, const HcFittingValues *thing, HcBox box)
{
  HcParts *fittings = hc_pen_get (search->pen)->fittings;
  HcParts *openings = hc_layout_get (search->layout)->openings;

  for (guint i = 0; i < fittings->len; i++)
    {
      const HcFittingValues *other = hc_fitting_get (fittings->pdata[i]);

      if (!hangs_above (other, thing)
          && boxes_overlap (box, hc_box_grow (box_of (other), search->between_mm)))
        return FALSE;
    }
  for (guint i = 0; i < openings->len; i++)
    {
      const HcOpeningValues *opening = hc_opening_get (openings->pdata[i]);

      if (keeps_floor_free (search, opening)
          && boxes_overlap (box, box_before (search->layout, opening, search->before_mm)))
        return FALSE;
    }
  return TRUE;
}

static gboolean
is_away (const HcPen *pen, const HcSpotWish *wish, HcBox box)
{
  HcParts *fittings = hc_pen_get (pen)->fittings;

  for (guint i = 0; wish->away_from >= 0 && i < fittings->len; i++)
    {
      const HcFittingValues *other = hc_fitting_get (fittings->pdata[i]);

      if (other->kind == wish->away_from
          && hc_box_distance (box, box_of (other)) < wish->away_mm + SLACK_MM)
        return FALSE;
    }
  return TRUE;
}

static gboolean
fits_at (const Search *search, HcFittingValues *thing, double x_mm, double y_mm, double turn_deg)
{
  HcBox box;

  thing->x_mm = x_mm;
  thing->y_mm = y_mm;
  thing->turn_deg = turn_deg;
  box = box_of (thing);
  return box.x_mm >= search->inside.x_mm - 0.001 && box.y_mm >= search->inside.y_mm - 0.001
         && box.x_mm + box.width_mm <= search->inside.x_mm + search->inside.width_mm + 0.001
         && box.y_mm + box.depth_mm <= search->inside.y_mm + search->inside.depth_mm + 0.001
         && is_clear (search, thing, box)
         && is_away (search->pen, search->wish, box);
}

/* Along one wall, its back to it: 0 north, 1 east, 2 south, 3 west. */
static gboolean
try_wall (const Search *search, HcFittingValues *thing, int wall)
{
  const HcBox *in = &search->inside;
  gboolean along_x = wall == 0 || wall == 2;
  double length_mm = along_x ? in->width_mm : in->depth_mm;
  double out_mm = thing->depth_mm / 2;

  for (double at = thing->width_mm / 2; at <= length_mm - thing->width_mm / 2; at += STEP_MM)
    {
      double x = along_x      ? in->x_mm + at
                 : wall == 1 ? in->x_mm + in->width_mm - out_mm
                              : in->x_mm + out_mm;
      double y = !along_x     ? in->y_mm + at
                 : wall == 2 ? in->y_mm + in->depth_mm - out_mm
                              : in->y_mm + out_mm;

      if (fits_at (search, thing, x, y, 90 * wall))
        return TRUE;
    }
  return FALSE;
}

static HcPoint
corner_of (const HcBox *box, guint corner)
{
  return (HcPoint){ box->x_mm + box->width_mm * (corner & 1),
                    box->y_mm + box->depth_mm * (corner >> 1) };
}

/* How far it is from each corner to the nearest of such things there are. */
static void
measure_walks (Search *search, int kind)
{
  HcParts *fittings = hc_pen_get (search->pen)->fittings;

  for (guint corner = 0; corner < N_CORNERS; corner++)
    search->nearest_mm[corner] = G_MAXDOUBLE;
  for (guint i = 0; i < fittings->len; i++)
    {
      const HcFittingValues *other = hc_fitting_get (fittings->pdata[i]);

      for (guint corner = 0; other->kind == kind && corner < N_CORNERS; corner++)
        search->nearest_mm[corner]
            = MIN (search->nearest_mm[corner],
                   hc_point_distance (corner_of (&search->inside, corner),
                                      (HcPoint){ other->x_mm, other->y_mm }));
    }
}

/* The longest walk from a corner to the nearest of such things. */
static double
longest_walk_mm (const Search *search, const HcFittingValues *thing)
{
  double longest_mm = 0;

  for (guint corner = 0; corner < N_CORNERS; corner++)
    {
      double here_mm = hc_point_distance (corner_of (&search->inside, corner),
                                          (HcPoint){ thing->x_mm, thing->y_mm });

      longest_mm = MAX (longest_mm, MIN (here_mm, search->nearest_mm[corner]));
    }
  return longest_mm;
}

/* Keeps the spot it is at when the longest walk is shorter than so far; of
 * spots near enough the first stays, in a corner, where it leaves most room. */
static void
keep_if_nearer (const Search *search, const HcFittingValues *thing, HcFittingValues *best,
                double *shortest_mm)
{
  double walk_mm = MAX (longest_walk_mm (search, thing), search->wish->walk_mm);

  if (walk_mm >= *shortest_mm - 1)
    return;
  *shortest_mm = walk_mm;
  *best = *thing;
}

/* Anywhere on the floor, where the longest walk to such a thing is shortest. */
static gboolean
try_floor (const Search *search, HcFittingValues *thing, double turn_deg)
{
  const HcBox *in = &search->inside;
  double step_mm = MAX (STEP_MM, sqrt (in->width_mm * in->depth_mm) / MOST_STEPS);
  double shortest_mm = G_MAXDOUBLE;
  HcFittingValues best = *thing;
  HcBox box;

  thing->turn_deg = turn_deg;
  box = box_of (thing);
  for (double y = in->y_mm + box.depth_mm / 2 + search->between_mm;
       y < in->y_mm + in->depth_mm - box.depth_mm / 2; y += step_mm)
    for (double x = in->x_mm + box.width_mm / 2 + search->between_mm;
         x < in->x_mm + in->width_mm - box.width_mm / 2; x += step_mm)
      if (fits_at (search, thing, x, y, turn_deg))
        keep_if_nearer (search, thing, &best, &shortest_mm);
  *thing = best;
  return shortest_mm < G_MAXDOUBLE;
}

/**
 * hc_find_spot: (skip)
 * @book: says how far apart things stand
 * @layout: a layout
 * @pen: a pen of it with walls along x and y
 * @wish: where it wants to be
 * @thing: (inout): the thing; its place and turn are set
 *
 * Returns: whether there is a spot for it
 */
gboolean
hc_find_spot (HcBook *book, const HcLayout *layout, const HcPen *pen, const HcSpotWish *wish,
              HcFittingValues *thing)
{
  static const int order[] = { 3, 2, 1, 0 };
  g_autoptr (GArray) ring = hc_layout_get_pen_ring (layout, pen);
  Search search = { layout, pen, wish,
                    hc_box_around ((const HcPoint *) ring->data, ring->len),
                    hc_house_measure (book, "between_things_mm"),
                    hc_house_measure (book, "before_opening_mm"), FALSE, { 0 } };

  search.is_small = hc_house_is_small (book, search.inside);
  measure_walks (&search, thing->kind);
  if (!wish->along_walls)
    return try_floor (&search, thing, 0) || try_floor (&search, thing, 90);
  for (guint i = 0; i < G_N_ELEMENTS (order); i++)
    if (!(wish->not_north && order[i] == 0) && try_wall (&search, thing, order[i]))
      return TRUE;
  return FALSE;
}
