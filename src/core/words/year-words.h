/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The flock through the year in words. */
#pragma once

#include "season/ask/question.h"

G_BEGIN_DECLS

char *hc_words_day (guint32 day) G_GNUC_WARN_UNUSED_RESULT;
char *hc_words_group (const HcGroup *group) G_GNUC_WARN_UNUSED_RESULT;
const char *hc_words_stage (HcStage stage);
char *hc_words_event (const HcYear *year, const HcEvent *event) G_GNUC_WARN_UNUSED_RESULT;
char *hc_words_tallied (HcNeedId need, const HcTallied *tallied) G_GNUC_WARN_UNUSED_RESULT;
char *hc_words_worst_day (const HcYear *year) G_GNUC_WARN_UNUSED_RESULT;
char *hc_words_year_answer (const HcYearAnswer *answer) G_GNUC_WARN_UNUSED_RESULT;
char *hc_words_year_in_hand (const HcYearAnswer *answer) G_GNUC_WARN_UNUSED_RESULT;
char *hc_words_year_limit (const HcYearAnswer *answer) G_GNUC_WARN_UNUSED_RESULT;

G_END_DECLS
