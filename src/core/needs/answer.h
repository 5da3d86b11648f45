/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What a need answers for one space, or for all of them together. */
#pragma once

#include "needs/finding-private.h"
#include "needs/need.h"

G_BEGIN_DECLS

/* Private to needs/. @applies is unset where the need has nothing to say: no
 * chicks, no hens at lay. */
struct _HcAnswer
{
  gboolean applies;
  HcLevel level;
  gint64 birds;
  gint64 served[HC_N_ASKED_LEVELS];
  GPtrArray *findings;
  GPtrArray *allotments;
};

void hc_answer_init (HcAnswer *self);
void hc_answer_clear (HcAnswer *self);
void hc_answer_lower (HcAnswer *self, HcLevel level);
void hc_answer_take (HcAnswer *self, HcFinding *finding);
void hc_answer_take_once (HcAnswer *self, HcFinding *finding);
void hc_answer_remark (HcAnswer *self, HcFinding *finding);
void hc_answer_merge (HcAnswer *self, const HcAnswer *other);
void hc_answer_group_findings (HcAnswer *self);
void hc_answer_sort_findings (HcAnswer *self);

G_END_DECLS
