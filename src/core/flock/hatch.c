/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * How many chicks eggs give: two shares that are not known for sure, what was
 * seen here, and the sexes. */
#include "config.h"

#include "flock/hatch.h"

#include <math.h>

#define MOST_EGGS 10000

/**
 * hc_clutch_get_kind_of: (skip)
 * @clutch: eggs to hatch
 * @book: the book
 *
 * Returns: (nullable): the kind of bird that hatches from them
 */
const HcKind *
hc_clutch_get_kind_of (const HcClutch *clutch, HcBook *book)
{
  const HcBreed *breed = hc_book_get_breed (book, hc_clutch_get (clutch)->breed);

  return breed != NULL ? breed->kind : hc_book_get_kind (book, hc_clutch_get (clutch)->kind);
}

/* Of eggs that did not hatch and were not candled, some were fertile: as many
 * as the two shares let expect. */
static double
guess_fertile (const HcHatchShares *self, int eggs, int hatched)
{
  double fertile = hc_beta_get_mean (&self->fertile);
  double dead = fertile * (1 - hc_beta_get_mean (&self->hatch));

  return hatched + (eggs - hatched) * dead / (dead + 1 - fertile);
}

/**
 * hc_hatch_find_setting: (skip)
 * @result: a result of eggs set
 * @clutch: the eggs it is about
 * @hatching: how they hatch
 *
 * Settings overlap: a result belongs to the one whose own day it is nearest to.
 *
 * Returns: which setting it is of, from 0
 */
int
hc_hatch_find_setting (const HcResultValues *result, const HcClutchValues *clutch,
                       const HcHatching *hatching)
{
  int due = result->what == HC_RESULT_HATCHED ? hatching->days : hatching->candle_days[0];
  double late = (double) result->on - clutch->set_on - due;

  if (clutch->every_weeks == 0)
    return 0;
  return (int) MAX (floor (late / (clutch->every_weeks * 7) + 0.5), 0);
}

static void
learn_setting (HcHatchShares *self, int eggs, int fertile, int hatched)
{
  double were_fertile = fertile;

  if (hatched < 0)
    {
      hc_beta_learn (&self->fertile, fertile, eggs - fertile);
      self->eggs_seen += eggs;
      return;
    }
  if (fertile < hatched)
    were_fertile = guess_fertile (self, eggs, hatched);
  hc_beta_learn (&self->fertile, were_fertile, eggs - were_fertile);
  hc_beta_learn (&self->hatch, hatched, were_fertile - hatched);
  self->eggs_seen += eggs;
}

typedef struct
{
  int fertile;
  int hatched;
} Seen;

/* What was counted of one setting; -1 where nothing was. */
static Seen
find_results (HcParts *results, const HcClutch *clutch, const HcHatching *hatching, int setting)
{
  Seen seen = { -1, -1 };

  for (guint i = 0; i < results->len; i++)
    {
      const HcResultValues *result = hc_result_get (results->pdata[i]);

      if (g_strcmp0 (result->of, hc_clutch_get_id (clutch)) != 0
          || result->what > HC_RESULT_HATCHED
          || hc_hatch_find_setting (result, hc_clutch_get (clutch), hatching) != setting)
        continue;
      if (result->what == HC_RESULT_FERTILE)
        seen.fertile = result->count;
      else
        seen.hatched = result->count;
    }
  return seen;
}

static void
learn_from_clutch (HcHatchShares *self, HcParts *results, const HcClutch *clutch,
                   const HcHatching *hatching)
{
  const HcClutchValues *values = hc_clutch_get (clutch);
  int settings = values->every_weeks > 0 ? values->settings : 1;

  for (int i = 0; i < settings; i++)
    {
      Seen seen = find_results (results, clutch, hatching, i);

      if (seen.fertile >= 0 || seen.hatched >= 0)
        learn_setting (self, values->eggs, seen.fertile, seen.hatched);
    }
}

static void
learn (HcHatchShares *self, const HcPlan *plan, HcBook *book, const HcKind *kind,
       const HcHatching *hatching)
{
  const HcPlanValues *values = hc_plan_get (plan);

  for (guint i = 0; values->results->len > 0 && i < values->clutches->len; i++)
    if (hc_clutch_get_kind_of (values->clutches->pdata[i], book) == kind)
      learn_from_clutch (self, values->results, values->clutches->pdata[i], hatching);
}

