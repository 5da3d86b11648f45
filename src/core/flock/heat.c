/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Chicks need a heater until they are feathered and the nights are mild. */
#include "config.h"

#include "flock/heat.h"

#include "book/figure-names.h"

static double
find_bound (const HcStandard *standard, const char *name, const HcKind *kind, double otherwise)
{
  const HcLimit *limit
      = hc_standard_find_limit (standard, name, kind, 1, HC_CONDITION_NIGHT);
  double bound;

  if (limit == NULL || !hc_limit_get (limit, HC_LEVEL_TIGHT, &bound))
    return otherwise;
  return bound;
}

/**
 * hc_heat_get_weeks: (skip)
 * @standard: the rules
 * @kind: the kind of chick
 * @site: the place
 *
 * Returns: weeks of life a chick needs a heater for; where the rules are
 *   silent, until it is feathered
 */
int
hc_heat_get_weeks (const HcStandard *standard, const HcKind *kind, const HcSiteValues *site)
{
  double mild_c = find_bound (standard, HC_FIGURE_MILD_NIGHT, kind, G_MAXDOUBLE);
  const char *name
      = site->coldest_night_c > mild_c ? HC_FIGURE_HEAT_WEEKS_MILD : HC_FIGURE_HEAT_WEEKS;

  return (int) find_bound (standard, name, kind, kind->feathered_week);
}
