/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Heights in words. */
#pragma once

#include "base/units.h"
#include "supply/bedding-limits.h"
#include "supply/upright.h"

G_BEGIN_DECLS

char *hc_words_upright (const HcUpright *upright, HcUnits units) G_GNUC_WARN_UNUSED_RESULT;
char *hc_words_opening_height (const HcOpening *opening, HcUnits units) G_GNUC_WARN_UNUSED_RESULT;
char *hc_words_bedding (const HcPen *pen, HcUnits units) G_GNUC_WARN_UNUSED_RESULT;
char *hc_words_bedding_limit (const HcBeddingLimit *limit,
                              HcUnits units) G_GNUC_WARN_UNUSED_RESULT;

G_END_DECLS
