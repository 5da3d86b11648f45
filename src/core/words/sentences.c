/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Finds the sentence for a code. */
#include "config.h"

#include "words/sentences.h"

static const HcSentence *const tables[] = {
  hc_sentences_about_room,  hc_sentences_about_food,      hc_sentences_about_air,
  hc_sentences_about_company, hc_sentences_about_reach,     hc_sentences_about_clearance,
  hc_sentences_about_predators, hc_sentences_about_climb, hc_sentences_about_site_rules,
};

/* Each table ends with a row without a code. */
const HcSentence *
hc_sentence_find (const char *code)
{
  for (guint i = 0; i < G_N_ELEMENTS (tables); i++)
    for (const HcSentence *row = tables[i]; row->code != NULL; row++)
      if (g_strcmp0 (row->code, code) == 0)
        return row;
  return NULL;
}
