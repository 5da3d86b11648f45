/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * From the corners of the house to the nearest feeder or drinker, on foot. */
#include "config.h"

#include "needs/clearance/walk.h"

#include "base/shape-relate.h"
#include "supply/bird-way.h"

/* A corner and how far it is from the nearest fitting of the kind. */
typedef struct
{
  HcRoom *room;
  double distance_mm;
  const char *nearest;
} Walk;

/* As wide and as high as the largest of the birds. */
static HcWalker
largest_bird (const HcNeedContext *context)
{
  HcWalker bird = { 0 };

  for (guint i = 0; i < hc_need_context_get_n_bodies (context); i++)
    if (context->counts[i] > 0)
      {
        const HcBody *body = hc_need_context_get_body (context, i);

        bird.width_mm = MAX (bird.width_mm, hc_body_get_width_mm (body));
        bird.headroom_mm = MAX (bird.headroom_mm, hc_body_get_head_mm (body));
      }
  return bird;
}

/* Where the middle of a bird is that stands in the corner a wall starts from. */
static HcPoint
stand_in_corner (const HcRoom *room, guint wall, double half_mm)
{
  guint n = hc_room_get_n_walls (room);
  HcPoint at = hc_room_get_wall (room, wall)->from;
  HcPoint before = hc_point_unit (
      hc_point_subtract (hc_room_get_wall (room, (wall + n - 1) % n)->from, at));
  HcPoint after = hc_point_unit (hc_point_subtract (hc_room_get_wall (room, wall)->to, at));
  HcPoint inside = hc_point_scale (hc_point_add (before, after), half_mm);
  HcPoint stand = hc_point_add (at, inside);

  return hc_shape_contains_point (hc_room_get_outline (room), stand)
             ? stand
             : hc_point_subtract (at, inside);
}

static Walk
walk_from (const HcNeedContext *context, HcBirdWay *way, guint room, HcPoint from)
{
  Walk walk = { hc_need_context_get_room (context, room), 0, NULL };
  const HcFitting *nearest
      = context->about->follows ? hc_bird_way_find_straight (way, from, &walk.distance_mm)
                                : hc_bird_way_find (way, room, from, &walk.distance_mm);

  if (nearest != NULL)
    walk.nearest = hc_fitting_get_id (nearest);
  return walk;
}

static Walk
find_farthest (const HcNeedContext *context, const HcWalker *bird, HcBirdWay *way)
{
  Walk farthest = { NULL, -1, NULL };

  for (guint i = 0; i < hc_need_context_get_n_rooms (context); i++)
    {
      HcRoom *room = hc_need_context_get_room (context, i);

      for (guint wall = 0; hc_room_is_roofed (room) && wall < hc_room_get_n_walls (room); wall++)
        {
          Walk walk = walk_from (context, way, i,
                                 stand_in_corner (room, wall, bird->width_mm / 2));

          if (walk.nearest != NULL && walk.distance_mm > farthest.distance_mm)
            farthest = walk;
        }
    }
  return farthest;
}

static Walk
find_farthest_of (const HcNeedContext *context, HcFittingKind kind)
{
  guint n = hc_need_context_get_n_rooms (context);
  g_autofree HcRoom **rooms = g_new0 (HcRoom *, n + 1);
  HcWalker bird = largest_bird (context);
  g_autoptr (HcBirdWay) way = NULL;

  for (guint i = 0; i < n; i++)
    rooms[i] = hc_need_context_get_room (context, i);
  way = hc_bird_way_new (rooms, n, &bird, kind);
  return find_farthest (context, &bird, way);
}

void
hc_walk_tell_farthest (const HcNeedContext *context, HcFittingKind kind, const char *figure,
                       const char *code, HcAnswer *answer)
{
  Walk farthest = find_farthest_of (context, kind);
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
