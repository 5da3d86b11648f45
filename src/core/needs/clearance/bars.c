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

/* Whether boards between the two catch what falls on @thing: @enough_mm2. */
static gboolean
is_caught (HcClearance *self, guint thing, double from_mm, double to_mm, double enough_mm2)
{
  HcShape *footprint = hc_room_get_footprint (self->room, thing);
  g_autoptr (GArray) near
      = hc_room_find_fittings (self->room, hc_shape_get_bounds (footprint));
  double caught_mm2 = 0;

  for (guint i = 0; i < near->len && caught_mm2 < enough_mm2; i++)
    {
      guint at = g_array_index (near, guint, i);
      const HcFittingValues *board = hc_clearance_get (self, at);

      if (board->kind == HC_FITTING_DROPPINGS_BOARD && board->base_mm >= from_mm
          && board->base_mm <= to_mm)
        caught_mm2
            += hc_shape_get_overlap_mm2 (footprint, hc_room_get_footprint (self->room, at));
    }
  return caught_mm2 >= enough_mm2;
}

static gboolean
is_fouled_from (HcClearance *self, guint thing, guint roost)
{
  double bottom_mm;
  double top_mm;
  double highest_mm;
  double under_mm2;

  hc_stand_get_heights (self->fittings->pdata[roost], &bottom_mm, &highest_mm);
  hc_stand_get_heights (self->fittings->pdata[thing], &bottom_mm, &top_mm);
  if (top_mm >= highest_mm)
    return FALSE;
  under_mm2 = hc_shape_get_overlap_mm2 (hc_room_get_footprint (self->room, roost),
                                        hc_room_get_footprint (self->room, thing));
  return under_mm2 > HC_CLEARANCE_FORGIVEN_MM2
         && !is_caught (self, thing, top_mm, highest_mm, under_mm2);
}

/* One roost that fouls it is reason enough. */
static void
look_over_thing (HcClearance *self, guint thing)
{
  HcBox box = hc_shape_get_bounds (hc_room_get_footprint (self->room, thing));
  g_autoptr (GArray) near = hc_room_find_fittings (self->room, box);

  for (guint i = 0; i < near->len; i++)
    {
      guint roost = g_array_index (near, guint, i);
      HcFinding *finding;

      if (hc_clearance_get (self, roost)->kind != HC_FITTING_ROOST
          || !is_fouled_from (self, thing, roost))
        continue;
      finding = hc_clearance_add (self, "clearance.under-bars", HC_LEVEL_TIGHT,
                                  hc_fitting_get_id (self->fittings->pdata[thing]));
      hc_finding_add_id (finding, hc_fitting_get_id (self->fittings->pdata[roost]));
      return;
    }
}

void
hc_clearance_look_under_bars (HcClearance *self)
{
  for (guint i = 0; i < self->fittings->len; i++)
    if (must_stay_clean (hc_clearance_get (self, i)))
      look_over_thing (self, i);
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
