/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Eggs to hatch as a table of their members. */
#include "config.h"

#include "plan/clutch.h"

static const char *const places[] = { "incubator", "hen", NULL };
static const char *const whom[] = { "all", "females", "males", NULL };

static const HcMember members[] = {
  HC_TEXT (HcClutchValues, name, "name"),
  HC_TEXT (HcClutchValues, breed, "breed"),
  HC_TEXT (HcClutchValues, kind, "kind"),
  HC_DATE (HcClutchValues, set_on, "set_on"),
  HC_COUNT (HcClutchValues, eggs, "eggs", 0, 10000, 0),
  HC_WORD (HcClutchValues, place, "place", places, HC_CLUTCH_INCUBATOR),
  HC_NUMBER (HcClutchValues, fertile_low_percent, "fertile_low_percent", 0, 100, 0),
  HC_NUMBER (HcClutchValues, fertile_high_percent, "fertile_high_percent", 0, 100, 0),
  HC_NUMBER (HcClutchValues, hatch_low_percent, "hatch_low_percent", 0, 100, 0),
  HC_NUMBER (HcClutchValues, hatch_high_percent, "hatch_high_percent", 0, 100, 0),
  HC_TEXT (HcClutchValues, pen, "pen"),
  HC_COUNT (HcClutchValues, every_weeks, "every_weeks", 0, 104, 0),
  HC_COUNT (HcClutchValues, settings, "settings", 1, 500, 1),
  HC_COUNT (HcClutchValues, wanted, "wanted", 0, 100000, 0),
  HC_WORD (HcClutchValues, wanted_who, "wanted_who", whom, HC_CLUTCH_ALL),
  HC_DATE (HcClutchValues, harvest_on, "harvest_on"),
  HC_PARTS (HcClutchValues, steps, "steps", &hc_step_class),
};

HC_DEFINE_PART (HcClutch, hc_clutch, TRUE, members)
