/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Birds of a group that leave the flock on a day, and why. */
#pragma once

#include "base/part.h"

G_BEGIN_DECLS

/**
 * HcLeavingWhy:
 * @HC_LEAVING_DIED: found dead, or died of an illness
 * @HC_LEAVING_PREDATOR: taken by a predator
 * @HC_LEAVING_STRAYED: gone, nobody knows where
 * @HC_LEAVING_CULLED: put down
 * @HC_LEAVING_SOLD: sold
 * @HC_LEAVING_GIVEN: given away
 * @HC_LEAVING_HARVESTED: slaughtered for the table
 */
typedef enum
{
  HC_LEAVING_DIED,
  HC_LEAVING_PREDATOR,
  HC_LEAVING_STRAYED,
  HC_LEAVING_CULLED,
  HC_LEAVING_SOLD,
  HC_LEAVING_GIVEN,
  HC_LEAVING_HARVESTED,
} HcLeavingWhy;

/**
 * HcLeavingValues:
 * @on: the day
 * @why: a #HcLeavingWhy
 * @from: id of the pen they leave, empty for wherever they are
 * @females: females that leave
 * @males: males that leave
 * @note: a remark of the keeper's
 *
 * With neither females nor males given, all that are there leave.
 */
typedef struct
{
  guint32 on;
  int why;
  char *from;
  int females;
  int males;
  char *note;
} HcLeavingValues;

HC_DECLARE_PART (HcLeaving, hc_leaving)

G_END_DECLS
