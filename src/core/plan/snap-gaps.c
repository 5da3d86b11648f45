/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Places where the gaps between neighbours in a row are even. */
#include "config.h"

#include "plan/snap-lines.h"

static int
compare_lows (gconstpointer a, gconstpointer b)
{
  const HcSnapSpan *one = a;
  const HcSnapSpan *other = b;

  return (one->low > other->low) - (one->low < other->low);
}

/* The neighbours in one row with what is dragged, in order. */
static GArray *
row_beside (const GArray *boxes, const HcSnapSpan *dragged, gboolean upright)
{
  GArray *row = g_array_new (FALSE, FALSE, sizeof (HcSnapSpan));

  for (guint i = 0; i < boxes->len; i++)
    {
      HcSnapSpan span = hc_snap_span_of (g_array_index (boxes, HcBox, i), upright);

      if (span.beside_low < dragged->beside_high && span.beside_high > dragged->beside_low)
        g_array_append_val (row, span);
    }
  g_array_sort (row, compare_lows);
  return row;
}

static void
add_gap (GArray *lines, const HcSnapSpan *one, const HcSnapSpan *other, double size_mm,
         gboolean upright)
{
  double gap_mm = other->low - one->high;

  if (gap_mm <= 0)
    return;
  if (gap_mm > size_mm)
    hc_snap_lines_add_part (lines, HC_SNAP_SPACING, HC_SNAP_OWN_MIDDLE, upright,
                            (one->high + other->low) / 2, one);
  hc_snap_lines_add_part (lines, HC_SNAP_SPACING, HC_SNAP_LOW_EDGE, upright,
                          other->high + gap_mm, other);
  hc_snap_lines_add_part (lines, HC_SNAP_SPACING, HC_SNAP_HIGH_EDGE, upright, one->low - gap_mm,
                          one);
}

/**
 * hc_snap_lines_add_gaps: (skip)
 * @lines: (element-type HcSnapLine): lines to add to
 * @boxes: (element-type HcBox): the neighbours
 * @dragged: what is dragged, where the hand has it
 *
 * Adds the middle between two neighbours, and the places that carry on the gap
 * between them on either side.
 */
void
hc_snap_lines_add_gaps (GArray *lines, const GArray *boxes, HcBox dragged)
{
  for (guint upright = 0; upright < 2; upright++)
    {
      HcSnapSpan span = hc_snap_span_of (dragged, upright);
      g_autoptr (GArray) row = row_beside (boxes, &span, upright);

      for (guint i = 0; i + 1 < row->len; i++)
        add_gap (lines, &g_array_index (row, HcSnapSpan, i),
                 &g_array_index (row, HcSnapSpan, i + 1), span.high - span.low, upright);
    }
}
