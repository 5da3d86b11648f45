/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * An opening, as the catalogue describes it, made one of a plan. */
#include "config.h"

#include "book/make-opening.h"

static HcOpeningKind
kind_of (const HcOpeningType *self)
{
  for (int kind = 0; kind < HC_N_OPENING_KINDS; kind++)
    if (g_str_equal (hc_opening_kind_get_word (kind), self->kind))
      return kind;
  g_return_val_if_reached (HC_OPENING_VENT);
}

/**
 * hc_opening_type_make: (skip)
 * @self: an opening to add
 * @id: an id no other part of the plan has
 *
 * Returns: (transfer full): an opening of the size it starts with, in no wall yet
 */
HcOpening *
hc_opening_type_make (const HcOpeningType *self, const char *id)
{
  HcOpeningValues values;

  hc_opening_values_init (&values);
  values.kind = kind_of (self);
  values.width_mm = self->width_mm;
  values.height_mm = self->height_mm;
  values.sill_mm = self->sill_mm;
  values.open_winter = self->open_winter;
  values.open_summer = self->open_summer;
  values.shut_at_dusk = self->shut_at_dusk;
  values.open_by_day = self->open_by_day;
  return hc_opening_new (id, &values);
}
