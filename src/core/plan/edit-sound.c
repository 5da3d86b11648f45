/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Refuses walls that cross and pens that overlap, in the keeper's words. */
#include "config.h"

#include "plan/edit-sound.h"

#include "base/crossing.h"
#include "base/ring.h"
#include "base/shape-relate.h"
#include "plan/soundness.h"
#include "plan/wall-corners.h"

#include <glib/gi18n-lib.h>

/* What rounding may make two pens share along a wall of 100 m. */
#define FORGIVEN_MM2 1000.0

static char *
refusal_of (const HcFault *fault)
{
  switch (fault->kind)
    {
    case HC_FAULT_CROSSING:
      return g_strdup (_("The walls of a pen would cross each other. Move the corner another way."));
    case HC_FAULT_SHORT_WALL:
      return g_strdup (_("A wall would have no length left. Remove its corner instead."));
    case HC_FAULT_NO_FLOOR:
    case HC_FAULT_NO_RING:
      return g_strdup (_("A pen would have no floor left. Move the wall less far."));
    case HC_FAULT_CROWDED_WALL:
      return g_strdup (_("There is a pen on both sides of that wall already. Draw beside it."));
    default:
      return hc_fault_describe (fault);
    }
}

/* Inside faces may cross where their lines do not: thick walls, narrow pens. */
static gboolean
has_floor (const HcLayout *layout, const HcPen *pen)
{
  g_autoptr (GArray) lines = hc_layout_get_pen_corners (layout, pen);
  g_autoptr (GArray) faces = hc_layout_get_pen_ring (layout, pen);
  const HcPoint *ring = (const HcPoint *) faces->data;

  return faces->len > 2 && hc_ring_find_fault (ring, faces->len, NULL, NULL) == HC_RING_SOUND
         && (hc_ring_area_mm2 (ring, faces->len) > 0)
                == (hc_ring_area_mm2 ((const HcPoint *) lines->data, lines->len) > 0);
}

static char *
no_floor_left (const HcPen *pen)
{
  return g_strdup_printf (_("“%s” would have no floor left. Move the wall less far."),
                          hc_pen_get (pen)->name);
}

static char *
find_pen_without_floor (const HcLayout *layout)
{
  HcParts *pens = hc_layout_get (layout)->pens;

  for (guint i = 0; i < pens->len; i++)
    if (!has_floor (layout, pens->pdata[i]))
      return no_floor_left (pens->pdata[i]);
  return NULL;
}

static const char *
shared_corner (const HcWall *a, const HcWall *b)
{
  const HcWallValues *values = hc_wall_get (a);

  if (hc_wall_touches (b, values->from))
    return values->from;
  return hc_wall_touches (b, values->to) ? values->to : NULL;
}

static gboolean
fold_back (const HcLayout *layout, const HcWall *a, const HcWall *b, const char *corner)
{
  HcPoint at = hc_corner_get_point (layout, corner);
  HcPoint one = hc_corner_get_point (layout, hc_wall_get_other_end (a, corner));
  HcPoint other = hc_corner_get_point (layout, hc_wall_get_other_end (b, corner));

  return hc_walls_run_alike (layout, a, b)
         && hc_point_dot (hc_point_subtract (one, at), hc_point_subtract (other, at)) > 0;
}

static gboolean
cross (const HcLayout *layout, const HcWall *a, const HcWall *b)
{
  const char *corner = shared_corner (a, b);
  HcPoint one[2], other[2];

  if (corner != NULL)
    return fold_back (layout, a, b, corner);
  return hc_layout_get_wall_line (layout, a, &one[0], &one[1])
         && hc_layout_get_wall_line (layout, b, &other[0], &other[1])
         && hc_lines_touch (one[0], one[1], other[0], other[1]);
}

