/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Figures that say how much a number of birds asks for. */
#pragma once

#include "book/figure.h"

G_BEGIN_DECLS

/**
 * HC_DEMAND_CLAUSES:
 *
 * The most clauses a level of a demand has.
 */
#define HC_DEMAND_CLAUSES 4

/**
 * HcBasisOf:
 * @HC_BASIS_GROUND_FLOOR: the floor of the building, mm²
 * @HC_BASIS_REQUIRED_FLOOR: the floor the birds ask for, mm²
 * @HC_BASIS_PERIMETER: the perimeter of the pen, mm
 *
 * What a share is a share of.
 */
typedef enum
{
  HC_BASIS_GROUND_FLOOR,
  HC_BASIS_REQUIRED_FLOOR,
  HC_BASIS_PERIMETER,
} HcBasisOf;

/**
 * HcBasis:
 * @ground_floor_mm2: the floor of the building
 * @required_floor_mm2: the floor the birds ask for
 * @perimeter_mm: the perimeter of the pen
 */
typedef struct
{
  double ground_floor_mm2;
  double required_floor_mm2;
  double perimeter_mm;
} HcBasis;

/**
 * HcClause:
 * @fixed: asked whatever the number of birds
 * @each: asked for each bird
 * @birds_per: birds that share one unit, 0 for none
 * @per_kg: asked for each kg of live mass
 * @kg_per: kg of live mass that share one unit, 0 for none
 * @step_amount: asked for each step begun
 * @step_from: birds before the first step
 * @step: birds in a step, 0 for no steps
 * @share: asked for each unit of @of
 * @of: what @share is a share of
 *
 * What is asked is the sum: fixed + each·birds + birds/birds_per + per_kg·kg +
 * kg/kg_per + step_amount·⌈(birds − step_from)/step⌉ + share·basis. Amounts are
 * in the unit of use but for @birds_per and @kg_per, which are kept as stated
 * so that 9 birds to a square metre is 9 and not 0.111.
 */
typedef struct
{
  double fixed;
  double each;
  double birds_per;
  double per_kg;
  double kg_per;
  double step_amount;
  double step_from;
  double step;
  double share;
  HcBasisOf of;
} HcClause;

/**
 * HcDemand:
 * @figure: what it is about
 * @clauses: the clauses of each level asked; the largest rules
 * @n_clauses: how many of them
 * @stated: one bit a level (1 << level) that the standard states itself
 * @share_of: (nullable): id of the figure it is a share of, interned
 * @share: which share of it, 0.5 for half
 *
 * A demand never falls when birds are added. A level not stated asks what the
 * next lower one asks; with none below, nothing.
 */
typedef struct
{
  HcFigure figure;
  HcClause clauses[HC_N_ASKED_LEVELS][HC_DEMAND_CLAUSES];
  guint n_clauses[HC_N_ASKED_LEVELS];
  guint stated;
  const char *share_of;
  double share;
} HcDemand;

double hc_demand_get_amount (const HcDemand *self, HcLevel level, double birds,
                             double kg, const HcBasis *basis);
double hc_demand_required (const HcDemand *self, HcLevel level, double birds,
                           double kg, const HcBasis *basis);
gint64 hc_demand_most_birds (const HcDemand *self, HcLevel level, double offered,
                             double kg_each, const HcBasis *basis);
HcLevel hc_demand_grade (const HcDemand *self, double offered, double birds,
                         double kg, const HcBasis *basis);

G_END_DECLS
