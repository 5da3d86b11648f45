/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Looks for what keeps the walls of a pen from going round a floor. */
#include "config.h"

#include "base/ring.h"
#include "plan/fault-private.h"

/* Every edge is compared with every other. */
#define MOST_WALLS 500

static const char *
other_end (const HcWallValues *wall,
           const char *end)
{
  if (g_strcmp0 (wall->from, end) == 0)
    return wall->to;
  return g_strcmp0 (wall->to, end) == 0 ? wall->from : NULL;
}

static const HcWallValues *
wall_of (const HcPenValues *pen,
         GHashTable *parts,
         guint index)
{
  return hc_wall_get (hc_named_part (parts, pen->walls[index], &hc_wall_class));
}

/* The end of the first wall that the second wall does not touch. */
static const char *
first_corner (const HcPenValues *pen,
              GHashTable *parts)
{
  const HcWallValues *first = wall_of (pen, parts, 0);

  return other_end (wall_of (pen, parts, 1), first->to) != NULL ? first->from : first->to;
}

static gboolean
walk_round (const HcPenValues *pen,
            GHashTable *parts,
            GArray *corners)
{
  const char *start = first_corner (pen, parts);
  const char *at = start;

  for (guint i = 0; pen->walls[i] != NULL && at != NULL; i++)
    {
      const HcCornerValues *corner
          = hc_corner_get (hc_named_part (parts, at, &hc_corner_class));
      HcPoint point = hc_point (corner->x_mm, corner->y_mm);

      g_array_append_val (corners, point);
      at = other_end (wall_of (pen, parts, i), at);
    }
  return g_strcmp0 (at, start) == 0;
}

static HcFaultKind
fault_of_ring (GArray *corners)
{
  switch (hc_ring_find_fault ((const HcPoint *) corners->data, corners->len, NULL, NULL))
    {
    case HC_RING_SOUND:
      return HC_FAULT_NONE;
    case HC_RING_NO_AREA:
      return HC_FAULT_NO_FLOOR;
    case HC_RING_TOO_FEW_CORNERS:
      return HC_FAULT_NO_RING;
    default:
      return HC_FAULT_CROSSING;
    }
}

static HcFaultKind
find_kind (const HcPenValues *pen,
           GHashTable *parts)
{
  g_autoptr (GArray) corners = g_array_new (FALSE, FALSE, sizeof (HcPoint));
  guint n_walls = g_strv_length (pen->walls);

  if (n_walls > MOST_WALLS)
    return HC_FAULT_TOO_MANY;
  if (n_walls < 3 || !walk_round (pen, parts, corners))
    return HC_FAULT_NO_RING;
  return fault_of_ring (corners);
}

/**
 * hc_pen_find_ring_fault: (skip)
 * @pen: a pen whose walls and their corners all exist
 * @parts: (element-type utf8 HcPart): the parts of the layout by id
 * @fault: (out caller-allocates): filled when something is wrong
 *
 * Returns: whether the walls do not go round a floor
 */
gboolean
hc_pen_find_ring_fault (const HcPen *pen,
                        GHashTable *parts,
                        HcFault *fault)
{
  HcFaultKind kind = find_kind (hc_pen_get (pen), parts);

  return kind != HC_FAULT_NONE
         && hc_fault_set (fault, kind, "walls", hc_pen_get_id (pen), NULL);
}
