/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Names, measures and sizes of the things a keeper can add. */
#include "config.h"

#include "book/fitting-type.h"

#include "book/translate.h"

#include <glib/gi18n-lib.h>

/**
 * hc_fitting_group_get_name:
 * @group: a group of things to add
 *
 * Returns: what birds do with them, in the keeper's language
 */
const char *
hc_fitting_group_get_name (HcFittingGroup group)
{
  static const char *const names[]
      = { N_ ("Sleep"),     N_ ("Lay"),     N_ ("Eat and drink"),
          N_ ("Keep warm"), N_ ("Breathe"), N_ ("Come and go"),
          N_ ("Stay safe") };

  g_return_val_if_fail (group < G_N_ELEMENTS (names), NULL);
  return hc_translate (names[group]);
}

/**
 * hc_fitting_type_get_name:
 * @self: a thing to add
 * @count: how many of them
 *
 * Returns: its name in the keeper's language, for one or several
 */
const char *
hc_fitting_type_get_name (const HcFittingType *self, gulong count)
{
  g_return_val_if_fail (self != NULL, NULL);
  return hc_translate_count (self->name, self->plural, count);
}

/**
 * hc_fitting_type_get_why:
 * @self: a thing to add
 *
 * Returns: what it is for, in the keeper's language
 */
const char *
hc_fitting_type_get_why (const HcFittingType *self)
{
  g_return_val_if_fail (self != NULL, NULL);
  return hc_translate (self->why);
}

/**
 * hc_fitting_type_get_caution:
 * @self: a thing to add
 * @index: which of its cautions
 *
 * Returns: what to take care of, in the keeper's language
 */
const char *
hc_fitting_type_get_caution (const HcFittingType *self, guint index)
{
  g_return_val_if_fail (self != NULL && index < self->n_cautions, NULL);
  return hc_translate (self->cautions[index].text);
}

/**
 * hc_fitting_type_find_range:
 * @self: a thing to add
 * @measure: a measure, as plan files call it: "width_mm", "bars"
 *
 * Returns: (nullable) (transfer none): its range, or %NULL if the thing has no
 *   such measure
 */
const HcMeasureRange *
hc_fitting_type_find_range (const HcFittingType *self, const char *measure)
{
  g_return_val_if_fail (self != NULL && measure != NULL, NULL);
  for (guint i = 0; i < self->n_ranges; i++)
    if (g_str_equal (self->ranges[i].name, measure))
      return &self->ranges[i];
  return NULL;
}

/**
 * hc_fitting_type_find_device:
 * @self: a thing to add
 * @id: (nullable): a device's id
 *
 * Returns: (nullable) (transfer none): the bought size of that id
 */
const HcDevice *
hc_fitting_type_find_device (const HcFittingType *self, const char *id)
{
  g_return_val_if_fail (self != NULL, NULL);
  for (guint i = 0; i < self->n_devices; i++)
    if (g_strcmp0 (self->devices[i].id, id) == 0)
      return &self->devices[i];
  return NULL;
}

/**
 * hc_device_get_name:
 * @self: a bought thing
 *
 * Returns: its name in the keeper's language
 */
const char *
hc_device_get_name (const HcDevice *self)
{
  g_return_val_if_fail (self != NULL, NULL);
  return hc_translate (self->name);
}
