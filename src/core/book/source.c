/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What stands behind a fact, by name, and reading what was published. */
#include "config.h"

#include "book/source.h"

#include "book/source-reader.h"
#include "book/words.h"

/**
 * hc_evidence_to_string:
 * @evidence: what stands behind a fact
 *
 * Returns: its word in data and programs' output
 */
const char *
hc_evidence_to_string (HcEvidence evidence)
{
  g_return_val_if_fail (evidence <= HC_EVIDENCE_OWN, NULL);
  return hc_evidence_words[evidence];
}

/**
 * hc_evidence_from_string:
 * @text: a word
 * @evidence: (out): what it stands for
 *
 * Returns: whether @text is such a word
 */
gboolean
hc_evidence_from_string (const char *text, HcEvidence *evidence)
{
  int index;

  if (!hc_words_find (hc_evidence_words, text, &index))
    return FALSE;
  *evidence = (HcEvidence) index;
  return TRUE;
}

/* HcReadItem: one entry of a table of sources. */
void
hc_source_read (HcRecord *record, gpointer item, gpointer user_data)
{
  HcSource *source = item;

  source->key = g_intern_string (hc_record_text (record, "key"));
  source->title = hc_record_text (record, "title");
  source->publisher = hc_record_text (record, "publisher");
  source->year = hc_record_maybe_whole (record, "year", 1800, 2100, 0);
  source->where = hc_record_text (record, "where");
}
