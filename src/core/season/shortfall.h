/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Who goes short on account of other birds. */
#pragma once

#include "season/year.h"

G_BEGIN_DECLS

/**
 * HcShortfall:
 * @need: the need that falls short
 * @condition: on an ordinary day or shut in
 * @day: the first day
 * @birds: birds that miss the least level then, more than otherwise would
 */
typedef struct
{
  HcNeedId need;
  HcCondition condition;
  guint32 day;
  gint64 birds;
} HcShortfall;

gboolean hc_shortfall_find (HcTallier *tallier, HcFlock *with, HcFlock *without, guint32 day,
                            HcShortfall *shortfall);
gboolean hc_shortfall_find_in_year (const HcYear *with, const HcYear *without,
                                    HcShortfall *shortfall);

G_END_DECLS
