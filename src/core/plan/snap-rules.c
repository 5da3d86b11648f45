/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Places as far from walls, bars, feed and water as the rules ask. */
#include "config.h"

#include "plan/edit-movable.h"
#include "plan/snap-lines.h"

#include <math.h>

#define STRAIGHT_MM 1.0

/* A roost turned less than this runs across or along the plan. */
#define STRAIGHT_DEG 0.01

/* On either side of a span, so that edge and span are @apart_mm apart. */
static void
add_both_sides (GArray *lines, HcSnapKind kind, gboolean upright, const HcSnapSpan *span,
                double apart_mm)
{
  hc_snap_lines_add_part (lines, kind, HC_SNAP_LOW_EDGE, upright, span->high + apart_mm, span);
  hc_snap_lines_add_part (lines, kind, HC_SNAP_HIGH_EDGE, upright, span->low - apart_mm, span);
}

/* Whether bars run up or across the page; how far the outer ones are inside. */
static gboolean
find_bars (const HcFitting *fitting, gboolean *upright, double *inset_mm)
{
  const HcFittingValues *values = hc_fitting_get (fitting);
  double quarters = values->turn_deg / 90;

  if (values->kind != HC_FITTING_ROOST || values->bars < 1
      || fabs (quarters - round (quarters)) * 90 > STRAIGHT_DEG)
    return FALSE;
  *upright = (long) round (quarters) % 2 != 0;
  *inset_mm = values->depth_mm / (2 * values->bars);
  return TRUE;
}

static void
add_walls (GArray *lines, const HcPoint *ring, guint n_points, gboolean upright, double apart_mm)
{
  for (guint i = 0; i < n_points; i++)
    {
      HcPoint ends[] = { ring[i], ring[(i + 1) % n_points] };
      HcSnapSpan wall = hc_snap_span_of (hc_box_around (ends, 2), upright);

      if (wall.high - wall.low < STRAIGHT_MM)
        add_both_sides (lines, HC_SNAP_BAR_TO_WALL, upright, &wall, apart_mm);
    }
}

static void
add_bars (GArray *lines, const HcSnapRules *rules, const HcFitting *dragged, HcParts *neighbours,
          const HcPoint *ring, guint n_points)
{
  gboolean upright, other_upright;
  double inset_mm, other_mm;

  if (!find_bars (dragged, &upright, &inset_mm))
    return;
  if (rules->bar_to_wall_mm > 0)
    add_walls (lines, ring, n_points, upright, rules->bar_to_wall_mm - inset_mm);
  for (guint i = 0; rules->bar_to_bar_mm > 0 && i < neighbours->len; i++)
    if (neighbours->pdata[i] != dragged
        && find_bars (neighbours->pdata[i], &other_upright, &other_mm)
        && upright == other_upright)
      {
        HcSnapSpan span = hc_snap_span_of (hc_fitting_get_box (neighbours->pdata[i]), upright);

        add_both_sides (lines, HC_SNAP_BAR_TO_BAR, upright, &span,
                        rules->bar_to_bar_mm - inset_mm - other_mm);
      }
}

static void
add_feed_and_water (GArray *lines, double apart_mm, const HcFitting *dragged,
                    HcParts *neighbours)
{
  int kind = hc_fitting_get (dragged)->kind;
  int other = kind == HC_FITTING_FEEDER ? HC_FITTING_DRINKER : HC_FITTING_FEEDER;

  if ((kind != HC_FITTING_FEEDER && kind != HC_FITTING_DRINKER) || apart_mm <= 0)
    return;
  for (guint i = 0; i < neighbours->len; i++)
    for (guint upright = 0; upright < 2; upright++)
      if (hc_fitting_get (neighbours->pdata[i])->kind == other)
        {
          HcSnapSpan span = hc_snap_span_of (hc_fitting_get_box (neighbours->pdata[i]), upright);

          add_both_sides (lines, HC_SNAP_FEED_TO_WATER, upright, &span, apart_mm);
        }
}

/**
 * hc_snap_lines_add_rules: (skip)
 * @lines: (element-type HcSnapLine): lines to add to
 * @rules: distances the rules ask for
 * @dragged: what is dragged
 * @neighbours: (element-type HcFitting): what stands in the pen
 * @ring: (array length=n_points): the inside faces of the pen's walls
 * @n_points: how many
 *
 * Adds the places nearest to walls, bars, feed and water that the rules allow.
 */
void
hc_snap_lines_add_rules (GArray *lines, const HcSnapRules *rules, const HcFitting *dragged,
                         HcParts *neighbours, const HcPoint *ring, guint n_points)
{
  add_bars (lines, rules, dragged, neighbours, ring, n_points);
  add_feed_and_water (lines, rules->feed_to_water_mm, dragged, neighbours);
}
