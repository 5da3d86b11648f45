/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * One rung of the ladder, and what would lift it. */
#include "config.h"

#include "words/words.h"

#include <glib/gi18n-lib.h>

static char *
lift_of_length (const HcRung *rung, const char *amount)
{
  switch (rung->need)
    {
    case HC_NEED_ROOST:
      return g_strdup_printf (_("%s more of bar"), amount);
    case HC_NEED_FEED:
      return g_strdup_printf (_("%s more of feeder edge"), amount);
    case HC_NEED_WATER:
      return g_strdup_printf (_("%s more of drinker edge"), amount);
    case HC_NEED_WAY_OUT:
      return g_strdup_printf (_("%s more of pop hole"), amount);
    default:
      return g_strdup_printf (_("%s more"), amount);
    }
}

static char *
lift_of_area (const HcRung *rung, const char *amount)
{
  switch (rung->need)
    {
    case HC_NEED_FLOOR:
      return g_strdup_printf (_("%s more of floor"), amount);
    case HC_NEED_RUN:
      return g_strdup_printf (_("%s more of run"), amount);
    case HC_NEED_NESTS:
      return g_strdup_printf (_("%s more of group nest"), amount);
    case HC_NEED_WARMTH:
      return g_strdup_printf (_("%s more under heat"), amount);
    default:
      return g_strdup_printf (_("%s more"), amount);
    }
}

static char *
name_lift (const HcRung *rung, HcUnits units)
{
  g_autofree char *amount = hc_words_asked (rung->lift, rung->lift_unit, units);
  int n = (int) rung->lift;

  if (g_str_equal (rung->lift_unit, "boxes"))
    return g_strdup_printf (ngettext ("%d more nest box", "%d more nest boxes", (gulong) n), n);
  if (g_str_equal (rung->lift_unit, "nipples"))
    return g_strdup_printf (ngettext ("%d more nipple", "%d more nipples", (gulong) n), n);
  if (g_str_equal (rung->lift_unit, "mm"))
    return lift_of_length (rung, amount);
  return lift_of_area (rung, amount);
}

static char *
say_carried (const HcRung *rung)
{
  const char *title = hc_words_need_title (rung->need);

  if (rung->most < 0)
    return g_strdup_printf (_("%s: too little already"), title);
  if (rung->most == G_MAXINT64)
    return g_strdup_printf (_("%s: never runs out"), title);
  return g_strdup_printf (ngettext ("%s: %d bird", "%s: %d birds", (gulong) rung->most), title,
                          (int) rung->most);
}

/**
 * hc_words_rung: (skip)
 * @rung: a rung
 * @units: what the keeper measures in
 *
 * Returns: (transfer full): "Nest boxes: 27 birds; 2 more nest boxes would
 *   carry 31"
 */
char *
hc_words_rung (const HcRung *rung, HcUnits units)
{
  g_autofree char *carried = say_carried (rung);
  g_autofree char *lift = NULL;

  if (rung->lift <= 0)
    return g_steal_pointer (&carried);
  lift = name_lift (rung, units);
  if (rung->lift_to == G_MAXINT64)
    return g_strdup_printf (_("%s; %s would carry any number"), carried, lift);
  if (rung->most < 0 && rung->lift_to <= 0)
    /* Translators: "Feeders: too little already; 84 cm more of feeder edge would
       be enough for the other birds", those that are not of the kind asked for */
    return g_strdup_printf (_("%s; %s would be enough for the other birds"), carried, lift);
  return g_strdup_printf (_("%s; %s would carry %d"), carried, lift, (int) rung->lift_to);
}

/**
 * hc_words_more: (skip)
 * @ladder: a ladder that asked for more of one kind
 *
 * Returns: (transfer full): "room for 5 more", "3 too many", or what is short
 *   already
 */
char *
hc_words_more (const HcLadder *ladder)
{
  gint64 most = hc_ladder_get_most (ladder);
  gint64 more = most - hc_ladder_get_there (ladder);

  if (most == G_MAXINT64)
    return g_strdup (_("room for any number"));
  if (most < 0)
    return g_strdup_printf (_("none: “%s” is short already"),
                            hc_words_need_title (hc_ladder_get_rung (ladder, 0)->need));
  if (more < 0)
    return g_strdup_printf (ngettext ("%d too many", "%d too many", (gulong) -more),
                            (int) -more);
  if (more == 0)
    return g_strdup (_("just enough room, none to spare"));
  return g_strdup_printf (ngettext ("room for %d more", "room for %d more", (gulong) more),
                          (int) more);
}
