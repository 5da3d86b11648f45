/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A house that is too small already is not made worse by birds that cost nobody
 * a place. */
#include "config.h"

#include "season/shortfall.h"

static gint64
count_short (const HcTallied *need)
{
  return need->applies ? need->birds - need->served : 0;
}

static gboolean
compare (const HcTally *with, const HcTally *without, HcShortfall *shortfall)
{
  gint64 most = 0;

  for (guint id = 0; id < HC_N_NEEDS; id++)
    {
      gint64 more = count_short (&with->needs[id]) - count_short (&without->needs[id]);

      if (more <= most)
        continue;
      most = more;
      shortfall->need = id;
      shortfall->birds = more;
    }
  return most > 0;
}

/**
 * hc_shortfall_find: (skip)
 * @tallier: what was worked out of the house before
 * @with: the flock of a day
 * @without: the same day with fewer birds
 * @day: that day
 * @shortfall: (out caller-allocates): who goes short
 *
 * Returns: whether anybody goes short in @with who does not in @without
 */
gboolean
hc_shortfall_find (HcTallier *tallier, HcFlock *with, HcFlock *without, guint32 day,
                   HcShortfall *shortfall)
{
  static const HcCondition conditions[] = { HC_CONDITION_DAY, HC_CONDITION_SHUT_IN };

  shortfall->day = day;
  for (guint i = 0; i < G_N_ELEMENTS (conditions); i++)
    {
      HcTally one, other;

      hc_tallier_count (tallier, with, conditions[i], &one);
      hc_tallier_count (tallier, without, conditions[i], &other);
      shortfall->condition = conditions[i];
      if (compare (&one, &other, shortfall))
        return TRUE;
    }
  return FALSE;
}

/**
 * hc_shortfall_find_in_year: (skip)
 * @with: a year
 * @without: the same days with fewer birds
 * @shortfall: (out caller-allocates): the first day on which somebody does
 *
 * Returns: whether anybody ever goes short in @with who does not in @without
 */
gboolean
hc_shortfall_find_in_year (const HcYear *with, const HcYear *without, HcShortfall *shortfall)
{
  for (guint i = 0; i < hc_year_get_n_days (with); i++)
    {
      const HcYearDay *one = hc_year_get_day (with, i);
      const HcYearDay *other = hc_year_get_day (without, hc_year_find_day (without, one->day));

      shortfall->day = one->day;
      for (guint j = 0; j < G_N_ELEMENTS (one->tallies); j++)
        {
          shortfall->condition = j == 0 ? HC_CONDITION_DAY : HC_CONDITION_SHUT_IN;
          if (compare (&one->tallies[j], &other->tallies[j], shortfall))
            return TRUE;
        }
    }
  return FALSE;
}
