/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Material on hand. */
#pragma once

#include "base/part.h"

G_BEGIN_DECLS

/**
 * HcStockValues:
 * @material: id of the material
 * @length_mm: length of a piece
 * @width_mm: breadth of a piece, 0 where the material tells
 * @count: pieces
 */
typedef struct
{
  char *material;
  double length_mm;
  double width_mm;
  int count;
} HcStockValues;

HC_DECLARE_PART (HcStock, hc_stock)

G_END_DECLS
