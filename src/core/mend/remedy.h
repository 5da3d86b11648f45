/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * One way to mend what is wrong: the plan with it mended, and what was done. */
#pragma once

#include "needs/need.h"
#include "plan/plan.h"

G_BEGIN_DECLS

/**
 * HcNeedChange:
 * @need: which need
 * @before: how well it was met
 * @after: how well it is met then
 */
typedef struct
{
  HcNeedId need;
  HcLevel before;
  HcLevel after;
} HcNeedChange;

/**
 * HcRemedy:
 * @code: (transfer none): what is done, for instance "air.vents"; words/ says it
 * @ids: (element-type utf8): ids of the parts it is done to
 * @amounts: (element-type double): for each of them how much, where that is asked
 * @steps: (element-type HcRemedy): where it is several things, each of them
 * @plan: the plan with it done
 * @changes: (element-type HcNeedChange): needs that are met better or worse with it
 * @before: how much was wrong before, counted in faults
 * @after: how much still is
 *
 * A remedy is data; its label and its reason are made in words/.
 */
typedef struct
{
  const char *code;
  GPtrArray *ids;
  GArray *amounts;
  GPtrArray *steps;
  HcPlan *plan;
  GArray *changes;
  guint before;
  guint after;
} HcRemedy;

HcRemedy *hc_remedy_new (const char *code) G_GNUC_WARN_UNUSED_RESULT;
void hc_remedy_free (HcRemedy *self);
void hc_remedy_add (HcRemedy *self, const char *id, double amount);
double hc_remedy_get_amount (const HcRemedy *self, guint part);

G_DEFINE_AUTOPTR_CLEANUP_FUNC (HcRemedy, hc_remedy_free)

G_END_DECLS
