/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What there is to do, by day. */
#pragma once

#include "season/events.h"

G_BEGIN_DECLS

/**
 * HcTaskWhat:
 * @HC_TASK_OWN: one of the keeper's own
 * @HC_TASK_SET: set eggs
 * @HC_TASK_CANDLE: look through eggs
 * @HC_TASK_STOP_TURNING: turn eggs no more
 * @HC_TASK_HATCH: be there when chicks hatch
 * @HC_TASK_RAISE_PLATE: raise the heat plate
 * @HC_TASK_OFF_HEAT: take the heater away
 * @HC_TASK_QUARANTINE_OVER: new birds may join the others
 * @HC_TASK_MOVE: move birds to another pen
 * @HC_TASK_HARVEST: slaughter birds
 * @HC_TASK_SELL: hand over birds that are sold
 * @HC_TASK_SCRAPE_BARS: scrape bars and boards
 * @HC_TASK_RELINE_NESTS: line nests anew
 * @HC_TASK_CLEAN_OUT: take all bedding out
 * @HC_TASK_LIGHT_ON: give hens light in the morning
 * @HC_TASK_LIGHT_OFF: daylight is enough again
 * @HC_TASK_MESH_CHECK: look after mesh and dig guard before frost
 */
typedef enum
{
  HC_TASK_OWN,
  HC_TASK_SET,
  HC_TASK_CANDLE,
  HC_TASK_STOP_TURNING,
  HC_TASK_HATCH,
  HC_TASK_RAISE_PLATE,
  HC_TASK_OFF_HEAT,
  HC_TASK_QUARANTINE_OVER,
  HC_TASK_MOVE,
  HC_TASK_HARVEST,
  HC_TASK_SELL,
  HC_TASK_SCRAPE_BARS,
  HC_TASK_RELINE_NESTS,
  HC_TASK_CLEAN_OUT,
  HC_TASK_LIGHT_ON,
  HC_TASK_LIGHT_OFF,
  HC_TASK_MESH_CHECK,
  HC_N_TASKS
} HcTaskWhat;

/**
 * HcTask:
 * @what: what is to be done
 * @of: id of the group, the eggs, the pen or the own chore it is about; interned
 * @number: which of several of its sort, so that it is known again when its
 *   day moves
 * @on: the day
 * @done: the day it was ticked off, 0 while it is open
 * @count: birds or eggs, 0 where that is not the point
 * @name: what the group, the eggs or the own chore is called, held by plan or
 *   book
 * @pen: id of the pen it is done in, interned
 *
 * Something to do on a day.
 */
typedef struct
{
  HcTaskWhat what;
  const char *of;
  guint number;
  guint32 on;
  guint32 done;
  int count;
  const char *name;
  const char *pen;
} HcTask;

GArray *hc_tasks_of (HcPlan *plan, HcBook *book, guint32 from,
                     guint weeks) G_GNUC_WARN_UNUSED_RESULT;
const char *hc_task_get_word (HcTaskWhat what);
char *hc_task_get_uid (const HcTask *self, const HcPlan *plan) G_GNUC_WARN_UNUSED_RESULT;

G_END_DECLS
