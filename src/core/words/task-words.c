/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A line for each thing to do, and why. */
#include "config.h"

#include "words/task-words.h"

#include "words/house-words.h"

#include <glib/gi18n-lib.h>

static const char *const titles[HC_N_TASKS] = {
  [HC_TASK_OWN] = NULL,
  [HC_TASK_SET] = N_("Set the eggs"),
  [HC_TASK_CANDLE] = N_("Candle the eggs"),
  [HC_TASK_STOP_TURNING] = N_("Stop turning the eggs"),
  [HC_TASK_HATCH] = N_("The chicks hatch"),
  [HC_TASK_RAISE_PLATE] = N_("Raise the heat plate"),
  [HC_TASK_OFF_HEAT] = N_("Take the heater away"),
  [HC_TASK_QUARANTINE_OVER] = N_("They may join the others"),
  [HC_TASK_MOVE] = N_("Move them"),
  [HC_TASK_HARVEST] = N_("Slaughter"),
  [HC_TASK_SELL] = N_("Hand over what is sold"),
  [HC_TASK_SCRAPE_BARS] = N_("Scrape bars and boards"),
  [HC_TASK_RELINE_NESTS] = N_("Line the nests anew"),
  [HC_TASK_CLEAN_OUT] = N_("Clean out the bedding"),
  [HC_TASK_LIGHT_ON] = N_("Light on in the morning"),
  [HC_TASK_LIGHT_OFF] = N_("Daylight is enough again"),
  [HC_TASK_MESH_CHECK] = N_("Check mesh and dig guard"),
};

static const char *const reasons[HC_N_TASKS] = {
  [HC_TASK_OWN] = N_("Your own note."),
  [HC_TASK_SET] = N_("Eggs that wait longer hatch worse."),
  [HC_TASK_CANDLE] = N_("Clear eggs and dead ones go out before they burst."),
  [HC_TASK_STOP_TURNING] = N_("The chick takes its place for hatching, and wants more damp."),
  [HC_TASK_HATCH] = N_("Have the warm place, water and feed ready. Count them and enter the "
                       "result."),
  [HC_TASK_RAISE_PLATE] = N_("They have grown: their backs should just touch it."),
  [HC_TASK_OFF_HEAT] = N_("They are feathered, and warm by themselves."),
  [HC_TASK_QUARANTINE_OVER] = N_("What they might have brought would have shown by now."),
  [HC_TASK_MOVE] = N_("The plan has them live there from this day."),
  [HC_TASK_HARVEST] = N_("The plan has the room for others from this day."),
  [HC_TASK_SELL] = N_("The plan has the room for others from this day."),
  [HC_TASK_SCRAPE_BARS] = N_("Most droppings fall at night; taken away they do not make the air "
                             "foul."),
  [HC_TASK_RELINE_NESTS] = N_("Clean nests give clean eggs and no mites."),
  [HC_TASK_CLEAN_OUT] = N_("Old bedding takes up nothing more."),
  [HC_TASK_LIGHT_ON] = N_("From today days are shorter than the light you give. Add it before "
                          "dawn, so that dusk stays dusk."),
  [HC_TASK_LIGHT_OFF] = N_("From today days are longer than the light you give."),
  [HC_TASK_MESH_CHECK] = N_("Frost is near. Hungry animals dig then, and you cannot."),
};

static char *
name_pen (const HcPlan *plan, const char *id)
{
  const HcPen *pen = hc_layout_get_pen (hc_plan_get_layout (plan), id);

  return pen != NULL ? hc_words_pen_name (pen) : NULL;
}

/**
 * hc_words_task: (skip)
 * @task: something to do
 * @plan: the plan it is from
 *
 * Returns: (transfer full): what, for whom and where, in one line
 */
char *
hc_words_task (const HcTask *task, const HcPlan *plan)
{
  GString *line;
  g_autofree char *pen = name_pen (plan, task->pen);

  if (task->what == HC_TASK_OWN)
    return g_strdup (task->name);
  line = g_string_new (_(titles[task->what]));
  if (*task->name != '\0')
    g_string_append_printf (line, ": %s", task->name);
  if (task->count > 0)
    g_string_append_printf (line, " (%d)", task->count);
  if (pen != NULL)
    g_string_append_printf (line, ", %s", pen);
  return g_string_free (line, FALSE);
}

/**
 * hc_words_task_reason:
 * @what: something to do
 *
 * Returns: (transfer none): why
 */
const char *
hc_words_task_reason (HcTaskWhat what)
{
  g_return_val_if_fail (what < HC_N_TASKS, NULL);
  return _(reasons[what]);
}
