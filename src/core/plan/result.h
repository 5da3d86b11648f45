/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What really happened, as the keeper counted it. */
#pragma once

#include "base/part.h"

G_BEGIN_DECLS

/**
 * HcResultWhat:
 * @HC_RESULT_FERTILE: eggs that were fertile when candled
 * @HC_RESULT_HATCHED: chicks that hatched
 * @HC_RESULT_LAID: eggs gathered
 * @HC_RESULT_EATEN: feed eaten
 * @HC_RESULT_WEIGHED: mean mass of a bird
 */
typedef enum
{
  HC_RESULT_FERTILE,
  HC_RESULT_HATCHED,
  HC_RESULT_LAID,
  HC_RESULT_EATEN,
  HC_RESULT_WEIGHED,
} HcResultWhat;

/**
 * HcResultValues:
 * @on: the day, or the last day of @days
 * @days: days it was counted over
 * @what: a #HcResultWhat
 * @of: id of the group of birds or of the eggs to hatch
 * @count: eggs or chicks
 * @females: of the chicks, those known to be female
 * @males: of the chicks, those known to be male
 * @kg: kilograms of feed, or of one bird
 * @note: a remark of the keeper's
 */
typedef struct
{
  guint32 on;
  int days;
  int what;
  char *of;
  int count;
  int females;
  int males;
  double kg;
  char *note;
} HcResultValues;

HC_DECLARE_PART (HcResult, hc_result)

G_END_DECLS
