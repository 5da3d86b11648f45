/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Figures of the rules in words, in the unit their source states. */
#pragma once

#include "book/standard.h"

G_BEGIN_DECLS

const char *hc_figure_words_measure (const HcFigure *figure);
char *hc_figure_words_unit (HcFigureUnit unit) G_GNUC_WARN_UNUSED_RESULT;
char *hc_figure_words_limit (const HcLimit *limit, HcLevel level) G_GNUC_WARN_UNUSED_RESULT;
char *hc_figure_words_demand (const HcDemand *demand, HcLevel level) G_GNUC_WARN_UNUSED_RESULT;
char *hc_figure_words_source (const HcFigure *figure) G_GNUC_WARN_UNUSED_RESULT;

G_END_DECLS
