/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * How far a fitting is from what stands around it. */
#pragma once

#include "plan/layout.h"

G_BEGIN_DECLS

/**
 * HcDistance:
 * @from: the middle of one side of the fitting
 * @to: what is met first straight out from there
 * @mm: how far that is
 * @id: (nullable) (transfer none): id of the fitting met, %NULL for a wall
 */
typedef struct
{
  HcPoint from;
  HcPoint to;
  double mm;
  const char *id;
} HcDistance;

guint hc_layout_measure_around (const HcLayout *layout, const char *fitting,
                                HcDistance distances[4]);

G_END_DECLS
