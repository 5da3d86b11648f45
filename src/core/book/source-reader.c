/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Reading what was published, and what stands behind a fact. */
#include "config.h"

#include "book/source-reader.h"

#include "book/words.h"

#include <glib/gi18n-lib.h>

static void
read_source (HcRecord *record, gpointer item, gpointer user_data)
{
  HcSource *source = item;

  source->key = hc_record_text (record, "key");
  source->title = hc_record_text (record, "title");
  source->publisher = hc_record_text (record, "publisher");
  source->year = hc_record_maybe_whole (record, "year", 1800, 2100, 0);
  source->where = hc_record_text (record, "where");
}

/* Reads the sources a file lists. */
void
hc_sources_read (HcSources *self, HcRecord *root)
{
  self->entries
      = hc_record_table (root, "sources", sizeof (HcSource), read_source, NULL, &self->n);
}

static const HcSource *
find_source (const HcSources *self, HcRecord *record)
{
  const char *key = hc_record_maybe_text (record, "source");

  if (key == NULL)
    return NULL;
  for (guint i = 0; i < self->n; i++)
    if (g_str_equal (self->entries[i].key, key))
      return &self->entries[i];
  hc_record_fault (record, "source", _("no source with the key “%s” is listed under sources."),
                   key);
  return NULL;
}

/* Reads the basis of a fact and the source it names; what is published names
 * one. */
HcEvidence
hc_sources_read_grounds (const HcSources *self, HcRecord *record, const HcSource **source)
{
  HcEvidence evidence = (HcEvidence) hc_record_choice (record, "basis", hc_evidence_words);

  *source = find_source (self, record);
  if (evidence == HC_EVIDENCE_PUBLISHED && *source == NULL)
    hc_record_fault (record, "source",
                     _("what is published needs a source; name its key here."));
  return evidence;
}
