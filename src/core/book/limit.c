/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Measures held against a limit. */
#include "config.h"

#include "book/limit.h"

/* How much of a bound rounding may take before it counts: coordinates are
 * rounded to 0.001 mm, areas and slopes are worked out from them. */
#define SLACK 1e-6

/**
 * hc_limit_get:
 * @self: a limit
 * @level: the level asked for, not %HC_LEVEL_SHORT
 * @bound: (out): the bound, in the unit of use
 *
 * Returns: whether the standard asks anything at this level
 */
gboolean
hc_limit_get (const HcLimit *self, HcLevel level, double *bound)
{
  g_return_val_if_fail (self != NULL, FALSE);
  for (guint at = level; at >= HC_LEVEL_TIGHT; at--)
    if (self->stated & (1u << at))
      {
        *bound = self->levels[at - HC_LEVEL_TIGHT];
        return TRUE;
      }
  return FALSE;
}

/**
 * hc_limit_is_met:
 * @self: a limit
 * @level: the level asked for, not %HC_LEVEL_SHORT
 * @measured: what was measured, in the unit of use
 *
 * Returns: whether @measured reaches the level
 */
gboolean
hc_limit_is_met (const HcLimit *self, HcLevel level, double measured)
{
  double bound;
  double slack;

  if (!hc_limit_get (self, level, &bound))
    return TRUE;
  slack = SLACK * MAX (1, ABS (bound));
  if (self->direction == HC_DIRECTION_AT_LEAST)
    return measured >= bound - slack;
  return measured <= bound + slack;
}

/**
 * hc_limit_grade:
 * @self: a limit
 * @measured: what was measured, in the unit of use
 *
 * Returns: the highest level @measured reaches
 */
HcLevel
hc_limit_grade (const HcLimit *self, double measured)
{
  HcLevel level = HC_LEVEL_SHORT;

  while (level < HC_LEVEL_PLENTY && hc_limit_is_met (self, level + 1, measured))
    level++;
  return level;
}
