/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Whole birds side by side on stretches of bar. */
#pragma once

#include "flock/body.h"

G_BEGIN_DECLS

/* Private to core. A usable stretch of bar. */
typedef struct
{
  double length_mm;
  HcBodies suits;
} HcPackStretch;

/* Private to core. Birds of one width that can use the same stretches. */
typedef struct
{
  double width_mm;
  gint64 count;
  HcBodies bodies;
} HcPackClass;

/* Private to core: @seats_mm is the width of one bird of each body. */
typedef struct
{
  guint n_bodies;
  const gint64 *counts;
  const double *seats_mm;
  guint n_stretches;
  const HcPackStretch *stretches;
  guint64 most_steps;
} HcPacking;

/* Steps the exact search may take before a quick answer must do. */
#define HC_PACKING_STEPS 300000

gint64 *hc_packing_seat (const HcPacking *self, gboolean *exact) G_GNUC_WARN_UNUSED_RESULT;

/* Between packing.c and packing-exact.c: seats are n_classes rows of
 * n_stretches counts. */
gboolean hc_pack_class_suits (const HcPackClass *klass, const HcPackStretch *stretch);
gint64 *hc_packing_search (const HcPacking *self, const HcPackClass *classes, guint n_classes)
    G_GNUC_WARN_UNUSED_RESULT;

G_END_DECLS
