/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * From the words of a call to a plan on a day, by some rules. */
#include "config.h"

#include "cli/call.h"

#include "base/day.h"
#include "cli/read-plan.h"
#include "season/year.h"

#include <glib/gi18n.h>
#include <string.h>

#define WEEKS_IN_YEAR 52

G_DEFINE_QUARK (hc-call-error-quark, hc_call_error)

static void
say_wrong (GError **error, const char *format, const char *word)
{
  g_set_error (error, HC_CALL_ERROR, HC_CALL_ERROR_WORDS, format, word);
}

void
hc_call_clear (HcCall *call)
{
  char **words[] = { &call->argument, &call->units_word, &call->on,   &call->condition_word,
                     &call->rules,    &call->kind,       &call->to,   &call->view,
                     &call->wall,     &call->scale,      &call->paper, &call->outside,
                     &call->humidity, &call->wind,       &call->chart, &call->weeks_word,
                     &call->ask,      &call->of,         &call->pen,   &call->wanted,
                     &call->who,      &call->chance };

  for (guint i = 0; i < G_N_ELEMENTS (words); i++)
    g_clear_pointer (words[i], g_free);
  g_clear_pointer (&call->flock, hc_flock_unref);
  g_clear_pointer (&call->plan, hc_plan_unref);
  g_clear_pointer (&call->cache, hc_check_cache_free);
  g_clear_pointer (&call->book, hc_book_unref);
}

static void
add_options (HcCall *call, HcCallOptions options, GOptionContext *context)
{
  const struct
  {
    HcCallOptions options;
    GOptionEntry entry;
  } all[] = {
    { 0, { "json", 0, 0, G_OPTION_ARG_NONE, &call->json, N_("Write JSON, for programs") } },
    { 0,
      { "units", 0, 0, G_OPTION_ARG_STRING, &call->units_word,
        N_("Write in these units instead of the plan's"), N_("metric|feet") } },
    { HC_CALL_ON,
      { "on", 0, 0, G_OPTION_ARG_STRING, &call->on, N_("Take the flock as it is on this day"),
        N_("YYYY-MM-DD") } },
    { HC_CALL_CONDITION,
      { "condition", 0, 0, G_OPTION_ARG_STRING, &call->condition_word,
        N_("Judge an ordinary day, the night, or birds shut in"), N_("day|night|shut-in") } },
    { HC_CALL_RULES,
      { "rules", 0, 0, G_OPTION_ARG_STRING, &call->rules,
        N_("Judge by these rules instead of the plan's"), N_("ID") } },
    { HC_CALL_KIND,
      { "kind", 0, 0, G_OPTION_ARG_STRING, &call->kind,
        N_("Count more birds of this kind, the others as they are"), N_("KIND") } },
    { HC_CALL_KIND,
      { "empty", 0, 0, G_OPTION_ARG_NONE, &call->empty,
        N_("With --kind: count for a house with no other birds") } },
    { HC_CALL_DRAWING,
      { "to", 0, 0, G_OPTION_ARG_FILENAME, &call->to,
        N_("The drawing's file: .pdf, .svg or .png"), N_("FILE") } },
    { HC_CALL_DRAWING,
      { "view", 0, 0, G_OPTION_ARG_STRING, &call->view,
        N_("Draw the floor or the side alone, or a sheet with a title and a report"),
        N_("floor|side|sheet") } },
    { HC_CALL_DRAWING,
      { "wall", 0, 0, G_OPTION_ARG_STRING, &call->wall,
        N_("From the side, look at this wall"), N_("ID") } },
    { HC_CALL_DRAWING,
      { "scale", 0, 0, G_OPTION_ARG_STRING, &call->scale, N_("Draw to this scale"),
        N_("1:20") } },
    { HC_CALL_DRAWING,
      { "paper", 0, 0, G_OPTION_ARG_STRING, &call->paper, N_("Draw on this paper"),
        N_("a4|a3|letter") } },
    { HC_CALL_WEATHER,
      { "outside", 0, 0, G_OPTION_ARG_STRING, &call->outside,
        N_("How cold it is outside, instead of the plan's coldest night"), N_("°C") } },
    { HC_CALL_WEATHER,
      { "humidity", 0, 0, G_OPTION_ARG_STRING, &call->humidity,
        N_("How humid it is outside, as weather services say it"), N_("PERCENT") } },
    { HC_CALL_WEATHER,
      { "wind", 0, 0, G_OPTION_ARG_STRING, &call->wind, N_("How hard the wind blows"),
        N_("M/S") } },
    { HC_CALL_WEATHER,
      { "chart", 0, 0, G_OPTION_ARG_FILENAME, &call->chart,
        N_("Write nights over cold and vent opening to this CSV file"), N_("FILE.csv") } },
    { HC_CALL_CALENDAR,
      { "to", 0, 0, G_OPTION_ARG_FILENAME, &call->to, N_("Write an iCalendar file"),
        N_("FILE.ics") } },
    { HC_CALL_WEEKS | HC_CALL_CALENDAR,
      { "weeks", 0, 0, G_OPTION_ARG_STRING, &call->weeks_word,
        N_("Look at so many weeks, a year otherwise"), N_("NUMBER") } },
    { HC_CALL_MEND,
      { "mend", 0, 0, G_OPTION_ARG_NONE, &call->mend,
        N_("Say of each thing found how it could be mended") } },
    { HC_CALL_WEEKS,
      { "csv", 0, 0, G_OPTION_ARG_NONE, &call->csv, N_("Write a table for spreadsheets") } },
    { HC_CALL_ASK,
      { "ask", 0, 0, G_OPTION_ARG_STRING, &call->ask,
        N_("Answer one question: the largest hatch, when birds must be gone, hens over winter, "
           "when another heater is needed, eggs to set"),
        N_("hatch|gone|winter|warmth|eggs") } },
    { HC_CALL_ASK,
      { "of", 0, 0, G_OPTION_ARG_STRING, &call->of,
        N_("With --ask: about this group or these eggs"), N_("ID") } },
    { HC_CALL_ASK,
      { "kind", 0, 0, G_OPTION_ARG_STRING, &call->kind,
        N_("With --ask: about this kind of bird"), N_("KIND") } },
    { HC_CALL_ASK,
      { "pen", 0, 0, G_OPTION_ARG_STRING, &call->pen,
        N_("With --ask: they live in this pen"), N_("ID") } },
    { HC_CALL_ASK,
      { "wanted", 0, 0, G_OPTION_ARG_STRING, &call->wanted,
        N_("With --ask eggs: so many chicks at least"), N_("NUMBER") } },
    { HC_CALL_ASK,
      { "who", 0, 0, G_OPTION_ARG_STRING, &call->who,
        N_("With --ask eggs: which chicks are wanted"), N_("all|females|males") } },
    { HC_CALL_ASK,
      { "chance", 0, 0, G_OPTION_ARG_STRING, &call->chance,
        N_("With --ask eggs: in so many settings of a hundred, 90 otherwise"),
        N_("PERCENT") } },
  };

  for (guint i = 0; i < G_N_ELEMENTS (all); i++)
    if (all[i].options == 0 || options & all[i].options)
      {
        GOptionEntry entries[] = { all[i].entry, { NULL } };

        g_option_context_add_main_entries (context, entries, GETTEXT_PACKAGE);
      }
}

