/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * How many birds, in one line, and what runs out first. */
#include "config.h"

#include "words/words.h"

#include <glib/gi18n-lib.h>

static const char *
runs_out_first (HcNeedId need)
{
  switch (need)
    {
    case HC_NEED_FLOOR:
      return _("room on the floor runs out first");
    case HC_NEED_RUN:
      return _("room outside runs out first");
    case HC_NEED_ROOST:
      return _("places to sleep run out first");
    case HC_NEED_NESTS:
      return _("nest boxes run out first");
    case HC_NEED_FEED:
      return _("room at the feeders runs out first");
    case HC_NEED_WATER:
      return _("room at the drinkers runs out first");
    case HC_NEED_WARMTH:
      return _("warm places for chicks run out first");
    case HC_NEED_WAY_OUT:
      return _("the way out is too narrow first");
    default:
      return _("nothing runs out");
    }
}

static char *
numbers (const HcHeadline *headline)
{
  if (headline->least <= 0)
    return g_strdup (_("Not one bird is served yet"));
  if (headline->good <= 0)
    return g_strdup_printf (_("None in comfort, %d at most"), (int) headline->least);
  if (headline->least == G_MAXINT64)
    return g_strdup_printf (_("%d in comfort"), (int) headline->good);
  return g_strdup_printf (_("%d in comfort, %d at most"), (int) headline->good,
                          (int) headline->least);
}

/**
 * hc_words_fix_now: (skip)
 * @headline: the answer
 *
 * Returns: (transfer full) (nullable): "Fix now: Air, Warmth for chicks", what
 *   is wrong however many birds there are; %NULL when nothing is
 */
char *
hc_words_fix_now (const HcHeadline *headline)
{
  g_autoptr (GPtrArray) titles = g_ptr_array_new ();
  g_autofree char *list = NULL;

  for (guint need = 0; need < HC_N_NEEDS; need++)
    if (headline->mend_first[need])
      g_ptr_array_add (titles, (gpointer) hc_words_need_title (need));
  if (titles->len == 0)
    return NULL;
  g_ptr_array_add (titles, NULL);
  list = g_strjoinv (", ", (char **) titles->pdata);
  /* Translators: %s is a list of needs, such as "Air, Warmth for chicks" */
  return g_strdup_printf (_("Fix now: %s"), list);
}

/**
 * hc_words_headline: (skip)
 * @headline: the answer
 * @units: what the keeper measures in
 *
 * Returns: (transfer full): "27 in comfort, 35 at most; nest boxes run out
 *   first", and what to fix now
 */
char *
hc_words_headline (const HcHeadline *headline, HcUnits units)
{
  g_autofree char *fix_now = hc_words_fix_now (headline);
  g_autofree char *line = NULL;

  if (headline->birds == 0)
    line = g_strdup (_("No birds yet: add some to see how many this house carries"));
  else if (headline->good == G_MAXINT64)
    line = g_strdup (_("Nothing runs out, however many birds there are"));
  else
    {
      g_autofree char *carried = numbers (headline);

      line = g_strdup_printf (headline->worse == HC_CONDITION_SHUT_IN
                                  ? _("%s; %s when shut in")
                                  : _("%s; %s"),
                              carried, runs_out_first (headline->need));
    }
  if (fix_now == NULL || headline->birds == 0)
    return g_steal_pointer (&line);
  return g_strdup_printf ("%s. %s", line, fix_now);
}
