/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Buildings as a table of their members. */
#include "config.h"

#include "plan/building.h"

static const char *const kinds[] = { "house", "ark", NULL };

static const HcMember members[] = {
  HC_TEXT (HcBuildingValues, name, "name"),
  HC_WORD (HcBuildingValues, kind, "kind", kinds, HC_BUILDING_HOUSE),
};

HC_DEFINE_PART (HcBuilding, hc_building, TRUE, members)
