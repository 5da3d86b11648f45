/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Private to core: the plans a keeper has gone through, to go back to. */
#pragma once

#include "plan/plan.h"

G_BEGIN_DECLS

/* The most steps kept: plans share what did not change, so a step is small. */
#define HC_HISTORY_MOST_STEPS 1000

typedef struct _HcHistory HcHistory;

HcHistory *hc_history_new (HcPlan *plan) G_GNUC_WARN_UNUSED_RESULT;
void hc_history_free (HcHistory *self);

HcPlan *hc_history_get_plan (const HcHistory *self);
const char *const *hc_history_get_selection (const HcHistory *self);
void hc_history_select (HcHistory *self, const char *const *ids);

void hc_history_add (HcHistory *self, HcPlan *plan, const char *label, const char *joins);
void hc_history_end_step (HcHistory *self);

gboolean hc_history_undo (HcHistory *self);
gboolean hc_history_redo (HcHistory *self);
const char *hc_history_get_undo_label (const HcHistory *self);
const char *hc_history_get_redo_label (const HcHistory *self);

void hc_history_mark_saved (HcHistory *self);
void hc_history_mark_unsaved (HcHistory *self);
gboolean hc_history_is_saved (const HcHistory *self);

G_DEFINE_AUTOPTR_CLEANUP_FUNC (HcHistory, hc_history_free)

G_END_DECLS
