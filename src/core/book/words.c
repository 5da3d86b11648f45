/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The words that stand for choices in data files. */
#include "config.h"

#include "book/words.h"

const char *const hc_condition_words[] = { "day", "night", "shut-in", NULL };

const char *const hc_evidence_words[]
    = { "published", "common practice", "judgement", "memory", "own figure", NULL };

const char *const hc_figure_unit_words[]
    = { "mm",      "cm",      "m",     "in",    "cm2",  "m2",    "ft2",
        "kg",      "degrees", "celsius", "percent", "times", "count", "birds",
        "days",    "weeks",   "hours", "ppm",   "watts", "m3_per_h_kg", "lux", NULL };

const char *const hc_basis_of_words[] = { "ground_floor", "required_floor", "perimeter", NULL };
const char *const hc_direction_words[] = { "at_least", "at_most", NULL };
const char *const hc_species_words[] = { "chicken", "duck", "goose", NULL };
const char *const hc_comb_words[] = { "none", "small", "single", "large", NULL };
const char *const hc_perching_words[] = { "never", "optional", "always", NULL };
const char *const hc_purpose_words[] = { "eggs", "eggs and meat", "meat", "fancy", NULL };
const char *const hc_hardiness_words[] = { "tender", "fair", "hardy", NULL };
const char *const hc_temper_words[] = { "calm", "lively", "flighty", "bold", NULL };

const char *const hc_fitting_group_words[]
    = { "sleep",        "lay",       "eat-and-drink", "keep-warm", "breathe",
        "come-and-go", "stay-safe", NULL };

const char *const hc_units_words[] = { "metric", "feet", NULL };

gboolean
hc_words_find (const char *const *words, const char *word, int *index)
{
  for (int i = 0; words[i] != NULL; i++)
    if (g_strcmp0 (words[i], word) == 0)
      {
        *index = i;
        return TRUE;
      }
  return FALSE;
}
