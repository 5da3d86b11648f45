/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * From when to when there are too few warm places, and how many more heaters
 * like those there would do. */
#include "config.h"

#include "season/ask/asked.h"

#include "base/whole.h"

static const HcTallied *
get_warmth (const HcYear *year, guint index)
{
  return &hc_year_get_day (year, index)->tallies[0].needs[HC_NEED_WARMTH];
}

static gboolean
is_short (const HcTallied *warmth)
{
  return warmth->applies && warmth->served < warmth->birds;
}

static guint
count_heaters (const HcPlan *plan)
{
  HcParts *pens = hc_layout_get (hc_plan_get_layout (plan))->pens;
  guint heaters = 0;

  for (guint i = 0; i < pens->len; i++)
    {
      HcParts *fittings = hc_pen_get (pens->pdata[i])->fittings;

      for (guint j = 0; j < fittings->len; j++)
        heaters += hc_fitting_is_heater (fittings->pdata[j]);
    }
  return heaters;
}

/* More heaters of the mean size of those that warm somebody. */
static gint64
count_more (const HcTallied *warmth, guint heaters)
{
  if (heaters == 0 || !(warmth->offered > 0))
    return 1;
  return MAX (hc_whole_asked (warmth->required * heaters / warmth->offered) - heaters, 1);
}

static void
take (HcAsked *asked, const HcYear *year, guint index)
{
  const HcTallied *warmth = get_warmth (year, index);
  HcYearAnswer *answer = asked->answer;
  gint64 cold = warmth->birds - warmth->served;

  answer->limited = TRUE;
  answer->until = hc_year_get_day (year, index)->day + 1;
  answer->number = MAX (answer->number, count_more (warmth, count_heaters (asked->plan)));
  if (cold <= answer->birds)
    return;
  answer->birds = cold;
  answer->shortfall = (HcShortfall) { HC_NEED_WARMTH, HC_CONDITION_NIGHT,
                                      hc_year_get_day (year, index)->day, cold };
}

gboolean
hc_ask_warmth (HcAsked *asked, GError **error)
{
  g_autoptr (HcYear) year
      = hc_year_work_out (asked->tallier, asked->plan, asked->question->from,
                          asked->question->weeks, HC_YEAR_EVERY_DAY);

  for (guint i = 0; i < hc_year_get_n_days (year); i++)
    {
      if (is_short (get_warmth (year, i)))
        {
          if (!asked->answer->limited)
            asked->answer->day = hc_year_get_day (year, i)->day;
          take (asked, year, i);
        }
      else if (asked->answer->limited)
        break;
    }
  return TRUE;
}
