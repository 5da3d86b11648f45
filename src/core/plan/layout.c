/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A layout as a table of its members, and the rings its walls make. */
#include "config.h"

#include "plan/layout.h"

#include "base/ring.h"

static const HcMember members[] = {
  HC_TEXT (HcLayoutValues, name, "name"),
  HC_PARTS (HcLayoutValues, corners, "corners", &hc_corner_class),
  HC_PARTS (HcLayoutValues, walls, "walls", &hc_wall_class),
  HC_PARTS (HcLayoutValues, openings, "openings", &hc_opening_class),
  HC_PARTS (HcLayoutValues, pens, "pens", &hc_pen_class),
  HC_PARTS (HcLayoutValues, loose, "loose_fittings", &hc_fitting_class),
};

HC_DEFINE_PART (HcLayout, hc_layout, TRUE, members)

/**
 * hc_layout_get_corner:
 * @layout: a layout
 * @id: (nullable): id of a corner
 *
 * Returns: (nullable) (transfer none): the corner
 */
HcCorner *
hc_layout_get_corner (const HcLayout *layout, const char *id)
{
  return hc_parts_find (hc_layout_get (layout)->corners, id);
}

/**
 * hc_layout_get_wall:
 * @layout: a layout
 * @id: (nullable): id of a wall
 *
 * Returns: (nullable) (transfer none): the wall
 */
HcWall *
hc_layout_get_wall (const HcLayout *layout, const char *id)
{
  return hc_parts_find (hc_layout_get (layout)->walls, id);
}

/**
 * hc_layout_get_opening:
 * @layout: a layout
 * @id: (nullable): id of a opening
 *
 * Returns: (nullable) (transfer none): the opening
 */
HcOpening *
hc_layout_get_opening (const HcLayout *layout, const char *id)
{
  return hc_parts_find (hc_layout_get (layout)->openings, id);
}

/**
 * hc_layout_get_pen:
 * @layout: a layout
 * @id: (nullable): id of a pen
 *
 * Returns: (nullable) (transfer none): the pen
 */
HcPen *
hc_layout_get_pen (const HcLayout *layout, const char *id)
{
  return hc_parts_find (hc_layout_get (layout)->pens, id);
}

/**
 * hc_layout_get_fitting:
 * @layout: a layout
 * @id: id of a fitting
 * @pen: (out) (optional) (nullable) (transfer none): the pen it stands in,
 *   %NULL when it stands in none
 *
 * Returns: (nullable) (transfer none): the fitting
 */
HcFitting *
hc_layout_get_fitting (const HcLayout *layout, const char *id, HcPen **pen)
{
  const HcLayoutValues *values = hc_layout_get (layout);

  for (guint i = 0; i < values->pens->len; i++)
    {
      HcFitting *found = hc_parts_find (hc_pen_get (values->pens->pdata[i])->fittings, id);

      if (found == NULL)
        continue;
      if (pen != NULL)
        *pen = values->pens->pdata[i];
      return found;
    }
  if (pen != NULL)
    *pen = NULL;
  return hc_parts_find (values->loose, id);
}

static gboolean
find_point (const HcLayout *layout, const char *corner, HcPoint *point)
{
  HcCorner *found = hc_layout_get_corner (layout, corner);

  if (found == NULL)
    return FALSE;
  *point = (HcPoint){ hc_corner_get (found)->x_mm, hc_corner_get (found)->y_mm };
  return TRUE;
}

/**
 * hc_layout_get_wall_line:
 * @layout: a layout
 * @wall: a wall of it
 * @from: (out): where it starts
 * @to: (out): where it ends
 *
 * Returns: whether both its corners exist
 */
gboolean
hc_layout_get_wall_line (const HcLayout *layout, const HcWall *wall, HcPoint *from, HcPoint *to)
{
  const HcWallValues *values = hc_wall_get (wall);

  return find_point (layout, values->from, from) && find_point (layout, values->to, to);
}

static gboolean
touches (const HcWallValues *wall, const char *corner)
{
  return g_strcmp0 (wall->from, corner) == 0 || g_strcmp0 (wall->to, corner) == 0;
}

/**
 * hc_layout_get_shared_corner:
 * @before: the wall before in a ring
 * @wall: a wall
 *
 * Returns: (nullable) (transfer none): id of the corner where a ring that
 *   comes along @before goes on along @wall
 */
