/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Results as a table of their members. */
#include "config.h"

#include "plan/result.h"

static const char *const things[] = { "fertile", "hatched", "laid", "feed", "weighed", NULL };

static const HcMember members[] = {
  HC_DATE (HcResultValues, on, "on"),
  HC_COUNT (HcResultValues, days, "days", 1, 366, 1),
  HC_WORD (HcResultValues, what, "what", things, HC_RESULT_LAID),
  HC_TEXT (HcResultValues, of, "of"),
  HC_COUNT (HcResultValues, count, "count", 0, 1000000, 0),
  HC_COUNT (HcResultValues, females, "females", 0, 100000, 0),
  HC_COUNT (HcResultValues, males, "males", 0, 100000, 0),
  HC_NUMBER (HcResultValues, kg, "kg", 0, 100000, 0),
  HC_TEXT (HcResultValues, note, "note"),
};

HC_DEFINE_PART (HcResult, hc_result, TRUE, members)