static char *
find_crossing_walls (const HcLayout *layout)
{
  HcParts *walls = hc_layout_get (layout)->walls;

  for (guint i = 0; i < walls->len; i++)
    for (guint j = i + 1; j < walls->len; j++)
      if (cross (layout, walls->pdata[i], walls->pdata[j]))
        return g_strdup (_("Two walls would lie across each other. Let them end at a corner they "
                           "share."));
  return NULL;
}

static GPtrArray *
outlines_of (const HcLayout *layout)
{
  HcParts *pens = hc_layout_get (layout)->pens;
  GPtrArray *outlines = g_ptr_array_new_with_free_func ((GDestroyNotify) hc_shape_unref);

  for (guint i = 0; i < pens->len; i++)
    {
      g_autoptr (GArray) ring = hc_layout_get_pen_ring (layout, pens->pdata[i]);

      g_ptr_array_add (outlines, hc_shape_new_polygon ((const HcPoint *) ring->data, ring->len));
    }
  return outlines;
}

static char *
find_overlapping_pens (const HcLayout *layout)
{
  HcParts *pens = hc_layout_get (layout)->pens;
  g_autoptr (GPtrArray) outlines = outlines_of (layout);

  for (guint i = 0; i < pens->len; i++)
    for (guint j = i + 1; j < pens->len; j++)
      if (hc_shape_overlaps (outlines->pdata[i], outlines->pdata[j], FORGIVEN_MM2))
        return g_strdup_printf (_("“%s” and “%s” would lie over each other. Leave each its own "
                                  "floor."),
                                hc_pen_get (pens->pdata[i])->name,
                                hc_pen_get (pens->pdata[j])->name);
  return NULL;
}

static char *
find_fault (const HcPlan *plan)
{
  HcLayout *layout = hc_plan_get_layout (plan);
  g_auto (HcFault) fault = { 0 };
  char *refusal = NULL;

  if (hc_plan_find_fault (plan, &fault))
    return refusal_of (&fault);
  if ((refusal = find_pen_without_floor (layout)) == NULL
      && (refusal = find_crossing_walls (layout)) == NULL)
    refusal = find_overlapping_pens (layout);
  return refusal;
}

static gboolean
turns_right (const HcLayout *layout, const HcPen *pen)
{
  g_autoptr (GArray) lines = hc_layout_get_pen_corners (layout, pen);

  return hc_ring_area_mm2 ((const HcPoint *) lines->data, lines->len) > 0;
}

/* A wall moved past the one across leaves its pen inside out. */
static char *
find_pen_inside_out (const HcPlan *before, const HcPlan *after)
{
  HcLayout *layout = hc_plan_get_layout (after);
  HcParts *pens = hc_layout_get (layout)->pens;

  for (guint i = 0; i < pens->len; i++)
    {
      HcLayout *old = hc_plan_get_layout (before);
      HcPen *pen = hc_layout_get_pen (old, hc_pen_get_id (pens->pdata[i]));

      if (pen != NULL && turns_right (old, pen) != turns_right (layout, pens->pdata[i]))
        return no_floor_left (pens->pdata[i]);
    }
  return NULL;
}

/**
 * hc_edit_if_sound: (skip)
 * @before: the plan before an edit
 * @after: (transfer full) (nullable): the plan after it
 * @error: says what would be wrong
 *
 * A plan that was at fault before may be edited further: the keeper is on the
 * way to mend it.
 *
 * Returns: (transfer full): @after, or %NULL when the edit spoils the plan
 */
HcPlan *
hc_edit_if_sound (HcPlan *before, HcPlan *after, GError **error)
{
  g_autoptr (HcPlan) taken = after;
  g_autofree char *fault = NULL;
  g_autofree char *old_fault = NULL;

  if (after == NULL || after == before)
    return g_steal_pointer (&taken);
  if ((fault = find_pen_inside_out (before, after)) != NULL)
    return hc_edit_refuse (error, "%s", fault);
  fault = find_fault (after);
  if (fault == NULL || (old_fault = find_fault (before)) != NULL)
    return g_steal_pointer (&taken);
  return hc_edit_refuse (error, "%s", fault);
}
