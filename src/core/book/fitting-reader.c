/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Reading the things a keeper can add. */
#include "config.h"

#include "book/fitting-reader.h"

#include "book/book-private.h"
#include "book/words.h"

#include <glib/gi18n-lib.h>

#define MOST_MM 100000
#define COLDEST_C -273

static void
read_range (HcRecord *record, gpointer item, gpointer user_data)
{
  HcMeasureRange *range = item;

  range->name = hc_record_id (record, "measure");
  range->least = hc_record_number (record, "least", 0, MOST_MM);
  range->most = hc_record_number (record, "most", range->least, MOST_MM);
  range->start = hc_record_number (record, "start", range->least, range->most);
}

static void
read_device (HcRecord *record, gpointer item, gpointer user_data)
{
  HcDevice *device = item;

  device->id = hc_record_id (record, "id");
  device->name = hc_record_text (record, "name");
  device->width_mm = hc_record_number (record, "width_mm", 1, MOST_MM);
  device->depth_mm = hc_record_number (record, "depth_mm", 1, MOST_MM);
  device->height_mm = hc_record_number (record, "height_mm", 1, MOST_MM);
  device->places = hc_record_maybe_whole (record, "places", 0, 2000, 0);
  device->litres = hc_record_maybe_number (record, "litres", 0, 1000, 0);
  device->water_mm = hc_record_maybe_number (record, "water_mm", 0, 2000, 0);
  device->chicks = hc_record_maybe_whole (record, "chicks", 0, 10000, 0);
  device->watts = hc_record_maybe_number (record, "watts", 0, 10000, 0);
  device->lowest_room_c
      = hc_record_maybe_number (record, "lowest_room_c", COLDEST_C, 60, COLDEST_C);
  device->heated = hc_record_flag (record, "heated");
}

static void
read_caution (HcRecord *record, gpointer item, gpointer user_data)
{
  HcCaution *caution = item;

  caution->text = hc_record_text (record, "caution");
}

void
hc_fitting_type_read (HcRecord *record, gpointer item, gpointer user_data)
{
  const HcDataContext *context = user_data;
  HcFittingType *type = item;

  type->kind = hc_record_id (record, "kind");
  type->form = hc_record_id (record, "form");
  type->name = hc_record_text (record, "name");
  type->plural = hc_record_text (record, "plural");
  type->why = hc_record_text (record, "why");
  type->group = (HcFittingGroup) hc_record_choice (record, "group", hc_fitting_group_words);
  type->stretches = hc_record_flag (record, "stretches");
  type->ranges = hc_record_table (record, "measures", sizeof (HcMeasureRange), read_range, NULL,
                                  &type->n_ranges);
  type->devices = hc_record_table (record, "devices", sizeof (HcDevice), read_device, NULL,
                                   &type->n_devices);
  type->cautions = hc_record_table (record, "cautions", sizeof (HcCaution), read_caution, NULL,
                                    &type->n_cautions);
  type->evidence = hc_sources_read_grounds (&context->sources, record, &type->source);
}
