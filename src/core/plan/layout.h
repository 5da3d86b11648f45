/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * One layout of the house: corners, walls, openings, pens and fittings. */
#pragma once

#include "base/part.h"
#include "base/point.h"
#include "plan/fitting.h"
#include "plan/opening.h"
#include "plan/pen.h"
#include "plan/wall.h"

G_BEGIN_DECLS

/**
 * HcLayoutValues:
 * @name: what the keeper calls this variant
 * @corners: (element-type HcCorner): where walls meet
 * @walls: (element-type HcWall): the walls
 * @openings: (element-type HcOpening): the holes in them
 * @pens: (element-type HcPen): rings of walls with their fittings
 * @loose: (element-type HcFitting): fittings that stand in no pen
 */
typedef struct
{
  char *name;
  HcParts *corners;
  HcParts *walls;
  HcParts *openings;
  HcParts *pens;
  HcParts *loose;
} HcLayoutValues;

HC_DECLARE_PART (HcLayout, hc_layout)

HcCorner *hc_layout_get_corner (const HcLayout *layout, const char *id);
HcWall *hc_layout_get_wall (const HcLayout *layout, const char *id);
HcOpening *hc_layout_get_opening (const HcLayout *layout, const char *id);
HcPen *hc_layout_get_pen (const HcLayout *layout, const char *id);
HcFitting *hc_layout_get_fitting (const HcLayout *layout, const char *id, HcPen **pen);

gboolean hc_layout_get_wall_line (const HcLayout *layout, const HcWall *wall, HcPoint *from,
                                  HcPoint *to);
GArray *hc_layout_get_pen_corners (const HcLayout *layout, const HcPen *pen)
    G_GNUC_WARN_UNUSED_RESULT;
GArray *hc_layout_get_pen_ring (const HcLayout *layout, const HcPen *pen)
    G_GNUC_WARN_UNUSED_RESULT;
const char *hc_layout_get_shared_corner (const HcWall *before, const HcWall *wall);
guint hc_layout_get_pens_beside (const HcLayout *layout, const char *wall, HcPen *beside[2]);
HcPen *hc_layout_find_pen_at (const HcLayout *layout, HcPoint at);

G_END_DECLS
