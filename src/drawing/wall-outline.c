/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Faces from lines, and mitres where walls meet. */
#include "config.h"

#include "wall-outline.h"

#include "base/ring.h"

#include <math.h>

/* A mitre longer than this many thicknesses is a spike: cut it square. */
#define LONGEST_MITRE 4.0
#define NEARLY_PARALLEL 0.05

/* Walls of one pen are its own; the wall a run leans on is the house's. */
static HcPen *
owner_of (const HcLayout *layout, const HcWall *wall)
{
  HcPen *beside[2];
  guint n = hc_layout_get_pens_beside (layout, hc_wall_get_id (wall), beside);

  if (n == 1)
    return beside[0];
  if (n == 0 || hc_pen_get (beside[0])->kind == hc_pen_get (beside[1])->kind)
    return NULL;
  return hc_pen_get (beside[0])->kind == HC_PEN_RUN ? beside[1] : beside[0];
}

static HcPoint
left_of (HcPoint from, HcPoint to)
{
  HcPoint way = hc_point_unit (hc_point_subtract (to, from));

  return hc_point (-way.y_mm, way.x_mm);
}

static HcPoint
inward_of (const HcLayout *layout, const HcPen *pen, const HcWall *wall, HcPoint otherwise)
{
  g_autoptr (GArray) ring = hc_layout_get_pen_corners (layout, pen);
  char **walls = hc_pen_get (pen)->walls;

  for (guint i = 0; i < ring->len; i++)
    if (g_strcmp0 (walls[i], hc_wall_get_id (wall)) == 0)
      return hc_ring_edge_normal ((const HcPoint *) ring->data, ring->len, i);
  return otherwise;
}

/**
 * hc_wall_faces:
 * @layout: a layout
 * @wall: a wall of it
 * @faces: (out): its faces
 *
 * Returns: whether the wall has a length and both its corners exist
 */
gboolean
hc_wall_faces (const HcLayout *layout, const HcWall *wall, HcWallFaces *faces)
{
  double thickness = hc_wall_get (wall)->thickness_mm;
  HcPoint left;

  if (!hc_layout_get_wall_line (layout, wall, &faces->from, &faces->to)
      || hc_point_distance (faces->from, faces->to) <= 0)
    return FALSE;
  left = left_of (faces->from, faces->to);
  faces->owner = owner_of (layout, wall);
  faces->inward = faces->owner ? inward_of (layout, faces->owner, wall, left) : left;
  faces->inner_mm = faces->owner ? 0 : thickness / 2;
  faces->outer_mm = faces->owner ? thickness : thickness / 2;
  return TRUE;
}

/**
 * hc_wall_faces_at:
 * @faces: a wall's faces
 * @along_mm: from the wall's start
 * @inward_mm: from its line inwards, negative for outwards
 *
 * Returns: that place in the plan
 */
HcPoint
hc_wall_faces_at (const HcWallFaces *faces, double along_mm, double inward_mm)
{
  HcPoint way = hc_point_unit (hc_point_subtract (faces->to, faces->from));

  return hc_point_add (hc_point_add (faces->from, hc_point_scale (way, along_mm)),
                       hc_point_scale (faces->inward, inward_mm));
}

/**
 * hc_wall_faces_get_frame:
 * @faces: a wall's faces
 * @frame: (out caller-allocates): from the wall's own frame to the plan: x
 *   along the wall from its start, y inwards from the middle of its thickness
 */
void
hc_wall_faces_get_frame (const HcWallFaces *faces, cairo_matrix_t *frame)
{
  HcPoint way = hc_point_unit (hc_point_subtract (faces->to, faces->from));
  HcPoint middle = hc_wall_faces_at (faces, 0, (faces->inner_mm - faces->outer_mm) / 2);

  cairo_matrix_init (frame, way.x_mm, way.y_mm, faces->inward.x_mm, faces->inward.y_mm,
                     middle.x_mm, middle.y_mm);
}

