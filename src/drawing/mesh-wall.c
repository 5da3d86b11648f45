/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Mesh is a line of dashes and dots on squared posts, a fence a thin line with
 * round ones. */
#include "config.h"

#include "mesh-wall.h"

#include "drawing/wall-outline.h"

#include <math.h>

#define POSTS_APART_MM 2000.0
#define POST_MM 70.0
#define LEAST_POST_UNITS 3.0

typedef struct
{
  double from, to;
} Run;

static int
compare_runs (gconstpointer a, gconstpointer b)
{
  double difference = ((const Run *) a)->from - ((const Run *) b)->from;

  return (difference > 0) - (difference < 0);
}

static GArray *
openings_along (const HcLayout *layout, const HcWall *wall)
{
  HcParts *openings = hc_layout_get (layout)->openings;
  GArray *runs = g_array_new (FALSE, FALSE, sizeof (Run));

  for (guint i = 0; i < openings->len; i++)
    {
      const HcOpeningValues *opening = hc_opening_get (openings->pdata[i]);
      Run run = { opening->along_mm - opening->width_mm / 2,
                  opening->along_mm + opening->width_mm / 2 };

      if (g_strcmp0 (opening->wall, hc_wall_get_id (wall)) == 0)
        g_array_append_val (runs, run);
    }
  g_array_sort (runs, compare_runs);
  return runs;
}

static void
draw_post (const HcInk *ink, double x, double size, gboolean is_round)
{
  if (is_round)
    hc_ink_circle (ink, x, 0, size / 2);
  else
    hc_ink_rectangle (ink, x - size / 2, -size / 2, size, size);
  hc_ink_fill (ink, HC_PAINT_WOOD);
  hc_ink_stroke (ink, HC_LINE_FINE, HC_PAINT_INK);
}

static void
draw_line (const HcInk *ink, double from, double to, gboolean fence)
{
  double unit = 1 / ink->scale;
  double dashes[] = { 6 * unit, 2 * unit, 1 * unit, 2 * unit };

  cairo_save (ink->cr);
  if (!fence)
    cairo_set_dash (ink->cr, dashes, G_N_ELEMENTS (dashes), 0);
  cairo_new_path (ink->cr);
  hc_ink_line (ink, from, 0, to, 0);
  hc_ink_stroke (ink, fence ? HC_LINE_FINE : HC_LINE_MEDIUM, HC_PAINT_INK);
  cairo_restore (ink->cr);
}

static void
draw_stretch (const HcInk *ink, double from, double to, double post, gboolean fence)
{
  guint bays = (guint) MAX (1, ceil ((to - from) / POSTS_APART_MM - 0.01));

  if (to <= from)
    return;
  draw_line (ink, from, to, fence);
  for (guint i = 0; i <= bays; i++)
    draw_post (ink, from + (to - from) * i / bays, post, fence);
}

/**
 * hc_draw_mesh_wall:
 * @ink: the ink, in the plan's space
 * @layout: a layout
 * @wall: a wall of mesh or a fence
 *
 * Draws the stretches between its openings, with posts at their ends.
 */
void
hc_draw_mesh_wall (const HcInk *ink, const HcLayout *layout, const HcWall *wall)
{
  g_autoptr (GArray) openings = openings_along (layout, wall);
  gboolean fence = hc_wall_get (wall)->kind == HC_WALL_FENCE;
  double post = MAX (MIN (hc_wall_get (wall)->thickness_mm, POST_MM),
                     LEAST_POST_UNITS / ink->scale);
  double from = 0;
  HcWallFaces faces;
  cairo_matrix_t frame;

  if (!hc_wall_faces (layout, wall, &faces))
    return;
  cairo_save (ink->cr);
  hc_wall_faces_get_frame (&faces, &frame);
  cairo_transform (ink->cr, &frame);
  for (guint i = 0; i < openings->len; i++)
    {
      const Run *opening = &g_array_index (openings, Run, i);

      draw_stretch (ink, from, opening->from, post, fence);
      from = opening->to;
    }
  draw_stretch (ink, from, hc_point_distance (faces.from, faces.to), post, fence);
  cairo_restore (ink->cr);
}
