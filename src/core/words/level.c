/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Levels, conditions and needs by name. */
#include "config.h"

#include "words/words.h"

#include <glib/gi18n-lib.h>

/**
 * hc_words_level: (skip)
 * @level: a level
 *
 * Returns: what the keeper reads: "too little", "just enough"…
 */
const char *
hc_words_level (HcLevel level)
{
  switch (level)
    {
    case HC_LEVEL_SHORT:
      return _("too little");
    case HC_LEVEL_TIGHT:
      return _("just enough");
    case HC_LEVEL_GOOD:
      return _("good");
    case HC_LEVEL_PLENTY:
      return _("plenty");
    default:
      g_return_val_if_reached ("");
    }
}

/**
 * hc_words_need_level: (skip)
 * @need: a need
 * @level: how well it is met
 *
 * What is judged over the whole layout is right or wrong, never more or less.
 *
 * Returns: what the keeper reads
 */
const char *
hc_words_need_level (HcNeedId need, HcLevel level)
{
  if (hc_need_get (need)->scope != HC_SCOPE_LAYOUT)
    return hc_words_level (level);
  switch (level)
    {
    case HC_LEVEL_SHORT:
      return _("wrong");
    case HC_LEVEL_TIGHT:
      return _("could be better");
    default:
      return _("nothing found");
    }
}

/**
 * hc_words_condition: (skip)
 * @condition: a condition
 *
 * Returns: what the keeper reads
 */
const char *
hc_words_condition (HcCondition condition)
{
  switch (condition)
    {
    case HC_CONDITION_DAY:
      return _("ordinary day");
    case HC_CONDITION_NIGHT:
      return _("night");
    case HC_CONDITION_SHUT_IN:
      return _("shut in");
    default:
      g_return_val_if_reached ("");
    }
}

const char *
hc_words_need_title (HcNeedId need)
{
  return _(hc_need_get (need)->title);
}

const char *
hc_words_need_question (HcNeedId need)
{
  return _(hc_need_get (need)->question);
}

const char *
hc_words_need_why (HcNeedId need)
{
  return _(hc_need_get (need)->why);
}
