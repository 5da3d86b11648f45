/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What there is to do in words, and as a calendar. */
#pragma once

#include "season/chores/tasks.h"

G_BEGIN_DECLS

char *hc_words_task (const HcTask *task, const HcPlan *plan) G_GNUC_WARN_UNUSED_RESULT;
const char *hc_words_task_reason (HcTaskWhat what);
char *hc_calendar_write (const HcPlan *plan, const GArray *tasks,
                         gint64 stamp) G_GNUC_WARN_UNUSED_RESULT;

G_END_DECLS
