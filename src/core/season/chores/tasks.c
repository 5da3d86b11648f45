/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Puts the list together, by day, with what is ticked off. */
#include "config.h"

#include "season/chores/listing.h"

#include "base/day.h"
#include "flock/own-standard.h"

static const char *const words[HC_N_TASKS] = {
  [HC_TASK_OWN] = "own",
  [HC_TASK_SET] = "set",
  [HC_TASK_CANDLE] = "candle",
  [HC_TASK_STOP_TURNING] = "stop-turning",
  [HC_TASK_HATCH] = "hatch",
  [HC_TASK_RAISE_PLATE] = "raise-plate",
  [HC_TASK_OFF_HEAT] = "off-heat",
  [HC_TASK_QUARANTINE_OVER] = "quarantine-over",
  [HC_TASK_MOVE] = "move",
  [HC_TASK_HARVEST] = "harvest",
  [HC_TASK_SELL] = "sell",
  [HC_TASK_SCRAPE_BARS] = "scrape-bars",
  [HC_TASK_RELINE_NESTS] = "reline-nests",
  [HC_TASK_CLEAN_OUT] = "clean-out",
  [HC_TASK_LIGHT_ON] = "light-on",
  [HC_TASK_LIGHT_OFF] = "light-off",
  [HC_TASK_MESH_CHECK] = "mesh-check",
};

/**
 * hc_task_get_word:
 * @what: something to do
 *
 * Returns: (transfer none): its word in plan files and for programs
 */
const char *
hc_task_get_word (HcTaskWhat what)
{
  g_return_val_if_fail (what < HC_N_TASKS, NULL);
  return words[what];
}

/**
 * hc_task_get_uid: (skip)
 * @self: something to do
 * @plan: the plan it is from
 *
 * The day is not in it: a calendar that is given the list again moves what has
 * moved.
 *
 * Returns: (transfer full): an id of its own in all the world
 */
char *
hc_task_get_uid (const HcTask *self, const HcPlan *plan)
{
  return g_strdup_printf ("%s-%s-%u@%s.hencote", hc_task_get_word (self->what), self->of,
                          self->number, hc_plan_get_id (plan));
}

/* Keeps what falls into the weeks asked about. */
void
hc_listing_add (HcListing *self, HcTask task)
{
  if (task.on < self->from || task.on >= self->until)
    return;
  task.of = g_intern_string (task.of != NULL ? task.of : "");
  task.name = task.name != NULL ? task.name : "";
  task.pen = g_intern_string (task.pen != NULL ? task.pen : "");
  g_array_append_val (self->tasks, task);
}

static void
add_own (HcListing *self)
{
  HcParts *chores = hc_plan_get (self->plan)->chores;

  for (guint i = 0; i < chores->len; i++)
    {
      const HcChoreValues *chore = hc_chore_get (chores->pdata[i]);

      if (chore->what != NULL && *chore->what != '\0')
        continue;
      hc_listing_add (self, (HcTask) { HC_TASK_OWN, hc_chore_get_id (chores->pdata[i]),
                                       .on = chore->on, .done = chore->done,
                                       .name = chore->name });
    }
}

static gboolean
is_tick_of (const HcChoreValues *chore, const HcTask *task)
{
  return g_strcmp0 (chore->what, hc_task_get_word (task->what)) == 0 && chore->on == task->on
         && g_strcmp0 (chore->of, task->of) == 0;
}

static void
tick (HcListing *self)
{
  HcParts *chores = hc_plan_get (self->plan)->chores;

  for (guint i = 0; i < self->tasks->len; i++)
    for (guint j = 0; j < chores->len; j++)
      {
        HcTask *task = &g_array_index (self->tasks, HcTask, i);

        if (is_tick_of (hc_chore_get (chores->pdata[j]), task))
          task->done = hc_chore_get (chores->pdata[j])->done;
      }
}

static int
compare (gconstpointer a, gconstpointer b)
{
  const HcTask *one = a;
  const HcTask *other = b;

  if (one->on != other->on)
    return one->on < other->on ? -1 : 1;
  if (one->what != other->what)
    return (int) one->what - (int) other->what;
  return g_strcmp0 (one->of, other->of);
}

/**
 * hc_tasks_of: (skip)
 * @plan: a plan
 * @book: the book
 * @from: the first day
 * @weeks: how many weeks
 *
 * Returns: (transfer full) (element-type HcTask): what there is to do, by day
 */
GArray *
hc_tasks_of (HcPlan *plan, HcBook *book, guint32 from, guint weeks)
{
  g_autoptr (HcStandard) standard = hc_plan_get_own_standard (plan, book);
  g_autoptr (HcTimeline) timeline = hc_timeline_of (plan, book);
  g_autoptr (GArray) bands = hc_bands_of (timeline, standard, hc_plan_get_site (plan));
  HcListing listing = { plan, book, standard, timeline, bands, from,
                        from + weeks * HC_DAYS_IN_WEEK,
                        g_array_new (FALSE, FALSE, sizeof (HcTask)) };

  hc_listing_add_hatching (&listing);
  hc_listing_add_birds (&listing);
  hc_listing_add_routines (&listing);
  hc_listing_add_seasons (&listing);
  add_own (&listing);
  tick (&listing);
  g_array_sort (listing.tasks, compare);
  return listing.tasks;
}
