/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * capacity: how many birds the house carries, and what runs out first. */
#include "config.h"

#include "cli/verb.h"

#include "cli/json-writer.h"
#include "needs/ladder.h"
#include "words/words.h"

#include <glib/gi18n.h>

/**
 * Capacity:
 * @question: what was asked
 * @there: birds there are, of the kind asked about or of all
 * @good: birds carried in comfort
 * @least: birds carried at most
 * @ladder: what runs out next, at the good level
 * @condition: the condition the ladder is for
 */
typedef struct
{
  HcLadderQuestion question;
  gint64 there;
  gint64 good;
  gint64 least;
  HcLadder *ladder;
  HcCondition condition;
} Capacity;

static HcLadder *
climb (const HcCall *call, HcLadderQuestion question, HcCondition condition, HcLevel aim)
{
  return hc_ladder_climb (call->cache, call->plan, call->book, call->flock, question, call->kind,
                          condition, aim);
}

/* Birds must do on an ordinary day and shut in: the worse of both counts. */
static HcLadder *
climb_worse (const HcCall *call, HcLadderQuestion question, HcLevel aim, HcCondition *condition)
{
  g_autoptr (HcLadder) day = climb (call, question, HC_CONDITION_DAY, aim);
  g_autoptr (HcLadder) shut_in = climb (call, question, HC_CONDITION_SHUT_IN, aim);
  gboolean worse_shut_in = hc_ladder_get_most (shut_in) < hc_ladder_get_most (day);

  *condition = worse_shut_in ? HC_CONDITION_SHUT_IN : HC_CONDITION_DAY;
  return hc_ladder_ref (worse_shut_in ? shut_in : day);
}

static void
work_out (const HcCall *call, Capacity *capacity)
{
  HcCondition condition;
  g_autoptr (HcLadder) least = NULL;

  capacity->question = call->kind == NULL ? HC_LADDER_THIS_MIX
                       : call->empty      ? HC_LADDER_ONE_KIND
                                          : HC_LADDER_MORE_OF;
  least = climb_worse (call, capacity->question, HC_LEVEL_TIGHT, &condition);
  capacity->ladder
      = climb_worse (call, capacity->question, HC_LEVEL_GOOD, &capacity->condition);
  capacity->there = hc_ladder_get_there (capacity->ladder);
  capacity->good = hc_ladder_get_most (capacity->ladder);
  capacity->least = MAX (hc_ladder_get_most (least), capacity->good);
}

static void
write_rung (HcJsonWriter *json, const HcRung *rung, HcUnits units)
{
  g_autofree char *sentence = hc_words_rung (rung, units);

  hc_json_open (json, NULL, '{');
  hc_json_text (json, "need", hc_need_get (rung->need)->word);
  hc_json_count (json, "most", rung->most);
  hc_json_text (json, "code", rung->code);
  hc_json_number (json, "lift", rung->lift);
  hc_json_text (json, "lift_unit", rung->lift_unit);
  hc_json_count (json, "lift_to", rung->lift_to);
  hc_json_text (json, "sentence", sentence);
  hc_json_close (json, '}');
}

static void
write_json (const HcCall *call, const Capacity *capacity, const HcHeadline *headline,
            GString *out)
{
  static const char *const questions[] = { "mix", "more", "alone" };
  HcJsonWriter json = { out };
  g_autofree char *day = hc_call_format_day (call);

  hc_json_open (&json, NULL, '{');
  hc_json_text (&json, "title", hc_plan_get (call->plan)->title);
  hc_json_text (&json, "uid", hc_plan_get_id (call->plan));
  hc_json_text (&json, "date", day);
  hc_json_text (&json, "rules", hc_plan_get_rules (call->plan)->standard);
  hc_json_text (&json, "question", questions[capacity->question]);
  hc_json_text (&json, "kind", call->kind);
  hc_json_text (&json, "condition", hc_condition_to_string (capacity->condition));
  hc_json_count (&json, "birds", capacity->there);
  hc_json_count (&json, "good", capacity->good);
  hc_json_count (&json, "least", capacity->least);
  hc_json_open (&json, "mend_first", '[');
  for (int id = 0; id < HC_N_NEEDS; id++)
    if (headline->mend_first[id])
      hc_json_text (&json, NULL, hc_need_get ((HcNeedId) id)->word);
  hc_json_close (&json, ']');
  hc_json_open (&json, "ladder", '[');
  for (guint i = 0; i < hc_ladder_get_n_rungs (capacity->ladder); i++)
    write_rung (&json, hc_ladder_get_rung (capacity->ladder, i), call->units);
  hc_json_close (&json, ']');
  hc_json_close (&json, '}');
}

