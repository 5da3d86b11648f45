/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Finds each opening's place again after its wall was moved, split or joined. */
#include "config.h"

#include "plan/openings-follow.h"

#include "plan/wall-places.h"

#include <glib/gi18n-lib.h>
#include <math.h>

static double
distance_to_wall (const HcLayout *layout, const char *wall, HcPoint at, double *along_mm)
{
  HcPoint from, to;

  if (!hc_layout_get_wall_line (layout, hc_layout_get_wall (layout, wall), &from, &to))
    return INFINITY;
  *along_mm = hc_point_along (at, from, to) * hc_point_distance (from, to);
  return hc_point_distance_to_line (at, from, to);
}

/* The same place, said by the nearest of the walls @into. */
static HcOpening *
said_anew (const HcLayout *before, const HcLayout *after, HcOpening *opening,
           const char *const *into)
{
  HcOpeningValues values = *hc_opening_get (opening);
  HcPoint at = hc_layout_get_place_in_wall (before, values.wall, values.along_mm);
  double nearest = INFINITY;

  for (guint i = 0; into[i] != NULL; i++)
    {
      double along_mm = 0;
      double distance = distance_to_wall (after, into[i], at, &along_mm);

      if (distance >= nearest)
        continue;
      nearest = distance;
      values.wall = (char *) into[i];
      values.along_mm = along_mm;
    }
  return hc_opening_with (opening, &values);
}

/* Where its own wall has no room, another of @into may. */
static HcOpening *
settled (const HcLayout *layout, HcOpening *opening, const char *const *into)
{
  HcOpeningValues values = *hc_opening_get (opening);
  const char *id = hc_opening_get_id (opening);

  if (hc_layout_find_place_in_wall (layout, id, &values, &values.along_mm))
    return hc_opening_with (opening, &values);
  for (guint i = 0; into[i] != NULL; i++)
    {
      values.wall = (char *) into[i];
      if (hc_layout_find_place_in_wall (layout, id, &values, &values.along_mm))
        return hc_opening_with (opening, &values);
    }
  return NULL;
}

static HcLayout *
put (HcLayout *layout, HcOpening *opening)
{
  g_auto (HcLayoutValues) values = hc_edit_hold_layout (layout);

  hc_edit_put (&values.openings, opening);
  return hc_layout_with (layout, &values);
}

static gboolean
is_in_one_of (HcOpening *opening, const char *const *walls)
{
  return g_strv_contains (walls, hc_opening_get (opening)->wall);
}

/* All are said anew before any is settled: else one would make room for
 * another that is no longer there. */
static HcLayout *
say_all_anew (const HcLayout *before, HcLayout *after, const char *const *walls,
              const char *const *into)
{
  HcParts *openings = hc_layout_get (before)->openings;
  HcLayout *layout = hc_layout_ref (after);

  for (guint i = 0; i < openings->len; i++)
    if (is_in_one_of (openings->pdata[i], walls))
      {
        g_autoptr (HcOpening) said = said_anew (before, after, openings->pdata[i], into);
        g_autoptr (HcLayout) last = layout;

        layout = put (last, said);
      }
  return layout;
}

/**
 * hc_openings_follow: (skip)
 * @before: the layout before its walls changed
 * @after: the layout after, its openings still as before
 * @walls: (array zero-terminated=1): ids of walls that changed
 * @into: (array zero-terminated=1): ids of the walls that took their place
 * @error: set when an opening has no room left
 *
 * Every opening keeps its place on the floor as nearly as the new walls let it.
 *
 * Returns: (transfer full): @after with its openings in place, or %NULL
 */
HcLayout *
hc_openings_follow (const HcLayout *before, HcLayout *after, const char *const *walls,
                    const char *const *into, GError **error)
{
  g_autoptr (HcLayout) layout = say_all_anew (before, after, walls, into);
  HcParts *openings = hc_layout_get (before)->openings;

  for (guint i = 0; i < openings->len; i++)
    {
      g_autoptr (HcOpening) there = NULL;
      g_autoptr (HcLayout) last = NULL;

      if (!is_in_one_of (openings->pdata[i], walls))
        continue;
      last = g_steal_pointer (&layout);
      there = settled (last, hc_layout_get_opening (last, hc_opening_get_id (openings->pdata[i])),
                       into);
      if (there == NULL)
        return hc_edit_refuse (error, _("A door, window or vent there would have no room left. "
                                        "Move it to another wall first."));
      layout = put (last, there);
    }
  return g_steal_pointer (&layout);
}

/**
 * hc_openings_follow_wall: (skip)
 * @before: the layout before a wall moved
 * @after: the layout after
 * @wall: id of the wall
 * @error: set when an opening has no room left
 *
 * Returns: (transfer full): @after with the wall's openings in place, or %NULL
 */
HcLayout *
hc_openings_follow_wall (const HcLayout *before, HcLayout *after, const char *wall,
                         GError **error)
{
  const char *const walls[] = { wall, NULL };

  return hc_openings_follow (before, after, walls, walls, error);
}
