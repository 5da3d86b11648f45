/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * How often loops wind round what lies on either side of each line. */
#include "config.h"

#include "base/sides.h"

#include <stdlib.h>

/* From straight down, not counted, over right to straight up come first. */
gboolean
hc_side_leads_right (const HcSide *side)
{
  return side->to.x > side->from.x || (side->to.x == side->from.x && side->to.y > side->from.y);
}

static int
compare_sides (const void *a,
               const void *b)
{
  const HcSide *one = a, *other = b;
  int order = hc_grid_compare (one->from, other->from);
  gint64 turn;

  if (order != 0)
    return order;
  if (hc_side_leads_right (one) != hc_side_leads_right (other))
    return hc_side_leads_right (one) ? -1 : 1;
  turn = hc_grid_turn (one->from, one->to, other->to);
  return (turn < 0) - (turn > 0);
}

static void
link_sides (HcSides *self)
{
  g_autofree guint *first_seen = g_new (guint, self->n_lines);

  for (guint i = 0; i < self->n_lines; i++)
    first_seen[i] = G_MAXUINT;
  for (guint i = 0; i < self->n_sides; i++)
    {
      guint *seen = &first_seen[self->sides[i].line];

      if (*seen == G_MAXUINT)
        {
          *seen = i;
          continue;
        }
      self->sides[i].back = *seen;
      self->sides[*seen].back = i;
    }
}

static void
gather_places (HcSides *self)
{
  for (guint i = 0, next; i < self->n_sides; i = next)
    {
      for (next = i; next < self->n_sides
                     && hc_grid_compare (self->sides[i].from, self->sides[next].from) == 0;)
        next++;
      for (guint j = i; j < next; j++)
        {
          self->sides[j].first = i;
          self->sides[j].n_here = next - i;
        }
    }
}

static void
list_sides (HcSides *self,
            const HcLinework *linework)
{
  self->lines = (const HcGridLine *) (const void *) linework->lines->data;
  self->n_lines = linework->lines->len;
  self->n_sides = 2 * self->n_lines;
  self->sides = g_new0 (HcSide, self->n_sides);
  for (guint i = 0; i < self->n_lines; i++)
    {
      HcGridPoint a = self->lines[i].a, b = self->lines[i].b;

      self->sides[2 * i] = (HcSide){ .from = a, .to = b, .line = i };
      self->sides[2 * i + 1] = (HcSide){ .from = b, .to = a, .line = i };
    }
  qsort (self->sides, self->n_sides, sizeof *self->sides, compare_sides);
}

/* What the winding to the left of a side is more than that to its right. */
static HcWinding
add_step (const HcSides *self,
          HcWinding winding,
          const HcSide *side,
          int times)
{
  int sign = hc_side_leads_right (side) ? times : -times;

  for (guint layer = 0; layer < HC_N_LAYERS; layer++)
    winding.of_layer[layer] += sign * self->lines[side->line].winds[layer];
  return winding;
}

static gboolean
passes_below (const HcGridLine *line,
              HcGridPoint p)
{
  return line->a.x < p.x && line->b.x >= p.x && hc_grid_turn (line->a, line->b, p) > 0;
}

/* The winding a hair to the left of a place, counted on the way up to there. */
static HcWinding
look_left (const HcSides *self,
           HcGridPoint p)
{
  HcWinding winding = { { 0 } };

  for (guint i = 0; i < self->n_lines && self->lines[i].a.x < p.x; i++)
    if (passes_below (&self->lines[i], p))
      for (guint layer = 0; layer < HC_N_LAYERS; layer++)
        winding.of_layer[layer] += self->lines[i].winds[layer];
  return winding;
}

/* Goes once round the place that a side leaves, whose left is known. */
static void
look_round (HcSides *self,
            guint known,
            GArray *to_visit)
{
  guint first = self->sides[known].first, n = self->sides[known].n_here;
  HcWinding winding = self->sides[known].left;

  self->sides[known].is_known = TRUE;
  for (guint i = 1; i < n; i++)
    {
      HcSide *side = &self->sides[first + (known - first + i) % n];

      winding = add_step (self, winding, side, 1);
      side->left = winding;
      side->is_known = TRUE;
    }
  for (guint i = first; i < first + n; i++)
    g_array_append_val (to_visit, i);
}

/* Of lines that hang together, the leftmost place comes first, and nothing of
 * them lies to the left of the last side there. */
static void
wind_from (HcSides *self,
           guint first)
{
  g_autoptr (GArray) to_visit = g_array_new (FALSE, FALSE, sizeof (guint));
  guint last = first + self->sides[first].n_here - 1;

  self->sides[last].left = look_left (self, self->sides[first].from);
  look_round (self, last, to_visit);
  while (to_visit->len > 0)
    {
      const HcSide *side = &self->sides[g_array_index (to_visit, guint, to_visit->len - 1)];
      HcSide *back = &self->sides[side->back];

      g_array_set_size (to_visit, to_visit->len - 1);
      if (back->is_known)
        continue;
      back->left = add_step (self, side->left, side, -1);
      look_round (self, side->back, to_visit);
    }
}

static void
wind_all (HcSides *self)
{
  for (guint i = 0; i < self->n_sides; i += self->sides[i].n_here)
    if (!self->sides[i].is_known)
      wind_from (self, i);
}

/**
 * hc_sides_new: (skip)
 * @linework: lines that meet at their ends only
 *
 * Sorts the sides that leave one place round it. Between two of them lies a
 * wedge, and passing a side changes the winding by what loops count along its
 * line: so from one wedge all others follow, from place to place.
 *
 * Returns: (transfer full): both sides of every line; they need @linework
 */
HcSides *
hc_sides_new (const HcLinework *linework)
{
  HcSides *self = g_new (HcSides, 1);

  list_sides (self, linework);
  link_sides (self);
  gather_places (self);
  wind_all (self);
  return self;
}

void
hc_sides_free (HcSides *self)
{
  g_free (self->sides);
  g_free (self);
}

HcWinding
hc_sides_get_right (const HcSides *self,
                    const HcSide *side)
{
  return add_step (self, side->left, side, -1);
}
