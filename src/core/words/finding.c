/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A finding as sentences: the birds first, the measure second, then what to do. */
#include "config.h"

#include "words/words.h"

#include "words/sentences.h"

#include <glib/gi18n-lib.h>
#include <string.h>

/* What stands for the words in braces. */
typedef struct
{
  char *birds;
  char *have;
  char *want;
  char *lack;
  char *what;
  char *other;
  char *who;
  char *length;
} Fields;

static void
clear_fields (Fields *fields)
{
  g_free (fields->birds);
  g_free (fields->have);
  g_free (fields->want);
  g_free (fields->lack);
  g_free (fields->what);
  g_free (fields->other);
  g_free (fields->who);
  g_free (fields->length);
}

static char *
sum_lines (const HcFinding *finding, HcUnits units)
{
  double sum_mm = 0;

  for (guint i = 0; i < finding->n_lines; i++)
    sum_mm += hc_point_distance (finding->lines[i].from, finding->lines[i].to);
  return hc_words_amount (sum_mm, "mm", units);
}

static void
measure_fields (Fields *fields, const HcFinding *finding, HcUnits units)
{
  gboolean at_most = finding->measured > finding->required;

  fields->have = at_most ? hc_words_asked (finding->measured, finding->unit, units)
                         : hc_words_offered (finding->measured, finding->unit, units);
  fields->want = at_most ? hc_words_offered (finding->required, finding->unit, units)
                         : hc_words_asked (finding->required, finding->unit, units);
  fields->lack = hc_words_asked (ABS (finding->required - finding->measured), finding->unit,
                                 units);
  fields->length = sum_lines (finding, units);
}

static char *
name_animals (HcBook *book, const HcFinding *finding)
{
  GString *names = g_string_new (NULL);

  for (guint i = 0; finding->animals[i] != NULL; i++)
    {
      const HcPredator *animal = hc_book_get_predator (book, finding->animals[i]);

      if (animal != NULL)
        g_string_append_printf (names, "%s%s", names->len > 0 ? ", " : "",
                                hc_predator_get_name (animal));
    }
  return g_string_free (names, FALSE);
}

static void
part_fields (Fields *fields, const HcCheck *check, const HcFinding *finding)
{
  HcLayout *layout = hc_plan_get_layout (hc_check_get_plan (check));

  fields->birds = hc_words_birds (hc_check_get_flock (check), finding->kinds, finding->birds);
  fields->who = name_animals (hc_flock_get_book (hc_check_get_flock (check)), finding);
  if (finding->ids[0] == NULL)
    return;
  fields->what = hc_words_part (layout, finding->ids[0]);
  if (finding->ids[1] != NULL)
    fields->other = hc_words_part (layout, finding->ids[1]);
}

static const char *
look_up (const Fields *fields, const char *word, gsize length)
{
  const struct
  {
    const char *word;
    const char *value;
  } known[] = { { "birds", fields->birds }, { "have", fields->have },
                { "want", fields->want },   { "lack", fields->lack },
                { "what", fields->what },   { "other", fields->other },
                { "who", fields->who },     { "length", fields->length } };

  for (guint i = 0; i < G_N_ELEMENTS (known); i++)
    if (strlen (known[i].word) == length && strncmp (known[i].word, word, length) == 0)
      return known[i].value != NULL ? known[i].value : "";
  return "";
}

static char *
fill_in (const char *sentence, const Fields *fields)
{
  GString *text = g_string_new (NULL);
  const char *at = sentence;

  for (const char *open = strchr (at, '{'); open != NULL; open = strchr (at, '{'))
    {
      const char *shut = strchr (open, '}');

      if (shut == NULL)
        break;
      g_string_append_len (text, at, open - at);
      g_string_append (text, look_up (fields, open + 1, (gsize) (shut - open - 1)));
      at = shut + 1;
    }
  g_string_append (text, at);
  return g_string_free (text, FALSE);
}

