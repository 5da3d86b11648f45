/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A breed's names. */
#include "config.h"

#include "book/breed.h"

#include "book/translate.h"

/**
 * hc_breed_get_name:
 * @self: a breed
 *
 * Returns: its name in the keeper's language
 */
const char *
hc_breed_get_name (const HcBreed *self)
{
  g_return_val_if_fail (self != NULL, NULL);
  return hc_translate (self->name);
}

/**
 * hc_breed_get_egg_colour:
 * @self: a breed
 *
 * Returns: the colour of its eggs in the keeper's language
 */
const char *
hc_breed_get_egg_colour (const HcBreed *self)
{
  g_return_val_if_fail (self != NULL, NULL);
  return hc_translate (self->egg_colour);
}
