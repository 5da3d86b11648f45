/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Material on hand as a table of its members. */
#include "config.h"

#include "plan/stock.h"

static const HcMember members[] = {
  HC_TEXT (HcStockValues, material, "material"),
  HC_LENGTH (HcStockValues, length_mm, "length_mm", 0, 100000, 0),
  HC_LENGTH (HcStockValues, width_mm, "width_mm", 0, 100000, 0),
  HC_COUNT (HcStockValues, count, "count", 0, 100000, 1),
};

HC_DEFINE_PART (HcStock, hc_stock, TRUE, members)
