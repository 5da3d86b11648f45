/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Where a fact of the trade comes from. */
#pragma once

#include <glib.h>

G_BEGIN_DECLS

/**
 * HcEvidence:
 * @HC_EVIDENCE_PUBLISHED: a law, a handbook, a paper or a trade page says so
 * @HC_EVIDENCE_PRACTICE: common practice among keepers, no source
 * @HC_EVIDENCE_JUDGEMENT: chosen between sources that differ or are silent
 * @HC_EVIDENCE_MEMORY: from memory: believed, not looked up
 * @HC_EVIDENCE_OWN: the keeper's own figure
 *
 * What stands behind a fact.
 */
typedef enum
{
  HC_EVIDENCE_PUBLISHED,
  HC_EVIDENCE_PRACTICE,
  HC_EVIDENCE_JUDGEMENT,
  HC_EVIDENCE_MEMORY,
  HC_EVIDENCE_OWN,
} HcEvidence;

/**
 * HcSource:
 * @key: the short key figures name it by
 * @title: its title, in its own language
 * @publisher: who published it
 * @year: when, or 0 if that is not known
 * @where: where to read it
 *
 * Something published.
 */
typedef struct
{
  const char *key;
  const char *title;
  const char *publisher;
  int year;
  const char *where;
} HcSource;

const char *hc_evidence_to_string (HcEvidence evidence);
gboolean hc_evidence_from_string (const char *text, HcEvidence *evidence);

G_END_DECLS
