/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Joins ledges by the hops between them. */
#include "config.h"

#include "needs/climb/climb.h"

#include "base/nearby.h"
#include "base/shape-relate.h"
#include "book/figure-names.h"
#include "needs/climb/landing.h"
#include "supply/stand.h"

#include <math.h>

static double
find_bound_mm (const HcStandard *standard, const char *figure)
{
  const HcLimit *limit
      = hc_standard_find_limit (standard, figure, NULL, HC_WEEK_GROWN, HC_CONDITION_DAY);
  double bound_mm = 0;

  if (limit != NULL)
    hc_limit_get (limit, HC_LEVEL_TIGHT, &bound_mm);
  return bound_mm;
}

static void
add_hop (HcClimb *self, guint a, guint b, HcHop hop)
{
  gboolean rises = hc_climb_get_ledge (self, a)->height_mm <= hc_climb_get_ledge (self, b)->height_mm;

  hop.low = rises ? a : b;
  hop.high = rises ? b : a;
  hop.rise_mm = hc_climb_get_ledge (self, hop.high)->height_mm
                - hc_climb_get_ledge (self, hop.low)->height_mm;
  g_array_append_val (self->hops, hop);
}

static void
add_ramp (HcClimb *self, const HcRoom *room, guint foot)
{
  HcRamp ramp;
  const HcLedge *end = hc_climb_get_ledge (self, foot);

  hc_stand_get_ramp (hc_room_get (room)->fittings->pdata[end->thing], &ramp);
  add_hop (self, foot, foot + 1,
           (HcHop){ .kind = HC_HOP_RAMP, .slope_deg = ramp.slope_deg,
                    .across_mm = ramp.across_mm });
}

static void
add_floor_hops (HcClimb *self, const HcRoom *room, double width_mm)
{
  for (guint i = 1; i < self->ledges->len; i++)
    {
      HcLedge *ledge = &g_array_index (self->ledges, HcLedge, i);

      if (ledge->kind == HC_LEDGE_RAMP_HEAD)
        continue;
      hc_landing_find (room, ledge, width_mm);
      add_hop (self, 0, i, (HcHop){ .kind = HC_HOP_FLOOR });
      if (ledge->kind == HC_LEDGE_RAMP_FOOT)
        add_ramp (self, room, i);
    }
}

/* Rounded coarsely, so that turning a plan changes no level. */
static void
try_hop (HcClimb *self, const HcRoom *room, guint a, guint b, double farthest_mm)
{
  const HcLedge *one = hc_climb_get_ledge (self, a);
  const HcLedge *other = hc_climb_get_ledge (self, b);
  gboolean same_ramp = one->thing == other->thing && one->kind == HC_LEDGE_RAMP_FOOT;
  HcPoint on_one, on_other;
  double gap_mm;

  if (same_ramp)
    return;
  gap_mm = hc_shape_find_nearest (one->shape, other->shape, &on_one, &on_other);
  if (gap_mm > farthest_mm + HC_SHAPE_TOUCH_MM
      || (gap_mm > 0
          && (!hc_ledge_is_before (one, on_other) || !hc_ledge_is_before (other, on_one)
              || !hc_shape_contains_point (hc_room_get_outline (room),
                                           hc_point_between (on_one, on_other, 0.5)))))
    return;
  add_hop (self, a, b, (HcHop){ .kind = HC_HOP_ACROSS, .gap_mm = round (gap_mm * 10) / 10 });
}

static void
add_hops_across (HcClimb *self, const HcRoom *room, double farthest_mm)
{
  guint n = self->ledges->len - 1;
  g_autofree HcBox *boxes = g_new (HcBox, n + 1);
  g_autoptr (HcNearby) nearby = NULL;

  for (guint i = 0; i < n; i++)
    boxes[i] = hc_shape_get_bounds (hc_climb_get_ledge (self, i + 1)->shape);
  nearby = hc_nearby_new (boxes, n);
  for (guint i = 0; i < n; i++)
    {
      g_autoptr (GArray) near = hc_nearby_find (nearby, hc_box_grow (boxes[i], farthest_mm));

      for (guint j = 0; j < near->len; j++)
        if (g_array_index (near, guint, j) > i)
          try_hop (self, room, i + 1, g_array_index (near, guint, j) + 1, farthest_mm);
    }
}

/* Only how far apart things may be and how wide a bird's floor is are taken from
 * @standard: what is found is graded by each bird's own limits. */
HcClimb *
hc_climb_new (const HcRoom *room, const HcStandard *standard)
{
  HcClimb *self = g_new0 (HcClimb, 1);

  self->ledges = hc_ledges_of_room (room);
  self->hops = g_array_new (FALSE, FALSE, sizeof (HcHop));
  add_floor_hops (self, room, find_bound_mm (standard, HC_FIGURE_FLOOR_WIDTH));
  add_hops_across (self, room, find_bound_mm (standard, HC_FIGURE_CLIMB_FARTHEST_GAP));
  return self;
}

void
hc_climb_free (HcClimb *self)
{
  g_array_unref (self->ledges);
  g_array_unref (self->hops);
  g_free (self);
}

const HcLedge *
hc_climb_get_ledge (const HcClimb *self, guint ledge)
{
  return &g_array_index (self->ledges, HcLedge, ledge);
}

const HcHop *
hc_climb_get_hop (const HcClimb *self, guint hop)
{
  return &g_array_index (self->hops, HcHop, hop);
}
