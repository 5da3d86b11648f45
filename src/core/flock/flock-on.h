/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The flock of a day, for those who ask of many days. */
#pragma once

#include "flock/flock.h"
#include "flock/timeline.h"

G_BEGIN_DECLS

HcFlock *hc_flock_on_timeline (const HcTimeline *timeline, HcStandard *standard,
                               const HcSiteValues *site, guint32 day) G_GNUC_WARN_UNUSED_RESULT;

G_END_DECLS
