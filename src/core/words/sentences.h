/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The sentences themselves, one row for each thing that can be wrong. */
#pragma once

#include <glib.h>

G_BEGIN_DECLS

/* Marks a pair of singular and plural for translation where it stands. */
#define NG_(one, many) { one, many }

/* Private to words/. Sentences for 'fix now' and for 'worth doing', by number
 * of birds; what to do next; what the measures say. Left out, the sentence for
 * 'fix now' serves both, and the measures are told in the usual way.
 *
 * {birds}: the birds it touches, "4 hens"; {have}, {want}, {lack}: measures;
 * {what}, {other}: the first and second thing it is about; {who}: the
 * predators it is about; {length}: how much of the walls it is about. */
typedef struct
{
  const char *code;
  const char *fix[2];
  const char *worth[2];
  const char *todo;
  const char *detail;
} HcSentence;

extern const HcSentence hc_sentences_about_room[];
extern const HcSentence hc_sentences_about_food[];
extern const HcSentence hc_sentences_about_air[];
extern const HcSentence hc_sentences_about_climb[];
extern const HcSentence hc_sentences_about_company[];
extern const HcSentence hc_sentences_about_reach[];
extern const HcSentence hc_sentences_about_site_rules[];
extern const HcSentence hc_sentences_about_clearance[];
extern const HcSentence hc_sentences_about_predators[];

const HcSentence *hc_sentence_find (const char *code);

G_END_DECLS
