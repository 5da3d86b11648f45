/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Refusals, bounds and lists, shared by all edits. */
#include "config.h"

#include "plan/edit.h"

#include "base/units.h"

#include <glib/gi18n-lib.h>
#include <math.h>

/**
 * hc_edit_refuse: (skip)
 * @error: where the sentence goes
 * @sentence: a translated format
 *
 * Returns: %NULL, to be handed on as the result of the edit
 */
gpointer
hc_edit_refuse (GError **error, const char *sentence, ...)
{
  g_autofree char *text = NULL;
  va_list arguments;

  va_start (arguments, sentence);
  text = g_strdup_vprintf (sentence, arguments);
  va_end (arguments);
  g_set_error_literal (error, HC_ERROR, HC_ERROR_EDIT, text);
  return NULL;
}

static gboolean
read_number (gconstpointer values, const HcMember *member, double *number)
{
  gconstpointer at = (const char *) values + member->offset;

  if (member->kind <= HC_MEMBER_NUMBER)
    *number = *(const double *) at;
  else if (member->kind == HC_MEMBER_COUNT)
    *number = *(const int *) at;
  else
    return FALSE;
  return TRUE;
}

static char *
say_bound (const HcPlan *plan, const HcMember *member, double bound)
{
  if (member->kind == HC_MEMBER_LENGTH)
    return hc_length_format (bound, hc_plan_get_site (plan)->units);
  return g_strdup_printf ("%g", bound);
}

static void
refuse_number (const HcPlan *plan, const HcMember *member, double number, GError **error)
{
  g_autofree char *least = say_bound (plan, member, member->least);
  g_autofree char *most = say_bound (plan, member, member->most);

  if (!isfinite (number))
    hc_edit_refuse (error, _("That is not a number. Type one, for instance 2."));
  else if (number < member->least)
    hc_edit_refuse (error, _("That is too small: type %s or more."), least);
  else
    hc_edit_refuse (error, _("That is too large: type %s or less."), most);
}

/**
 * hc_edit_accepts: (skip)
 * @plan: the plan, for its units
 * @klass: what part @values are for
 * @values: values a keeper asks for
 * @error: says which bound they break
 *
 * Returns: whether a plan may hold them
 */
gboolean
hc_edit_accepts (const HcPlan *plan, const HcPartClass *klass, gconstpointer values,
                 GError **error)
{
  for (guint i = 0; i < klass->n_members; i++)
    {
      const HcMember *member = &klass->members[i];
      double number;

      if (!read_number (values, member, &number)
          || (number >= member->least && number <= member->most))
        continue;
      refuse_number (plan, member, number, error);
      return FALSE;
    }
  return TRUE;
}

static gboolean
layout_has_id (const HcLayout *layout, const char *id)
{
  const HcLayoutValues *values = hc_layout_get (layout);

  return hc_parts_find (values->corners, id) != NULL || hc_parts_find (values->walls, id) != NULL
         || hc_parts_find (values->openings, id) != NULL
         || hc_parts_find (values->pens, id) != NULL
         || hc_layout_get_fitting (layout, id, NULL) != NULL;
}

/**
 * hc_plan_has_id: (skip)
 * @plan: a plan
 * @id: an id
 *
 * Returns: whether something in the layout worked on, a group of birds, eggs
 *   to hatch, a building or a variant has it
 */
gboolean
hc_plan_has_id (const HcPlan *plan, const char *id)
{
  const HcPlanValues *values = hc_plan_get (plan);

  return layout_has_id (hc_plan_get_layout (plan), id)
         || hc_parts_find (values->batches, id) != NULL
         || hc_parts_find (values->clutches, id) != NULL
         || hc_parts_find (values->buildings, id) != NULL
         || hc_parts_find (values->variants, id) != NULL;
}

/**
 * hc_edit_id_is_free: (skip)
 * @plan: a plan
 * @id: an id for something new
 * @error: set when it is taken
 *
 * Returns: whether nothing has @id
 */
gboolean
hc_edit_id_is_free (const HcPlan *plan, const char *id, GError **error)
{
  if (!hc_plan_has_id (plan, id))
    return TRUE;
  hc_edit_refuse (error, _("This plan already has a part “%s”. Give the new one another id."), id);
  return FALSE;
}

HcPlan *
hc_edit_with_layout (HcPlan *plan, const HcLayoutValues *values)
{
  g_autoptr (HcLayout) layout = hc_layout_with (hc_plan_get_layout (plan), values);

  return hc_plan_with_layout (plan, layout);
}

/**
 * hc_edit_put: (skip)
 * @parts: (inout): a list held by reference
 * @part: a part that replaces the one with its id, or is added
 */
void
hc_edit_put (HcParts **parts, gpointer part)
{
  HcParts *after = hc_parts_with (*parts, part);

  g_ptr_array_unref (*parts);
  *parts = after;
}

void
hc_edit_drop (HcParts **parts, const char *id)
{
  HcParts *after = hc_parts_without (*parts, id);

  g_ptr_array_unref (*parts);
  *parts = after;
}

/**
 * hc_edit_hold_layout: (skip)
 * @layout: a layout
 *
 * Returns: its values with a reference to each of their lists, so that
 *   hc_edit_put() can exchange them; to be declared with `g_auto`
 */
HcLayoutValues
hc_edit_hold_layout (const HcLayout *layout)
{
  HcLayoutValues values = *hc_layout_get (layout);

  g_ptr_array_ref (values.corners);
  g_ptr_array_ref (values.walls);
  g_ptr_array_ref (values.openings);
  g_ptr_array_ref (values.pens);
  g_ptr_array_ref (values.loose);
  return values;
}

void
hc_edit_let_go_layout (HcLayoutValues *values)
{
  g_clear_pointer (&values->corners, g_ptr_array_unref);
  g_clear_pointer (&values->walls, g_ptr_array_unref);
  g_clear_pointer (&values->openings, g_ptr_array_unref);
  g_clear_pointer (&values->pens, g_ptr_array_unref);
  g_clear_pointer (&values->loose, g_ptr_array_unref);
}
