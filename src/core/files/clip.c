/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Copied fittings are written as a plan that holds nothing else, so that what is
 * pasted passes the guard and the checks every plan file passes. */
#include "config.h"

#include "files/clip.h"

#include "files/read.h"
#include "files/write.h"
#include "plan/edit-movable.h"
#include "plan/new-ids.h"

#include <glib/gi18n-lib.h>

static HcPlan *
plan_of (HcParts *fittings)
{
  g_autoptr (HcPlan) empty = hc_plan_new_empty ("clip", "");
  g_auto (HcLayoutValues) values = hc_edit_hold_layout (hc_plan_get_layout (empty));

  for (guint i = 0; i < fittings->len; i++)
    hc_edit_put (&values.loose, fittings->pdata[i]);
  return hc_edit_with_layout (empty, &values);
}

/**
 * hc_clip_write:
 * @plan: a plan
 * @ids: (array zero-terminated=1): ids of fittings
 * @error: says which is no longer there
 *
 * Returns: (transfer full) (nullable): the fittings as text of
 *   %HC_CLIP_MIME_TYPE
 */
char *
hc_clip_write (HcPlan *plan, const char *const *ids, GError **error)
{
  g_autoptr (HcParts) fittings = hc_parts_new ();
  g_autoptr (HcPlan) clip = NULL;

  for (guint i = 0; ids[i] != NULL; i++)
    {
      HcFitting *fitting = hc_edit_find_fitting (plan, ids[i], error);

      if (fitting == NULL)
        return NULL;
      g_ptr_array_add (fittings, hc_fitting_ref (fitting));
    }
  clip = plan_of (fittings);
  return hc_plan_write (clip, NULL, error);
}

static gpointer
refuse_foreign (GError **error)
{
  return hc_edit_refuse (error, _("What was copied holds nothing for a house. Copy things in a "
                                  "plan first, then paste them here."));
}

static HcParts *
read_fittings (const char *text, gsize length, GError **error)
{
  g_autoptr (HcPlanFile) file = hc_plan_file_read (text, length, NULL);
  HcParts *fittings;

  if (file == NULL)
    return refuse_foreign (error);
  fittings = hc_layout_get (hc_plan_get_layout (file->plan))->loose;
  return fittings->len > 0 ? g_ptr_array_ref (fittings) : refuse_foreign (error);
}

/**
 * hc_clip_count:
 * @text: (array length=length) (element-type guint8): what is to be pasted, from anywhere
 * @length: its length in bytes
 * @error: says that it is nothing for a house
 *
 * Returns: how many new ids hc_clip_paste() needs; 0 when it would refuse @text
 */
guint
hc_clip_count (const char *text, gsize length, GError **error)
{
  g_autoptr (HcParts) fittings = read_fittings (text, length, error);

  return fittings != NULL ? fittings->len : 0;
}

static HcFitting *
renewed (HcFitting *fitting, const char *id, HcPoint by, HcPlan *plan, GError **error)
{
  HcFittingValues values = *hc_fitting_get (fitting);
  HcPoint to = hc_point_add (hc_point (values.x_mm, values.y_mm), by);
  g_autoptr (HcFitting) unlocked = NULL;
  g_autoptr (HcFitting) placed = NULL;

  values.locked = FALSE;
  unlocked = hc_fitting_with (fitting, &values);
  placed = hc_edit_placed (unlocked, to, values.turn_deg, plan, error);
  return placed != NULL ? hc_part_with_id (placed, id) : NULL;
}

/**
 * hc_clip_paste:
 * @plan: a plan
 * @text: (array length=length) (element-type guint8): what is to be pasted, from anywhere
 * @length: its length in bytes
 * @middle: where the middle of all that is pasted shall be
 * @new_ids: (array zero-terminated=1): an id for each, as many as hc_clip_count() says
 * @error: says why not
 *
 * They stand as they stood to each other, unlocked, each in the pen under it.
 *
 * Returns: (transfer full): the changed plan, or %NULL and a %HC_ERROR_EDIT
 */
HcPlan *
hc_clip_paste (HcPlan *plan, const char *text, gsize length, HcPoint middle,
               const char *const *new_ids, GError **error)
{
  g_autoptr (HcParts) fittings = read_fittings (text, length, error);
  g_autoptr (GPtrArray) pasted = g_ptr_array_new_with_free_func (hc_part_unref);
  HcNewIds ids = { new_ids, 0 };
  HcPoint by;

  if (fittings == NULL)
    return NULL;
  by = hc_point_subtract (middle, hc_fittings_get_middle (fittings));
  for (guint i = 0; i < fittings->len; i++)
    {
      const char *id = hc_new_ids_take (&ids, plan, error);
      HcFitting *one = id != NULL ? renewed (fittings->pdata[i], id, by, plan, error) : NULL;

      if (one == NULL)
        return NULL;
      g_ptr_array_add (pasted, one);
    }
  return hc_edit_house_all (plan, pasted);
}
