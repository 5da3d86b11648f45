/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Edges moved square to themselves, as loops that may lie across each other.
 *
 * Each edge sweeps a strip. Where edges part, the gap between their strips is
 * filled; where they close in on each other, the loop goes back to the corner
 * between them. So a moved loop winds round each point once less (moved in) or
 * once more (moved out) for each strip or filled gap over the point, and
 * hc_winding_inside() finds what is left or gained: X. Chen, S. McMains,
 * Polygon offsetting by computing winding numbers, ASME DETC 2005. */
#include "config.h"

#include "base/offset.h"

#include <math.h>

/* Edges whose directions differ by less than this (as a sine) run on in one line. */
#define STRAIGHT_SINE 1e-9

typedef struct
{
  HcLoops *moved;
  double by_mm;
  double most_reach;
} Offset;

static HcPoint
left_of (HcPoint way)
{
  return hc_point (-way.y_mm, way.x_mm);
}

/* The foot of @corner on the edge that leads along @way, after the move. */
static HcPoint
move_square (const Offset *offset,
             HcPoint corner,
             HcPoint way)
{
  return hc_point_add (corner, hc_point_scale (left_of (way), offset->by_mm));
}

static void
go_back_to_corner (Offset *offset,
                   HcPoint corner,
                   HcPoint before,
                   HcPoint after)
{
  double inwards = offset->by_mm < 0 ? -1 : 1;

  hc_loops_add_edge (offset->moved, move_square (offset, corner, before),
                     hc_point_scale (left_of (before), -inwards));
  hc_loops_add_edge (offset->moved, corner, hc_point_scale (left_of (after), inwards));
  hc_loops_add_edge (offset->moved, move_square (offset, corner, after), after);
}

/* The edges are made longer until they meet, or cut off square on the way there. */
static void
bring_to_a_point (Offset *offset,
                  HcPoint corner,
                  HcPoint before,
                  HcPoint after,
                  double turn)
{
  double cosine = cos (turn / 2), reach = offset->most_reach;
  double radius_mm = fabs (offset->by_mm);
  HcPoint ahead = hc_point_unit (hc_point_subtract (before, after));
  HcPoint ends[2];

  if (1 <= reach * cosine)
    {
      HcPoint across = hc_point_add (left_of (before), left_of (after));
      double part = offset->by_mm / (2 * cosine * cosine);

      hc_loops_add_edge (offset->moved, hc_point_add (corner, hc_point_scale (across, part)),
                         after);
      return;
    }
  for (guint i = 0; i < 2; i++)
    {
      HcPoint way = i == 0 ? before : hc_point_scale (after, -1);
      double further_mm = radius_mm * (reach - cosine) / fabs (sin (turn / 2));

      ends[i] = hc_point_add (move_square (offset, corner, i == 0 ? before : after),
                              hc_point_scale (way, further_mm));
    }
  hc_loops_add_edge (offset->moved, ends[0],
                     hc_point_scale (left_of (ahead), turn < 0 ? -1 : 1));
  hc_loops_add_edge (offset->moved, ends[1], after);
}

static void
turn_corner (Offset *offset,
             HcPoint corner,
             HcPoint before,
             HcPoint after)
{
  double sine = hc_point_cross (before, after), cosine = hc_point_dot (before, after);
  gboolean parts = (sine > 0) == (offset->by_mm < 0);
  double turn = atan2 (sine, cosine);

  if (cosine > 0 && fabs (sine) < STRAIGHT_SINE)
    hc_loops_add_edge (offset->moved, move_square (offset, corner, after), after);
  else if (!parts)
    go_back_to_corner (offset, corner, before, after);
  else
    bring_to_a_point (offset, corner, before, after, turn);
}

/**
 * hc_loops_move_in: (skip)
 * @loops: the edges of an area
 * @by_mm: how far they move to the inside, in mm; less than 0 to the outside
 * @most_reach: how far sharp corners may reach, in times @by_mm, more than 1
 *
 * Moves edges square to themselves. Corners stay sharp; one that would reach
 * farther is cut off square at that distance.
 *
 * Returns: (transfer full): loops that wind round what is left or gained
 */
HcLoops *
hc_loops_move_in (const HcLoops *loops,
                  double by_mm,
                  double most_reach)
{
  Offset offset = { hc_loops_new (), by_mm, most_reach };

  for (guint i = 0; i < loops->ends->len; i++)
    {
      guint n;
      const HcLoopEdge *edges = hc_loops_get (loops, i, &n);

      for (guint j = 0; j < n; j++)
        turn_corner (&offset, edges[j].corner, edges[(j + n - 1) % n].way, edges[j].way);
      hc_loops_end_loop (offset.moved);
    }
  return offset.moved;
}
