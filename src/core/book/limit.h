/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Figures that bound one measure: at least so wide, at most so high. */
#pragma once

#include "book/figure.h"

G_BEGIN_DECLS

/**
 * HcDirection:
 * @HC_DIRECTION_AT_LEAST: more is better
 * @HC_DIRECTION_AT_MOST: less is better
 */
typedef enum
{
  HC_DIRECTION_AT_LEAST,
  HC_DIRECTION_AT_MOST,
} HcDirection;

/**
 * HcLimit:
 * @figure: what it is about
 * @direction: which way is better
 * @levels: the bound of each level asked, in the unit of use; see hc_limit_get()
 * @stated: one bit a level (1 << level) that the standard states itself
 *
 * A level not stated is as strict as the next lower one that is; with none
 * below, it asks nothing.
 */
typedef struct
{
  HcFigure figure;
  HcDirection direction;
  double levels[HC_N_ASKED_LEVELS];
  guint stated;
} HcLimit;

gboolean hc_limit_get (const HcLimit *self, HcLevel level, double *bound);
gboolean hc_limit_is_met (const HcLimit *self, HcLevel level, double measured);
HcLevel hc_limit_grade (const HcLimit *self, double measured);

G_END_DECLS
