/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What a remedy does, and why, in plain words. */
#pragma once

#include "base/units.h"
#include "mend/remedy.h"

G_BEGIN_DECLS

char *hc_words_remedy (const HcPlan *plan, const HcRemedy *remedy, HcUnits units)
    G_GNUC_WARN_UNUSED_RESULT;
const char *hc_words_remedy_why (const HcRemedy *remedy);
char *hc_words_remedy_gain (const HcRemedy *remedy) G_GNUC_WARN_UNUSED_RESULT;
const char *hc_words_no_remedy (void);
char *hc_words_remedy_changes (const HcRemedy *remedy) G_GNUC_WARN_UNUSED_RESULT;

G_END_DECLS
