/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Two layouts compared part by part, by their ids. */
#include "config.h"

#include "plan/layout-changes.h"

static void
clear_change (gpointer change)
{
  hc_part_unref (((HcLayoutChange *) change)->part);
}

static void
add (GArray *changes, HcLayoutChangeKind kind, gpointer part)
{
  HcLayoutChange change = { kind, hc_part_ref (part) };

  g_array_append_val (changes, change);
}

static gboolean
stands_elsewhere (HcPart *before, HcPart *after)
{
  const HcFittingValues *from, *to;

  if (before->klass != &hc_fitting_class)
    return FALSE;
  from = hc_fitting_get ((HcFitting *) before);
  to = hc_fitting_get ((HcFitting *) after);
  return from->x_mm != to->x_mm || from->y_mm != to->y_mm || from->turn_deg != to->turn_deg
         || from->base_mm != to->base_mm;
}

static gboolean
is_in_another_place (HcPart *before, HcPart *after)
{
  const HcOpeningValues *from, *to;

  if (before->klass != &hc_opening_class)
    return stands_elsewhere (before, after);
  from = hc_opening_get ((HcOpening *) before);
  to = hc_opening_get ((HcOpening *) after);
  return g_strcmp0 (from->wall, to->wall) != 0 || from->along_mm != to->along_mm
         || from->sill_mm != to->sill_mm;
}

static void
compare (HcParts *before, HcParts *after, GArray *changes)
{
  for (guint i = 0; i < before->len; i++)
    if (hc_parts_find (after, hc_part_get_id (before->pdata[i])) == NULL)
      add (changes, HC_CHANGE_REMOVED, before->pdata[i]);
  for (guint i = 0; i < after->len; i++)
    {
      HcPart *old = hc_parts_find (before, hc_part_get_id (after->pdata[i]));

      if (old == NULL)
        add (changes, HC_CHANGE_ADDED, after->pdata[i]);
      else if (!hc_part_equal (old, after->pdata[i]))
        add (changes,
             is_in_another_place (old, after->pdata[i]) ? HC_CHANGE_MOVED : HC_CHANGE_ALTERED,
             after->pdata[i]);
    }
}

/* A pen without what stands in it: fittings are compared by themselves. */
static HcParts *
bare_pens (const HcLayout *layout)
{
  HcParts *pens = hc_layout_get (layout)->pens;
  HcParts *bare = hc_parts_new ();
  g_autoptr (HcParts) none = hc_parts_new ();

  for (guint i = 0; i < pens->len; i++)
    {
      HcPenValues values = *hc_pen_get (pens->pdata[i]);

      values.fittings = none;
      g_ptr_array_add (bare, hc_pen_with (pens->pdata[i], &values));
    }
  return bare;
}

static HcParts *
all_fittings (const HcLayout *layout)
{
  const HcLayoutValues *values = hc_layout_get (layout);
  HcParts *all = hc_parts_new ();

  for (guint i = 0; i < values->pens->len; i++)
    {
      HcParts *fittings = hc_pen_get (values->pens->pdata[i])->fittings;

      for (guint j = 0; j < fittings->len; j++)
        g_ptr_array_add (all, hc_part_ref (fittings->pdata[j]));
    }
  for (guint i = 0; i < values->loose->len; i++)
    g_ptr_array_add (all, hc_part_ref (values->loose->pdata[i]));
  return all;
}

static gboolean
has_moved (const HcLayout *before, const HcLayout *after, const HcWall *wall)
{
  HcPoint from[2], to[2];

  return hc_layout_get_wall_line (before, hc_layout_get_wall (before, hc_wall_get_id (wall)),
                                  &from[0], &to[0])
         && hc_layout_get_wall_line (after, wall, &from[1], &to[1])
         && !(hc_point_equal (from[0], from[1]) && hc_point_equal (to[0], to[1]));
}

/* Walls stand elsewhere when their corners do, though they are the same. */
static void
find_moved_walls (const HcLayout *before, const HcLayout *after, GArray *changes)
{
  HcParts *walls = hc_layout_get (after)->walls;

  for (guint i = 0; i < walls->len; i++)
    if (hc_layout_get_wall (before, hc_wall_get_id (walls->pdata[i])) != NULL
        && has_moved (before, after, walls->pdata[i]))
      add (changes, HC_CHANGE_MOVED, walls->pdata[i]);
}

/**
 * hc_layout_find_changes: (skip)
 * @before: a layout
 * @after: another of the same plan, its parts having the same ids
 *
 * Returns: (transfer full) (element-type HcLayoutChange): pens, walls, openings
 *   and fittings that are not in both, or not the same
 */
GArray *
hc_layout_find_changes (const HcLayout *before, const HcLayout *after)
{
  GArray *changes = g_array_new (FALSE, FALSE, sizeof (HcLayoutChange));
  g_autoptr (HcParts) old_pens = bare_pens (before);
  g_autoptr (HcParts) pens = bare_pens (after);
  g_autoptr (HcParts) old_fittings = all_fittings (before);
  g_autoptr (HcParts) fittings = all_fittings (after);

  g_array_set_clear_func (changes, clear_change);
  compare (old_pens, pens, changes);
  compare (hc_layout_get (before)->walls, hc_layout_get (after)->walls, changes);
  find_moved_walls (before, after, changes);
  compare (hc_layout_get (before)->openings, hc_layout_get (after)->openings, changes);
  compare (old_fittings, fittings, changes);
  return changes;
}
