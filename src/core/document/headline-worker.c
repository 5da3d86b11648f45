/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Climbs the ladder of a plan on another thread. */
#include "config.h"

#include "document/headline-worker.h"

struct _HcHeadlineWorker
{
  HcCheckCache *cache;
};

typedef struct
{
  HcHeadlineWorker *worker;
  HcPlan *plan;
  HcBook *book;
  HcFlock *flock;
  HcHeadline headline;
} Job;

/**
 * hc_headline_worker_new: (skip)
 *
 * Returns: (transfer full): a worker with nothing to do
 */
HcHeadlineWorker *
hc_headline_worker_new (void)
{
  HcHeadlineWorker *self = g_atomic_rc_box_new0 (HcHeadlineWorker);

  self->cache = hc_check_cache_new ();
  return self;
}

HcHeadlineWorker *
hc_headline_worker_ref (HcHeadlineWorker *self)
{
  return g_atomic_rc_box_acquire (self);
}

static void
clear_worker (gpointer data)
{
  HcHeadlineWorker *self = data;

  hc_check_cache_free (self->cache);
}

void
hc_headline_worker_unref (HcHeadlineWorker *self)
{
  g_atomic_rc_box_release_full (self, clear_worker);
}

static void
job_free (gpointer data)
{
  Job *job = data;

  hc_headline_worker_unref (job->worker);
  hc_plan_unref (job->plan);
  hc_book_unref (job->book);
  hc_flock_unref (job->flock);
  g_free (job);
}

static void
work (GTask *task, gpointer source, gpointer data, GCancellable *cancellable)
{
  Job *job = data;

  hc_headline_work_out (job->worker->cache, job->plan, job->book, job->flock, &job->headline);
  g_task_return_boolean (task, TRUE);
}

/**
 * hc_headline_worker_ask: (skip)
 * @self: a worker with no question in hand: it answers one at a time
 * @plan: the plan asked about
 * @book: the book
 * @flock: the birds
 * @callback: called on this thread when the answer is there
 * @data: for @callback
 */
void
hc_headline_worker_ask (HcHeadlineWorker *self, HcPlan *plan, HcBook *book, HcFlock *flock,
                        GAsyncReadyCallback callback, gpointer data)
{
  g_autoptr (GTask) task = g_task_new (NULL, NULL, callback, data);
  Job *job = g_new0 (Job, 1);

  job->worker = hc_headline_worker_ref (self);
  job->plan = hc_plan_ref (plan);
  job->book = hc_book_ref (book);
  job->flock = hc_flock_ref (flock);
  g_task_set_task_data (task, job, job_free);
  g_task_run_in_thread (task, work);
}

/**
 * hc_headline_worker_finish: (skip)
 * @result: what the callback was given
 * @headline: (out): the answer
 *
 * Returns: (transfer full): the plan it is about
 */
HcPlan *
hc_headline_worker_finish (GAsyncResult *result, HcHeadline *headline)
{
  Job *job = g_task_get_task_data (G_TASK (result));

  *headline = job->headline;
  return hc_plan_ref (job->plan);
}
