/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Whose figures the plan is judged by, and the keeper's own. */
#pragma once

#include "base/part.h"

G_BEGIN_DECLS

/**
 * HcOwnFigureValues:
 * @figure: id of the figure of the rules that is replaced
 * @value: the keeper's value, in the figure's own unit
 * @reason: why, in the keeper's words
 *
 * 'My own figure': it stands in for every level of the figure.
 */
typedef struct
{
  char *figure;
  double value;
  char *reason;
} HcOwnFigureValues;

HC_DECLARE_PART (HcOwnFigure, hc_own_figure)

/**
 * HcRulesValues:
 * @standard: id of the standard, for instance "home-cold"
 * @own_figures: (element-type HcOwnFigure): the keeper's own figures
 */
typedef struct
{
  char *standard;
  HcParts *own_figures;
} HcRulesValues;

HC_DECLARE_PART (HcRules, hc_rules)

G_END_DECLS
