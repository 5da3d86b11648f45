/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Answers to questions about the year in words, and what limits them. */
#include "config.h"

#include "words/words.h"
#include "words/year-words.h"

#include <glib/gi18n-lib.h>

static char *
tell_hatch (const HcYearAnswer *answer)
{
  g_autofree char *day = hc_words_day (answer->day);

  if (!answer->limited)
    return g_strdup (_("However many eggs are set, nobody goes short on their account."));
  if (answer->number == 0)
    return g_strdup_printf (_("Not one egg set on %s finds room."), day);
  return g_strdup_printf (
      /* Translators: eggs, the day they are set on, chicks. */
      ngettext ("Set %d egg on %s at most: the house carries %d chicks of it.",
                "Set %d eggs on %s at most: the house carries the %d chicks of a good hatch.",
                (gulong) answer->number),
      (int) answer->number, day, (int) answer->birds);
}

static char *
tell_gone (const HcYearAnswer *answer)
{
  g_autofree char *day = NULL;

  if (!answer->limited)
    return g_strdup (_("They can stay through all these weeks: nobody goes short on their "
                       "account."));
  day = hc_words_day (answer->day);
  return g_strdup_printf (
      /* Translators: birds, and a day. */
      ngettext ("The %d bird must be gone by %s.", "All %d birds must be gone by %s.",
                (gulong) answer->birds),
      (int) answer->birds, day);
}

static char *
tell_winter (const HcYearAnswer *answer)
{
  const char *kind = hc_kind_get_name (answer->kind, (gulong) answer->number);
  gint64 spare = answer->number - answer->birds;

  if (!answer->limited)
    return g_strdup (_("However many stay, nobody goes short on their account."));
  if (spare < 0)
    return g_strdup_printf (
        /* Translators: hens that can stay, their kind, hens there, hens too many. */
        _("%d hens (%s) can stay over winter. There are %d: %d too many."),
        (int) answer->number, kind, (int) answer->birds, (int) -spare);
  return g_strdup_printf (
      /* Translators: hens that can stay, their kind, hens there. */
      _("%d hens (%s) can stay over winter. There are %d."), (int) answer->number, kind,
      (int) answer->birds);
}

static char *
tell_warmth (const HcYearAnswer *answer)
{
  g_autofree char *from = NULL;
  g_autofree char *until = NULL;

  if (!answer->limited)
    return g_strdup (_("No chick is without a warm place in these weeks."));
  from = hc_words_day (answer->day);
  until = hc_words_day (answer->until - 1);
  return g_strdup_printf (
      /* Translators: heaters, first day, last day, chicks. */
      ngettext ("%d heater more like those there is needed from %s to %s; without it %d chicks "
                "are cold.",
                "%d heaters more like those there are needed from %s to %s; without them %d "
                "chicks are cold.",
                (gulong) answer->number),
      (int) answer->number, from, until, (int) answer->birds);
}

static const char *
name_wanted (HcClutchWho who, gulong n)
{
  if (who == HC_CLUTCH_FEMALES)
    return ngettext ("%d female", "%d females", n);
  if (who == HC_CLUTCH_MALES)
    return ngettext ("%d male", "%d males", n);
  return ngettext ("%d chick", "%d chicks", n);
}

static char *
tell_eggs (const HcYearAnswer *answer)
{
  const HcYearQuestion *question = &answer->question;
  g_autofree char *wanted
      = g_strdup_printf (name_wanted (question->who, question->wanted), (int) question->wanted);

  if (!answer->limited)
    return g_strdup_printf (_("No number of eggs gives at least %s so surely."), wanted);
  return g_strdup_printf (
      /* Translators: eggs, "8 females", a percentage. */
      _("Set %d eggs: at least %s hatch in %.1f of 100 settings."), (int) answer->number, wanted,
      answer->chance * 100);
}

