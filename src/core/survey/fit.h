/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Private to survey/: the shape that fits measures best. */
#pragma once

#include "survey/survey.h"

G_BEGIN_DECLS

/* How well a shape fits. @left_out is a measure that is not asked, -1 for none. */
typedef struct
{
  const HcTapeMeasure *measures;
  guint n_measures;
  int left_out;
} HcTape;

/* What two people with a steel tape may differ by: judgement. */
#define HC_TAPE_FORGIVEN_MM 10.0

/* No tape is longer. */
#define HC_SURVEY_LONGEST_MM 1e5

#define HC_TAPE_LEAVES_LOOSE -1.0

guint hc_fit_count_unknowns (guint n_corners);
double hc_fit_corners (const HcTape *tape, HcPoint *corners, guint n_corners);
double hc_tape_get_misfit_mm (const HcTapeMeasure *measure, const HcPoint *corners);
gboolean hc_tape_find_too_long (const HcTapeMeasure *measures, guint n_measures,
                                guint n_corners, guint *too_long, double *others_mm);

G_END_DECLS
