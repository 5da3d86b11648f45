/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Reading the openings a keeper can add. */
#include "config.h"

#include "book/opening-reader.h"

#include "book/book-private.h"
#include "book/words.h"

#define MOST_MM 20000

void
hc_opening_type_read (HcRecord *record, gpointer item, gpointer user_data)
{
  const HcDataContext *context = user_data;
  HcOpeningType *type = item;

  type->kind = hc_record_id (record, "kind");
  type->name = hc_record_text (record, "name");
  type->plural = hc_record_text (record, "plural");
  type->why = hc_record_text (record, "why");
  type->group = (HcFittingGroup) hc_record_choice (record, "group", hc_fitting_group_words);
  type->width_mm = hc_record_number (record, "width_mm", 10, MOST_MM);
  type->height_mm = hc_record_number (record, "height_mm", 10, MOST_MM);
  type->sill_mm = hc_record_number (record, "sill_mm", 0, MOST_MM);
  type->open_winter = hc_record_maybe_number (record, "open_winter", 0, 1, 0);
  type->open_summer = hc_record_maybe_number (record, "open_summer", 0, 1, 0);
  type->shut_at_dusk = hc_record_flag (record, "shut_at_dusk");
  type->open_by_day = hc_record_flag (record, "open_by_day");
  type->evidence = hc_sources_read_grounds (&context->sources, record, &type->source);
}