/**
 * hc_words_year_answer: (skip)
 * @answer: an answer
 *
 * Returns: (transfer full): it in a sentence
 */
char *
hc_words_year_answer (const HcYearAnswer *answer)
{
  static char *(*const ways[]) (const HcYearAnswer *) = {
    [HC_ASK_HATCH] = tell_hatch,   [HC_ASK_GONE] = tell_gone, [HC_ASK_WINTER] = tell_winter,
    [HC_ASK_WARMTH] = tell_warmth, [HC_ASK_EGGS] = tell_eggs,
  };

  return ways[answer->question.ask] (answer);
}

/**
 * hc_words_year_limit: (skip)
 * @answer: an answer
 *
 * Returns: (transfer full) (nullable): what one more, or a day later, fails by
 */
char *
hc_words_year_limit (const HcYearAnswer *answer)
{
  const HcShortfall *shortfall = &answer->shortfall;
  g_autofree char *day = NULL;

  if (!answer->limited)
    return NULL;
  if (answer->question.ask == HC_ASK_EGGS)
    return g_strdup_printf (
        /* Translators: eggs, a percentage. */
        _("With %d eggs it is %.1f of 100."), (int) answer->number - 1,
        answer->chance_before * 100);
  day = hc_words_day (shortfall->day);
  if (answer->question.ask == HC_ASK_GONE)
    return g_strdup_printf (
        /* Translators: a need, birds, a day. */
        ngettext ("%s: if they stay longer, %d bird goes short on %s.",
                  "%s: if they stay longer, %d birds go short on %s.",
                  (gulong) shortfall->birds),
        hc_words_need_title (shortfall->need), (int) shortfall->birds, day);
  if (answer->question.ask == HC_ASK_WARMTH)
    return g_strdup_printf (
        /* Translators: a day, chicks. */
        ngettext ("Most are cold on %s: %d chick.", "Most are cold on %s: %d chicks.",
                  (gulong) shortfall->birds),
        day, (int) shortfall->birds);
  return g_strdup_printf (
      /* Translators: a need, birds, a day. */
      ngettext ("%s: with one more, %d bird goes short on %s.",
                "%s: with one more, %d birds go short on %s.", (gulong) shortfall->birds),
      hc_words_need_title (shortfall->need), (int) shortfall->birds, day);
}

static void
tell_places (const HcInHand *in_hand, GString *text)
{
  int left = in_hand->places - in_hand->taken;

  if (in_hand->places == 0)
    return;
  g_string_append_c (text, ' ');
  g_string_append_printf (
      /* Translators: places in incubators. */
      text, ngettext ("%d place in the incubators is free.", "%d places in the incubators are free.",
                      (gulong) MAX (left, 0)),
      MAX (left, 0));
}

/**
 * hc_words_year_in_hand: (skip)
 * @answer: an answer
 *
 * Returns: (transfer full) (nullable): how many eggs to set the flock itself
 *   gives by then, and how many places are free, where eggs are asked about
 */
char *
hc_words_year_in_hand (const HcYearAnswer *answer)
{
  const HcInHand *in_hand = &answer->in_hand;
  g_autofree char *day = NULL;
  GString *text;

  if (answer->question.ask != HC_ASK_EGGS)
    return NULL;
  day = hc_words_day (answer->day);
  text = g_string_new (NULL);
  if (in_hand->covered == 0)
    g_string_append (text, _("The flock gives no fertile eggs of that kind by then."));
  else
    g_string_append_printf (
        /* Translators: eggs, a day, females. */
        text, ngettext ("By %2$s the flock gives about %1$d egg to set, of %3$d females with "
                        "males enough.",
                        "By %2$s the flock gives about %1$d eggs to set, of %3$d females with "
                        "males enough.",
                        (gulong) in_hand->eggs),
        (int) in_hand->eggs, day, in_hand->covered);
  tell_places (in_hand, text);
  return g_string_free (text, FALSE);
}
