/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The year as a table: for people, and for spreadsheets. */
#include "config.h"

#include "cli/year.h"

#include "base/day.h"
#include "cli/csv-writer.h"
#include "words/words.h"
#include "words/year-words.h"

#include <glib/gi18n.h>

static void
tell_events (const HcYear *year, guint32 from, guint32 until, GString *out)
{
  const GArray *events = hc_year_get_events (year);

  for (guint i = 0; i < events->len; i++)
    {
      const HcEvent *event = &g_array_index (events, HcEvent, i);
      g_autofree char *text = NULL;

      if (event->on < from || event->on >= until)
        continue;
      text = hc_words_event (year, event);
      g_string_append_printf (out, "            %s\n", text);
    }
}

static void
tell_day (const HcCall *call, const HcYear *year, guint index, GString *out)
{
  const HcYearDay *day = hc_year_get_day (year, index);
  const HcTally *tally = hc_year_day_get_worse (day, NULL);
  g_autofree char *date = hc_day_format (day->day);
  g_autofree char *mass = hc_mass_format (day->kg, call->units);
  gint64 birds = hc_flock_get_total (day->flock);
  g_autofree char *count
      = g_strdup_printf (ngettext ("%d bird", "%d birds", (gulong) birds), (int) birds);
  g_autofree char *worst = tally->worst == HC_N_NEEDS
                               ? NULL
                               : hc_words_tallied (tally->worst, &tally->needs[tally->worst]);

  g_string_append_printf (out, "%s  %-10s %-9s %s\n", date, count, mass,
                          worst != NULL ? worst : "");
  tell_events (year, day->day,
               index + 1 < hc_year_get_n_days (year) ? hc_year_get_day (year, index + 1)->day
                                                     : hc_year_get_until (year),
               out);
}

static void
tell_findings (const HcCall *call, const HcYear *year, GString *out)
{
  g_autoptr (HcCheck) check = NULL;
  HcCondition condition;
  guint index;
  HcNeedId need;

  if (!hc_year_find_worst (year, &index, &condition))
    return;
  check = hc_year_check (year, call->cache, index, condition);
  need = hc_year_day_get_worse (hc_year_get_day (year, index), NULL)->worst;
  for (guint i = 0; i < hc_check_get_n_findings (check, need); i++)
    {
      const HcFinding *finding = hc_check_get_finding (check, need, i);
      g_autofree char *sentence = hc_words_finding (check, finding, call->units);
      g_autofree char *todo = hc_words_finding_todo (check, finding, call->units);

      g_string_append_printf (out, "  - %s\n", sentence);
      if (todo != NULL && *todo != '\0')
        g_string_append_printf (out, "    %s\n", todo);
    }
}

/* For people: every day that is looked at with its worst need, then the worst
 * day with the reason. */
void
hc_year_tell (const HcCall *call, const HcYear *year, GString *out)
{
  g_autofree char *worst = hc_words_worst_day (year);

  g_string_append_printf (
      /* Translators: the plan's title, and a number of weeks. */
      out, ngettext ("%s · %d week\n\n", "%s · %d weeks\n\n", call->weeks),
      hc_plan_get (call->plan)->title, (int) call->weeks);
  for (guint i = 0; i < hc_year_get_n_days (year); i++)
    tell_day (call, year, i, out);
  g_string_append_printf (out, "\n%s\n", worst);
  tell_findings (call, year, out);
}

static void
write_heading (HcCsvWriter *csv)
{
  static const char *const columns[] = { "level", "birds", "served", "offered", "required",
                                         "unit" };

  hc_csv_text (csv, "date");
  hc_csv_text (csv, "birds");
  hc_csv_text (csv, "kg");
  hc_csv_text (csv, "condition");
  hc_csv_text (csv, "level");
  hc_csv_text (csv, "worst");
  for (guint id = 0; id < HC_N_NEEDS; id++)
    for (guint i = 0; i < (hc_need_get (id)->sort == HC_NEED_COUNTING ? 6 : 1); i++)
      {
        g_autofree char *name = g_strdup_printf ("%s_%s", hc_need_get (id)->word, columns[i]);

        hc_csv_text (csv, name);
      }
  hc_csv_end_row (csv);
}

static void
write_need (HcCsvWriter *csv, const HcNeed *need, const HcTallied *tallied)
{
  hc_csv_text (csv, tallied->applies ? hc_level_to_string (tallied->level) : NULL);
  if (need->sort != HC_NEED_COUNTING)
    return;
  if (!tallied->applies)
    {
      for (guint i = 0; i < 5; i++)
        hc_csv_text (csv, NULL);
      return;
    }
  hc_csv_count (csv, tallied->birds);
  hc_csv_count (csv, tallied->served);
  hc_csv_number (csv, tallied->offered);
  hc_csv_number (csv, tallied->required);
  hc_csv_text (csv, tallied->unit);
}

static void
write_day (HcCsvWriter *csv, const HcYearDay *day)
{
  HcCondition condition;
  const HcTally *tally = hc_year_day_get_worse (day, &condition);
  g_autofree char *date = hc_day_format (day->day);
  gboolean any = tally->worst != HC_N_NEEDS;

  hc_csv_text (csv, date);
  hc_csv_count (csv, hc_flock_get_total (day->flock));
  hc_csv_number (csv, day->kg);
  hc_csv_text (csv, hc_condition_to_string (condition));
  hc_csv_text (csv, any ? hc_level_to_string (tally->level) : NULL);
  hc_csv_text (csv, any ? hc_need_get (tally->worst)->word : NULL);
  for (guint id = 0; id < HC_N_NEEDS; id++)
    write_need (csv, hc_need_get (id), &tally->needs[id]);
  hc_csv_end_row (csv);
}

/* For spreadsheets: a row for each day that is looked at. */
void
hc_year_write_csv (const HcYear *year, GString *out)
{
  HcCsvWriter csv = { out };

  write_heading (&csv);
  for (guint i = 0; i < hc_year_get_n_days (year); i++)
    write_day (&csv, hc_year_get_day (year, i));
}
