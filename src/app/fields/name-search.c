/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Names found by any part of them that is typed. */
#include "config.h"

#include "app/fields/name-search.h"

#include <string.h>

/* Without case and accents, which few keepers type. */
static char *
fold (const char *text)
{
  g_autofree char *folded = g_utf8_casefold (text, -1);
  g_autofree char *apart = g_utf8_normalize (folded, -1, G_NORMALIZE_ALL);
  GString *plain = g_string_new (NULL);

  for (const char *at = apart; at != NULL && *at != '\0'; at = g_utf8_next_char (at))
    if (!g_unichar_ismark (g_utf8_get_char (at)))
      g_string_append_unichar (plain, g_utf8_get_char (at));
  return g_string_free (plain, FALSE);
}

static gboolean
begins_word (const char *text, const char *at)
{
  return at == text || !g_unichar_isalnum (g_utf8_get_char (g_utf8_prev_char (at)));
}

static HcNameRank
rank_word (const char *word, const char *name, const char *about)
{
  HcNameRank rank = strstr (about, word) != NULL ? HC_NAME_TOLD : HC_NAME_OTHER;

  for (const char *at = strstr (name, word); at != NULL;
       at = strstr (g_utf8_next_char (at), word))
    rank = MIN (rank, at == name                ? HC_NAME_BEGINS
                      : begins_word (name, at) ? HC_NAME_WORD_BEGINS
                                               : HC_NAME_HOLDS);
  return rank;
}

/**
 * hc_name_search: (skip)
 * @typed: what the keeper has typed: words in any order, or parts of them
 * @name: a name
 * @about: (nullable): what is told of it
 *
 * Every word typed has to be found; the name is as good an answer as it is to
 * the word that it answers worst. To nothing typed every name is the best answer.
 *
 * Returns: how well @name answers
 */
HcNameRank
hc_name_search (const char *typed, const char *name, const char *about)
{
  g_autofree char *folded_typed = fold (typed);
  g_autofree char *folded_name = fold (name);
  g_autofree char *folded_about = fold (about != NULL ? about : "");
  g_auto (GStrv) words = g_strsplit_set (folded_typed, " \t", -1);
  HcNameRank worst = HC_NAME_BEGINS;

  for (guint i = 0; words[i] != NULL; i++)
    if (*words[i] != '\0')
      worst = MAX (worst, rank_word (words[i], folded_name, folded_about));
  return worst;
}