static gboolean
take_argument (HcCall *call, char **words, GError **error)
{
  guint n = g_strv_length (words);

  if (n > 2)
    {
      say_wrong (error, _("‘%s’ is one word too many. Call hencote-plan once for each plan."),
                 words[2]);
      return FALSE;
    }
  call->argument = n == 2 ? g_strdup (words[1]) : NULL;
  return TRUE;
}

/* The verb stands in the place of the program's name. */
static gboolean
take_words (HcCall *call, HcCallOptions options, const char *summary, const char *argument,
            char ***words, GError **error)
{
  g_autoptr (GOptionContext) context = g_option_context_new (argument);
  g_autofree char *name = g_strconcat ("hencote-plan ", *words[0], NULL);

  g_option_context_set_summary (context, summary);
  add_options (call, options, context);
  g_set_prgname (name);
  return g_option_context_parse_strv (context, words, error);
}

static gboolean
find_units (HcCall *call, GError **error)
{
  if (call->units_word == NULL || g_str_equal (call->units_word, "metric"))
    call->units = HC_UNITS_METRIC;
  else if (g_str_equal (call->units_word, "feet"))
    call->units = HC_UNITS_FEET;
  else
    {
      say_wrong (error, _("--units %s: the units are ‘metric’ or ‘feet’."), call->units_word);
      return FALSE;
    }
  return TRUE;
}

static gboolean
find_condition (HcCall *call, GError **error)
{
  call->condition = HC_CONDITION_DAY;
  if (call->condition_word == NULL
      || hc_condition_from_string (call->condition_word, &call->condition))
    return TRUE;
  say_wrong (error, _("--condition %s: say ‘day’, ‘night’ or ‘shut-in’."),
             call->condition_word);
  return FALSE;
}

static gboolean
find_weeks (HcCall *call, GError **error)
{
  guint64 weeks = WEEKS_IN_YEAR;

  if (call->weeks_word != NULL
      && !g_ascii_string_to_unsigned (call->weeks_word, 10, 1, HC_YEAR_MOST_WEEKS, &weeks, NULL))
    {
      g_set_error (error, HC_CALL_ERROR, HC_CALL_ERROR_WORDS,
                   _("--weeks %s: say a number from 1 to %d."), call->weeks_word,
                   HC_YEAR_MOST_WEEKS);
      return FALSE;
    }
  call->weeks = (guint) weeks;
  return TRUE;
}

