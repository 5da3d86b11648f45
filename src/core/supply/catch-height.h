/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What catches a thing while it is raised or lowered. */
#pragma once

#include "supply/house.h"

G_BEGIN_DECLS

/**
 * HcHeightKind:
 * @HC_HEIGHT_AS_BEFORE: it is as high as it was
 * @HC_HEIGHT_FLOOR: it stands on the floor
 * @HC_HEIGHT_BEDDING: it is level with the bedding
 * @HC_HEIGHT_UNDERSIDE: its underside is level with another thing's
 * @HC_HEIGHT_TOP: its top is level with another thing's
 * @HC_HEIGHT_OVER_NESTS: its lowest bar is as far above the nests as the rules ask
 * @HC_HEIGHT_UNDER_BARS: it is as far below the lowest bar as the rules ask of nests
 */
typedef enum
{
  HC_HEIGHT_AS_BEFORE,
  HC_HEIGHT_FLOOR,
  HC_HEIGHT_BEDDING,
  HC_HEIGHT_UNDERSIDE,
  HC_HEIGHT_TOP,
  HC_HEIGHT_OVER_NESTS,
  HC_HEIGHT_UNDER_BARS,
} HcHeightKind;

/**
 * HcHeightCatch:
 * @kind: a #HcHeightKind
 * @base_mm: how high the thing's underside comes to be; of an opening its sill
 * @line_mm: the height of the line that caught it
 * @id: (nullable) (transfer none): id of the thing it is level with
 */
typedef struct
{
  HcHeightKind kind;
  double base_mm;
  double line_mm;
  const char *id;
} HcHeightCatch;

gboolean hc_house_catch_height (const HcHouse *house, const char *id, double base_mm,
                                double reach_mm, double nest_below_mm, HcHeightCatch *caught);

G_END_DECLS
