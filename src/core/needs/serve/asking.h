/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What each bird of a space asks by one figure at one level. */
#pragma once

#include "needs/context.h"

G_BEGIN_DECLS

/* Private to needs/. @times makes the ask of all birds larger. The floor that
 * the basis says is required is for @basis_birds, and less for fewer; 0 where
 * no basis hangs on birds. */
typedef struct
{
  HcLevel level;
  const HcDemand *of[HC_MOST_BODIES];
  double mass_kg[HC_MOST_BODIES];
  double times;
  HcBasis basis;
  gint64 basis_birds;
} HcAsking;

void hc_asking_init (HcAsking *self, const HcNeedContext *context, const char *figure,
                     HcLevel level);
double hc_asking_get_each (const HcAsking *self, guint body, gint64 birds);
double hc_asking_get_total (const HcAsking *self, const gint64 *counts, HcBodies bodies,
                            const HcFigure **figure);
double hc_need_context_get_ground_floor_mm2 (const HcNeedContext *context);

G_END_DECLS
