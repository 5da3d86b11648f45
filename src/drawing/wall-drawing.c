/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Solid walls as joined shapes; mesh and fences as lines on posts. */
#include "config.h"

#include "wall-drawing.h"

#include "drawing/mesh-wall.h"
#include "drawing/poche.h"
#include "drawing/wall-outline.h"

#include "base/shape-ops.h"

/* An opening is cut a little wider than the wall, so that no sliver stays. */
#define CUT_OVER_MM 2.0

static void
add_openings (const HcLayout *layout, const HcWall *wall, GPtrArray *holes)
{
  HcParts *openings = hc_layout_get (layout)->openings;
  HcWallFaces faces;

  if (!hc_wall_faces (layout, wall, &faces))
    return;
  for (guint i = 0; i < openings->len; i++)
    {
      const HcOpeningValues *opening = hc_opening_get (openings->pdata[i]);
      double half = opening->width_mm / 2;
      double in = faces.inner_mm + CUT_OVER_MM, out = -faces.outer_mm - CUT_OVER_MM;

      if (g_strcmp0 (opening->wall, hc_wall_get_id (wall)) != 0 || half <= 0)
        continue;
      g_ptr_array_add (holes,
                       hc_shape_new_polygon (
                           (HcPoint[]){ hc_wall_faces_at (&faces, opening->along_mm - half, in),
                                        hc_wall_faces_at (&faces, opening->along_mm + half, in),
                                        hc_wall_faces_at (&faces, opening->along_mm + half, out),
                                        hc_wall_faces_at (&faces, opening->along_mm - half, out) },
                           4));
    }
}

static HcShape *
join (GPtrArray *shapes)
{
  return hc_shape_union ((HcShape *const *) shapes->pdata, shapes->len);
}

/* What is left standing of @walls once their openings are cut. */
static HcShape *
shape_of_walls (const HcLayout *layout, GPtrArray *walls)
{
  g_autoptr (GPtrArray) solid = g_ptr_array_new_with_free_func ((GDestroyNotify) hc_shape_unref);
  g_autoptr (GPtrArray) holes = g_ptr_array_new_with_free_func ((GDestroyNotify) hc_shape_unref);
  g_autoptr (HcShape) standing = NULL;
  g_autoptr (HcShape) cut = NULL;

  for (guint i = 0; i < walls->len; i++)
    {
      HcPoint outline[4];

      if (hc_wall_outline (layout, walls->pdata[i], outline))
        g_ptr_array_add (solid, hc_shape_new_polygon (outline, 4));
      add_openings (layout, walls->pdata[i], holes);
    }
  standing = join (solid);
  cut = join (holes);
  return hc_shape_difference (standing, cut);
}

static void
trace_shape (const HcInk *ink, const HcShape *shape)
{
  cairo_new_path (ink->cr);
  for (guint part = 0; part < hc_shape_get_n_parts (shape); part++)
    for (guint ring = 0; ring < hc_shape_get_n_rings (shape, part); ring++)
      {
        guint n;
        const HcPoint *points = hc_shape_get_ring (shape, part, ring, &n);

        cairo_new_sub_path (ink->cr);
        for (guint i = 0; i < n; i++)
          cairo_line_to (ink->cr, points[i].x_mm, points[i].y_mm);
        cairo_close_path (ink->cr);
      }
}

static void
hatch_wall (const HcInk *ink, const HcLayout *layout, const HcWall *wall, HcPoche poche)
{
  HcWallFaces faces;
  HcPoint outline[4];
  cairo_matrix_t frame;

  if (!hc_wall_faces (layout, wall, &faces) || !hc_wall_outline (layout, wall, outline))
    return;
  hc_wall_faces_get_frame (&faces, &frame);
  cairo_save (ink->cr);
  hc_ink_ring (ink, outline, 4);
  cairo_clip (ink->cr);
  cairo_transform (ink->cr, &frame);
  hc_draw_poche (ink, poche, hc_point_distance (faces.from, faces.to),
                 hc_wall_get (wall)->thickness_mm, g_str_hash (hc_wall_get_id (wall)));
  cairo_restore (ink->cr);
}

static void
draw_alike (const HcInk *ink, const HcLayout *layout, GPtrArray *walls, HcPoche poche)
{
  g_autoptr (HcShape) shape = shape_of_walls (layout, walls);

  trace_shape (ink, shape);
  hc_ink_fill (ink, hc_poche_get_paint (poche));
  cairo_save (ink->cr);
  cairo_clip (ink->cr);
  for (guint i = 0; i < walls->len; i++)
    hatch_wall (ink, layout, walls->pdata[i], poche);
  cairo_restore (ink->cr);
  trace_shape (ink, shape);
  hc_ink_stroke (ink, HC_LINE_HEAVY, HC_PAINT_INK);
}

static HcPoche
poche_of (const HcWall *wall)
{
  return hc_poche_for_construction (hc_wall_get (wall)->construction);
}

/**
 * hc_draw_wall:
 * @ink: the ink, in the plan's space
 * @layout: a layout
 * @wall: a wall of it
 *
 * Draws one wall by itself, as if it were alone.
 */
void
hc_draw_wall (const HcInk *ink, const HcLayout *layout, HcWall *wall)
{
  if (hc_wall_get (wall)->kind == HC_WALL_SOLID)
    {
      g_autoptr (GPtrArray) one = g_ptr_array_new ();

      g_ptr_array_add (one, wall);
      draw_alike (ink, layout, one, poche_of (wall));
    }
  else
    hc_draw_mesh_wall (ink, layout, wall);
}

/**
 * hc_draw_walls:
 * @ink: the ink, in the plan's space
 * @layout: a layout
 *
 * Draws all walls; those built alike are joined in their corners. Openings are
 * left empty: see hc_draw_opening().
 */
void
hc_draw_walls (const HcInk *ink, const HcLayout *layout)
{
  HcParts *walls = hc_layout_get (layout)->walls;

  for (guint i = 0; i < walls->len; i++)
    if (hc_wall_get (walls->pdata[i])->kind != HC_WALL_SOLID)
      hc_draw_mesh_wall (ink, layout, walls->pdata[i]);
  for (int poche = 0; poche < HC_N_POCHES; poche++)
    {
      g_autoptr (GPtrArray) alike = g_ptr_array_new ();

      for (guint i = 0; i < walls->len; i++)
        if (hc_wall_get (walls->pdata[i])->kind == HC_WALL_SOLID
            && poche_of (walls->pdata[i]) == (HcPoche) poche)
          g_ptr_array_add (alike, walls->pdata[i]);
      if (alike->len > 0)
        draw_alike (ink, layout, alike, (HcPoche) poche);
    }
}
