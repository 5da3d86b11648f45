/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * check: what falls short, why, and by which figure. */
#include "config.h"

#include "cli/verb.h"

#include "cli/json-writer.h"
#include "mend/mend.h"
#include "words/remedy-words.h"
#include "words/words.h"

#include <glib/gi18n.h>

static void
write_remedy (HcJsonWriter *json, const HcCall *call, const HcRemedy *remedy)
{
  g_autofree char *label = hc_words_remedy (call->plan, remedy, call->units);
  g_autofree char *changes = hc_words_remedy_changes (remedy);

  hc_json_open (json, NULL, '{');
  hc_json_text (json, "code", remedy->code);
  hc_json_text (json, "label", label);
  hc_json_text (json, "why", hc_words_remedy_why (remedy));
  hc_json_text (json, "changes", changes);
  hc_json_text (json, "leaves", remedy->after == 0 ? "nothing" : "less");
  hc_json_close (json, '}');
}

static void
write_remedies (HcJsonWriter *json, const HcCall *call, HcCheck *check, HcNeedId need,
                const HcFinding *finding)
{
  g_autoptr (GPtrArray) remedies
      = hc_mend_finding (call->cache, call->book, check, need, finding);

  hc_json_open (json, "remedies", '[');
  for (guint i = 0; i < remedies->len; i++)
    write_remedy (json, call, remedies->pdata[i]);
  hc_json_close (json, ']');
}

static void
write_finding (HcJsonWriter *json, const HcCall *call, HcCheck *check, HcNeedId need,
               const HcFinding *finding)
{
  HcUnits units = call->units;
  g_autofree char *sentence = hc_words_finding (check, finding, units);
  g_autofree char *todo = hc_words_finding_todo (check, finding, units);
  g_autofree char *detail = hc_words_finding_detail (finding, units);

  hc_json_open (json, NULL, '{');
  hc_json_text (json, "code", finding->code);
  hc_json_text (json, "level", hc_level_to_string (finding->level));
  hc_json_text (json, "sentence", sentence);
  hc_json_text (json, "todo", todo);
  hc_json_text (json, "detail", detail);
  hc_json_open (json, "ids", '[');
  for (guint i = 0; finding->ids != NULL && finding->ids[i] != NULL; i++)
    hc_json_text (json, NULL, finding->ids[i]);
  hc_json_close (json, ']');
  hc_json_count (json, "birds", finding->birds);
  hc_json_count (json, "more", finding->more);
  hc_json_number (json, "measured", finding->measured);
  hc_json_number (json, "required", finding->required);
  hc_json_text (json, "unit", finding->unit);
  hc_json_text (json, "figure", finding->figure);
  hc_json_text (json, "rules",
                finding->standard ? hc_standard_get_id (finding->standard) : NULL);
  if (call->mend)
    write_remedies (json, call, check, need, finding);
  hc_json_close (json, '}');
}

static void
write_served (HcJsonWriter *json, const HcCheck *check, HcNeedId need)
{
  hc_json_open (json, "served", '{');
  hc_json_count (json, "least", hc_check_get_served (check, need, HC_LEVEL_TIGHT));
  hc_json_count (json, "good", hc_check_get_served (check, need, HC_LEVEL_GOOD));
  hc_json_count (json, "plenty", hc_check_get_served (check, need, HC_LEVEL_PLENTY));
  hc_json_close (json, '}');
}

static void
write_need (HcJsonWriter *json, const HcCall *call, HcCheck *check, const HcNeed *need)
{
  hc_json_open (json, NULL, '{');
  hc_json_text (json, "need", need->word);
  hc_json_text (json, "level", hc_level_to_string (hc_check_get_need_level (check, need->id)));
  if (need->sort == HC_NEED_COUNTING)
    {
      hc_json_count (json, "birds", hc_check_get_birds (check, need->id));
      write_served (json, check, need->id);
    }
  hc_json_open (json, "findings", '[');
  for (guint i = 0; i < hc_check_get_n_findings (check, need->id); i++)
    write_finding (json, call, check, need->id, hc_check_get_finding (check, need->id, i));
  hc_json_close (json, ']');
  hc_json_close (json, '}');
}

static void
write_json (const HcCall *call, HcCheck *check, GString *out)
{
  HcJsonWriter json = { out };
  g_autofree char *day = hc_call_format_day (call);

  hc_json_open (&json, NULL, '{');
  hc_json_text (&json, "title", hc_plan_get (call->plan)->title);
  hc_json_text (&json, "uid", hc_plan_get_id (call->plan));
  hc_json_text (&json, "date", day);
  hc_json_text (&json, "condition", hc_condition_to_string (call->condition));
  hc_json_text (&json, "rules", hc_plan_get_rules (call->plan)->standard);
  hc_json_count (&json, "birds", hc_flock_get_total (call->flock));
  hc_json_text (&json, "level", hc_level_to_string (hc_check_get_level (check)));
  hc_json_open (&json, "needs", '[');
  for (int id = 0; id < HC_N_NEEDS; id++)
    if (hc_check_applies (check, (HcNeedId) id))
      write_need (&json, call, check, hc_need_get ((HcNeedId) id));
  hc_json_close (&json, ']');
  hc_json_close (&json, '}');
}