/* Fewer than none: even without these birds something else is short. */
static void
tell_kind (const HcKind *kind, const Capacity *capacity, GString *out)
{
  const char *name = hc_kind_get_name (kind, 2);

  if (capacity->least < 0)
    /* Translators: a kind of bird in the plural. */
    g_string_append_printf (
        out, _("%s: none. Something falls short for the other birds already.\n"), name);
  else
    /* Translators: a kind of bird in the plural, then two numbers. */
    g_string_append_printf (out, _("%s: %d in comfort, %d at most.\n"), name,
                            (int) MAX (capacity->good, 0), (int) capacity->least);
}

static void
tell_answer (const HcCall *call, const Capacity *capacity, const HcHeadline *headline,
             GString *out)
{
  const HcKind *kind = call->kind ? hc_book_get_kind (call->book, call->kind) : NULL;

  if (kind == NULL)
    {
      g_autofree char *sentence = hc_words_headline (headline, call->units);

      g_string_append_printf (out, "%s\n", sentence);
    }
  else
    tell_kind (kind, capacity, out);
}

static void
tell_capacity (const HcCall *call, const Capacity *capacity, const HcHeadline *headline,
               GString *out)
{
  g_autofree char *fix_now = hc_words_fix_now (headline);

  tell_answer (call, capacity, headline, out);
  if (call->kind != NULL && fix_now != NULL)
    g_string_append_printf (out, "%s.\n", fix_now);
  g_string_append_printf (out, "\n%s\n", _("What runs out next"));
  for (guint i = 0; i < hc_ladder_get_n_rungs (capacity->ladder); i++)
    {
      g_autofree char *sentence
          = hc_words_rung (hc_ladder_get_rung (capacity->ladder, i), call->units);

      g_string_append_printf (out, "  - %s\n", sentence);
    }
}

static gboolean
check_kind (const HcCall *call, GError **error)
{
  g_autoptr (GString) known = g_string_new (NULL);

  if (call->kind == NULL && call->empty)
    g_set_error_literal (error, HC_CALL_ERROR, HC_CALL_ERROR_WORDS,
                         _("--empty: say with --kind which birds to count."));
  if (call->kind == NULL)
    return !call->empty;
  if (hc_book_get_kind (call->book, call->kind) != NULL)
    return TRUE;
  for (guint i = 0; i < hc_book_get_n_kinds (call->book); i++)
    g_string_append_printf (known, "%s%s", i > 0 ? ", " : "",
                            hc_book_get_kind_at (call->book, i)->id);
  g_set_error (error, HC_CALL_ERROR, HC_CALL_ERROR_WORDS,
               _("There is no kind of bird called ‘%s’. There are: %s."), call->kind,
               known->str);
  return FALSE;
}

static HcExit
run (HcCall *call, GString *out, GError **error)
{
  HcHeadline headline = { 0 };
  Capacity capacity;

  if (!hc_call_open_plan (call, error) || !check_kind (call, error))
    return HC_EXIT_WRONG;
  hc_headline_work_out (call->cache, call->plan, call->book, call->flock, &headline);
  work_out (call, &capacity);
  if (call->json)
    write_json (call, &capacity, &headline, out);
  else
    tell_capacity (call, &capacity, &headline, out);
  hc_ladder_unref (capacity.ladder);
  return capacity.question != HC_LADDER_ONE_KIND && capacity.there > capacity.least
             ? HC_EXIT_SHORT
             : HC_EXIT_ENOUGH;
}

const HcVerb hc_verb_capacity = {
  .name = "capacity",
  .summary = N_("Say how many birds the house carries, and what runs out first"),
  .argument = N_("FILE"),
  .options = HC_CALL_ON | HC_CALL_RULES | HC_CALL_KIND,
  .run = run,
};
