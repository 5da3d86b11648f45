/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Birds of a group that change their home pen on a day. */
#pragma once

#include "base/part.h"

G_BEGIN_DECLS

/**
 * HcMoveValues:
 * @on: the day
 * @from: id of the pen they leave, empty for wherever they are
 * @pen: id of the pen they live in from that day
 * @females: females that move
 * @males: males that move
 *
 * With neither females nor males given, all that are there move.
 */
typedef struct
{
  guint32 on;
  char *from;
  char *pen;
  int females;
  int males;
} HcMoveValues;

HC_DECLARE_PART (HcMove, hc_move)

G_END_DECLS
