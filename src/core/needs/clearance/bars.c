/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Nests, feeders and drinkers under bars, and nests higher than bars. */
#include "config.h"

#include "needs/clearance/clearance.h"

#include "base/shape-relate.h"
#include "book/figure-names.h"
#include "supply/stand.h"

static gboolean
must_stay_clean (const HcFittingValues *values)
{
  return values->kind == HC_FITTING_NEST_BOXES || values->kind == HC_FITTING_FEEDER
         || values->kind == HC_FITTING_DRINKER || values->kind == HC_FITTING_HOPPER;
}

/* What boards between the two catch of what falls on @thing. */
static double
caught_mm2 (HcClearance *self, guint thing, double from_mm, double to_mm)
{
  HcShape *footprint = hc_room_get_footprint (self->room, thing);
  double caught = 0;

  for (guint i = 0; i < self->fittings->len; i++)
    {
      const HcFittingValues *board = hc_clearance_get (self, i);

      if (board->kind == HC_FITTING_DROPPINGS_BOARD && board->base_mm >= from_mm
          && board->base_mm <= to_mm)
        caught += hc_shape_get_overlap_mm2 (footprint, hc_room_get_footprint (self->room, i));
    }
  return caught;
}

static void
look_under_roost (HcClearance *self, guint roost)
{
  HcShape *footprint = hc_room_get_footprint (self->room, roost);
  g_autoptr (GArray) near
      = hc_room_find_fittings (self->room, hc_shape_get_bounds (footprint));
  double bottom_mm;
  double highest_mm;

  hc_stand_get_heights (self->fittings->pdata[roost], &bottom_mm, &highest_mm);
  for (guint i = 0; i < near->len; i++)
    {
      guint thing = g_array_index (near, guint, i);
      double top_mm;
      double under_mm2;
      HcFinding *finding;

      if (!must_stay_clean (hc_clearance_get (self, thing)))
        continue;
      hc_stand_get_heights (self->fittings->pdata[thing], &bottom_mm, &top_mm);
      under_mm2 = hc_shape_get_overlap_mm2 (footprint, hc_room_get_footprint (self->room, thing));
      if (top_mm >= highest_mm || under_mm2 <= HC_CLEARANCE_FORGIVEN_MM2
          || caught_mm2 (self, thing, top_mm, highest_mm) >= under_mm2)
        continue;
      finding = hc_clearance_add (self, "clearance.under-bars", HC_LEVEL_TIGHT,
                                  hc_fitting_get_id (self->fittings->pdata[thing]));
      hc_finding_add_id (finding, hc_fitting_get_id (self->fittings->pdata[roost]));
    }
}

void
hc_clearance_look_under_bars (HcClearance *self)
{
  for (guint i = 0; i < self->fittings->len; i++)
    if (hc_clearance_get (self, i)->kind == HC_FITTING_ROOST)
      look_under_roost (self, i);
}

static gboolean
find_lowest_bar (HcClearance *self, guint *roost)
{
  *roost = G_MAXUINT;
  for (guint i = 0; i < self->fittings->len; i++)
    if (hc_clearance_get (self, i)->kind == HC_FITTING_ROOST
        && (*roost == G_MAXUINT
            || hc_clearance_get (self, i)->base_mm < hc_clearance_get (self, *roost)->base_mm))
      *roost = i;
  return *roost != G_MAXUINT;
}

/* Birds sleep as high as they can: where a nest is no lower than the bars,
 * they sleep in the nest. */
void
hc_clearance_look_at_nest_heights (HcClearance *self)
{
  guint roost;

  if (!find_lowest_bar (self, &roost))
    return;
  for (guint i = 0; i < self->fittings->len; i++)
    {
      const HcFittingValues *nest = hc_clearance_get (self, i);
      HcFinding *finding;
      double below_mm;

      if (nest->kind != HC_FITTING_NEST_BOXES)
        continue;
      below_mm = hc_clearance_get (self, roost)->base_mm
                 - hc_stand_get_nest_floor_mm (self->fittings->pdata[i], (guint) nest->rows - 1);
      finding = hc_clearance_grade (self, "clearance.nest-too-high", HC_FIGURE_ROOST_NEST_BELOW,
                                    below_mm, "mm");
      if (finding == NULL)
        continue;
      hc_finding_add_id (finding, hc_fitting_get_id (self->fittings->pdata[i]));
      hc_finding_add_id (finding, hc_fitting_get_id (self->fittings->pdata[roost]));
    }
}
