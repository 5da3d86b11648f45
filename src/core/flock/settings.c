/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Eggs set again and again, until enough birds are to be expected. */
#include "config.h"

#include "flock/settings.h"

#include <math.h>

/* A group that hatched this near to a setting's day came of it. */
#define NEAR_DAYS 10

static const HcResultValues *
find_hatched (const HcPlan *plan, const HcSetting *setting)
{
  HcParts *results = hc_plan_get (plan)->results;
  const HcClutchValues *clutch = hc_clutch_get (setting->clutch);

  for (guint i = 0; i < results->len; i++)
    {
      const HcResultValues *result = hc_result_get (results->pdata[i]);

      if (result->what == HC_RESULT_HATCHED
          && g_strcmp0 (result->of, hc_clutch_get_id (setting->clutch)) == 0
          && hc_hatch_find_setting (result, clutch, &setting->life->hatching)
                 == (int) setting->number)
        return result;
    }
  return NULL;
}

static gboolean
is_raised (const HcPlan *plan, const HcSetting *setting)
{
  HcParts *batches = hc_plan_get (plan)->batches;

  for (guint i = 0; i < batches->len; i++)
    {
      const HcBatchValues *batch = hc_batch_get (batches->pdata[i]);

      if (g_strcmp0 (batch->clutch, hc_clutch_get_id (setting->clutch)) == 0
          && fabs ((double) batch->hatched - setting->hatch_on) <= NEAR_DAYS)
        return TRUE;
    }
  return FALSE;
}

static void
take_result (HcSetting *setting, const HcResultValues *result)
{
  setting->known = TRUE;
  setting->hatch_on = result->on;
  setting->low = setting->middle = setting->high = (guint) result->count;
}

static void
add_setting (GArray *settings, const HcPlan *plan, const HcSetting *like, guint number)
{
  const HcClutchValues *clutch = hc_clutch_get (like->clutch);
  HcSetting setting = *like;
  const HcResultValues *result;

  setting.number = number;
  setting.set_on = clutch->set_on + number * (guint32) clutch->every_weeks * 7;
  setting.hatch_on = setting.set_on + (guint32) setting.life->hatching.days;
  result = find_hatched (plan, &setting);
  setting.raised = is_raised (plan, &setting);
  if (result != NULL)
    take_result (&setting, result);
  g_array_append_val (settings, setting);
}

/* Settings until as many birds as are wanted are to be expected. */
static guint
count_settings (const HcClutchValues *clutch, double each)
{
  double share = clutch->wanted_who == HC_CLUTCH_ALL ? 1 : 0.5;

  if (clutch->every_weeks == 0)
    return 1;
  if (clutch->wanted == 0 || each * share <= 0)
    return (guint) clutch->settings;
  return (guint) CLAMP (ceil (clutch->wanted / (each * share)), 1, clutch->settings);
}

static void
add_clutch (GArray *settings, const HcPlan *plan, HcBook *book, const HcClutch *clutch)
{
  const HcClutchValues *values = hc_clutch_get (clutch);
  HcSetting setting = { clutch, hc_clutch_get_kind_of (clutch, book) };
  HcHatchShares shares;
  g_autoptr (HcOdds) odds = NULL;
  guint n;

  if (setting.kind == NULL || values->set_on == 0 || values->eggs == 0)
    return;
  setting.life = hc_book_get_life (book, setting.kind->id);
  hc_hatch_shares_init (&shares, plan, book, clutch);
  odds = hc_hatch_get_odds (&shares, (guint) values->eggs, HC_CLUTCH_ALL);
  setting.low = hc_odds_get_count (odds, 0.1);
  setting.middle = hc_odds_get_count (odds, 0.5);
  setting.high = hc_odds_get_count (odds, hc_plan_get_keeping (plan)->carry_percent / 100);
  n = count_settings (values, hc_odds_get_mean (odds));
  for (guint i = 0; i < n; i++)
    add_setting (settings, plan, &setting, i);
}

/**
 * hc_settings_of: (skip)
 * @plan: a plan
 * @book: the book
 *
 * Eggs without a day, without eggs or of a kind the book does not know are
 * left out.
 *
 * Returns: (transfer full) (element-type HcSetting): every setting of @plan
 */
GArray *
hc_settings_of (const HcPlan *plan, HcBook *book)
{
  GArray *settings = g_array_new (FALSE, FALSE, sizeof (HcSetting));
  HcParts *clutches = hc_plan_get (plan)->clutches;

  for (guint i = 0; i < clutches->len; i++)
    add_clutch (settings, plan, book, clutches->pdata[i]);
  return settings;
}
