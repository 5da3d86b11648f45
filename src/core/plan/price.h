/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What something costs or brings where the keeper lives. */
#pragma once

#include "base/part.h"

G_BEGIN_DECLS

/**
 * HcPricePer:
 * @HC_PRICE_PIECE: one of it
 * @HC_PRICE_KG: a kilogram
 * @HC_PRICE_M: a metre
 * @HC_PRICE_M2: a square metre
 * @HC_PRICE_LITRE: a litre
 * @HC_PRICE_KWH: a kilowatt-hour
 */
typedef enum
{
  HC_PRICE_PIECE,
  HC_PRICE_KG,
  HC_PRICE_M,
  HC_PRICE_M2,
  HC_PRICE_LITRE,
  HC_PRICE_KWH,
} HcPricePer;

/**
 * HcPriceValues:
 * @of: the word of what it is for, or the id of a material
 * @amount: in the keeper's own money
 * @per: a #HcPricePer
 */
typedef struct
{
  char *of;
  double amount;
  int per;
} HcPriceValues;

HC_DECLARE_PART (HcPrice, hc_price)

G_END_DECLS
