/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The ladder climbed on another thread, the latest question only. */
#include "config.h"

#include "app/needs/ladder-task.h"

#include "flock/flock.h"

struct _HcLadderTask
{
  GObject parent_instance;

  HcCheckCache *cache;
  HcLadder *ladder;
  HcLadderAsked next;
  gboolean waits;
  gboolean running;
};

G_DEFINE_FINAL_TYPE (HcLadderTask, hc_ladder_task, G_TYPE_OBJECT)

enum
{
  ANSWERED,
  N_SIGNALS
};

static guint signals[N_SIGNALS];

static void
clear_asked (HcLadderAsked *asked)
{
  g_clear_pointer (&asked->plan, hc_plan_unref);
  g_clear_pointer (&asked->book, hc_book_unref);
}

static void
free_asked (gpointer data)
{
  clear_asked (data);
  g_free (data);
}

/* The cache is this thread's alone while a climb lasts: there is one at a time. */
static void
climb (GTask *task, gpointer source, gpointer data, GCancellable *cancellable)
{
  HcLadderTask *self = source;
  const HcLadderAsked *asked = data;
  g_autoptr (HcFlock) flock
      = hc_flock_on (asked->plan, asked->book, hc_plan_get_day (asked->plan));
  HcLadder *ladder = hc_ladder_climb (self->cache, asked->plan, asked->book, flock,
                                      asked->question, asked->kind, asked->condition, asked->aim);

  g_task_return_pointer (task, ladder, (GDestroyNotify) hc_ladder_unref);
}

static void start (HcLadderTask *self);

static void
climbed (GObject *source, GAsyncResult *result, gpointer data)
{
  HcLadderTask *self = HC_LADDER_TASK (source);
  g_autoptr (HcLadder) ladder = g_task_propagate_pointer (G_TASK (result), NULL);

  self->running = FALSE;
  if (self->waits)
    {
      start (self);
      return;
    }
  g_clear_pointer (&self->ladder, hc_ladder_unref);
  self->ladder = g_steal_pointer (&ladder);
  g_signal_emit (self, signals[ANSWERED], 0);
}

static void
start (HcLadderTask *self)
{
  g_autoptr (GTask) task = g_task_new (self, NULL, climbed, NULL);
  HcLadderAsked *asked = g_memdup2 (&self->next, sizeof self->next);

  self->next.plan = NULL;
  self->next.book = NULL;
  self->waits = FALSE;
  self->running = TRUE;
  g_task_set_task_data (task, asked, free_asked);
  g_task_run_in_thread (task, climb);
}

/**
 * hc_ladder_task_ask: (skip)
 * @self: what climbs
 * @asked: what to climb for
 *
 * Asks; the signal `answered` tells when there is a ladder. A question asked
 * before the last one was answered takes the place of any that still waits.
 */
void
hc_ladder_task_ask (HcLadderTask *self, const HcLadderAsked *asked)
{
  clear_asked (&self->next);
  self->next = *asked;
  self->next.plan = hc_plan_ref (asked->plan);
  self->next.book = hc_book_ref (asked->book);
  self->next.kind = g_intern_string (asked->kind);
  self->waits = TRUE;
  if (!self->running)
    start (self);
}

/**
 * hc_ladder_task_get_ladder: (skip)
 * @self: what climbs
 *
 * Returns: (transfer none) (nullable): the newest ladder
 */
HcLadder *
hc_ladder_task_get_ladder (HcLadderTask *self)
{
  return self->ladder;
}

static void
hc_ladder_task_finalize (GObject *object)
{
  HcLadderTask *self = HC_LADDER_TASK (object);

  clear_asked (&self->next);
  g_clear_pointer (&self->ladder, hc_ladder_unref);
  hc_check_cache_free (self->cache);
  G_OBJECT_CLASS (hc_ladder_task_parent_class)->finalize (object);
}

static void
hc_ladder_task_class_init (HcLadderTaskClass *klass)
{
  G_OBJECT_CLASS (klass)->finalize = hc_ladder_task_finalize;
  signals[ANSWERED] = g_signal_new ("answered", G_TYPE_FROM_CLASS (klass), G_SIGNAL_RUN_LAST, 0,
                                    NULL, NULL, NULL, G_TYPE_NONE, 0);
}

static void
hc_ladder_task_init (HcLadderTask *self)
{
  self->cache = hc_check_cache_new ();
}

HcLadderTask *
hc_ladder_task_new (void)
{
  return g_object_new (HC_TYPE_LADDER_TASK, NULL);
}
