/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Sills, inward doors and nest floors that deep bedding comes up to. */
#include "config.h"

#include "supply/bedding-limits.h"

static void
add_limit (GArray *limits, HcBeddingLimitKind kind, double height_mm, const char *id)
{
  HcBeddingLimit limit = { kind, height_mm, id };

  g_array_append_val (limits, limit);
}

/* Windows and vents are shut, or above what anybody strews; before a door without
 * a sill the floor is swept clear. */
static void
add_opening (GArray *limits, const HcOpening *opening)
{
  const HcOpeningValues *values = hc_opening_get (opening);
  gboolean opens_inwards
      = values->kind == HC_OPENING_KEEPER_DOOR && values->swing == HC_SWING_IN;

  if (values->kind == HC_OPENING_WINDOW || values->kind == HC_OPENING_VENT
      || values->sill_mm <= 0)
    return;
  add_limit (limits, opens_inwards ? HC_BEDDING_STOPS_DOOR : HC_BEDDING_SPILLS, values->sill_mm,
             hc_opening_get_id (opening));
}

static int
compare_heights (gconstpointer a, gconstpointer b)
{
  double one = ((const HcBeddingLimit *) a)->height_mm;
  double other = ((const HcBeddingLimit *) b)->height_mm;

  return (one > other) - (one < other);
}

/**
 * hc_room_find_bedding_limits: (skip)
 * @room: a room
 *
 * Returns: (transfer full) (element-type HcBeddingLimit): what bedding comes up
 *   to, lowest first
 */
GArray *
hc_room_find_bedding_limits (const HcRoom *room)
{
  HcParts *openings = hc_room_get_openings (room);
  HcParts *fittings = hc_room_get (room)->fittings;
  GArray *limits = g_array_new (FALSE, FALSE, sizeof (HcBeddingLimit));

  for (guint i = 0; i < openings->len; i++)
    add_opening (limits, openings->pdata[i]);
  for (guint i = 0; i < fittings->len; i++)
    if (hc_fitting_get (fittings->pdata[i])->kind == HC_FITTING_NEST_BOXES)
      add_limit (limits, HC_BEDDING_INTO_NESTS, hc_fitting_get (fittings->pdata[i])->base_mm,
                 hc_fitting_get_id (fittings->pdata[i]));
  g_array_sort (limits, compare_heights);
  return limits;
}
