/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Levels and conditions by name. */
#include "config.h"

#include "book/level.h"

#include "book/words.h"

/**
 * hc_level_to_string:
 * @level: a level
 *
 * Returns: its word in data and programs' output: "short", "tight", "good" or
 *   "plenty"
 */
const char *
hc_level_to_string (HcLevel level)
{
  static const char *const words[] = { "short", "tight", "good", "plenty" };

  g_return_val_if_fail (level <= HC_LEVEL_PLENTY, NULL);
  return words[level];
}

/**
 * hc_condition_to_string:
 * @condition: a condition
 *
 * Returns: its word in data and on the command line: "day", "night" or
 *   "shut-in"
 */
const char *
hc_condition_to_string (HcCondition condition)
{
  g_return_val_if_fail (condition <= HC_CONDITION_SHUT_IN, NULL);
  return hc_condition_words[condition];
}

/**
 * hc_condition_from_string:
 * @text: a word
 * @condition: (out): the condition it stands for
 *
 * Returns: whether @text is the word of a condition
 */
gboolean
hc_condition_from_string (const char *text, HcCondition *condition)
{
  int index;

  if (!hc_words_find (hc_condition_words, text, &index))
    return FALSE;
  *condition = (HcCondition) index;
  return TRUE;
}
