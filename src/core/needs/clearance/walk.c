/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * From the corners of the house to the nearest feeder or drinker, as straight
 * as a bird would like to go. */
#include "config.h"

#include "needs/clearance/walk.h"

#include <math.h>

/* A corner and how far it is from the nearest fitting of the kind. */
typedef struct
{
  HcRoom *room;
  double distance_mm;
  const char *nearest;
} Walk;

static double
distance_to_fitting_mm (HcPoint from, const HcFittingValues *values)
{
  HcPoint own = hc_point_turn (
      hc_point_subtract (from, hc_point (values->x_mm, values->y_mm)), -values->turn_deg);

  if (values->form == HC_FORM_ROUND)
    return MAX (0, hc_point_length (own) - values->width_mm / 2);
  return hypot (MAX (0, ABS (own.x_mm) - values->width_mm / 2),
                MAX (0, ABS (own.y_mm) - values->depth_mm / 2));
}

static void
find_nearest (const HcNeedContext *context, HcFittingKind kind, HcPoint from, Walk *walk)
{
  for (guint i = 0; i < hc_need_context_get_n_rooms (context); i++)
    {
      HcParts *fittings = hc_room_get (hc_need_context_get_room (context, i))->fittings;

      for (guint j = 0; j < fittings->len; j++)
        {
          const HcFittingValues *values = hc_fitting_get (fittings->pdata[j]);
          double distance_mm;

          if (values->kind != (int) kind)
            continue;
          distance_mm = distance_to_fitting_mm (from, values);
          if (walk->nearest != NULL && distance_mm >= walk->distance_mm)
            continue;
          walk->distance_mm = distance_mm;
          walk->nearest = hc_fitting_get_id (fittings->pdata[j]);
        }
    }
}

static Walk
find_farthest (const HcNeedContext *context, HcFittingKind kind)
{
  Walk farthest = { NULL, -1, NULL };

  for (guint i = 0; i < hc_need_context_get_n_rooms (context); i++)
    {
      HcRoom *room = hc_need_context_get_room (context, i);

      for (guint wall = 0; hc_room_is_roofed (room) && wall < hc_room_get_n_walls (room); wall++)
        {
          Walk walk = { room, 0, NULL };

          find_nearest (context, kind, hc_room_get_wall (room, wall)->from, &walk);
          if (walk.nearest != NULL && walk.distance_mm > farthest.distance_mm)
            farthest = walk;
        }
    }
  return farthest;
}

void
hc_walk_tell_farthest (const HcNeedContext *context, HcFittingKind kind, const char *figure,
                       const char *code, HcAnswer *answer)
{
  Walk farthest = find_farthest (context, kind);
  const HcLimit *limit = hc_need_context_find_plain_limit (context, figure, HC_LEVEL_GOOD);
  HcFinding *finding;
  HcLevel level;
  double wanted;

  if (farthest.nearest == NULL || limit == NULL)
    return;
  level = hc_limit_grade (limit, farthest.distance_mm);
  if (level >= HC_LEVEL_GOOD || !hc_limit_get (limit, level + 1, &wanted))
    return;
  finding = hc_finding_new (code, level);
  hc_finding_set_measure (finding, farthest.distance_mm, wanted, "mm");
  hc_finding_set_figure (finding, hc_case_get_standard (context->about, HC_LEVEL_GOOD),
                         &limit->figure);
  hc_finding_add_id (finding, farthest.nearest);
  hc_finding_add_id (finding, hc_pen_get_id (hc_room_get_pen (farthest.room)));
  hc_answer_take (answer, finding);
}
