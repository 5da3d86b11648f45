/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A building, an ark, or the ground a run lies on. */
#pragma once

#include "base/part.h"

G_BEGIN_DECLS

/**
 * HcBuildingKind:
 * @HC_BUILDING_HOUSE: stands where it was built
 * @HC_BUILDING_ARK: is moved to fresh ground
 */
typedef enum
{
  HC_BUILDING_HOUSE,
  HC_BUILDING_ARK,
} HcBuildingKind;

/**
 * HcBuildingValues:
 * @name: what the keeper calls it
 * @kind: a #HcBuildingKind
 */
typedef struct
{
  char *name;
  int kind;
} HcBuildingValues;

HC_DECLARE_PART (HcBuilding, hc_building)

G_END_DECLS
