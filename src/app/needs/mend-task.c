/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Remedies looked for on another thread, the latest question only. */
#include "config.h"

#include "app/needs/mend-task.h"

/* The finding by what it says of which part: the other thread judges the plan
 * anew, with what it keeps for itself. */
typedef struct
{
  HcPlan *plan;
  HcFlock *flock;
  HcCondition condition;
  HcNeedId need;
  char *code;
  char *part;
} Question;

struct _HcMendTask
{
  GObject parent_instance;

  HcCheckCache *cache;
  Question *next;
  GPtrArray *remedies;
  HcPlan *plan;
  gboolean running;
};

G_DEFINE_FINAL_TYPE (HcMendTask, hc_mend_task, G_TYPE_OBJECT)

enum
{
  ANSWERED,
  N_SIGNALS
};

static guint signals[N_SIGNALS];

static void
question_free (gpointer data)
{
  Question *question = data;

  hc_plan_unref (question->plan);
  hc_flock_unref (question->flock);
  g_free (question->code);
  g_free (question->part);
  g_free (question);
}

static const HcFinding *
find_again (const HcCheck *check, const Question *question)
{
  for (guint i = 0; i < hc_check_get_n_findings (check, question->need); i++)
    {
      const HcFinding *finding = hc_check_get_finding (check, question->need, i);

      if (g_str_equal (finding->code, question->code)
          && g_strcmp0 (finding->ids[0], question->part) == 0)
        return finding;
    }
  return NULL;
}

/* The cache is this thread's alone meanwhile: there is one search at a time. */
static void
work (GTask *task, gpointer source, gpointer data, GCancellable *cancellable)
{
  HcMendTask *self = source;
  const Question *question = data;
  HcBook *book = hc_flock_get_book (question->flock);
  g_autoptr (HcCheck) check = hc_check_plan (self->cache, question->plan, book,
                                             question->condition, question->flock);
  const HcFinding *finding = find_again (check, question);
  GPtrArray *remedies
      = finding != NULL
            ? hc_mend_finding (self->cache, book, check, question->need, finding)
            : g_ptr_array_new_with_free_func ((GDestroyNotify) hc_remedy_free);

  g_task_return_pointer (task, remedies, (GDestroyNotify) g_ptr_array_unref);
}

static void start (HcMendTask *self);

static void
answered (GObject *source, GAsyncResult *result, gpointer data)
{
  HcMendTask *self = HC_MEND_TASK (source);
  const Question *question = g_task_get_task_data (G_TASK (result));
  g_autoptr (GPtrArray) remedies = g_task_propagate_pointer (G_TASK (result), NULL);

  self->running = FALSE;
  if (self->next != NULL)
    {
      start (self);
      return;
    }
  g_clear_pointer (&self->remedies, g_ptr_array_unref);
  g_clear_pointer (&self->plan, hc_plan_unref);
  self->remedies = g_steal_pointer (&remedies);
  self->plan = hc_plan_ref (question->plan);
  g_signal_emit (self, signals[ANSWERED], 0);
}

static void
start (HcMendTask *self)
{
  g_autoptr (GTask) task = g_task_new (self, NULL, answered, NULL);

  self->running = TRUE;
  g_task_set_task_data (task, g_steal_pointer (&self->next), question_free);
  g_task_run_in_thread (task, work);
}

/**
 * hc_mend_task_ask: (skip)
 * @self: what searches
 * @check: the plan judged
 * @need: the need that found it
 * @finding: what is to be mended
 *
 * Asks; the signal `answered` tells when there are remedies. A question asked
 * before the last one was answered takes its place: what is stale is dropped.
 */
void
hc_mend_task_ask (HcMendTask *self, const HcCheck *check, HcNeedId need, const HcFinding *finding)
{
  Question *question = g_new0 (Question, 1);

  question->plan = hc_plan_ref (hc_check_get_plan (check));
  question->flock = hc_flock_ref (hc_check_get_flock (check));
  question->condition = hc_check_get_condition (check);
  question->need = need;
  question->code = g_strdup (finding->code);
  question->part = g_strdup (finding->ids[0]);
  g_clear_pointer (&self->next, question_free);
  self->next = question;
  if (!self->running)
    start (self);
}

/**
 * hc_mend_task_get_remedies: (skip)
 * @self: what searches
 *
 * Returns: (transfer none) (nullable) (element-type HcRemedy): the newest answer
 */
GPtrArray *
hc_mend_task_get_remedies (HcMendTask *self)
{
  return self->remedies;
}

/**
 * hc_mend_task_get_plan: (skip)
 * @self: what searches
 *
 * Returns: (transfer none) (nullable): the plan the newest answer is about
 */
HcPlan *
hc_mend_task_get_plan (HcMendTask *self)
{
  return self->plan;
}

static void
hc_mend_task_finalize (GObject *object)
{
  HcMendTask *self = HC_MEND_TASK (object);

  g_clear_pointer (&self->next, question_free);
  g_clear_pointer (&self->remedies, g_ptr_array_unref);
  g_clear_pointer (&self->plan, hc_plan_unref);
  hc_check_cache_free (self->cache);
  G_OBJECT_CLASS (hc_mend_task_parent_class)->finalize (object);
}

static void
hc_mend_task_class_init (HcMendTaskClass *klass)
{
  G_OBJECT_CLASS (klass)->finalize = hc_mend_task_finalize;
  signals[ANSWERED] = g_signal_new ("answered", G_TYPE_FROM_CLASS (klass), G_SIGNAL_RUN_LAST, 0,
                                    NULL, NULL, NULL, G_TYPE_NONE, 0);
}

static void
hc_mend_task_init (HcMendTask *self)
{
  self->cache = hc_check_cache_new ();
}

HcMendTask *
hc_mend_task_new (void)
{
  return g_object_new (HC_TYPE_MEND_TASK, NULL);
}
