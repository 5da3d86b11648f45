/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What to add for a need that is short: a table of edits from plan to plan. */
#pragma once

#include "book/book.h"
#include "needs/need.h"
#include "plan/plan.h"

G_BEGIN_DECLS

/**
 * HcRaise: (skip)
 * @need: the need it serves
 * @walk: (nullable): the figure of the walk to it that is to be good as well
 * @more: the plan with a little more of what it asks for; %NULL when there is
 *   no room
 */
typedef struct
{
  HcNeedId need;
  const char *walk;
  HcPlan *(*more) (HcPlan *plan, HcBook *book);
} HcRaise;

guint hc_raise_get_n (void);
const HcRaise *hc_raise_get (guint index);

HcPlan *hc_raise_roost (HcPlan *plan, HcBook *book);
HcPlan *hc_raise_nests (HcPlan *plan, HcBook *book);
HcPlan *hc_raise_feed (HcPlan *plan, HcBook *book);
HcPlan *hc_raise_water (HcPlan *plan, HcBook *book);
HcPlan *hc_raise_way_out (HcPlan *plan, HcBook *book);
HcPlan *hc_raise_light (HcPlan *plan, HcBook *book);
HcPlan *hc_raise_air (HcPlan *plan, HcBook *book);

G_END_DECLS
