/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Reading measures of new houses. */
#include "config.h"

#include "book/house-measure-reader.h"

#include "book/book-private.h"

#define MOST 1e6

void
hc_house_measure_read (HcRecord *record, gpointer item, gpointer user_data)
{
  const HcDataContext *context = user_data;
  HcHouseMeasure *measure = item;

  measure->id = hc_record_id (record, "id");
  measure->value = hc_record_number (record, "value", 0, MOST);
  measure->evidence = hc_sources_read_grounds (&context->sources, record, &measure->source);
  measure->note = hc_record_text (record, "note");
}
