/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Things that stick through a wall or the roof. */
#include "config.h"

#include "needs/clearance/clearance.h"

#include "base/shape-relate.h"
#include "supply/stand.h"

static void
look_at_outline (HcClearance *self, guint fitting)
{
  HcShape *footprint = hc_room_get_footprint (self->room, fitting);
  HcShape *outline = hc_room_get_outline (self->room);

  if (hc_shape_contains (outline, footprint)
      || hc_shape_get_area_mm2 (footprint) - hc_shape_get_overlap_mm2 (outline, footprint)
             <= HC_CLEARANCE_FORGIVEN_MM2)
    return;
  hc_clearance_add (self, "clearance.through-wall", HC_LEVEL_SHORT,
                    hc_fitting_get_id (self->fittings->pdata[fitting]));
}

static void
look_at_ceiling (HcClearance *self, guint fitting)
{
  double ceiling_mm = hc_room_get_ceiling_over_mm (
      self->room, hc_room_get_footprint (self->room, fitting));
  double bottom_mm;
  double top_mm;
  HcFinding *finding;

  hc_stand_get_heights (self->fittings->pdata[fitting], &bottom_mm, &top_mm);
  if (top_mm <= ceiling_mm + HC_CLEARANCE_FORGIVEN_MM)
    return;
  finding = hc_clearance_add (self, "clearance.too-tall", HC_LEVEL_SHORT,
                              hc_fitting_get_id (self->fittings->pdata[fitting]));
  hc_finding_set_measure (finding, top_mm, ceiling_mm, "mm");
}

void
hc_clearance_look_at_walls (HcClearance *self)
{
  for (guint i = 0; i < self->fittings->len; i++)
    {
      look_at_outline (self, i);
      look_at_ceiling (self, i);
    }
}
