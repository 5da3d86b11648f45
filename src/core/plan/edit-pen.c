/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Pens and runs drawn, changed and taken away. */
#include "config.h"

#include "plan/edit-pen.h"

#include "base/ids.h"
#include "base/ring.h"
#include "base/units.h"
#include "plan/edit-homes.h"
#include "plan/edit-sound.h"
#include "plan/forget-pen.h"
#include "plan/pen-name.h"
#include "plan/pen-outline.h"
#include "plan/without-walls.h"

#include <glib/gi18n-lib.h>
#include <math.h>

/* Enough for a pen that meets a dozen others. */
#define MOST_NEW_PARTS 64

/* Narrower is a slip of the hand. */
#define NARROWEST_PEN_MM 100.0

#define PARTITION_MM 100.0
#define FENCE_MM 50.0

/**
 * hc_pen_ids_new:
 *
 * Returns: (transfer full) (array zero-terminated=1): ids for a new pen, the
 *   pen's own first
 */
char **
hc_pen_ids_new (void)
{
  char **ids = g_new0 (char *, MOST_NEW_PARTS + 1);

  for (guint i = 0; i < MOST_NEW_PARTS; i++)
    ids[i] = hc_id_new ();
  return ids;
}

/**
 * hc_pen_name_new: (skip)
 * @plan: a plan
 * @kind: what the new pen is
 *
 * Returns: (transfer full): a name for it until the keeper gives it one
 */
char *
hc_pen_name_new (HcPlan *plan, HcPenKind kind)
{
  HcParts *pens = hc_layout_get (hc_plan_get_layout (plan))->pens;
  guint number = 1;

  for (guint i = 0; i < pens->len; i++)
    number += hc_pen_get (pens->pdata[i])->kind == (int) kind;
  return g_strdup_printf (kind == HC_PEN_RUN ? _("Run %u") : _("Pen %u"), number);
}

/**
 * hc_plan_add_pen:
 * @plan: a plan
 * @kind: a pen under a roof, or a run
 * @one: one corner
 * @other: the corner across
 * @new_ids: (array zero-terminated=1): ids from hc_pen_ids_new()
 * @error: says why not
 *
 * Returns: (transfer full): the plan with a rectangular pen, or %NULL and a
 *   %HC_ERROR_EDIT
 */
HcPlan *
hc_plan_add_pen (HcPlan *plan, HcPenKind kind, HcPoint one, HcPoint other,
                 const char *const *new_ids, GError **error)
{
  HcPoint corners[] = { one, { other.x_mm, one.y_mm }, other, { one.x_mm, other.y_mm } };
  g_autofree char *name = hc_pen_name_new (plan, kind);
  HcPenValues values;
  HcWallValues walls;

  hc_pen_values_init (&values);
  hc_wall_values_init (&walls);
  values.name = name;
  values.kind = kind;
  values.roof = kind == HC_PEN_RUN ? HC_ROOF_NONE : HC_ROOF_SOLID;
  walls.kind = kind == HC_PEN_RUN ? HC_WALL_FENCE : HC_WALL_SOLID;
  walls.thickness_mm = kind == HC_PEN_RUN ? FENCE_MM : PARTITION_MM;
  return hc_plan_add_pen_outline (plan, &values, &walls, corners, G_N_ELEMENTS (corners), new_ids,
                                  error);
}

static gboolean
is_drawn_soundly (const HcPoint *corners, guint n_corners, GError **error)
{
  guint i;

  for (i = 0; i < n_corners; i++)
    if (!(hc_ring_edge_length_mm (corners, n_corners, i) >= NARROWEST_PEN_MM))
      break;
  if (i < n_corners)
    hc_edit_refuse (error, _("That is too narrow for a pen. Draw it larger."));
  else if (hc_ring_find_fault (corners, n_corners, NULL, NULL) != HC_RING_SOUND)
    hc_edit_refuse (error, _("The walls of a pen would cross each other. Draw it another way."));
  else
    return TRUE;
  return FALSE;
}

static HcPlan *
with_pen (HcPlan *plan, HcLayout *layout, const char *id, const HcPenValues *values, char **ring)
{
  g_auto (HcLayoutValues) changed = hc_edit_hold_layout (layout);
  HcPenValues pen_values = *values;
  g_autoptr (HcPen) pen = NULL;
  g_autoptr (HcLayout) after = NULL;

  pen_values.walls = ring;
  pen = hc_pen_new (id, &pen_values);
  hc_edit_put (&changed.pens, pen);
  after = hc_layout_with (layout, &changed);
  return hc_plan_with_layout (plan, after);
}

/**
 * hc_plan_add_pen_outline:
 * @plan: a plan
 * @values: what the pen is; its walls are made here
 * @walls: what new walls are; their ends are made here
 * @corners: (array length=n_corners): its outline
 * @n_corners: how many, three at least
 * @new_ids: (array zero-terminated=1): ids from hc_pen_ids_new(), used in order
 * @error: says why not
 *
 * Where an edge lies along a wall that is there, the pen shares the wall. What
 * stood loose on its floor stands in it then.
 *
 * Returns: (transfer full): the plan with the pen, or %NULL and a
 *   %HC_ERROR_EDIT
 */
