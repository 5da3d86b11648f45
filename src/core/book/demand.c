/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * How much birds ask for, and how many birds an amount serves. */
#include "config.h"

#include "book/demand.h"

#include "base/whole.h"

#include <math.h>

static double
steps_begun (const HcClause *clause, double birds)
{
  if (clause->step <= 0 || birds <= clause->step_from)
    return 0;
  return ceil ((birds - clause->step_from) / clause->step);
}

static double
basis_of (const HcClause *clause, const HcBasis *basis)
{
  if (basis == NULL)
    return 0;
  switch (clause->of)
    {
    case HC_BASIS_GROUND_FLOOR:
      return basis->ground_floor_mm2;
    case HC_BASIS_REQUIRED_FLOOR:
      return basis->required_floor_mm2;
    case HC_BASIS_PERIMETER:
      return basis->perimeter_mm;
    default:
      g_return_val_if_reached (0);
    }
}

static double
clause_amount (const HcClause *clause, HcFigureUnit unit, double birds, double kg,
               const HcBasis *basis)
{
  double amount = clause->fixed + clause->each * birds + clause->per_kg * kg
                  + clause->step_amount * steps_begun (clause, birds);

  if (clause->birds_per > 0)
    amount += hc_figure_unit_to_used (unit, birds / clause->birds_per);
  if (clause->kg_per > 0)
    amount += hc_figure_unit_to_used (unit, kg / clause->kg_per);
  if (clause->share > 0)
    amount += clause->share * basis_of (clause, basis);
  return amount;
}

/* The level whose clauses speak for @level, or HC_LEVEL_SHORT for none. */
static HcLevel
speaking_level (const HcDemand *self, HcLevel level)
{
  while (level > HC_LEVEL_SHORT && (self->stated & (1u << level)) == 0)
    level--;
  return level;
}

/**
 * hc_demand_get_amount:
 * @self: a demand
 * @level: the level asked for, not %HC_LEVEL_SHORT
 * @birds: how many birds
 * @kg: their live mass together
 * @basis: (nullable): what shares are shares of
 *
 * Returns: what they ask for, in the unit of use, with whole things not
 *   rounded: what other birds' asks can be added to
 */
double
hc_demand_get_amount (const HcDemand *self, HcLevel level, double birds, double kg,
                      const HcBasis *basis)
{
  HcLevel speaking = speaking_level (self, level);
  double most = 0;

  if (speaking == HC_LEVEL_SHORT || birds <= 0)
    return 0;
  for (guint i = 0; i < self->n_clauses[speaking - HC_LEVEL_TIGHT]; i++)
    {
      const HcClause *clause = &self->clauses[speaking - HC_LEVEL_TIGHT][i];

      most = MAX (most, clause_amount (clause, self->figure.unit, birds, kg, basis));
    }
  return most;
}

/**
 * hc_demand_required:
 * @self: a demand
 * @level: the level asked for, not %HC_LEVEL_SHORT
 * @birds: how many birds
 * @kg: their live mass together
 * @basis: (nullable): what shares are shares of
 *
 * Returns: what they ask for, in the unit of use; whole things are rounded up.
 *   No birds ask for nothing.
 */
double
hc_demand_required (const HcDemand *self, HcLevel level, double birds, double kg,
                    const HcBasis *basis)
{
  double required;

  g_return_val_if_fail (self != NULL, 0);
  required = hc_demand_get_amount (self, level, birds, kg, basis);
  if (hc_figure_unit_get_dimension (self->figure.unit) == HC_DIMENSION_COUNT)
    return (double) hc_whole_asked (required);
  return required;
}

/* A bird short of a thousandth of itself is a whole bird, as everywhere. */
static gboolean
serves (const HcDemand *self, HcLevel level, double offered, double birds, double kg,
        const HcBasis *basis)
{
  double share = birds > 0 ? (birds - HC_WHOLE_TOLERANCE) / birds : 0;

  return hc_demand_required (self, level, birds * share, kg * share, basis)
         <= offered * (1 + 1e-9);
}

/**
 * hc_demand_most_birds:
 * @self: a demand
 * @level: the level asked for, not %HC_LEVEL_SHORT
 * @offered: what there is, in the unit of use
 * @kg_each: live mass of one bird
 * @basis: (nullable): what shares are shares of
 *
 * Returns: the most birds @offered serves at @level, %HC_WHOLE_MANY if there
 *   is no end to it: 40 m² at nine birds to a square metre serve 360
 */
gint64
hc_demand_most_birds (const HcDemand *self, HcLevel level, double offered, double kg_each,
                      const HcBasis *basis)
{
  gint64 enough = 0;
  gint64 beyond = 1;

  g_return_val_if_fail (self != NULL, 0);
  while (beyond < HC_WHOLE_MANY
         && serves (self, level, offered, (double) beyond, kg_each * (double) beyond, basis))
    {
      enough = beyond;
      beyond *= 2;
    }
  if (beyond >= HC_WHOLE_MANY)
    return HC_WHOLE_MANY;
  while (beyond - enough > 1)
    {
      gint64 middle = enough + (beyond - enough) / 2;

      if (serves (self, level, offered, (double) middle, kg_each * (double) middle, basis))
        enough = middle;
      else
        beyond = middle;
    }
  return enough;
}

/**
 * hc_demand_grade:
 * @self: a demand
 * @offered: what there is, in the unit of use
 * @birds: how many birds
 * @kg: their live mass together
 * @basis: (nullable): what shares are shares of
 *
 * Returns: the highest level @offered reaches for these birds
 */
HcLevel
hc_demand_grade (const HcDemand *self, double offered, double birds, double kg,
                 const HcBasis *basis)
{
  HcLevel level = HC_LEVEL_SHORT;

  g_return_val_if_fail (self != NULL, HC_LEVEL_SHORT);
  while (level < HC_LEVEL_PLENTY && serves (self, level + 1, offered, birds, kg, basis))
    level++;
  return level;
}
