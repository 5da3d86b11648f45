/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The counting needs of one house for many flocks: levels and numbers alone. */
#pragma once

#include "needs/check.h"

G_BEGIN_DECLS

/**
 * HcTallied:
 * @applies: whether the need has anything to say
 * @level: its level where it is worst
 * @birds: birds it concerns
 * @served: those of them served at the least level
 * @missed: birds not served at the first level that not all reach, 0 at plenty
 * @offered: what there is where they live, at the least level
 * @required: what they ask of it at the least level
 * @unit: (nullable): what both are measured in, as of findings; "birds" where
 *   several sorts of place serve
 */
typedef struct
{
  gboolean applies;
  HcLevel level;
  gint64 birds;
  gint64 served;
  gint64 missed;
  double offered;
  double required;
  const char *unit;
} HcTallied;

/**
 * HcTally:
 * @needs: the counting needs, and the others once they are judged; those that
 *   do not count birds have a level alone
 * @level: the worst of them
 * @worst: the need it is of, %HC_N_NEEDS when none applies
 */
typedef struct
{
  HcTallied needs[HC_N_NEEDS];
  HcLevel level;
  HcNeedId worst;
} HcTally;

/**
 * HcTallier:
 *
 * A house and rules, asked about flock after flock. It remembers what each
 * space came to with the same birds in it, as long as house, rules and place
 * stay. One for each thread.
 */
typedef struct _HcTallier HcTallier;

HcTallier *hc_tallier_new (HcCheckCache *cache, HcBook *book);
void hc_tallier_free (HcTallier *self);
HcBook *hc_tallier_get_book (const HcTallier *self);
void hc_tallier_look_at (HcTallier *self, HcPlan *plan);
void hc_tallier_count (HcTallier *self, HcFlock *flock, HcCondition condition, HcTally *tally);
void hc_tallier_judge (HcTallier *self, HcFlock *flock, HcCondition condition, HcTally *tally);
gboolean hc_tallied_is_worse (const HcTallied *self, const HcTallied *than);
gboolean hc_tally_is_worse (const HcTally *self, const HcTally *than);

G_DEFINE_AUTOPTR_CLEANUP_FUNC (HcTallier, hc_tallier_free)

G_END_DECLS
