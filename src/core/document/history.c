/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A list of plans, each with the name of the step that led to it. */
#include "config.h"

#include "document/history.h"

#include "plan/edit.h"

/* @before and @after are what was selected on either side of the step. */
typedef struct
{
  HcPlan *plan;
  char *label;
  char *joins;
  char **before;
  char **after;
  guint64 serial;
} Step;

struct _HcHistory
{
  GPtrArray *steps;
  guint at;
  char **selection;
  guint64 last_serial;
  guint64 saved_serial;
};

static void
step_free (gpointer data)
{
  Step *step = data;

  hc_plan_unref (step->plan);
  g_free (step->label);
  g_free (step->joins);
  g_strfreev (step->before);
  g_strfreev (step->after);
  g_free (step);
}

static Step *
step_at (const HcHistory *self, guint at)
{
  return self->steps->pdata[at];
}

static Step *
now (const HcHistory *self)
{
  return step_at (self, self->at);
}

static void
push (HcHistory *self, HcPlan *plan, const char *label, const char *joins)
{
  Step *step = g_new0 (Step, 1);

  step->plan = hc_plan_ref (plan);
  step->label = g_strdup (label);
  step->joins = g_strdup (joins);
  step->before = g_strdupv (self->selection);
  step->after = g_strdupv (self->selection);
  step->serial = ++self->last_serial;
  g_ptr_array_add (self->steps, step);
  self->at = self->steps->len - 1;
}

/**
 * hc_history_new: (skip)
 * @plan: the plan to start from
 *
 * Returns: (transfer full): a history without steps, saved as it is
 */
HcHistory *
hc_history_new (HcPlan *plan)
{
  HcHistory *self = g_new0 (HcHistory, 1);

  self->steps = g_ptr_array_new_with_free_func (step_free);
  self->selection = g_new0 (char *, 1);
  push (self, plan, NULL, NULL);
  hc_history_mark_saved (self);
  return self;
}

void
hc_history_free (HcHistory *self)
{
  g_ptr_array_unref (self->steps);
  g_strfreev (self->selection);
  g_free (self);
}

HcPlan *
hc_history_get_plan (const HcHistory *self)
{
  return now (self)->plan;
}

const char *const *
hc_history_get_selection (const HcHistory *self)
{
  return (const char *const *) self->selection;
}

/* Only what is in the plan can stay selected. */
static char **
still_there (const HcPlan *plan, const char *const *ids)
{
  g_autoptr (GStrvBuilder) there = g_strv_builder_new ();

  for (guint i = 0; ids != NULL && ids[i] != NULL; i++)
    if (hc_plan_has_id (plan, ids[i]))
      g_strv_builder_add (there, ids[i]);
  return g_strv_builder_end (there);
}

/**
 * hc_history_select: (skip)
 * @self: a history
 * @ids: (array zero-terminated=1) (nullable): what is selected now; ids of
 *   nothing are left out
 */
void
hc_history_select (HcHistory *self, const char *const *ids)
{
  char **selection = still_there (now (self)->plan, ids);

  g_strfreev (self->selection);
  self->selection = selection;
}

/* The saved plan must stay one that can be gone back to. */
static gboolean
joins_last_step (const HcHistory *self, const char *joins)
{
  const Step *last = now (self);

  return joins != NULL && self->at > 0 && g_strcmp0 (last->joins, joins) == 0
         && last->serial != self->saved_serial;
}

static void
forget_redo (HcHistory *self)
{
  g_ptr_array_set_size (self->steps, (int) self->at + 1);
}

static void
forget_oldest (HcHistory *self)
{
  if (self->steps->len <= HC_HISTORY_MOST_STEPS + 1)
    return;
  g_ptr_array_remove_index (self->steps, 0);
  self->at--;
}

static void
replace_last (HcHistory *self, HcPlan *plan, const char *label)
{
  Step *last = now (self);

  hc_plan_ref (plan);
  hc_plan_unref (last->plan);
  last->plan = plan;
  g_free (last->label);
  last->label = g_strdup (label);
  last->serial = ++self->last_serial;
}

/**
 * hc_history_add: (skip)
 * @self: a history
 * @plan: the plan after the step
 * @label: what the step is called, as in 'Undo “move feeder”'
 * @joins: (nullable): a key; a step joins the last one of the same key, so
 *   that a row of key presses is one step
 *
 * A plan that is the one before is no step.
 */
void
hc_history_add (HcHistory *self, HcPlan *plan, const char *label, const char *joins)
{
  g_auto (GStrv) selection = NULL;

  if (plan == now (self)->plan)
    return;
  if (joins_last_step (self, joins))
    replace_last (self, plan, label);
  else
    {
      forget_redo (self);
      push (self, plan, label, joins);
      forget_oldest (self);
    }
  selection = g_strdupv (self->selection);
  hc_history_select (self, (const char *const *) selection);
}

/**
 * hc_history_end_step: (skip)
 * @self: a history
 *
 * Keeps what comes from joining the last step.
 */
void
hc_history_end_step (HcHistory *self)
{
  g_clear_pointer (&now (self)->joins, g_free);
}

static void
keep_selection (char ***kept, HcHistory *self)
{
  g_strfreev (*kept);
  *kept = g_strdupv (self->selection);
}

/**
 * hc_history_undo: (skip)
 * @self: a history
 *
 * Returns: whether there was a step to undo
 */
gboolean
hc_history_undo (HcHistory *self)
{
  Step *undone = now (self);

  if (self->at == 0)
    return FALSE;
  keep_selection (&undone->after, self);
  hc_history_end_step (self);
  self->at--;
  hc_history_end_step (self);
  hc_history_select (self, (const char *const *) undone->before);
  return TRUE;
}

/**
 * hc_history_redo: (skip)
 * @self: a history
 *
 * Returns: whether there was a step to redo
 */
gboolean
hc_history_redo (HcHistory *self)
{
  if (self->at + 1 >= self->steps->len)
    return FALSE;
  self->at++;
  hc_history_select (self, (const char *const *) now (self)->after);
  return TRUE;
}

/**
 * hc_history_get_undo_label: (skip)
 * @self: a history
 *
 * Returns: (nullable): the step that would be undone, %NULL when there is none
 */
const char *
hc_history_get_undo_label (const HcHistory *self)
{
  return self->at > 0 ? now (self)->label : NULL;
}

/**
 * hc_history_get_redo_label: (skip)
 * @self: a history
 *
 * Returns: (nullable): the step that would be redone, %NULL when there is none
 */
const char *
hc_history_get_redo_label (const HcHistory *self)
{
  return self->at + 1 < self->steps->len ? step_at (self, self->at + 1)->label : NULL;
}

void
hc_history_mark_saved (HcHistory *self)
{
  self->saved_serial = now (self)->serial;
}

/* For work that no file holds, such as a draft brought back. */
void
hc_history_mark_unsaved (HcHistory *self)
{
  self->saved_serial = 0;
}

gboolean
hc_history_is_saved (const HcHistory *self)
{
  return now (self)->serial == self->saved_serial;
}
