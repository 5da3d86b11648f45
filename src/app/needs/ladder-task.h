/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The ladder climbed on another thread, the latest question only. */
#pragma once

#include "needs/ladder.h"

#include <gio/gio.h>

G_BEGIN_DECLS

/**
 * HcLadderAsked: (skip)
 *
 * What a ladder is climbed for.
 */
typedef struct
{
  HcPlan *plan;
  HcBook *book;
  HcLadderQuestion question;
  const char *kind;
  HcCondition condition;
  HcLevel aim;
} HcLadderAsked;

#define HC_TYPE_LADDER_TASK (hc_ladder_task_get_type ())
G_DECLARE_FINAL_TYPE (HcLadderTask, hc_ladder_task, HC, LADDER_TASK, GObject)

HcLadderTask *hc_ladder_task_new (void) G_GNUC_WARN_UNUSED_RESULT;
void hc_ladder_task_ask (HcLadderTask *self, const HcLadderAsked *asked);
HcLadder *hc_ladder_task_get_ladder (HcLadderTask *self);

G_END_DECLS