/* Where all are served and yet it is too little, birds are not what falls
 * short: the count would only puzzle. */
static gboolean
count_tells (const HcCheck *check, const HcNeed *need)
{
  return need->sort == HC_NEED_COUNTING
         && (hc_check_get_need_level (check, need->id) > HC_LEVEL_SHORT
             || hc_check_get_served (check, need->id, HC_LEVEL_TIGHT)
                    < hc_check_get_birds (check, need->id));
}

static void
tell_need (const HcCheck *check, const HcNeed *need, GString *out)
{
  HcLevel level = hc_check_get_need_level (check, need->id);

  g_string_append_printf (out, "  %s: %s", g_dgettext (GETTEXT_PACKAGE, need->title),
                          hc_words_need_level (need->id, level));
  if (count_tells (check, need))
    g_string_append_printf (
        /* Translators: birds served of birds there. */
        out, _(" (%d of %d)"),
        (int) hc_check_get_served (check, need->id, HC_LEVEL_TIGHT),
        (int) hc_check_get_birds (check, need->id));
  g_string_append_c (out, '\n');
}

static void
tell_below (GString *out, char *text)
{
  if (text != NULL && *text != '\0')
    g_string_append_printf (out, "    %s\n", text);
  g_free (text);
}

static void
tell_remedies (const HcCall *call, HcCheck *check, HcNeedId need, const HcFinding *finding,
               GString *out)
{
  g_autoptr (GPtrArray) remedies
      = hc_mend_finding (call->cache, call->book, check, need, finding);

  for (guint i = 0; i < remedies->len; i++)
    {
      g_autofree char *label = hc_words_remedy (call->plan, remedies->pdata[i], call->units);
      g_autofree char *changes = hc_words_remedy_changes (remedies->pdata[i]);

      g_string_append_printf (out, "    %u. %s. %s%s%s\n", i + 1, label,
                              hc_words_remedy_why (remedies->pdata[i]), changes ? " " : "",
                              changes ? changes : "");
    }
  if (remedies->len == 0 && finding->level < HC_LEVEL_GOOD)
    g_string_append_printf (out, "    %s\n", hc_words_no_remedy ());
}

static void
tell_finding (const HcCall *call, HcCheck *check, HcNeedId need, const HcFinding *finding,
              GString *out)
{
  HcUnits units = call->units;
  g_autofree char *sentence = hc_words_finding (check, finding, units);

  g_string_append_printf (out, "  - %s\n", sentence);
  tell_below (out, hc_words_finding_todo (check, finding, units));
  tell_below (out, hc_words_finding_detail (finding, units));
  tell_below (out, finding->figure ? hc_words_finding_source (finding) : NULL);
  if (call->mend)
    tell_remedies (call, check, need, finding, out);
}

static void
tell_findings (const HcCall *call, HcCheck *check, HcLevel level, const char *heading,
               GString *out)
{
  gboolean headed = FALSE;

  for (int id = 0; id < HC_N_NEEDS; id++)
    for (guint i = 0; i < hc_check_get_n_findings (check, (HcNeedId) id); i++)
      {
        const HcFinding *finding = hc_check_get_finding (check, (HcNeedId) id, i);

        if (finding->level != level)
          continue;
        if (!headed)
          g_string_append_printf (out, "\n%s\n", heading);
        headed = TRUE;
        tell_finding (call, check, (HcNeedId) id, finding, out);
      }
}

static void
tell_check (const HcCall *call, HcCheck *check, GString *out)
{
  g_autofree char *day = hc_call_format_day (call);

  g_string_append_printf (out, "%s · %s · %s\n\n", hc_plan_get (call->plan)->title,
                          hc_words_condition (call->condition), day);
  for (int id = 0; id < HC_N_NEEDS; id++)
    if (hc_check_applies (check, (HcNeedId) id))
      tell_need (check, hc_need_get ((HcNeedId) id), out);
  tell_findings (call, check, HC_LEVEL_SHORT, _("Fix now"), out);
  tell_findings (call, check, HC_LEVEL_TIGHT, _("Worth doing"), out);
  tell_findings (call, check, HC_LEVEL_GOOD, _("Worth knowing"), out);
}

static HcExit
run (HcCall *call, GString *out, GError **error)
{
  g_autoptr (HcCheck) check = NULL;

  if (!hc_call_open_plan (call, error))
    return HC_EXIT_WRONG;
  check = hc_call_check (call);
  if (call->json)
    write_json (call, check, out);
  else
    tell_check (call, check, out);
  return hc_check_get_level (check) == HC_LEVEL_SHORT ? HC_EXIT_SHORT : HC_EXIT_ENOUGH;
}

const HcVerb hc_verb_check = {
  .name = "check",
  .summary = N_("Say what falls short, why, and by which figure"),
  .argument = N_("FILE"),
  .options = HC_CALL_ON | HC_CALL_CONDITION | HC_CALL_RULES | HC_CALL_MEND,
  .run = run,
};
