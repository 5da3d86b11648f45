/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The nearest place in a wall where an opening touches no other. */
#include "config.h"

#include "plan/wall-places.h"

#include <math.h>

/* What rounding to 0.001 mm may take from a gap that fits exactly. */
#define SLACK_MM 0.002

/**
 * hc_layout_get_wall_length:
 * @layout: a layout
 * @wall: id of a wall
 *
 * Returns: the length of its line in mm, 0 when it is not in the layout
 */
double
hc_layout_get_wall_length (const HcLayout *layout, const char *wall)
{
  HcWall *found = hc_layout_get_wall (layout, wall);
  HcPoint from, to;

  if (found == NULL || !hc_layout_get_wall_line (layout, found, &from, &to))
    return 0;
  return hc_point_distance (from, to);
}

/**
 * hc_layout_get_place_in_wall:
 * @layout: a layout
 * @wall: id of a wall of it
 * @along_mm: how far along the wall, from its start
 *
 * Returns: that place in the plan
 */
HcPoint
hc_layout_get_place_in_wall (const HcLayout *layout, const char *wall, double along_mm)
{
  HcPoint from = { 0, 0 };
  HcPoint to = { 0, 0 };
  HcWall *found = hc_layout_get_wall (layout, wall);

  if (found == NULL || !hc_layout_get_wall_line (layout, found, &from, &to))
    return from;
  return hc_point_add (from, hc_point_scale (hc_point_unit (hc_point_subtract (to, from)),
                                             along_mm));
}

/* A vent may sit above a pop hole. */
static gboolean
one_above_the_other (const HcOpeningValues *a, const HcOpeningValues *b)
{
  return a->sill_mm + a->height_mm <= b->sill_mm + SLACK_MM
         || b->sill_mm + b->height_mm <= a->sill_mm + SLACK_MM;
}

static gboolean
is_in_the_way (HcOpening *other, const char *opening, const HcOpeningValues *wanted)
{
  const HcOpeningValues *values = hc_opening_get (other);

  return g_strcmp0 (hc_opening_get_id (other), opening) != 0
         && g_strcmp0 (values->wall, wanted->wall) == 0 && !one_above_the_other (values, wanted);
}

static GPtrArray *
find_in_the_way (const HcLayout *layout, const char *opening, const HcOpeningValues *wanted)
{
  HcParts *openings = hc_layout_get (layout)->openings;
  GPtrArray *others = g_ptr_array_new ();

  for (guint i = 0; i < openings->len; i++)
    if (is_in_the_way (openings->pdata[i], opening, wanted))
      g_ptr_array_add (others, openings->pdata[i]);
  return others;
}

static double
apart_mm (HcOpening *other, double width_mm)
{
  return (hc_opening_get (other)->width_mm + width_mm) / 2;
}

static gboolean
is_free (GPtrArray *others, double width_mm, double along_mm)
{
  for (guint i = 0; i < others->len; i++)
    if (fabs (hc_opening_get (others->pdata[i])->along_mm - along_mm) + SLACK_MM
        < apart_mm (others->pdata[i], width_mm))
      return FALSE;
  return TRUE;
}

/* Where it would like to be, and close by each of those in the way. */
static GArray *
places_to_try (GPtrArray *others, double width_mm, double wanted_mm)
{
  GArray *places = g_array_new (FALSE, FALSE, sizeof (double));

  g_array_append_val (places, wanted_mm);
  for (guint i = 0; i < others->len; i++)
    {
      double middle = hc_opening_get (others->pdata[i])->along_mm;
      double apart = apart_mm (others->pdata[i], width_mm);
      double beside[] = { middle - apart, middle + apart };

      g_array_append_vals (places, beside, 2);
    }
  return places;
}

/**
 * hc_layout_find_place_in_wall:
 * @layout: a layout
 * @opening: (nullable): id of the opening that looks for a place
 * @wanted: what it is, in which wall, and where it would like to be
 * @along_mm: (out): the nearest free place to that
 *
 * Returns: whether the wall has room for it
 */
gboolean
hc_layout_find_place_in_wall (const HcLayout *layout, const char *opening,
                              const HcOpeningValues *wanted, double *along_mm)
{
  g_autoptr (GPtrArray) others = find_in_the_way (layout, opening, wanted);
  double least = wanted->width_mm / 2;
  double most = hc_layout_get_wall_length (layout, wanted->wall) - least;
  double start = CLAMP (wanted->along_mm, least, MAX (most, least));
  g_autoptr (GArray) places = places_to_try (others, wanted->width_mm, start);
  double nearest = INFINITY;

  for (guint i = 0; i < places->len; i++)
    {
      double place = g_array_index (places, double, i);

      if (place > least - SLACK_MM && place < most + SLACK_MM
          && fabs (place - start) < fabs (nearest - start)
          && is_free (others, wanted->width_mm, place))
        nearest = place;
    }
  if (!isfinite (nearest))
    return FALSE;
  *along_mm = CLAMP (nearest, least, MAX (most, least));
  return TRUE;
}

/**
 * hc_layout_find_nearest_wall:
 * @layout: a layout
 * @at: a place on the floor
 * @along_mm: (out): how far along the wall, from its start, @at lies
 *
 * Returns: (nullable) (transfer none): the wall nearest to @at
 */
HcWall *
hc_layout_find_nearest_wall (const HcLayout *layout, HcPoint at, double *along_mm)
{
  HcParts *walls = hc_layout_get (layout)->walls;
  double nearest_mm = G_MAXDOUBLE;
  HcWall *nearest = NULL;

  for (guint i = 0; i < walls->len; i++)
    {
      HcPoint from, to;
      double distance_mm;

      if (!hc_layout_get_wall_line (layout, walls->pdata[i], &from, &to))
        continue;
      distance_mm = hc_point_distance_to_line (at, from, to);
      if (distance_mm >= nearest_mm)
        continue;
      nearest_mm = distance_mm;
      nearest = walls->pdata[i];
      *along_mm = hc_point_along (at, from, to) * hc_point_distance (from, to);
    }
  return nearest;
}
