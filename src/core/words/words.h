/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Sentences for what the planning library found; shared by window, command line and paper. */
#pragma once

#include "base/units.h"
#include "needs/check.h"
#include "needs/ladder.h"
#include "words/house-words.h"

G_BEGIN_DECLS

char *hc_words_finding (const HcCheck *check, const HcFinding *finding, HcUnits units);
char *hc_words_finding_detail (const HcFinding *finding, HcUnits units);
char *hc_words_finding_todo (const HcCheck *check, const HcFinding *finding, HcUnits units);
char *hc_words_finding_source (const HcFinding *finding);
gboolean hc_words_has_finding (const char *code);

char *hc_words_headline (const HcHeadline *headline, HcUnits units);
char *hc_words_fix_now (const HcHeadline *headline);
char *hc_words_rung (const HcRung *rung, HcUnits units);
char *hc_words_more (const HcLadder *ladder);

const char *hc_words_level (HcLevel level);
const char *hc_words_need_level (HcNeedId need, HcLevel level);
const char *hc_words_condition (HcCondition condition);
const char *hc_words_need_title (HcNeedId need);
const char *hc_words_need_question (HcNeedId need);
const char *hc_words_need_why (HcNeedId need);

char *hc_words_amount (double amount, const char *unit, HcUnits units);
char *hc_words_offered (double amount, const char *unit, HcUnits units);
char *hc_words_asked (double amount, const char *unit, HcUnits units);

char *hc_words_birds (const HcFlock *flock, HcBodies bodies, gint64 birds);
char *hc_words_part (const HcLayout *layout, const char *id);
char *hc_words_fitting (const HcFitting *fitting, HcUnits units);
char *hc_words_opening_place (const HcLayout *layout, const char *id, HcUnits units);
char *hc_words_fitting_place (const HcLayout *layout, const HcFitting *fitting, HcUnits units);

G_END_DECLS
