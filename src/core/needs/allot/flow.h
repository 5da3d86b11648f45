/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Birds flowing to what they share: floor, edges of feeders, boxes, warmth. */
#pragma once

#include "flock/body.h"

G_BEGIN_DECLS

/* Sorts of place that serve the same need in different measures: long edge,
 * round edge, nipples. */
#define HC_FLOW_SORTS 3

/* Private to core. A place that is shared by amount. */
typedef struct
{
  guint sort;
  double amount;
  HcBodies suits;
} HcFlowPlace;

/* Private to core: @each is what one bird of a body asks of a sort of place,
 * negative when it cannot use that sort. */
typedef struct
{
  guint n_bodies;
  const gint64 *counts;
  const double (*each)[HC_FLOW_SORTS];
  guint n_places;
  const HcFlowPlace *places;
} HcFlow;

gboolean hc_flow_serves_all (const HcFlow *self);
double *hc_flow_share_out (const HcFlow *self) G_GNUC_WARN_UNUSED_RESULT;
HcBodies hc_flow_find_cut (const HcFlow *self, const double *shares, HcBodies left_over,
                           gboolean *places);

G_END_DECLS
