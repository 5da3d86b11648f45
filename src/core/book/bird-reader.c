/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Reading kinds of bird and breeds. */
#include "config.h"

#include "book/bird-reader.h"

#include "book/book-private.h"
#include "book/words.h"

#include <glib/gi18n-lib.h>

static void
read_body (HcRecord *record, HcKind *kind)
{
  kind->hen_kg = hc_record_number (record, "hen_kg", 0.1, 20);
  kind->cock_kg = hc_record_number (record, "cock_kg", 0.1, 20);
  kind->width_mm = hc_record_number (record, "width_mm", 50, 1000);
  kind->length_mm = hc_record_number (record, "length_mm", 50, 2000);
  kind->back_mm = hc_record_number (record, "back_mm", 50, 1000);
  kind->head_mm = hc_record_number (record, "head_mm", 50, 2000);
  kind->comb = (HcComb) hc_record_choice (record, "comb", hc_comb_words);
}

static void
read_ages (HcRecord *record, HcKind *kind)
{
  kind->roost_from_week = hc_record_whole (record, "roost_from_week", 1, 100);
  kind->feathered_week = hc_record_whole (record, "feathered_week", 1, 100);
  kind->grown_week = hc_record_whole (record, "grown_week", 1, 100);
  kind->at_lay_week = hc_record_maybe_whole (record, "at_lay_week", 10, 200, 0);
  kind->parting_week = hc_record_maybe_whole (record, "parting_week", 1, 200, 0);
  kind->hatch_days = hc_record_whole (record, "hatch_days", 10, 60);
}

static void
read_habits (HcRecord *record, HcKind *kind)
{
  kind->perching = (HcPerching) hc_record_choice (record, "perching", hc_perching_words);
  kind->raised_for_meat = hc_record_flag (record, "raised_for_meat");
  kind->nests_on_floor = hc_record_flag (record, "nests_on_floor");
  kind->head_deep_water = hc_record_flag (record, "head_deep_water");
  kind->nipples_alone = hc_record_flag (record, "nipples_alone");
  kind->flies_up = hc_record_flag (record, "flies_up");
  kind->feed_g = hc_record_number (record, "feed_g", 1, 1000);
  kind->water_ml = hc_record_number (record, "water_ml", 1, 5000);
  kind->eggs_per_year = hc_record_maybe_number (record, "eggs_per_year", 0, 366, 0);
  kind->egg_g = hc_record_maybe_number (record, "egg_g", 10, 300, 0);
}

static void
read_growth (HcRecord *record, HcKind *kind)
{
  guint n = hc_record_count (record, "growth");

  if (n < 2 || n > HC_KIND_GROWTH_POINTS)
    hc_record_fault (record, "growth", _("list 2 to %d points."), HC_KIND_GROWTH_POINTS);
  kind->n_growth = CLAMP (n, 2, HC_KIND_GROWTH_POINTS);
  for (guint i = 0; i < MIN (n, kind->n_growth); i++)
    {
      g_autoptr (HcRecord) point = hc_record_open_at (record, "growth", i);
      double after = i > 0 ? kind->growth[i - 1].week + 0.1 : 0;

      kind->growth[i].week = hc_record_number (point, "week", after, 200);
      kind->growth[i].kg = hc_record_number (point, "kg", 0.01, 20);
    }
}

void
hc_kind_read (HcRecord *record, gpointer item, gpointer user_data)
{
  const HcDataContext *context = user_data;
  HcKind *kind = item;

  kind->id = hc_record_id (record, "id");
  kind->name = hc_record_text (record, "name");
  kind->plural = hc_record_text (record, "plural");
  kind->species = (HcSpecies) hc_record_choice (record, "species", hc_species_words);
  read_body (record, kind);
  read_ages (record, kind);
  read_habits (record, kind);
  read_growth (record, kind);
  kind->evidence = hc_sources_read_grounds (&context->sources, record, &kind->source);
  kind->note = hc_record_text (record, "note");
}

static const HcKind *
read_kind_of (HcRecord *record, const HcTable *table)
{
  const HcKind *kinds = table->entries;
  const char *id = hc_record_text (record, "kind");

  for (guint i = 0; i < table->n; i++)
    if (g_str_equal (kinds[i].id, id))
      return &kinds[i];
  hc_record_fault (record, "kind", _("there is no kind of bird “%s”."), id);
  return kinds;
}

void
hc_breed_read (HcRecord *record, gpointer item, gpointer user_data)
{
  const HcDataContext *context = user_data;
  HcBreed *breed = item;

  breed->id = hc_record_id (record, "id");
  breed->name = hc_record_text (record, "name");
  breed->kind = read_kind_of (record, context->kinds);
  breed->purpose = (HcPurpose) hc_record_choice (record, "purpose", hc_purpose_words);
  breed->egg_colour = hc_record_maybe_text (record, "egg_colour");
  breed->egg_g = hc_record_maybe_number (record, "egg_g", 10, 300, 0);
  breed->eggs_per_year = hc_record_maybe_number (record, "eggs_per_year", 0, 366, 0);
  breed->hen_kg = hc_record_number (record, "hen_kg", 0.1, 20);
  breed->cock_kg = hc_record_number (record, "cock_kg", 0.1, 20);
  breed->comb = (HcComb) hc_record_choice (record, "comb", hc_comb_words);
  breed->hardiness = (HcHardiness) hc_record_choice (record, "hardiness", hc_hardiness_words);
  breed->temper = (HcTemper) hc_record_choice (record, "temper", hc_temper_words);
  breed->evidence = hc_sources_read_grounds (&context->sources, record, &breed->source);
}
