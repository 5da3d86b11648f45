/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A house measured with a tape: walls and diagonals make its true shape. */
#pragma once

#include "base/point.h"
#include "base/units.h"
#include "plan/plan.h"

G_BEGIN_DECLS

/**
 * HC_SURVEY_MOST_CORNERS:
 *
 * The most corners a survey may have.
 */
#define HC_SURVEY_MOST_CORNERS 64

/**
 * HcTapeMeasure:
 * @from: index of the corner it is measured from
 * @to: index of the corner it is measured to
 * @length_mm: what the tape said
 *
 * A wall when the corners follow each other, else a diagonal.
 */
typedef struct
{
  guint from;
  guint to;
  double length_mm;
} HcTapeMeasure;

#define HC_TYPE_SURVEY (hc_survey_get_type ())

/**
 * HcSurvey:
 * @corners: (array length=n_corners): the corners as solved
 * @n_corners: how many
 * @misfit_mm: (array length=n_measures): by how much each measure is longer than
 *   the shape says
 * @n_measures: how many measures there were
 * @spare: how many measures there were beyond those the shape needs
 * @doubtful: which measure is most likely misread, -1 for none
 * @doubtful_by_mm: by how much it is longer than all others say
 *
 * The shape that fits all measures best, by least squares.
 */
typedef struct
{
  HcPoint *corners;
  guint n_corners;
  double *misfit_mm;
  guint n_measures;
  guint spare;
  int doubtful;
  double doubtful_by_mm;
} HcSurvey;

GType hc_survey_get_type (void);
HcSurvey *hc_survey_solve (const HcPoint *sketch, guint n_corners,
                           const HcTapeMeasure *measures, guint n_measures, HcUnits units,
                           GError **error) G_GNUC_WARN_UNUSED_RESULT;
HcSurvey *hc_survey_copy (const HcSurvey *self) G_GNUC_WARN_UNUSED_RESULT;
void hc_survey_free (HcSurvey *self);
char *hc_survey_name_corner (guint corner) G_GNUC_WARN_UNUSED_RESULT;

HcPlan *hc_survey_add_pen (const HcSurvey *self, HcPlan *plan, const HcPenValues *values,
                           const HcWallValues *walls, const char *const *new_ids,
                           GError **error) G_GNUC_WARN_UNUSED_RESULT;
HcPlan *hc_survey_reshape_pen (const HcSurvey *self, HcPlan *plan, const char *pen,
                               GError **error) G_GNUC_WARN_UNUSED_RESULT;

G_DEFINE_AUTOPTR_CLEANUP_FUNC (HcSurvey, hc_survey_free)

G_END_DECLS
