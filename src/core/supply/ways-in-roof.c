/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * From above: an open sky, or netting that does not hold. */
#include "config.h"

#include "supply/ways-in-private.h"

/* On the roof is whoever flies, climbs, or jumps the lowest wall to the outside. */
static gboolean
gets_on_roof (const HcProwl *prowl)
{
  if (prowl->intruder->animal->overhead)
    return TRUE;
  for (guint i = 0; i < hc_room_get_n_walls (prowl->here); i++)
    {
      const HcRoomWall *wall = hc_room_get_wall (prowl->here, i);

      if (*wall->beyond == '\0'
          && hc_prowl_gets_up (prowl, hc_prowl_get_wall_mm (prowl, wall)))
        return TRUE;
    }
  return FALSE;
}

static HcWayInCause
as_roof (HcWayInCause cause)
{
  switch (cause)
    {
    case HC_WAY_IN_BARE:
      return HC_WAY_IN_SKY;
    case HC_WAY_IN_HOLES:
      return HC_WAY_IN_ROOF_HOLES;
    default:
      return HC_WAY_IN_ROOF_TORN;
    }
}

static void
look_at_mesh (HcProwl *prowl, const char *pen)
{
  HcWayInCause cause;
  double have_mm;
  HcWayIn *way;

  if (!hc_prowl_passes_mesh (prowl, hc_room_get (prowl->here)->roof_mesh, HC_FIXING_SCREWS,
                             &cause, &have_mm))
    return;
  way = hc_prowl_add (prowl, as_roof (cause), NULL, pen);
  way->have_mm = have_mm;
  way->want_mm = prowl->intruder->animal->passes_mm;
}

/* Those that get over the fence are found there. */
void
hc_prowl_above (HcProwl *prowl)
{
  const char *pen = hc_pen_get_id (hc_room_get_pen (prowl->here));

  switch (hc_room_get (prowl->here)->roof)
    {
    case HC_ROOF_NONE:
      if (prowl->intruder->animal->overhead)
        hc_prowl_add (prowl, HC_WAY_IN_SKY, NULL, pen);
      break;
    case HC_ROOF_NET:
    case HC_ROOF_MESH:
      if (gets_on_roof (prowl))
        look_at_mesh (prowl, pen);
      break;
    default:
      break;
    }
}
