/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Shares that are not known for sure, and the counts that follow from them. */
#pragma once

#include <glib-object.h>

G_BEGIN_DECLS

/**
 * HcBeta:
 * @a: the successes it weighs as much as
 * @b: the failures it weighs as much as
 *
 * What is known of a share: a beta distribution.
 */
typedef struct
{
  double a;
  double b;
} HcBeta;

void hc_beta_fit (double low, double high, HcBeta *beta);
double hc_beta_get_mean (const HcBeta *self);
double hc_beta_get_point (const HcBeta *self, double chance);
void hc_beta_learn (HcBeta *self, double successes, double failures);

/**
 * HcOdds:
 *
 * How likely each count from 0 to a most is. Immutable, atomically
 * reference-counted.
 */
typedef struct _HcOdds HcOdds;

GType hc_odds_get_type (void);
HcOdds *hc_odds_new_sure (guint count) G_GNUC_WARN_UNUSED_RESULT;
HcOdds *hc_odds_thin (HcOdds *self, const HcBeta *share) G_GNUC_WARN_UNUSED_RESULT;
HcOdds *hc_odds_thin_evenly (HcOdds *self, double share) G_GNUC_WARN_UNUSED_RESULT;
HcOdds *hc_odds_ref (HcOdds *self);
void hc_odds_unref (HcOdds *self);
guint hc_odds_get_most (const HcOdds *self);
double hc_odds_get (const HcOdds *self, guint count);
double hc_odds_get_mean (const HcOdds *self);
double hc_odds_get_at_least (const HcOdds *self, guint count);
guint hc_odds_get_count (const HcOdds *self, double chance);

G_DEFINE_AUTOPTR_CLEANUP_FUNC (HcOdds, hc_odds_unref)

G_END_DECLS
