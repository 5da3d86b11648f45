/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Steps in the life of a hatch as a table of their members. */
#include "config.h"

#include "plan/step.h"

static const char *const deeds[] = { "move", "harvest", "sell", NULL };
static const char *const whom[] = { "all", "females", "males", NULL };

static const HcMember members[] = {
  HC_COUNT (HcStepValues, week, "week", 0, 520, 0),
  HC_WORD (HcStepValues, deed, "deed", deeds, HC_STEP_MOVE),
  HC_WORD (HcStepValues, who, "who", whom, HC_STEP_ALL),
  HC_TEXT (HcStepValues, pen, "pen"),
};

HC_DEFINE_PART (HcStep, hc_step, TRUE, members)
