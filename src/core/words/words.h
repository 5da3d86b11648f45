/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Sentences for what the planning library found; shared by window, command line and paper. */
#pragma once

#include "base/units.h"
#include "needs/check.h"
#include "needs/ladder.h"

G_BEGIN_DECLS

char *hc_words_finding (const HcCheck *check, const HcFinding *finding, HcUnits units);
char *hc_words_finding_source (const HcFinding *finding);
char *hc_words_headline (const HcHeadline *headline, HcUnits units);
char *hc_words_rung (const HcRung *rung, HcUnits units);
const char *hc_words_level (HcLevel level);
const char *hc_words_condition (HcCondition condition);
char *hc_words_amount (double amount, const char *unit, HcUnits units);
char *hc_words_fitting (const HcFitting *fitting, HcUnits units);
char *hc_words_fitting_place (const HcLayout *layout, const HcFitting *fitting, HcUnits units);

G_END_DECLS
