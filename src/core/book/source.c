/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What stands behind a fact, by name. */
#include "config.h"

#include "book/source.h"

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
