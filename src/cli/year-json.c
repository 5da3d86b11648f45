/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The year for programs. */
#include "config.h"

#include "cli/year.h"

#include "base/day.h"
#include "cli/json-writer.h"
#include "words/year-words.h"

static void
write_date (HcJsonWriter *json, const char *name, guint32 day)
{
  g_autofree char *text = hc_day_format (day);

  hc_json_text (json, name, text);
}

static void
write_need (HcJsonWriter *json, const HcNeed *need, const HcTallied *tallied)
{
  hc_json_open (json, NULL, '{');
  hc_json_text (json, "need", need->word);
  hc_json_text (json, "level", hc_level_to_string (tallied->level));
  if (need->sort == HC_NEED_COUNTING)
    {
      hc_json_count (json, "birds", tallied->birds);
      hc_json_count (json, "served", tallied->served);
      hc_json_number (json, "offered", tallied->offered);
      hc_json_number (json, "required", tallied->required);
      hc_json_text (json, "unit", tallied->unit);
    }
  hc_json_close (json, '}');
}

static void
write_flock (HcJsonWriter *json, const HcFlock *flock)
{
  hc_json_open (json, "flock", '[');
  for (guint i = 0; i < hc_flock_get_n_rows (flock); i++)
    {
      const HcFlockRow *row = hc_flock_get_row (flock, i);
      const HcBody *body = hc_flock_get_body (flock, row->body);

      hc_json_open (json, NULL, '{');
      hc_json_text (json, "group", row->batch);
      hc_json_text (json, "kind", body->kind->id);
      hc_json_flag (json, "female", body->female);
      if (body->age_weeks == HC_WEEK_GROWN)
        hc_json_nothing (json, "age_weeks");
      else
        hc_json_count (json, "age_weeks", body->age_weeks);
      hc_json_count (json, "birds", row->count);
      hc_json_text (json, "pen", row->pen);
      hc_json_close (json, '}');
    }
  hc_json_close (json, ']');
}

static void
write_day (HcJsonWriter *json, const HcYearDay *day)
{
  HcCondition condition;
  const HcTally *tally = hc_year_day_get_worse (day, &condition);
  gboolean any = tally->worst != HC_N_NEEDS;

  hc_json_open (json, NULL, '{');
  write_date (json, "date", day->day);
  hc_json_count (json, "birds", hc_flock_get_total (day->flock));
  hc_json_number (json, "kg", day->kg);
  hc_json_text (json, "condition", hc_condition_to_string (condition));
  hc_json_text (json, "level", any ? hc_level_to_string (tally->level) : NULL);
  hc_json_text (json, "worst", any ? hc_need_get (tally->worst)->word : NULL);
  hc_json_open (json, "needs", '[');
  for (guint id = 0; id < HC_N_NEEDS; id++)
    if (tally->needs[id].applies)
      write_need (json, hc_need_get (id), &tally->needs[id]);
  hc_json_close (json, ']');
  write_flock (json, day->flock);
  hc_json_close (json, '}');
}

static const char *
name_event (HcEventWhat what)
{
  static const char *const words[] = { "set", "hatch", "come", "off-heat", "lay", "move",
                                       "leave" };

  return words[what];
}

static void
write_events (HcJsonWriter *json, const HcYear *year)
{
  const GArray *events = hc_year_get_events (year);

  hc_json_open (json, "events", '[');
  for (guint i = 0; i < events->len; i++)
    {
      const HcEvent *event = &g_array_index (events, HcEvent, i);
      g_autofree char *sentence = hc_words_event (year, event);

      if (event->on < hc_year_get_from (year) || event->on >= hc_year_get_until (year))
        continue;
      hc_json_open (json, NULL, '{');
      write_date (json, "date", event->on);
      hc_json_text (json, "what", name_event (event->what));
      hc_json_count (json, "count", event->count);
      hc_json_text (json, "sentence", sentence);
      hc_json_close (json, '}');
    }
  hc_json_close (json, ']');
}

void
hc_year_write_json (const HcCall *call, const HcYear *year, GString *out)
{
  HcJsonWriter json = { out };
  g_autofree char *sentence = hc_words_worst_day (year);
  HcCondition condition;
  guint index;

  hc_json_open (&json, NULL, '{');
  hc_json_text (&json, "title", hc_plan_get (call->plan)->title);
  hc_json_text (&json, "uid", hc_plan_get_id (call->plan));
  write_date (&json, "from", hc_year_get_from (year));
  hc_json_count (&json, "weeks", call->weeks);
  hc_json_text (&json, "rules", hc_plan_get_rules (call->plan)->standard);
  if (hc_year_find_worst (year, &index, &condition))
    write_date (&json, "worst_day", hc_year_get_day (year, index)->day);
  else
    hc_json_nothing (&json, "worst_day");
  hc_json_text (&json, "sentence", sentence);
  hc_json_open (&json, "days", '[');
  for (guint i = 0; i < hc_year_get_n_days (year); i++)
    write_day (&json, hc_year_get_day (year, i));
  hc_json_close (&json, ']');
  write_events (&json, year);
  hc_json_close (&json, '}');
}
