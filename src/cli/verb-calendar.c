/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * calendar: what there is to do, for the keeper's own calendar. */
#include "config.h"

#include "cli/verb.h"

#include "base/day.h"
#include "cli/json-writer.h"
#include "words/task-words.h"

#include <glib/gi18n.h>

static void
write_json (const HcCall *call, const GArray *tasks, GString *out)
{
  HcJsonWriter json = { out };

  hc_json_open (&json, NULL, '[');
  for (guint i = 0; i < tasks->len; i++)
    {
      const HcTask *task = &g_array_index (tasks, HcTask, i);
      g_autofree char *date = hc_day_format (task->on);
      g_autofree char *done = task->done != 0 ? hc_day_format (task->done) : NULL;
      g_autofree char *uid = hc_task_get_uid (task, call->plan);
      g_autofree char *sentence = hc_words_task (task, call->plan);

      hc_json_open (&json, NULL, '{');
      hc_json_text (&json, "date", date);
      hc_json_text (&json, "what", hc_task_get_word (task->what));
      hc_json_text (&json, "of", task->of);
      hc_json_text (&json, "uid", uid);
      hc_json_text (&json, "done", done);
      hc_json_text (&json, "sentence", sentence);
      hc_json_text (&json, "reason", hc_words_task_reason (task->what));
      hc_json_close (&json, '}');
    }
  hc_json_close (&json, ']');
}

static void
tell (const HcCall *call, const GArray *tasks, GString *out)
{
  for (guint i = 0; i < tasks->len; i++)
    {
      const HcTask *task = &g_array_index (tasks, HcTask, i);
      g_autofree char *date = hc_day_format (task->on);
      g_autofree char *line = hc_words_task (task, call->plan);

      g_string_append_printf (out, "%s  %s %s\n              %s\n", date,
                              task->done != 0 ? "✓" : " ", line,
                              hc_words_task_reason (task->what));
    }
}

static gboolean
write_file (const HcCall *call, const GArray *tasks, GString *out, GError **error)
{
  g_autofree char *text
      = hc_calendar_write (call->plan, tasks, g_get_real_time () / G_USEC_PER_SEC);

  if (!g_file_set_contents (call->to, text, -1, error))
    return FALSE;
  g_string_append_printf (
      /* Translators: a number of things to do, and a file. */
      out, ngettext ("%u thing to do is in %s\n", "%u things to do are in %s\n", tasks->len),
      tasks->len, call->to);
  return TRUE;
}

static HcExit
run (HcCall *call, GString *out, GError **error)
{
  g_autoptr (GArray) tasks = NULL;

  if (!hc_call_open_plan (call, error))
    return HC_EXIT_WRONG;
  tasks = hc_tasks_of (call->plan, call->book, hc_plan_get_day (call->plan), call->weeks);
  if (call->to != NULL)
    return write_file (call, tasks, out, error) ? HC_EXIT_ENOUGH : HC_EXIT_WRONG;
  if (call->json)
    write_json (call, tasks, out);
  else
    tell (call, tasks, out);
  return HC_EXIT_ENOUGH;
}

const HcVerb hc_verb_calendar = {
  .name = "calendar",
  .summary = N_("List what there is to do, or write it for a calendar"),
  .argument = N_("FILE"),
  .options = HC_CALL_ON | HC_CALL_CALENDAR,
  .run = run,
};