/**
 * hc_hatch_shares_of_kind: (skip)
 * @self: (out caller-allocates): the shares
 * @plan: a plan
 * @book: the book
 * @kind: a kind of bird
 *
 * The ranges of the book, narrowed by every setting of @kind the keeper has
 * results of.
 */
void
hc_hatch_shares_of_kind (HcHatchShares *self, const HcPlan *plan, HcBook *book,
                         const HcKind *kind)
{
  const HcLife *life = hc_book_get_life (book, kind->id);
  const HcHatching *hatching = &life->hatching;

  hc_beta_fit (hatching->fertile_low_percent / 100, hatching->fertile_high_percent / 100,
               &self->fertile);
  hc_beta_fit (hatching->hatch_low_percent / 100, hatching->hatch_high_percent / 100,
               &self->hatch);
  self->eggs_seen = 0;
  learn (self, plan, book, kind, hatching);
}

/**
 * hc_hatch_shares_init: (skip)
 * @self: (out caller-allocates): the shares
 * @plan: a plan
 * @book: the book
 * @clutch: eggs to hatch of a kind the book knows
 *
 * What the keeper says of these eggs counts before all else.
 */
void
hc_hatch_shares_init (HcHatchShares *self, const HcPlan *plan, HcBook *book,
                      const HcClutch *clutch)
{
  const HcClutchValues *values = hc_clutch_get (clutch);

  hc_hatch_shares_of_kind (self, plan, book, hc_clutch_get_kind_of (clutch, book));
  if (values->fertile_high_percent > 0)
    hc_beta_fit (values->fertile_low_percent / 100, values->fertile_high_percent / 100,
                 &self->fertile);
  if (values->hatch_high_percent > 0)
    hc_beta_fit (values->hatch_low_percent / 100, values->hatch_high_percent / 100,
                 &self->hatch);
}

/**
 * hc_hatch_get_odds: (skip)
 * @shares: the shares
 * @eggs: eggs set
 * @who: which chicks are counted
 *
 * Fertile eggs are beta-binomial, chicks out of them again, and each chick is
 * female or male with the same chance.
 *
 * Returns: (transfer full): how many chicks
 */
HcOdds *
hc_hatch_get_odds (const HcHatchShares *shares, guint eggs, HcClutchWho who)
{
  g_autoptr (HcOdds) set = hc_odds_new_sure (eggs);
  g_autoptr (HcOdds) fertile = hc_odds_thin (set, &shares->fertile);
  g_autoptr (HcOdds) chicks = hc_odds_thin (fertile, &shares->hatch);

  return hc_odds_thin_evenly (chicks, who == HC_CLUTCH_ALL ? 1 : 0.5);
}

static gboolean
is_enough (const HcHatchShares *shares, guint eggs, guint wanted, HcClutchWho who,
           double certainty)
{
  g_autoptr (HcOdds) odds = hc_hatch_get_odds (shares, eggs, who);

  return hc_odds_get_at_least (odds, wanted) >= certainty;
}

/**
 * hc_hatch_find_eggs: (skip)
 * @shares: the shares
 * @wanted: chicks wanted at least
 * @who: which chicks are counted
 * @certainty: with what chance, below 1
 *
 * Returns: the fewest eggs to set; 0 when even 10,000 are too few
 */
guint
hc_hatch_find_eggs (const HcHatchShares *shares, guint wanted, HcClutchWho who,
                    double certainty)
{
  guint few = 0;
  guint enough = MAX (wanted, 1);

  while (enough < MOST_EGGS && !is_enough (shares, enough, wanted, who, certainty))
    {
      few = enough;
      enough *= 2;
    }
  if (enough >= MOST_EGGS)
    return 0;
  while (enough - few > 1)
    {
      guint middle = few + (enough - few) / 2;

      if (is_enough (shares, middle, wanted, who, certainty))
        enough = middle;
      else
        few = middle;
    }
  return enough;
}
