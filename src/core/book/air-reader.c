/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Reading the heat of birds, and figures of air and damp. */
#include "config.h"

#include "book/air-reader.h"

#include "book/air-figure.h"
#include "book/book-private.h"
#include "book/heat-law.h"

#include <glib/gi18n-lib.h>

static guint
read_kinds (HcRecord *record, const HcTable *table)
{
  const HcKind *kinds = table->entries;
  guint read = 0;

  for (guint i = 0; i < hc_record_count (record, "kinds"); i++)
    {
      const char *id = hc_record_text_at (record, "kinds", i);
      guint before = read;

      for (guint kind = 0; kind < table->n; kind++)
        if (g_strcmp0 (kinds[kind].id, id) == 0)
          read |= 1u << kind;
      if (read == before)
        hc_record_fault (record, "kinds", _("there is no kind of bird “%s”."), id);
    }
  return read;
}

void
hc_heat_law_read (HcRecord *record, gpointer item, gpointer user_data)
{
  const HcDataContext *context = user_data;
  HcHeatLaw *law = item;

  law->id = hc_record_id (record, "id");
  law->kinds = read_kinds (record, context->kinds);
  law->w_kg = hc_record_number (record, "w_kg", 0.1, 50);
  law->power = hc_record_number (record, "power", 0.3, 1);
  law->egg_w_kg = hc_record_maybe_number (record, "egg_w_kg", 0, 100, 0);
  law->sensible_share = hc_record_number (record, "sensible_share", 0, 1);
  law->warm_loss = hc_record_number (record, "warm_loss", 0, 1);
  law->evidence = hc_sources_read_grounds (&context->sources, record, &law->source);
  law->note = hc_record_text (record, "note");
}

void
hc_air_figure_read (HcRecord *record, gpointer item, gpointer user_data)
{
  const HcDataContext *context = user_data;
  HcAirFigure *figure = item;

  figure->id = hc_record_id (record, "id");
  figure->value = hc_record_number (record, "value", -1e4, 1e4);
  figure->low = hc_record_number (record, "low", -1e4, figure->value);
  figure->high = hc_record_number (record, "high", figure->value, 1e4);
  figure->evidence = hc_sources_read_grounds (&context->sources, record, &figure->source);
  figure->note = hc_record_text (record, "note");
}
