/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Sound plans made from a seed, for property tests and benchmarks. */
#pragma once

#include "plan/plan.h"

G_BEGIN_DECLS

/* A row of pens that share partitions, a third of them runs, with doors, pop
 * holes, vents and windows. The fittings are spread over the pens, one to each
 * square of 1.5 m, so density stays the same whatever their number. */
HcPlan *plan_maker_make (guint32 seed,
                         guint n_pens,
                         guint n_fittings) G_GNUC_WARN_UNUSED_RESULT;

/* The same, with every member that needs no other to agree set to anything its
 * table row allows, and with members that this version does not know. */
HcPlan *plan_maker_make_wild (guint32 seed,
                              guint n_pens,
                              guint n_fittings) G_GNUC_WARN_UNUSED_RESULT;

G_END_DECLS
