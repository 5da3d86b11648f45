/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Feeder and drinker too near each other; lamps too near the bedding. */
#include "config.h"

#include "needs/clearance/clearance.h"

#include "base/shape-relate.h"
#include "book/figure-names.h"

static gboolean
find_nearest (HcClearance *self, guint feeder, guint *nearest, double *distance_mm)
{
  HcShape *footprint = hc_room_get_footprint (self->room, feeder);
  HcBox box = hc_shape_get_bounds (footprint);

  *nearest = G_MAXUINT;
  for (guint i = 0; i < self->fittings->len; i++)
    {
      HcShape *other = hc_room_get_footprint (self->room, i);
      double this_mm;

      if (hc_clearance_get (self, i)->kind != HC_FITTING_DRINKER
          || (*nearest != G_MAXUINT
              && hc_box_distance (box, hc_shape_get_bounds (other)) >= *distance_mm))
        continue;
      this_mm = hc_shape_distance_mm (footprint, other);
      if (*nearest != G_MAXUINT && this_mm >= *distance_mm)
        continue;
      *nearest = i;
      *distance_mm = this_mm;
    }
  return *nearest != G_MAXUINT;
}

void
hc_clearance_look_at_feed_and_water (HcClearance *self)
{
  for (guint i = 0; i < self->fittings->len; i++)
    {
      HcFinding *finding;
      double distance_mm;
      guint drinker;

      if (hc_clearance_get (self, i)->kind != HC_FITTING_FEEDER
          || !find_nearest (self, i, &drinker, &distance_mm))
        continue;
      finding = hc_clearance_grade (self, "clearance.feed-near-water",
                                    HC_FIGURE_FEED_FROM_WATER, distance_mm, "mm");
      if (finding == NULL)
        continue;
      hc_finding_add_id (finding, hc_fitting_get_id (self->fittings->pdata[i]));
      hc_finding_add_id (finding, hc_fitting_get_id (self->fittings->pdata[drinker]));
    }
}

void
hc_clearance_look_at_lamps (HcClearance *self)
{
  double bedding_mm = hc_room_get (self->room)->bedding_mm;

  for (guint i = 0; i < self->fittings->len; i++)
    {
      const HcFittingValues *lamp = hc_clearance_get (self, i);
      HcFinding *finding;

      if (lamp->kind != HC_FITTING_HEAT_LAMP)
        continue;
      finding = hc_clearance_grade (self, "clearance.lamp-too-low",
                                    HC_FIGURE_WARMTH_LAMP_CLEARANCE, lamp->base_mm - bedding_mm,
                                    "mm");
      if (finding != NULL)
        hc_finding_add_id (finding, hc_fitting_get_id (self->fittings->pdata[i]));
    }
}
