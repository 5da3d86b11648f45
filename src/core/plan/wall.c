/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Corners and walls as tables of their members. */
#include "config.h"

#include "plan/wall.h"

#include "plan/bounds.h"
#include "plan/fixing-words.h"

static const HcMember corner_members[] = {
  HC_LENGTH_REQUIRED (HcCornerValues, x_mm, "x_mm", -HC_FARTHEST_MM, HC_FARTHEST_MM),
  HC_LENGTH_REQUIRED (HcCornerValues, y_mm, "y_mm", -HC_FARTHEST_MM, HC_FARTHEST_MM),
};

HC_DEFINE_PART (HcCorner, hc_corner, TRUE, corner_members)

const char *const hc_fixing_words[] = { "screws", "staples", NULL };

static const char *const kinds[] = { "solid", "mesh", "fence", NULL };

static const HcMember members[] = {
  HC_TEXT_REQUIRED (HcWallValues, from, "from"),
  HC_TEXT_REQUIRED (HcWallValues, to, "to"),
  HC_WORD (HcWallValues, kind, "kind", kinds, HC_WALL_SOLID),
  HC_LENGTH (HcWallValues, thickness_mm, "thickness_mm", 0, 2000, 100),
  HC_LENGTH (HcWallValues, height_mm, "height_mm", 0, HC_TALLEST_MM, 0),
  HC_TEXT (HcWallValues, construction, "construction"),
  HC_TEXT (HcWallValues, mesh, "mesh"),
  HC_WORD (HcWallValues, fixing, "fixing", hc_fixing_words, HC_FIXING_SCREWS),
  HC_FLAG (HcWallValues, windbreak, "windbreak", FALSE),
};

HC_DEFINE_PART (HcWall, hc_wall, TRUE, members)
