/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What is planned for the birds of a hatch at an age. */
#pragma once

#include "base/part.h"

G_BEGIN_DECLS

/**
 * HcStepDeed:
 * @HC_STEP_MOVE: to another pen
 * @HC_STEP_HARVEST: slaughtered for the table
 * @HC_STEP_SELL: sold
 */
typedef enum
{
  HC_STEP_MOVE,
  HC_STEP_HARVEST,
  HC_STEP_SELL,
} HcStepDeed;

/**
 * HcStepWho:
 * @HC_STEP_ALL: every bird
 * @HC_STEP_FEMALES: hens, ducks, geese
 * @HC_STEP_MALES: cocks, drakes, ganders
 */
typedef enum
{
  HC_STEP_ALL,
  HC_STEP_FEMALES,
  HC_STEP_MALES,
} HcStepWho;

/**
 * HcStepValues:
 * @week: weeks after the hatch
 * @deed: a #HcStepDeed
 * @who: a #HcStepWho
 * @pen: id of the pen they move to
 */
typedef struct
{
  int week;
  int deed;
  int who;
  char *pen;
} HcStepValues;

HC_DECLARE_PART (HcStep, hc_step)

G_END_DECLS
