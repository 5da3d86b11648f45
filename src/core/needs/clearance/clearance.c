/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * How findings about a room are added. */
#include "config.h"

#include "needs/clearance/clearance.h"

const HcFittingValues *
hc_clearance_get (const HcClearance *self, guint fitting)
{
  return hc_fitting_get (self->fittings->pdata[fitting]);
}

/* The finding still takes ids and measures. */
HcFinding *
hc_clearance_add (HcClearance *self, const char *code, HcLevel level, const char *id)
{
  HcFinding *finding = hc_finding_new (code, level);

  hc_finding_add_id (finding, id);
  g_ptr_array_add (self->findings, finding);
  return finding;
}

/* Adds a finding where @measured does not reach what is good, else %NULL. */
HcFinding *
hc_clearance_grade (HcClearance *self, const char *code, const char *figure, double measured,
                    const char *unit)
{
  const HcLimit *limit = hc_standard_find_limit (self->standard, figure, NULL, HC_WEEK_GROWN,
                                                 HC_CONDITION_DAY);
  HcLevel level = limit != NULL ? hc_limit_grade (limit, measured) : HC_LEVEL_PLENTY;
  HcFinding *finding;
  double wanted;

  if (level >= HC_LEVEL_GOOD || !hc_limit_get (limit, level + 1, &wanted))
    return NULL;
  finding = hc_clearance_add (self, code, level, NULL);
  hc_finding_set_measure (finding, measured, wanted, unit);
  hc_finding_set_figure (finding, self->standard, &limit->figure);
  return finding;
}
