/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What lies inside of loops that may lie across each other. */
#include "config.h"

#include "base/winding.h"

#include "base/geos.h"
#include "base/sides.h"

#define NOWHERE G_MAXUINT

/* @walked are sides; @seen_at tells where among them one leaves a place, which
 * is known by the first side there. */
typedef struct
{
  const HcLinework *linework;
  const HcSides *sides;
  guint n_layers;
  gboolean *is_done;
  GArray *walked;
  guint *seen_at;
  HcLoops *found;
} Walk;

static gboolean
is_inside (const Walk *walk,
           HcWinding winding)
{
  for (guint layer = 0; layer < walk->n_layers; layer++)
    if (winding.of_layer[layer] < 1)
      return FALSE;
  return TRUE;
}

/* Whether the inside lies to the left of a side only, and was not walked round. */
static gboolean
is_open_edge (const Walk *walk,
              guint side)
{
  const HcSide *edge = &walk->sides->sides[side];

  return !walk->is_done[side] && is_inside (walk, edge->left)
         && !is_inside (walk, hc_sides_get_right (walk->sides, edge));
}

/* Keeps along the same piece of the inside. */
static guint
find_next (const Walk *walk,
           guint side)
{
  guint back = walk->sides->sides[side].back;
  guint first = walk->sides->sides[back].first, n = walk->sides->sides[back].n_here;

  for (guint i = 1; i <= n; i++)
    {
      guint next = first + (back - first + n - i) % n;

      if (is_open_edge (walk, next))
        return next;
    }
  return NOWHERE;
}

static const HcSide *
get_walked (const Walk *walk,
            guint i)
{
  return &walk->sides->sides[g_array_index (walk->walked, guint, i)];
}

static guint
get_source (const Walk *walk,
            const HcSide *side)
{
  return walk->sides->lines[side->line].source;
}

static void
add_edge (const Walk *walk,
          const HcSide *side)
{
  const HcLinework *linework = walk->linework;
  HcPoint way = g_array_index (linework->ways, HcPoint, get_source (walk, side));
  HcPoint seen = { (double) (side->to.x - side->from.x), (double) (side->to.y - side->from.y) };

  if (hc_point_dot (way, seen) < 0)
    way = hc_point_scale (way, -1);
  hc_loops_add_edge (walk->found, hc_linework_place (linework, side->from), way);
}

/* Leaves out places where nothing but a cut of one line is. */
static void
add_loop (const Walk *walk,
          guint first)
{
  guint n_before = walk->found->edges->len;
  const HcSide *before = get_walked (walk, walk->walked->len - 1);

  for (guint i = first; i < walk->walked->len; i++)
    {
      const HcSide *side = get_walked (walk, i);

      if (get_source (walk, before) != get_source (walk, side)
          || hc_side_leads_right (before) != hc_side_leads_right (side))
        add_edge (walk, side);
      before = side;
    }
  if (walk->found->edges->len - n_before >= 3)
    hc_loops_end_loop (walk->found);
  else
    g_array_set_size (walk->found->edges, n_before);
}

static void
forget_from (Walk *walk,
             guint first)
{
  for (guint i = first; i < walk->walked->len; i++)
    walk->seen_at[get_walked (walk, i)->first] = NOWHERE;
  g_array_set_size (walk->walked, first);
}

/* Where the walk comes by a place again, what lies between is a loop of its own. */
static void
walk_round (Walk *walk,
            guint start)
{
  for (guint next = start; next != NOWHERE; next = find_next (walk, next))
    {
      const HcSide *side = &walk->sides->sides[next];
      guint end = walk->sides->sides[side->back].first;

      walk->seen_at[side->first] = walk->walked->len;
      walk->is_done[next] = TRUE;
      g_array_append_val (walk->walked, next);
      if (walk->seen_at[end] == NOWHERE)
        continue;
      add_loop (walk, walk->seen_at[end]);
      forget_from (walk, walk->seen_at[end]);
      if (walk->walked->len == 0)
        return;
    }
  forget_from (walk, 0);
}

static HcLoops *
walk_all (const HcLinework *linework,
          const HcSides *sides,
          guint n_layers)
{
  g_autofree gboolean *is_done = g_new0 (gboolean, sides->n_sides);
  g_autofree guint *seen_at = g_new (guint, sides->n_sides);
  g_autoptr (GArray) walked = g_array_new (FALSE, FALSE, sizeof (guint));
  Walk walk = { linework, sides, n_layers, is_done, walked, seen_at, hc_loops_new () };

  for (guint i = 0; i < sides->n_sides; i++)
    seen_at[i] = NOWHERE;
  for (guint i = 0; i < sides->n_sides; i++)
    if (is_open_edge (&walk, i))
      walk_round (&walk, i);
  return walk.found;
}

static HcLoops *
find_inside (HcLoops *const layers[HC_N_LAYERS],
             guint n_layers)
{
  g_autoptr (HcLinework) linework = hc_linework_new (layers);
  g_autoptr (HcSides) sides = hc_sides_new (linework);

  hc_count_geometry_call ();
  return walk_all (linework, sides, n_layers);
}

/**
 * hc_winding_inside: (skip)
 * @loops: loops that may lie across each other
 *
 * Finds what they wind round more often to the left than to the right.
 *
 * Returns: (transfer full): its edges, which do not cross
 */
HcLoops *
hc_winding_inside (const HcLoops *loops)
{
  g_autoptr (HcLoops) nothing = hc_loops_new ();
  HcLoops *const layers[HC_N_LAYERS] = { (HcLoops *) loops, nothing };

  return find_inside (layers, 1);
}

/**
 * hc_winding_inside_both: (skip)
 * @one: loops that may lie across each other
 * @other: others
 *
 * Returns: (transfer full): the edges of what lies inside of both
 */
HcLoops *
hc_winding_inside_both (const HcLoops *one,
                        const HcLoops *other)
{
  HcLoops *const layers[HC_N_LAYERS] = { (HcLoops *) one, (HcLoops *) other };

  return find_inside (layers, HC_N_LAYERS);
}
