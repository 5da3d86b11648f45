/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Sizes of eggs, feeds and figures of care from data files. */
#include "config.h"

#include "book/care-reader.h"

#include "book/book-private.h"
#include "book/care.h"
#include "book/words.h"

static void
read_grounds (HcRecord *record, const HcDataContext *context, HcGrounds *grounds)
{
  grounds->evidence = hc_sources_read_grounds (&context->sources, record, &grounds->source);
  grounds->note = hc_record_maybe_text (record, "note");
}

void
hc_egg_class_read (HcRecord *record, gpointer item, gpointer user_data)
{
  HcEggClass *class = item;

  class->id = hc_record_id (record, "id");
  class->name = hc_record_text (record, "name");
  class->units = (HcUnits) hc_record_choice (record, "units", hc_units_words);
  class->from_g = hc_record_number (record, "from_g", 0, 500);
  read_grounds (record, user_data, &class->grounds);
}

void
hc_feed_read (HcRecord *record, gpointer item, gpointer user_data)
{
  HcFeed *feed = item;

  feed->id = hc_record_id (record, "id");
  feed->name = hc_record_text (record, "name");
  feed->species = hc_record_choices (record, "species", hc_species_words);
  feed->meat = hc_record_flag (record, "meat");
  feed->from_week = hc_record_whole (record, "from_week", 0, 200);
  feed->at_lay = hc_record_flag (record, "at_lay");
  read_grounds (record, user_data, &feed->grounds);
}

void
hc_care_read (HcRecord *record, gpointer item, gpointer user_data)
{
  HcCare *care = item;

  care->id = hc_record_id (record, "id");
  care->every_days = hc_record_maybe_whole (record, "every_days", 1, 366, 0);
  care->lead_days = hc_record_maybe_whole (record, "lead_days", 0, 366, 0);
  care->low = hc_record_maybe_number (record, "low", 0, 1000, 0);
  care->high = hc_record_maybe_number (record, "high", care->low, 1000, care->low);
  read_grounds (record, user_data, &care->grounds);
}
