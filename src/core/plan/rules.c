/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The rules a plan is judged by, as tables of members. */
#include "config.h"

#include "plan/rules.h"

static const HcMember own_figure_members[] = {
  HC_TEXT_REQUIRED (HcOwnFigureValues, figure, "figure"),
  HC_FIGURE (HcOwnFigureValues, value, "value", 0, 1e6, 0),
  HC_TEXT (HcOwnFigureValues, reason, "reason"),
};

HC_DEFINE_PART (HcOwnFigure, hc_own_figure, TRUE, own_figure_members)

static const HcMember members[] = {
  HC_TEXT (HcRulesValues, standard, "standard"),
  HC_PARTS (HcRulesValues, own_figures, "own_figures", &hc_own_figure_class),
};

HC_DEFINE_PART (HcRules, hc_rules, FALSE, members)
