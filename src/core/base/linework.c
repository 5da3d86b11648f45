/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Loops laid on a fine grid and cut wherever they cross or touch.
 *
 * Cuts lie on the grid, so the pieces of a line may stand a little off it and
 * meet others anew: they are cut again until nothing meets. */
#include "config.h"

#include "base/linework.h"

#include "base/line-cuts.h"

#include <math.h>
#include <stdlib.h>

#define FINEST_STEP_MM 0x1p-14
#define MOST_STEPS 0x1p29

/* Two or three rounds are the rule. */
#define MOST_ROUNDS 30

static HcBox
bounds_of (HcLoops *const layers[HC_N_LAYERS])
{
  HcPoint low = { INFINITY, INFINITY }, high = { -INFINITY, -INFINITY };

  for (guint layer = 0; layer < HC_N_LAYERS; layer++)
    for (guint i = 0; i < layers[layer]->edges->len; i++)
      {
        HcPoint p = g_array_index (layers[layer]->edges, HcLoopEdge, i).corner;

        low = hc_point (MIN (low.x_mm, p.x_mm), MIN (low.y_mm, p.y_mm));
        high = hc_point (MAX (high.x_mm, p.x_mm), MAX (high.y_mm, p.y_mm));
      }
  return (HcBox){ low.x_mm, low.y_mm, high.x_mm - low.x_mm, high.y_mm - low.y_mm };
}

/* How fine the grid can be for something that large. */
double
hc_grid_step_mm (HcBox bounds)
{
  double step_mm = FINEST_STEP_MM;
  double largest_mm = MAX (bounds.width_mm, bounds.depth_mm);

  while (largest_mm > MOST_STEPS * step_mm)
    step_mm *= 2;
  return step_mm;
}

static HcGridPoint
lay_on_grid (const HcLinework *self,
             HcPoint p)
{
  return (HcGridPoint){ llround ((p.x_mm - self->origin.x_mm) / self->step_mm),
                        llround ((p.y_mm - self->origin.y_mm) / self->step_mm) };
}

static void
add_line (GArray *lines,
          HcGridPoint a,
          HcGridPoint b,
          const HcGridLine *like)
{
  HcGridLine line = *like;
  int order = hc_grid_compare (a, b);

  if (order == 0)
    return;
  line.a = order < 0 ? a : b;
  line.b = order < 0 ? b : a;
  for (guint layer = 0; order > 0 && layer < HC_N_LAYERS; layer++)
    line.winds[layer] = -line.winds[layer];
  line.is_cut = TRUE;
  g_array_append_val (lines, line);
}

static void
lay_loops (HcLinework *self,
           const HcLoops *loops,
           guint layer)
{
  for (guint i = 0; i < loops->ends->len; i++)
    {
      guint n;
      const HcLoopEdge *edges = hc_loops_get (loops, i, &n);

      for (guint j = 0; j < n; j++)
        {
          HcGridLine like = { .source = self->ways->len };

          like.winds[layer] = 1;
          add_line (self->lines, lay_on_grid (self, edges[j].corner),
                    lay_on_grid (self, edges[(j + 1) % n].corner), &like);
          g_array_append_val (self->ways, edges[j].way);
        }
    }
}

static int
compare_lines (const void *a,
               const void *b)
{
  const HcGridLine *one = a, *other = b;
  int order = hc_grid_compare (one->a, other->a);

  return order != 0 ? order : hc_grid_compare (one->b, other->b);
}

/* Lines on each other become one; those that take each other back vanish. */
static void
merge (GArray *lines)
{
  HcGridLine *line = (HcGridLine *) (void *) lines->data;
  guint n_kept = 0;

  qsort (line, lines->len, sizeof *line, compare_lines);
  for (guint i = 0; i < lines->len;)
    {
      HcGridLine one = line[i];

      while (++i < lines->len && compare_lines (&one, &line[i]) == 0)
        {
          for (guint layer = 0; layer < HC_N_LAYERS; layer++)
            one.winds[layer] += line[i].winds[layer];
          one.is_cut |= line[i].is_cut;
        }
      if (one.winds[0] != 0 || one.winds[1] != 0)
        line[n_kept++] = one;
    }
  g_array_set_size (lines, n_kept);
}

static void
apply_cuts (HcLinework *self,
            const GArray *cuts)
{
  GArray *pieces = g_array_sized_new (FALSE, FALSE, sizeof (HcGridLine),
                                      self->lines->len + cuts->len);
  guint next = 0;

  for (guint i = 0; i < self->lines->len; i++)
    {
      HcGridLine *line = &g_array_index (self->lines, HcGridLine, i);
      HcGridPoint from = line->a;

      if (next == cuts->len || g_array_index (cuts, HcLineCut, next).line != i)
        {
          line->is_cut = FALSE;
          g_array_append_val (pieces, *line);
          continue;
        }
      for (; next < cuts->len && g_array_index (cuts, HcLineCut, next).line == i; next++)
        {
          add_line (pieces, from, g_array_index (cuts, HcLineCut, next).at, line);
          from = g_array_index (cuts, HcLineCut, next).at;
        }
      add_line (pieces, from, line->b, line);
    }
  g_array_unref (self->lines);
  self->lines = pieces;
}

static void
cut_all (HcLinework *self)
{
  for (guint round = 0; round < MOST_ROUNDS; round++)
    {
      g_autoptr (GArray) cuts = NULL;

      merge (self->lines);
      cuts = hc_line_cuts_find (self->lines);
      if (cuts->len == 0)
        return;
      apply_cuts (self, cuts);
    }
  merge (self->lines);
}

HcLinework *
hc_linework_new (HcLoops *const layers[HC_N_LAYERS])
{
  HcLinework *self = g_new (HcLinework, 1);
  HcBox bounds = bounds_of (layers);

  self->origin = hc_point (bounds.x_mm, bounds.y_mm);
  self->step_mm = hc_grid_step_mm (bounds);
  self->lines = g_array_new (FALSE, FALSE, sizeof (HcGridLine));
  self->ways = g_array_new (FALSE, FALSE, sizeof (HcPoint));
  for (guint layer = 0; layer < HC_N_LAYERS; layer++)
    lay_loops (self, layers[layer], layer);
  cut_all (self);
  return self;
}

void
hc_linework_free (HcLinework *self)
{
  g_array_unref (self->lines);
  g_array_unref (self->ways);
  g_free (self);
}

HcPoint
hc_linework_place (const HcLinework *self,
                   HcGridPoint at)
{
  return hc_point_add (self->origin,
                       hc_point_scale (hc_point ((double) at.x, (double) at.y), self->step_mm));
}
