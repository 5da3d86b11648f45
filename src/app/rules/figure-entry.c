/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A figure as the rules window tells it: for whom, how much, who says so. */
#include "config.h"

#include "app/rules/figure-entry.h"

#include "words/figure-words.h"
#include "words/words.h"

#include <glib/gi18n.h>

const HcFigure *
hc_figure_entry_get_figure (const HcFigureEntry *self)
{
  return self->limit != NULL ? &self->limit->figure : &self->demand->figure;
}

/**
 * hc_figure_entry_get_heading: (skip)
 * @self: a figure
 *
 * Returns: what it is about, in the keeper's language
 */
const char *
hc_figure_entry_get_heading (const HcFigureEntry *self)
{
  /* "roost.bar-to-bar": the need, then the measure. */
  g_auto (GStrv) parts = g_strsplit (hc_figure_entry_get_figure (self)->name, ".", 2);
  const HcNeed *need = hc_need_find (parts[0]);

  return need != NULL ? hc_words_need_title (need->id) : _("Other figures");
}

char *
hc_figure_entry_say_who (const HcFigureEntry *self)
{
  const HcFigure *figure = hc_figure_entry_get_figure (self);
  HcBook *book = self->book;
  GString *text = g_string_new (NULL);

  for (guint i = 0; i < hc_book_get_n_kinds (book); i++)
    if (figure->kinds & (1u << i))
      g_string_append_printf (text, "%s%s", text->len > 0 ? ", " : "",
                              hc_kind_get_name (hc_book_get_kind_at (book, i), 2));
  if (text->len == 0)
    g_string_append (text, _("any bird"));
  if (figure->at_lay)
    g_string_append_printf (text, ", %s", _("at lay"));
  if (figure->conditions != 0)
    for (guint i = 0; i <= HC_CONDITION_SHUT_IN; i++)
      if (figure->conditions & (1u << i))
        g_string_append_printf (text, ", %s", hc_words_condition ((HcCondition) i));
  return g_string_free (text, FALSE);
}

char *
hc_figure_entry_say_levels (const HcFigureEntry *self)
{
  const HcLimit *limit = self->limit;
  const HcDemand *demand = self->demand;
  gboolean bounds_above = limit != NULL && limit->direction == HC_DIRECTION_AT_MOST;
  GString *text = g_string_new (NULL);

  for (guint i = 0; i < HC_N_ASKED_LEVELS; i++)
    {
      HcLevel level = (HcLevel) (HC_LEVEL_TIGHT + i);
      guint stated = limit != NULL ? limit->stated : demand->stated;
      g_autofree char *amount = limit != NULL ? hc_figure_words_limit (limit, level)
                                              : hc_figure_words_demand (demand, level);

      if (amount != NULL && stated & (1u << level))
        g_string_append_printf (text, "%s%s %s", text->len > 0 ? " · " : "",
                                bounds_above && i == 0 ? _("at most") : hc_words_level (level),
                                amount);
    }
  return g_string_free (text, FALSE);
}

/* Whose rules, then who says so, then where to read it. */
char *
hc_figure_entry_say_source (const HcFigureEntry *self)
{
  const HcFigure *figure = hc_figure_entry_get_figure (self);
  g_autofree char *grounds = hc_figure_words_source (figure);
  const HcSource *source = figure->source;

  if (source == NULL)
    return g_strdup_printf ("%s · %s", hc_standard_get_name (self->from), grounds);
  return g_strdup_printf ("%s · %s · %s, %s", hc_standard_get_name (self->from), grounds,
                          source->publisher, source->where);
}

/**
 * hc_figure_entry_matches: (skip)
 * @self: a figure
 * @text: what the keeper looks for
 *
 * Returns: whether the figure speaks of it
 */
gboolean
hc_figure_entry_matches (const HcFigureEntry *self, const char *text)
{
  const HcFigure *figure = hc_figure_entry_get_figure (self);
  g_autofree char *who = hc_figure_entry_say_who (self);
  g_autofree char *levels = hc_figure_entry_say_levels (self);
  g_autofree char *source = hc_figure_entry_say_source (self);
  const char *const told[] = { hc_figure_entry_get_heading (self),
                               hc_figure_words_measure (figure), who, levels, source,
                               hc_figure_get_note (figure) };

  for (guint i = 0; i < G_N_ELEMENTS (told); i++)
    if (told[i] != NULL && g_str_match_string (text, told[i], TRUE))
      return TRUE;
  return FALSE;
}