const char *
hc_layout_get_shared_corner (const HcWall *before, const HcWall *wall)
{
  const HcWallValues *values = hc_wall_get (wall);

  if (touches (hc_wall_get (before), values->from))
    return values->from;
  return touches (hc_wall_get (before), values->to) ? values->to : NULL;
}

/**
 * hc_layout_get_pen_corners:
 * @layout: a layout
 * @pen: a pen of it
 *
 * Point i is where wall i of the ring starts, wall i running from point i to
 * point i + 1.
 *
 * Returns: (transfer full) (element-type HcPoint): the corners of its walls'
 *   lines in ring order; empty when the walls do not make a ring
 */
GArray *
hc_layout_get_pen_corners (const HcLayout *layout, const HcPen *pen)
{
  GArray *corners = g_array_new (FALSE, FALSE, sizeof (HcPoint));
  char **walls = hc_pen_get (pen)->walls;
  guint n = g_strv_length (walls);

  for (guint i = 0; n >= 3 && i < n; i++)
    {
      HcWall *wall = hc_layout_get_wall (layout, walls[i]);
      HcWall *before = hc_layout_get_wall (layout, walls[(i + n - 1) % n]);
      HcPoint point;

      if (wall == NULL || before == NULL
          || !find_point (layout, hc_layout_get_shared_corner (before, wall), &point))
        return g_array_set_size (corners, 0);
      g_array_append_val (corners, point);
    }
  return corners;
}

/**
 * hc_layout_get_pens_beside:
 * @layout: a layout
 * @wall: id of a wall
 * @beside: (out): room for the two pens, %NULL where there is none
 *
 * Returns: how many pens have the wall in their ring, at most two
 */
guint
hc_layout_get_pens_beside (const HcLayout *layout, const char *wall, HcPen *beside[2])
{
  HcParts *pens = hc_layout_get (layout)->pens;
  guint n = 0;

  beside[0] = beside[1] = NULL;
  for (guint i = 0; i < pens->len && n < 2; i++)
    if (g_strv_contains ((const char *const *) hc_pen_get (pens->pdata[i])->walls, wall))
      beside[n++] = pens->pdata[i];
  return n;
}

/* How far the face of @wall stands inside its line, seen from @pen: walls of
 * one pen are drawn by their inside face, partitions by their middle, and a
 * house's outer wall stays the house's when a run leans on it. */
static double
face_inset_mm (const HcLayout *layout, const HcPen *pen, const char *wall)
{
  double thickness_mm = hc_wall_get (hc_layout_get_wall (layout, wall))->thickness_mm;
  HcPen *beside[2];
  HcPen *other;

  if (hc_layout_get_pens_beside (layout, wall, beside) < 2)
    return 0;
  other = beside[0] == pen ? beside[1] : beside[0];
  if (hc_pen_get (pen)->kind == hc_pen_get (other)->kind)
    return thickness_mm / 2;
  return hc_pen_get (pen)->kind == HC_PEN_RUN ? thickness_mm : 0;
}

/**
 * hc_layout_get_pen_ring:
 * @layout: a layout
 * @pen: a pen of it
 *
 * Returns: (transfer full) (element-type HcPoint): the inside faces of its
 *   walls as a ring; empty when the walls do not make one
 */
GArray *
hc_layout_get_pen_ring (const HcLayout *layout, const HcPen *pen)
{
  GArray *ring = hc_layout_get_pen_corners (layout, pen);
  char **walls = hc_pen_get (pen)->walls;
  g_autofree double *insets = g_new0 (double, ring->len + 1);
  g_autofree HcPoint *inside = NULL;
  guint n = ring->len;

  for (guint i = 0; i < n; i++)
    insets[i] = face_inset_mm (layout, pen, walls[i]);
  if (n == 0)
    return ring;
  inside = hc_ring_inset ((const HcPoint *) ring->data, n, insets);
  g_array_set_size (ring, 0);
  return g_array_append_vals (ring, inside, n);
}

/**
 * hc_layout_find_pen_at:
 * @layout: a layout
 * @at: a place on the floor
 *
 * Returns: (nullable) (transfer none): the pen whose inside holds @at
 */
HcPen *
hc_layout_find_pen_at (const HcLayout *layout, HcPoint at)
{
  HcParts *pens = hc_layout_get (layout)->pens;

  for (guint i = 0; i < pens->len; i++)
    {
      g_autoptr (GArray) ring = hc_layout_get_pen_ring (layout, pens->pdata[i]);

      if (ring->len > 2 && hc_ring_contains_point ((const HcPoint *) ring->data, ring->len, at))
        return pens->pdata[i];
    }
  return NULL;
}
