/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * rules: the figures a plan is judged by, and where each comes from. */
#include "config.h"

#include "cli/verb.h"

#include "cli/json-writer.h"
#include "flock/own-standard.h"
#include "words/figure-words.h"
#include "words/words.h"

#include <glib/gi18n.h>

typedef char *(*LevelWords) (gconstpointer figure, HcLevel level);

static char *
limit_words (gconstpointer limit, HcLevel level)
{
  return hc_figure_words_limit (limit, level);
}

static char *
demand_words (gconstpointer demand, HcLevel level)
{
  return hc_figure_words_demand (demand, level);
}

static void
write_source (HcJsonWriter *json, const HcFigure *figure)
{
  hc_json_text (json, "basis", hc_evidence_to_string (figure->evidence));
  if (figure->source == NULL)
    {
      hc_json_nothing (json, "source");
      return;
    }
  hc_json_open (json, "source", '{');
  hc_json_text (json, "key", figure->source->key);
  hc_json_text (json, "title", figure->source->title);
  hc_json_text (json, "publisher", figure->source->publisher);
  hc_json_count (json, "year", figure->source->year);
  hc_json_text (json, "where", figure->source->where);
  hc_json_text (json, "place", figure->place);
  hc_json_close (json, '}');
}

static void
write_figure (HcJsonWriter *json, const HcFigure *figure, gconstpointer item, LevelWords words)
{
  g_autofree char *least = words (item, HC_LEVEL_TIGHT);
  g_autofree char *good = words (item, HC_LEVEL_GOOD);
  g_autofree char *plenty = words (item, HC_LEVEL_PLENTY);

  hc_json_open (json, NULL, '{');
  hc_json_text (json, "id", figure->id);
  hc_json_text (json, "name", figure->name);
  hc_json_text (json, "unit", hc_figure_unit_to_string (figure->unit));
  hc_json_text (json, "least", least);
  hc_json_text (json, "good", good);
  hc_json_text (json, "plenty", plenty);
  write_source (json, figure);
  hc_json_text (json, "note", figure->note ? hc_figure_get_note (figure) : NULL);
  hc_json_close (json, '}');
}

static void
write_json (HcStandard *rules, GString *out)
{
  HcJsonWriter json = { out };

  hc_json_open (&json, NULL, '{');
  hc_json_text (&json, "rules", hc_standard_get_id (rules));
  hc_json_text (&json, "name", hc_standard_get_name (rules));
  hc_json_flag (&json, "minimum_only", hc_standard_is_minimum_only (rules));
  hc_json_open (&json, "demands", '[');
  for (guint i = 0; i < hc_standard_get_n_demands (rules); i++)
    {
      const HcDemand *demand = hc_standard_get_demand (rules, i);

      write_figure (&json, &demand->figure, demand, demand_words);
    }
  hc_json_close (&json, ']');
  hc_json_open (&json, "limits", '[');
  for (guint i = 0; i < hc_standard_get_n_limits (rules); i++)
    {
      const HcLimit *limit = hc_standard_get_limit (rules, i);

      write_figure (&json, &limit->figure, limit, limit_words);
    }
  hc_json_close (&json, ']');
  hc_json_close (&json, '}');
}

static void
tell_figure (const HcFigure *figure, gconstpointer item, LevelWords words, GString *out)
{
  g_autofree char *source = hc_figure_words_source (figure);

  g_string_append_printf (out, "\n%s (%s)\n", hc_figure_words_measure (figure), figure->id);
  for (HcLevel level = HC_LEVEL_TIGHT; level <= HC_LEVEL_PLENTY; level++)
    {
      g_autofree char *asked = words (item, level);

      if (asked != NULL)
        g_string_append_printf (out, "  %s: %s\n", hc_words_level (level), asked);
    }
  g_string_append_printf (out, "  %s\n", source);
  if (figure->note != NULL)
    g_string_append_printf (out, "  %s\n", hc_figure_get_note (figure));
}

static void
tell_rules (HcStandard *rules, GString *out)
{
  g_string_append_printf (out, "%s (%s)\n%s\n", hc_standard_get_name (rules),
                          hc_standard_get_id (rules), hc_standard_get_about (rules));
  for (guint i = 0; i < hc_standard_get_n_demands (rules); i++)
    {
      const HcDemand *demand = hc_standard_get_demand (rules, i);

      tell_figure (&demand->figure, demand, demand_words, out);
    }
  for (guint i = 0; i < hc_standard_get_n_limits (rules); i++)
    {
      const HcLimit *limit = hc_standard_get_limit (rules, i);

      tell_figure (&limit->figure, limit, limit_words, out);
    }
}

/* Without a plan and without an id: what rules there are. */
static HcExit
list_rules (const HcCall *call, GString *out)
{
  HcJsonWriter json = { out };

  if (call->json)
    hc_json_open (&json, NULL, '[');
  for (guint i = 0; i < hc_book_get_n_standards (call->book); i++)
    {
      HcStandard *rules = hc_book_get_standard_at (call->book, i);

      if (!call->json)
        {
          g_string_append_printf (out, "%-16s %s\n", hc_standard_get_id (rules),
                                  hc_standard_get_name (rules));
          continue;
        }
      hc_json_open (&json, NULL, '{');
      hc_json_text (&json, "rules", hc_standard_get_id (rules));
      hc_json_text (&json, "name", hc_standard_get_name (rules));
      hc_json_close (&json, '}');
    }
  if (call->json)
    hc_json_close (&json, ']');
  return HC_EXIT_ENOUGH;
}

/* What is asked about: rules by their id, else those of the plan in a file,
 * with the keeper's own figures. */
static HcStandard *
open_rules (HcCall *call, GError **error)
{
  HcStandard *named = hc_book_get_standard (call->book, call->argument);

  if (named != NULL)
    return hc_standard_ref (named);
  g_clear_pointer (&call->book, hc_book_unref);
  if (!hc_call_open_plan (call, error))
    return NULL;
  return hc_plan_get_own_standard (call->plan, call->book);
}

static HcExit
run (HcCall *call, GString *out, GError **error)
{
  g_autoptr (HcStandard) rules = NULL;

  if (!hc_call_open_book (call, error))
    return HC_EXIT_WRONG;
  if (call->argument == NULL)
    return list_rules (call, out);
  rules = open_rules (call, error);
  if (rules == NULL)
    return HC_EXIT_WRONG;
  if (call->json)
    write_json (rules, out);
  else
    tell_rules (rules, out);
  return HC_EXIT_ENOUGH;
}

const HcVerb hc_verb_rules = {
  .name = "rules",
  .summary = N_("List the figures a plan is judged by and where each comes from"),
  .argument = N_("[FILE|ID]"),
  .options = HC_CALL_RULES,
  .run = run,
};
