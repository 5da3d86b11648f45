/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A predator's name and habits, and reading them. */
#include "config.h"

#include "book/predator.h"

#include "book/book-private.h"
#include "book/predator-reader.h"
#include "book/translate.h"

/**
 * hc_predator_get_name:
 * @self: a predator
 *
 * Returns: its name in the keeper's language
 */
const char *
hc_predator_get_name (const HcPredator *self)
{
  g_return_val_if_fail (self != NULL, NULL);
  return hc_translate (self->name);
}

/**
 * hc_predator_get_note:
 * @self: a predator
 *
 * Returns: (nullable): a remark in the keeper's language
 */
const char *
hc_predator_get_note (const HcPredator *self)
{
  g_return_val_if_fail (self != NULL, NULL);
  return hc_translate (self->note);
}

static void
read_hunting (HcRecord *record, HcPredator *predator)
{
  predator->overhead = hc_record_flag (record, "overhead");
  predator->takes_birds = hc_record_flag (record, "takes_birds");
  predator->takes_to_week = hc_record_maybe_whole (record, "takes_to_week", 1, 100, 0);
  predator->hunts_by_day = hc_record_flag (record, "hunts_by_day");
  predator->hunts_by_night = hc_record_flag (record, "hunts_by_night");
}

static void
read_reach (HcRecord *record, HcPredator *predator)
{
  predator->digs_mm = hc_record_maybe_number (record, "digs_mm", 0, 5000, 0);
  predator->jumps_mm = hc_record_maybe_number (record, "jumps_mm", 0, 5000, 0);
  predator->reach_mm = hc_record_maybe_number (record, "reach_mm", 0, 2000, 0);
  predator->reaches_through_mm
      = hc_record_maybe_number (record, "reaches_through_mm", 0, 500, 0);
}

void
hc_predator_read (HcRecord *record, gpointer item, gpointer user_data)
{
  const HcDataContext *context = user_data;
  HcPredator *predator = item;

  predator->id = hc_record_id (record, "id");
  predator->name = hc_record_text (record, "name");
  predator->passes_mm = hc_record_number (record, "passes_mm", 1, 1000);
  read_hunting (record, predator);
  predator->digs = hc_record_flag (record, "digs");
  predator->climbs = hc_record_flag (record, "climbs");
  predator->gnaws = hc_record_flag (record, "gnaws");
  predator->tears = hc_record_flag (record, "tears");
  predator->opens_latches = hc_record_flag (record, "opens_latches");
  read_reach (record, predator);
  predator->evidence = hc_sources_read_grounds (&context->sources, record, &predator->source);
  predator->note = hc_record_maybe_text (record, "note");
}
