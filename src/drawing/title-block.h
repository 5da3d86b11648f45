/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The strip along the foot of a sheet. */
#pragma once

#include "drawing/sheet.h"
#include "drawing/text.h"

G_BEGIN_DECLS

#define HC_TITLE_BLOCK_HEIGHT 74.0

void hc_draw_title_block (const HcSheet *sheet, const HcSheetSize *size, const HcInk *ink);

G_END_DECLS
