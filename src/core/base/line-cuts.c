/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Where lines on a grid cross or touch each other. */
#include "config.h"

#include "base/line-cuts.h"

#include <math.h>

static gint64
longer_span (const HcGridLine *line)
{
  return MAX (line->b.x - line->a.x, ABS (line->b.y - line->a.y));
}

/* How far along a line a point lies, times the length of the line. */
static gint64
measure_along (const HcGridLine *line,
               HcGridPoint p)
{
  return (p.x - line->a.x) * (line->b.x - line->a.x) + (p.y - line->a.y) * (line->b.y - line->a.y);
}

static void
add_cut (GArray *cuts,
         const HcGridLine *lines,
         guint line,
         HcGridPoint at)
{
  HcLineCut cut = { line, measure_along (&lines[line], at), at };

  g_array_append_val (cuts, cut);
}

/* Whether a point that is @off (by twice the area spanned) a line lies on it, give or take a step, and
 * between its ends. */
static gboolean
lies_on (const HcGridLine *line,
         gint64 off,
         HcGridPoint p)
{
  gint64 along;

  if (ABS (off) > longer_span (line))
    return FALSE;
  along = measure_along (line, p);
  return along > 0 && along < measure_along (line, line->b);
}

static gboolean
is_end (const HcGridLine *line,
        HcGridPoint p)
{
  return hc_grid_compare (line->a, p) == 0 || hc_grid_compare (line->b, p) == 0;
}

static void
cut_where_they_cross (const HcGridLine *lines,
                      guint i,
                      guint j,
                      gint64 i_a,
                      gint64 i_b,
                      GArray *cuts)
{
  const HcGridLine *one = &lines[i];
  double part = (double) i_a / (double) (i_a - i_b);
  HcGridPoint at = { one->a.x + llround (part * (double) (one->b.x - one->a.x)),
                     one->a.y + llround (part * (double) (one->b.y - one->a.y)) };

  if (!is_end (one, at))
    add_cut (cuts, lines, i, at);
  if (!is_end (&lines[j], at))
    add_cut (cuts, lines, j, at);
}

static gboolean
are_apart (const HcGridLine *line,
           gint64 one_off,
           gint64 other_off)
{
  return (one_off > 0) == (other_off > 0)
         && MIN (ABS (one_off), ABS (other_off)) > longer_span (line);
}

static void
cut_two (const HcGridLine *lines,
         guint i,
         guint j,
         GArray *cuts)
{
  const HcGridLine *one = &lines[i], *other = &lines[j];
  gint64 j_a = hc_grid_turn (one->a, one->b, other->a);
  gint64 j_b = hc_grid_turn (one->a, one->b, other->b);
  gint64 i_a, i_b;
  guint n_before = cuts->len;

  if (are_apart (one, j_a, j_b))
    return;
  i_a = hc_grid_turn (other->a, other->b, one->a);
  i_b = hc_grid_turn (other->a, other->b, one->b);
  if (are_apart (other, i_a, i_b))
    return;
  if (lies_on (one, j_a, other->a))
    add_cut (cuts, lines, i, other->a);
  if (lies_on (one, j_b, other->b))
    add_cut (cuts, lines, i, other->b);
  if (lies_on (other, i_a, one->a))
    add_cut (cuts, lines, j, one->a);
  if (lies_on (other, i_b, one->b))
    add_cut (cuts, lines, j, one->b);
  if (cuts->len == n_before && ((j_a > 0 && j_b < 0) || (j_a < 0 && j_b > 0))
      && ((i_a > 0 && i_b < 0) || (i_a < 0 && i_b > 0)))
    cut_where_they_cross (lines, i, j, i_a, i_b, cuts);
}

static int
compare_cuts (gconstpointer a,
              gconstpointer b)
{
  const HcLineCut *one = a, *other = b;

  if (one->line != other->line)
    return one->line < other->line ? -1 : 1;
  return (one->along > other->along) - (one->along < other->along);
}

/**
 * hc_line_cuts_find: (skip)
 * @sorted: (element-type HcGridLine): lines, sorted by where they start
 *
 * Finds where lines cross or an end of one lies on another. Two that were not cut
 * in the last round do not meet.
 *
 * Returns: (transfer full) (element-type HcLineCut): the cuts, line by line and
 *   in order along each
 */
GArray *
hc_line_cuts_find (const GArray *sorted)
{
  const HcGridLine *lines = (const HcGridLine *) (const void *) sorted->data;
  GArray *cuts = g_array_new (FALSE, FALSE, sizeof (HcLineCut));

  for (guint i = 0; i < sorted->len; i++)
    {
      gint64 low = MIN (lines[i].a.y, lines[i].b.y) - 1;
      gint64 high = MAX (lines[i].a.y, lines[i].b.y) + 1;

      for (guint j = i + 1; j < sorted->len && lines[j].a.x <= lines[i].b.x + 1; j++)
        if ((lines[i].is_cut || lines[j].is_cut) && MIN (lines[j].a.y, lines[j].b.y) <= high
            && MAX (lines[j].a.y, lines[j].b.y) >= low)
          cut_two (lines, i, j, cuts);
    }
  g_array_sort (cuts, compare_cuts);
  return cuts;
}
