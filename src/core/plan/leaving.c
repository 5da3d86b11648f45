/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Losses, sales and harvests as a table of their members. */
#include "config.h"

#include "plan/leaving.h"

static const char *const reasons[]
    = { "died", "predator", "strayed", "culled", "sold", "given", "harvested", NULL };

static const HcMember members[] = {
  HC_DATE (HcLeavingValues, on, "on"),
  HC_WORD (HcLeavingValues, why, "why", reasons, HC_LEAVING_DIED),
  HC_TEXT (HcLeavingValues, from, "from"),
  HC_COUNT (HcLeavingValues, females, "females", 0, 100000, 0),
  HC_COUNT (HcLeavingValues, males, "males", 0, 100000, 0),
  HC_TEXT (HcLeavingValues, note, "note"),
};

HC_DEFINE_PART (HcLeaving, hc_leaving, TRUE, members)