/**
 * hc_call_parse:
 * @call: a call with nothing in it
 * @options: the options the verb takes
 * @summary: what the verb does
 * @argument: what comes after its options
 * @words: (array zero-terminated=1): the verb and what came after it
 * @error: return location for an error
 *
 * Returns: whether the words make sense
 */
gboolean
hc_call_parse (HcCall *call, HcCallOptions options, const char *summary, const char *argument,
               char **words, GError **error)
{
  g_auto (GStrv) left = g_strdupv (words);

  return take_words (call, options, summary, argument, &left, error)
         && take_argument (call, left, error) && find_units (call, error)
         && find_condition (call, error) && find_weeks (call, error);
}

/**
 * hc_call_open_book:
 * @call: a call
 * @error: return location for an error
 *
 * Opens the book with the keeper's own rules in it.
 *
 * Returns: whether it could be opened
 */
gboolean
hc_call_open_book (HcCall *call, GError **error)
{
  g_autofree char *own
      = g_build_filename (g_get_user_data_dir (), "hencote", "standards", NULL);

  call->book = hc_book_load (own, NULL, error);
  return call->book != NULL;
}

/**
 * hc_call_find_rules:
 * @call: a call with its book open
 * @id: id of the rules
 * @error: return location for an error
 *
 * Returns: (transfer none) (nullable): the rules; else @error lists those
 *   there are
 */
HcStandard *
hc_call_find_rules (const HcCall *call, const char *id, GError **error)
{
  HcStandard *found = hc_book_get_standard (call->book, id);
  g_autoptr (GString) known = g_string_new (NULL);

  for (guint i = 0; i < hc_book_get_n_standards (call->book); i++)
    g_string_append_printf (known, "%s%s", i > 0 ? ", " : "",
                            hc_standard_get_id (hc_book_get_standard_at (call->book, i)));
  if (found == NULL)
    g_set_error (error, HC_CALL_ERROR, HC_CALL_ERROR_WORDS,
                 _("There are no rules called ‘%s’. There are: %s."), id, known->str);
  return found;
}

static gboolean
move_to_day (HcCall *call, GError **error)
{
  HcPlanValues values = *hc_plan_get (call->plan);
  HcPlan *moved;

  if (call->on == NULL)
    return TRUE;
  if (!hc_day_parse (call->on, strlen (call->on), &values.as_of))
    {
      say_wrong (error, _("--on %s: write the day as 2026-11-25."), call->on);
      return FALSE;
    }
  moved = hc_plan_with (call->plan, &values);
  hc_plan_unref (call->plan);
  call->plan = moved;
  return TRUE;
}

static gboolean
move_to_rules (HcCall *call, GError **error)
{
  HcPlanValues values = *hc_plan_get (call->plan);
  HcRulesValues rules;
  g_autoptr (HcRules) other = NULL;
  HcPlan *moved;

  if (call->rules == NULL)
    return TRUE;
  if (hc_call_find_rules (call, call->rules, error) == NULL)
    return FALSE;
  rules = *hc_plan_get_rules (call->plan);
  rules.standard = call->rules;
  other = hc_rules_new (NULL, &rules);
  values.rules = other;
  moved = hc_plan_with (call->plan, &values);
  hc_plan_unref (call->plan);
  call->plan = moved;
  return TRUE;
}

/**
 * hc_call_open_plan:
 * @call: a call
 * @error: return location for an error
 *
 * Opens book and plan, and moves the plan to the day and rules asked for.
 *
 * Returns: whether all that could be done
 */
gboolean
hc_call_open_plan (HcCall *call, GError **error)
{
  if (call->argument == NULL)
    {
      g_set_error_literal (error, HC_CALL_ERROR, HC_CALL_ERROR_WORDS,
                           _("Say which plan: a file, or - for standard input."));
      return FALSE;
    }
  if (!hc_call_open_book (call, error))
    return FALSE;
  call->plan = hc_read_plan (call->argument, error);
  if (call->plan == NULL || !move_to_day (call, error) || !move_to_rules (call, error))
    return FALSE;
  if (call->units_word == NULL)
    call->units = (HcUnits) hc_plan_get_site (call->plan)->units;
  call->flock = hc_flock_on (call->plan, call->book, hc_plan_get_day (call->plan));
  call->cache = hc_check_cache_new ();
  return TRUE;
}

/**
 * hc_call_check:
 * @call: a call with its plan open
 *
 * Returns: (transfer full): the plan judged in the condition asked for
 */
HcCheck *
hc_call_check (const HcCall *call)
{
  return hc_check_plan (call->cache, call->plan, call->book, call->condition, call->flock);
}

/**
 * hc_call_format_day:
 * @call: a call with its plan open
 *
 * Returns: (transfer full): the day it is judged on, as 2026-11-25
 */
char *
hc_call_format_day (const HcCall *call)
{
  return hc_day_format (hc_plan_get_day (call->plan));
}
