/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Questions about the year from the command line. */
#include "config.h"

#include "cli/year.h"

#include "base/day.h"
#include "cli/json-writer.h"
#include "words/words.h"
#include "words/year-words.h"

#include <glib/gi18n.h>

#define USUAL_CHANCE 0.9

static const char *const asks[] = { "hatch", "gone", "winter", "warmth", "eggs" };
static const char *const whom[] = { "all", "females", "males" };

static void
tell (GString *out, const char *sentence)
{
  if (sentence != NULL)
    g_string_append_printf (out, "%s\n", sentence);
}

static gboolean
find_word (const char *const *words, guint n, const char *word, guint *index)
{
  for (*index = 0; *index < n; (*index)++)
    if (g_strcmp0 (words[*index], word) == 0)
      return TRUE;
  return FALSE;
}

static gboolean
say_wrong (GError **error, const char *format, const char *word)
{
  g_set_error (error, HC_CALL_ERROR, HC_CALL_ERROR_WORDS, format, word);
  return FALSE;
}

static gboolean
find_kind (const HcCall *call, HcYearQuestion *question, GError **error)
{
  if (call->kind == NULL)
    return TRUE;
  question->kind = hc_book_get_kind (call->book, call->kind);
  return question->kind != NULL
         || say_wrong (error, _("--kind %s: there is no such kind of bird. ‘hencote-plan "
                                "capacity --help’ names some."),
                       call->kind);
}

static gboolean
find_pen (const HcCall *call, HcYearQuestion *question, GError **error)
{
  question->pen = call->pen;
  return call->pen == NULL
         || hc_layout_get_pen (hc_plan_get_layout (call->plan), call->pen) != NULL
         || say_wrong (error, _("--pen %s: the plan has no pen with that id."), call->pen);
}

static gboolean
find_wanted (const HcCall *call, HcYearQuestion *question, GError **error)
{
  guint64 wanted = 0;
  guint64 chance = (guint64) (USUAL_CHANCE * 100);
  guint who = HC_CLUTCH_ALL;

  if (call->wanted != NULL
      && !g_ascii_string_to_unsigned (call->wanted, 10, 1, HC_ASK_MOST, &wanted, NULL))
    return say_wrong (error, _("--wanted %s: say a number of chicks, 1 or more."), call->wanted);
  if (call->chance != NULL
      && !g_ascii_string_to_unsigned (call->chance, 10, 1, 99, &chance, NULL))
    return say_wrong (error, _("--chance %s: say a percentage from 1 to 99."), call->chance);
  if (call->who != NULL && !find_word (whom, G_N_ELEMENTS (whom), call->who, &who))
    return say_wrong (error, _("--who %s: say ‘all’, ‘females’ or ‘males’."), call->who);
  question->wanted = (guint) wanted;
  question->chance = (double) chance / 100;
  question->who = (HcClutchWho) who;
  return TRUE;
}

static gboolean
take_question (const HcCall *call, HcYearQuestion *question, GError **error)
{
  guint ask;

  if (!find_word (asks, G_N_ELEMENTS (asks), call->ask, &ask))
    return say_wrong (error,
                      _("--ask %s: say ‘hatch’, ‘gone’, ‘winter’, ‘warmth’ or ‘eggs’."),
                      call->ask);
  *question = (HcYearQuestion) { .ask = (HcAsk) ask, .from = hc_plan_get_day (call->plan),
                                 .weeks = call->weeks, .of = call->of };
  return find_kind (call, question, error) && find_pen (call, question, error)
         && find_wanted (call, question, error);
}

static void
write_day (HcJsonWriter *json, const char *name, guint32 day)
{
  g_autofree char *text = day != 0 ? hc_day_format (day) : NULL;

  hc_json_text (json, name, text);
}

static void
write_json (const HcYearAnswer *answer, const char *sentence, const char *limit, GString *out)
{
  HcJsonWriter json = { out };
  gboolean by_need = answer->limited && answer->question.ask != HC_ASK_EGGS;

  hc_json_open (&json, NULL, '{');
  hc_json_text (&json, "question", asks[answer->question.ask]);
  hc_json_text (&json, "kind", answer->kind != NULL ? answer->kind->id : NULL);
  hc_json_flag (&json, "limited", answer->limited);
  hc_json_count (&json, "number", answer->number);
  hc_json_count (&json, "birds", answer->birds);
  write_day (&json, "day", answer->day);
  write_day (&json, "until", answer->until);
  hc_json_number (&json, "chance", answer->chance);
  hc_json_number (&json, "chance_before", answer->chance_before);
  hc_json_text (&json, "limited_by", by_need ? hc_need_get (answer->shortfall.need)->word : NULL);
  write_day (&json, "limited_on", by_need ? answer->shortfall.day : 0);
  hc_json_count (&json, "short", answer->shortfall.birds);
  hc_json_number (&json, "eggs_in_hand", answer->in_hand.eggs);
  hc_json_count (&json, "incubator_places", answer->in_hand.places);
  hc_json_count (&json, "incubator_taken", answer->in_hand.taken);
  hc_json_text (&json, "sentence", sentence);
  hc_json_text (&json, "limit", limit);
  hc_json_close (&json, '}');
}

gboolean
hc_year_ask (const HcCall *call, HcTallier *tallier, GString *out, GError **error)
{
  HcYearQuestion question;
  HcYearAnswer answer;
  g_autofree char *sentence = NULL;
  g_autofree char *limit = NULL;
  g_autofree char *in_hand = NULL;

  if (!take_question (call, &question, error)
      || !hc_year_question_answer (&question, tallier, call->plan, &answer, error))
    return FALSE;
  sentence = hc_words_year_answer (&answer);
  limit = hc_words_year_limit (&answer);
  in_hand = hc_words_year_in_hand (&answer);
  if (call->json)
    {
      write_json (&answer, sentence, limit, out);
      return TRUE;
    }
  tell (out, sentence);
  tell (out, limit);
  tell (out, in_hand);
  return TRUE;
}
