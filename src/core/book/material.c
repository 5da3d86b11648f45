/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A material's name. */
#include "config.h"

#include "book/material.h"

#include "book/translate.h"

/**
 * hc_material_get_name:
 * @name: the English name of a floor layer, bedding, mesh or construction
 *
 * Returns: its name in the keeper's language
 */
const char *
hc_material_get_name (const char *name)
{
  return hc_translate (name);
}
