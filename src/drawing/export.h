/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Drawings as PDF, SVG and PNG files. */
#pragma once

#include "drawing/sheet.h"

G_BEGIN_DECLS

/**
 * HcView:
 * @HC_VIEW_FLOOR: the floor alone, on paper of its own size
 * @HC_VIEW_SIDE: the house from the side, on paper of its own size
 * @HC_VIEW_AIR: the house from the side with the air of its coldest night
 * @HC_VIEW_SHEET: a framed sheet with a title block; as PDF, with the report
 *   on the pages behind it
 */
typedef enum
{
  HC_VIEW_FLOOR,
  HC_VIEW_SIDE,
  HC_VIEW_AIR,
  HC_VIEW_SHEET,
} HcView;

gboolean hc_draw_to_file (const HcSheet *sheet, HcView view, const char *path, GError **error);
gboolean hc_draw_floor_to_file (const HcCheck *check, const char *path, GError **error);

G_END_DECLS
