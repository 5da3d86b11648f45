/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * How well one bird gets up to each ledge of a room, and down again. */
#pragma once

#include "needs/climb/climber.h"

G_BEGIN_DECLS

/* Private to needs/. */
typedef enum
{
  HC_ROUTE_UP,
  HC_ROUTE_DOWN,
  HC_N_ROUTES
} HcRoute;

typedef struct
{
  const HcClimb *climb;
  HcHopGrade *grades[2];
  HcLevel *levels[HC_N_ROUTES];
  GArray *hops_of;
  guint *first_hop;
} HcRoutes;

void hc_routes_find (HcRoutes *self, const HcClimb *climb, const HcClimber *climber);
void hc_routes_clear (HcRoutes *self);
const HcHop *hc_routes_find_worst (const HcRoutes *self, HcRoute route, guint ledge,
                                   HcHopGrade *grade);

G_END_DECLS
