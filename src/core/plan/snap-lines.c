/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Lines across and along the plan, and which of them is nearest to a box. */
#include "config.h"

#include "plan/snap-lines.h"

#include <math.h>

/* A wall counts as across or along when it strays less than this. */
#define STRAIGHT_MM 1.0

void
hc_snap_lines_add (GArray *lines, HcSnapKind kind, gboolean upright, double at, double from,
                   double to)
{
  HcSnapPart part = kind == HC_SNAP_MIDDLE ? HC_SNAP_OWN_MIDDLE : HC_SNAP_EITHER_EDGE;
  HcSnapLine line = { kind, part, upright, at, MIN (from, to), MAX (from, to) };

  g_array_append_val (lines, line);
}

void
hc_snap_lines_add_part (GArray *lines, HcSnapKind kind, HcSnapPart part, gboolean upright,
                        double at, const HcSnapSpan *beside)
{
  HcSnapLine line = { kind, part, upright, at, beside->beside_low, beside->beside_high };

  g_array_append_val (lines, line);
}

HcSnapSpan
hc_snap_span_of (HcBox box, gboolean upright)
{
  double right = box.x_mm + box.width_mm;
  double bottom = box.y_mm + box.depth_mm;
  HcPoint middle = hc_box_centre (box);

  if (upright)
    return (HcSnapSpan){ box.x_mm, middle.x_mm, right, box.y_mm, bottom };
  return (HcSnapSpan){ box.y_mm, middle.y_mm, bottom, box.x_mm, right };
}

static void
add_middles (GArray *lines, HcBox box)
{
  for (guint upright = 0; upright < 2; upright++)
    {
      HcSnapSpan span = hc_snap_span_of (box, upright);

      hc_snap_lines_add (lines, HC_SNAP_MIDDLE, upright, span.middle, span.beside_low,
                         span.beside_high);
    }
}

/* The edges and the middle of something to stand beside or in line with. */
void
hc_snap_lines_add_box (GArray *lines, HcBox box)
{
  for (guint upright = 0; upright < 2; upright++)
    {
      HcSnapSpan span = hc_snap_span_of (box, upright);

      hc_snap_lines_add (lines, HC_SNAP_EDGE, upright, span.low, span.beside_low,
                         span.beside_high);
      hc_snap_lines_add (lines, HC_SNAP_EDGE, upright, span.high, span.beside_low,
                         span.beside_high);
    }
  add_middles (lines, box);
}

/**
 * hc_snap_lines_add_ring: (skip)
 * @lines: (element-type HcSnapLine): lines to add to
 * @ring: (array length=n_points): the inside faces of a pen's walls
 * @n_points: how many
 *
 * Adds the faces that run across or along the plan, and the pen's middles.
 */
void
hc_snap_lines_add_ring (GArray *lines, const HcPoint *ring, guint n_points)
{
  for (guint i = 0; i < n_points; i++)
    {
      HcPoint a = ring[i];
      HcPoint b = ring[(i + 1) % n_points];

      if (fabs (a.x_mm - b.x_mm) < STRAIGHT_MM)
        hc_snap_lines_add (lines, HC_SNAP_WALL, TRUE, a.x_mm, a.y_mm, b.y_mm);
      else if (fabs (a.y_mm - b.y_mm) < STRAIGHT_MM)
        hc_snap_lines_add (lines, HC_SNAP_WALL, FALSE, a.y_mm, a.x_mm, b.x_mm);
    }
  if (n_points > 0)
    add_middles (lines, hc_box_around (ring, n_points));
}

/* What is only lined up with may be anywhere; all else must be beside it. */
static gboolean
may_catch (const HcSnapLine *line, const HcSnapSpan *span)
{
  return line->kind == HC_SNAP_EDGE || line->kind == HC_SNAP_MIDDLE
         || line->kind == HC_SNAP_CORNER
         || (line->from < span->beside_high && line->to > span->beside_low);
}

static double
way_to (const HcSnapLine *line, const HcSnapSpan *span)
{
  double low = line->at - span->low;
  double high = line->at - span->high;

  switch (line->part)
    {
    case HC_SNAP_OWN_MIDDLE:
      return line->at - span->middle;
    case HC_SNAP_LOW_EDGE:
      return low;
    case HC_SNAP_HIGH_EDGE:
      return high;
    default:
      return fabs (low) <= fabs (high) ? low : high;
    }
}

static const HcSnapLine *
find_nearest (const GArray *lines, gboolean upright, const HcSnapSpan *span, double reach_mm,
              double *way_mm)
{
  const HcSnapLine *nearest = NULL;

  for (guint i = 0; i < lines->len; i++)
    {
      const HcSnapLine *line = &g_array_index (lines, HcSnapLine, i);
      double way = way_to (line, span);

      if (line->upright != upright || !may_catch (line, span) || fabs (way) > reach_mm
          || (nearest != NULL && fabs (way) >= fabs (*way_mm)))
        continue;
      nearest = line;
      *way_mm = way;
    }
  return nearest;
}

/* The line reaches from what caught the box to the box. */
static HcSnapCatch
drawn (const HcSnapLine *line, const HcSnapSpan *span)
{
  double from = MIN (line->from, span->beside_low);
  double to = MAX (line->to, span->beside_high);

  if (line->upright)
    return (HcSnapCatch){ line->kind, hc_point (line->at, from), hc_point (line->at, to) };
  return (HcSnapCatch){ line->kind, hc_point (from, line->at), hc_point (to, line->at) };
}

/**
 * hc_snap_lines_catch: (skip)
 * @lines: (element-type HcSnapLine): lines; of two as near the first counts
 * @box: what is dragged
 * @reach_mm: how near a line must be; 0 and less catch nothing
 *
 * Returns: how far the box moves on, and what caught it
 */
HcSnap
hc_snap_lines_catch (const GArray *lines, HcBox box, double reach_mm)
{
  HcSnap snap = { 0 };

  for (guint upright = 0; upright < 2 && reach_mm > 0; upright++)
    {
      HcSnapSpan span = hc_snap_span_of (box, upright);
      double way_mm = 0;
      const HcSnapLine *line = find_nearest (lines, upright, &span, reach_mm, &way_mm);

      if (line == NULL)
        continue;
      *(upright ? &snap.by.x_mm : &snap.by.y_mm) = way_mm;
      snap.caught[snap.n_caught++] = drawn (line, &span);
    }
  return snap;
}