/**
 * hc_wall_faces_mirror:
 * @faces: a wall's faces
 *
 * Returns: whether the wall's own frame is a mirror image: from its start to its
 *   end, what is inwards is on the left as it is drawn
 */
gboolean
hc_wall_faces_mirror (const HcWallFaces *faces)
{
  return hc_point_cross (hc_point_subtract (faces->to, faces->from), faces->inward) < 0;
}

static gboolean
lines_meet (HcPoint a, HcPoint way_a, HcPoint b, HcPoint way_b, HcPoint *meet)
{
  double cross = hc_point_cross (way_a, way_b);

  if (fabs (cross) < NEARLY_PARALLEL)
    return FALSE;
  *meet = hc_point_add (
      a, hc_point_scale (way_a, hc_point_cross (hc_point_subtract (b, a), way_b) / cross));
  return TRUE;
}

/* Where the outer faces of two walls meet. */
static gboolean
outer_mitre (const HcWallFaces *a, const HcWallFaces *b, HcPoint corner, HcPoint *meet)
{
  HcPoint way_a = hc_point_unit (hc_point_subtract (a->to, a->from));
  HcPoint way_b = hc_point_unit (hc_point_subtract (b->to, b->from));

  return lines_meet (hc_wall_faces_at (a, 0, -a->outer_mm), way_a,
                     hc_wall_faces_at (b, 0, -b->outer_mm), way_b, meet)
         && hc_point_distance (*meet, corner)
                <= LONGEST_MITRE * MAX (a->outer_mm, b->outer_mm);
}

static gboolean
meets_at (const HcWall *wall, const HcWall *other, const char *corner)
{
  const HcWallValues *values = hc_wall_get (other);

  return other != wall && values->kind == hc_wall_get (wall)->kind
         && (g_strcmp0 (values->from, corner) == 0 || g_strcmp0 (values->to, corner) == 0);
}

/* The outer end of @wall's face at one of its corners: mitred with the next
 * outer wall, or square and long enough to cover a partition that ends here. */
static HcPoint
outer_end (const HcLayout *layout, const HcWall *wall, const HcWallFaces *faces,
           const char *corner, gboolean at_end)
{
  HcParts *walls = hc_layout_get (layout)->walls;
  double length = hc_point_distance (faces->from, faces->to);
  double longer = 0;

  for (guint i = 0; i < walls->len; i++)
    {
      HcWall *other = walls->pdata[i];
      HcWallFaces beside;
      HcPoint meet;

      if (!meets_at (wall, other, corner) || !hc_wall_faces (layout, other, &beside))
        continue;
      if (beside.owner == NULL)
        longer = MAX (longer, beside.outer_mm);
      else if (faces->owner != NULL
               && outer_mitre (faces, &beside, at_end ? faces->to : faces->from, &meet))
        return meet;
    }
  return hc_wall_faces_at (faces, at_end ? length + longer : -longer, -faces->outer_mm);
}

/**
 * hc_wall_outline:
 * @layout: a layout
 * @wall: a wall of it
 * @outline: (out caller-allocates): its four corners: along the inner face,
 *   then back along the outer one
 *
 * Returns: whether the wall has a length and both its corners exist
 */
gboolean
hc_wall_outline (const HcLayout *layout, const HcWall *wall, HcPoint outline[4])
{
  const HcWallValues *values = hc_wall_get (wall);
  HcWallFaces faces;
  double length;

  if (!hc_wall_faces (layout, wall, &faces))
    return FALSE;
  length = hc_point_distance (faces.from, faces.to);
  outline[0] = hc_wall_faces_at (&faces, 0, faces.inner_mm);
  outline[1] = hc_wall_faces_at (&faces, length, faces.inner_mm);
  outline[2] = outer_end (layout, wall, &faces, values->to, TRUE);
  outline[3] = outer_end (layout, wall, &faces, values->from, FALSE);
  return TRUE;
}
