/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Remedies looked for on another thread, the latest question only. */
#pragma once

#include "mend/mend.h"

#include <gio/gio.h>

G_BEGIN_DECLS

#define HC_TYPE_MEND_TASK (hc_mend_task_get_type ())
/**
 * HcMendTask:
 *
 * Signal `answered` when the remedies asked for last are there.
 */
G_DECLARE_FINAL_TYPE (HcMendTask, hc_mend_task, HC, MEND_TASK, GObject)

HcMendTask *hc_mend_task_new (void);
void hc_mend_task_ask (HcMendTask *self, const HcCheck *check, HcNeedId need,
                       const HcFinding *finding);
GPtrArray *hc_mend_task_get_remedies (HcMendTask *self);
HcPlan *hc_mend_task_get_plan (HcMendTask *self);

G_END_DECLS
