/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Each time eggs are set, and what is expected of it. */
#pragma once

#include "flock/hatch.h"

G_BEGIN_DECLS

/**
 * HcSetting:
 * @clutch: the eggs, held by the plan
 * @kind: the kind of bird, held by the book
 * @life: its life
 * @number: which setting of these eggs, from 0
 * @set_on: the day they are set
 * @hatch_on: the day they hatch
 * @low: one time in ten there are fewer chicks
 * @middle: as often more as fewer
 * @high: what the house must carry, as sure as the keeper wants it
 * @known: they have hatched, and all three are what hatched
 * @raised: a group of birds in the plan has come of them
 */
typedef struct
{
  const HcClutch *clutch;
  const HcKind *kind;
  const HcLife *life;
  guint number;
  guint32 set_on;
  guint32 hatch_on;
  guint low;
  guint middle;
  guint high;
  gboolean known;
  gboolean raised;
} HcSetting;

GArray *hc_settings_of (const HcPlan *plan, HcBook *book) G_GNUC_WARN_UNUSED_RESULT;

G_END_DECLS
