/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Names and purposes of the openings a keeper can add. */
#include "config.h"

#include "book/opening-type.h"

#include "book/translate.h"

/**
 * hc_opening_type_get_name:
 * @self: an opening to add
 * @count: how many of them
 *
 * Returns: its name in the keeper's language, for one or several
 */
const char *
hc_opening_type_get_name (const HcOpeningType *self, gulong count)
{
  g_return_val_if_fail (self != NULL, NULL);
  return hc_translate_count (self->name, self->plural, count);
}

/**
 * hc_opening_type_get_why:
 * @self: an opening to add
 *
 * Returns: what it is for, in the keeper's language
 */
const char *
hc_opening_type_get_why (const HcOpeningType *self)
{
  g_return_val_if_fail (self != NULL, NULL);
  return hc_translate (self->why);
}
