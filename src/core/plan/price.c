/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Prices as a table of their members. */
#include "config.h"

#include "plan/price.h"

static const char *const measures[] = { "piece", "kg", "m", "m2", "litre", "kwh", NULL };

static const HcMember members[] = {
  HC_TEXT (HcPriceValues, of, "of"),
  HC_NUMBER (HcPriceValues, amount, "amount", 0, 1000000, 0),
  HC_WORD (HcPriceValues, per, "per", measures, HC_PRICE_PIECE),
};

HC_DEFINE_PART (HcPrice, hc_price, TRUE, members)