/* Sentences begin with a capital, even where they begin with a name of ours. */
static char *
with_capital (char *text)
{
  gunichar first = g_utf8_get_char (text);
  char start[7] = { 0 };
  char *capital;

  if (*text == '\0' || !g_unichar_islower (first))
    return text;
  g_unichar_to_utf8 (g_unichar_toupper (first), start);
  capital = g_strconcat (start, g_utf8_next_char (text), NULL);
  g_free (text);
  return capital;
}

/**
 * hc_words_has_finding: (skip)
 * @code: a finding's code
 *
 * Returns: whether there is a sentence for it
 */
gboolean
hc_words_has_finding (const char *code)
{
  return hc_sentence_find (code) != NULL;
}

/* Takes over @text. */
static char *
with_others (char *text, guint more)
{
  g_autofree char *alone = text;

  if (more == 0)
    return g_steal_pointer (&alone);
  return g_strdup_printf (
      /* Translators: %s is a sentence about one thing, such as “The feeder goes
       * through a wall”; %u is how many other things it is also true of. */
      ngettext ("%s (and %u more like it)", "%s (and %u more like it)", more), alone, more);
}

/**
 * hc_words_finding: (skip)
 * @check: the check it is of
 * @finding: a finding
 * @units: what the keeper measures in
 *
 * Returns: (transfer full): what is wrong, birds first: "4 hens have nowhere
 *   to sleep"
 */
char *
hc_words_finding (const HcCheck *check, const HcFinding *finding, HcUnits units)
{
  const HcSentence *row = hc_sentence_find (finding->code);
  const char *const *pair;
  Fields fields = { 0 };
  char *text;

  g_return_val_if_fail (row != NULL, g_strdup (finding->code));
  pair = finding->level > HC_LEVEL_SHORT && row->worth[0] != NULL ? row->worth : row->fix;
  measure_fields (&fields, finding, units);
  part_fields (&fields, check, finding);
  text = fill_in (g_dngettext (GETTEXT_PACKAGE, pair[0], pair[1], (gulong) finding->birds),
                  &fields);
  clear_fields (&fields);
  return with_others (with_capital (text), finding->more);
}

static gboolean
bounds_from_above (const HcFinding *finding)
{
  for (guint i = 0; i < hc_standard_get_n_limits (finding->standard); i++)
    {
      const HcLimit *limit = hc_standard_get_limit (finding->standard, i);

      if (g_str_equal (limit->figure.id, finding->figure))
        return limit->direction == HC_DIRECTION_AT_MOST;
    }
  return FALSE;
}

static const char *
usual_detail (const HcFinding *finding)
{
  if (g_str_equal (finding->unit, "birds"))
    return _("{have} of {want} find a place.");
  if (finding->figure != NULL && bounds_from_above (finding))
    return _("It is {have}; at most {want} is asked for.");
  return _("{have} now; {want} asked for.");
}

/**
 * hc_words_finding_detail: (skip)
 * @finding: a finding
 * @units: what the keeper measures in
 *
 * Returns: (transfer full) (nullable): the measure behind it: what is there
 *   rounded down, what is asked rounded up; %NULL when nothing was measured
 */
char *
hc_words_finding_detail (const HcFinding *finding, HcUnits units)
{
  const HcSentence *row = hc_sentence_find (finding->code);
  Fields fields = { 0 };
  char *text;

  g_return_val_if_fail (row != NULL, NULL);
  if (*finding->unit == '\0')
    return NULL;
  measure_fields (&fields, finding, units);
  text = fill_in (row->detail != NULL ? _(row->detail) : usual_detail (finding), &fields);
  clear_fields (&fields);
  return text;
}

/**
 * hc_words_finding_todo: (skip)
 * @check: the check it is of
 * @finding: a finding
 * @units: what the keeper measures in
 *
 * Returns: (transfer full): what to do next, one sentence
 */
char *
hc_words_finding_todo (const HcCheck *check, const HcFinding *finding, HcUnits units)
{
  const HcSentence *row = hc_sentence_find (finding->code);
  Fields fields = { 0 };
  char *text;

  g_return_val_if_fail (row != NULL, NULL);
  measure_fields (&fields, finding, units);
  part_fields (&fields, check, finding);
  text = fill_in (_(row->todo), &fields);
  clear_fields (&fields);
  return text;
}