HcPlan *
hc_plan_add_pen_outline (HcPlan *plan, const HcPenValues *values, const HcWallValues *walls,
                         const HcPoint *corners, guint n_corners, const char *const *new_ids,
                         GError **error)
{
  HcNewIds ids = { new_ids, 0 };
  const char *id = hc_new_ids_take (&ids, plan, error);
  g_autofree HcPoint *outline = NULL;
  g_auto (GStrv) ring = NULL;
  g_autoptr (HcLayout) walled = NULL;
  g_autoptr (HcPlan) after = NULL;

  if (id == NULL || !is_drawn_soundly (corners, n_corners, error)
      || !hc_edit_accepts (plan, &hc_pen_class, values, error)
      || !hc_edit_accepts (plan, &hc_wall_class, walls, error))
    return NULL;
  outline = hc_outline_lean_on_walls (hc_plan_get_layout (plan), corners, n_corners);
  walled = hc_layout_with_outline (plan, walls, outline, n_corners, &ids, &ring, error);
  if (walled == NULL)
    return NULL;
  after = with_pen (plan, walled, id, values, ring);
  return hc_edit_if_sound (plan, hc_edit_rehouse_all (after), error);
}

static HcPen *
find (HcPlan *plan, const char *pen, GError **error)
{
  HcPen *found = hc_layout_get_pen (hc_plan_get_layout (plan), pen);

  if (found == NULL)
    hc_edit_refuse (error, _("That pen is no longer in the plan. Choose another."));
  return found;
}

static gboolean
roof_is_above_the_eaves (HcPlan *plan, const HcPenValues *pen, GError **error)
{
  g_autofree char *eaves = NULL;

  if (pen->roof_shape == HC_ROOF_FLAT || pen->ridge_mm == 0 || pen->ridge_mm >= pen->height_mm)
    return TRUE;
  eaves = hc_length_format (pen->height_mm, hc_plan_get_site (plan)->units);
  hc_edit_refuse (error, _("The ridge would be lower than the eaves. Type %s or more, or 0 for a "
                           "flat roof."), eaves);
  return FALSE;
}

/**
 * hc_plan_set_pen:
 * @plan: a plan
 * @pen: id of a pen
 * @values: what it shall be; its walls and fittings stay as they are
 * @error: says why it cannot be
 *
 * Returns: (transfer full): the changed plan, @plan when nothing changed, or
 *   %NULL and a %HC_ERROR_EDIT
 */
HcPlan *
hc_plan_set_pen (HcPlan *plan, const char *pen, const HcPenValues *values, GError **error)
{
  HcPen *before = find (plan, pen, error);
  g_auto (HcLayoutValues) changed = hc_edit_hold_layout (hc_plan_get_layout (plan));
  HcPenValues kept = *values;
  g_autoptr (HcPen) after = NULL;
  g_autoptr (HcPlan) set = NULL;

  if (before == NULL || !hc_edit_accepts (plan, &hc_pen_class, values, error)
      || !roof_is_above_the_eaves (plan, values, error))
    return NULL;
  kept.walls = hc_pen_get (before)->walls;
  kept.fittings = hc_pen_get (before)->fittings;
  after = hc_pen_with (before, &kept);
  hc_edit_put (&changed.pens, after);
  set = hc_edit_with_layout (plan, &changed);
  return hc_edit_if_sound (plan, hc_edit_rehouse_all (set), error);
}

static HcLayout *
layout_without_pen (HcLayout *layout, HcPen *pen)
{
  g_auto (HcLayoutValues) values = hc_edit_hold_layout (layout);
  g_autoptr (GArray) places = hc_layout_get_pen_corners (layout, pen);
  char **walls = hc_pen_get (pen)->walls;

  for (guint i = 0; walls[i] != NULL; i++)
    {
      HcPen *beside[2];

      if (hc_layout_get_pens_beside (layout, walls[i], beside) == 1)
        hc_edit_drop_wall (&values, walls[i]);
    }
  hc_edit_drop (&values.pens, hc_pen_get_id (pen));
  return hc_layout_without_bare_corners (layout, &values, places);
}

static HcPlan *
with_fittings_loose (HcPlan *plan, HcParts *fittings)
{
  g_auto (HcLayoutValues) values = hc_edit_hold_layout (hc_plan_get_layout (plan));

  for (guint i = 0; i < fittings->len; i++)
    hc_edit_put (&values.loose, fittings->pdata[i]);
  return hc_edit_with_layout (plan, &values);
}

/**
 * hc_plan_remove_pen_and_fittings:
 * @plan: a plan
 * @pen: id of a pen
 * @error: says why not
 *
 * Walls that only it used go, with their openings; birds at home in it have no
 * pen then.
 *
 * Returns: (transfer full): the changed plan, or %NULL and a %HC_ERROR_EDIT
 */
HcPlan *
hc_plan_remove_pen_and_fittings (HcPlan *plan, const char *pen, GError **error)
{
  HcPen *gone = find (plan, pen, error);
  g_autoptr (HcLayout) layout = NULL;
  g_autoptr (HcPlan) without = NULL;

  if (gone == NULL)
    return NULL;
  layout = layout_without_pen (hc_plan_get_layout (plan), gone);
  without = hc_plan_with_layout (plan, layout);
  return hc_edit_forget_pen (without, pen, NULL);
}

/**
 * hc_plan_remove_pen:
 * @plan: a plan
 * @pen: id of a pen
 * @error: says why not
 *
 * As hc_plan_remove_pen_and_fittings(), but what stood in it stays where it
 * stands, loose.
 *
 * Returns: (transfer full): the changed plan, or %NULL and a %HC_ERROR_EDIT
 */
HcPlan *
hc_plan_remove_pen (HcPlan *plan, const char *pen, GError **error)
{
  HcPen *gone = find (plan, pen, error);
  g_autoptr (HcPlan) without
      = gone != NULL ? hc_plan_remove_pen_and_fittings (plan, pen, error) : NULL;

  return without != NULL ? with_fittings_loose (without, hc_pen_get (gone)->fittings) : NULL;
}
