/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The smallest addition that lets a need carry more birds, tried out. */
#include "config.h"

#include "needs/capacity/rung.h"

#include "needs/capacity/search.h"

/* How finely an addition is measured, and how much is never added. */
typedef struct
{
  const char *unit;
  double step;
  double limit;
} Measure;

static Measure
measure_of (HcOfferKind kind)
{
  switch (kind)
    {
    case HC_OFFER_NESTS:
      return (Measure) { "boxes", 1, 1e4 };
    case HC_OFFER_NIPPLES:
      return (Measure) { "nipples", 1, 1e4 };
    case HC_OFFER_ROOST:
    case HC_OFFER_FEED_LONG:
    case HC_OFFER_FEED_ROUND:
    case HC_OFFER_WATER_LONG:
    case HC_OFFER_WATER_ROUND:
    case HC_OFFER_WAY_OUT:
      return (Measure) { "mm", 1, 1e6 };
    default:
      return (Measure) { "mm2", 100, 1e10 };
    }
}

typedef struct
{
  HcNeedContext *place;
  HcLevel aim;
} Trial;

static gboolean
is_enough (double amount, gpointer data)
{
  Trial *trial = data;

  trial->place->extra_amount = amount;
  return hc_count_reaches (trial->place, trial->aim);
}

/* More of the sort that is there already, where there are several. */
static HcOfferKind
choose_kind (const HcNeedContext *place, HcLevel aim)
{
  const HcOfferKind *lifts = place->need->lifts;

  for (guint i = 0; lifts[i] != HC_N_OFFER_KINDS; i++)
    if (hc_need_context_sum_offer (place, lifts[i], aim) > 0)
      return lifts[i];
  return lifts[0];
}

static double
lift_place (HcNeedContext *place, HcLevel aim, HcRung *rung)
{
  const HcOfferKind *lifts = place->need->lifts;
  HcOfferKind first = choose_kind (place, aim);
  Trial trial = { place, aim };
  double amount = -1;

  for (guint i = 0; i < G_N_ELEMENTS (place->need->lifts); i++)
    {
      HcOfferKind kind = i == 0 ? first : lifts[i - 1];
      Measure measure = measure_of (kind);

      if (kind == HC_N_OFFER_KINDS)
        break;
      place->extra_kind = kind;
      amount = hc_search_least_amount (is_enough, &trial, measure.step, measure.limit);
      rung->lift_unit = measure.unit;
      if (amount > 0)
        break;
    }
  place->extra_amount = MAX (amount, 0);
  return amount;
}

static void
tell_code (HcNeedContext *place, HcLevel aim, HcRung *rung)
{
  HcServing serving = { 0 };

  place->need->serve (place, aim, TRUE, &serving);
  if (serving.nothing)
    rung->code = place->need->none;
  else
    rung->code = serving.only != NULL ? place->need->confined : place->need->few;
  hc_serving_clear (&serving);
}

/* Finds what @place lacks for the birds counted in it, and leaves it added:
 * negative when no addition helps. */
double
hc_rung_search_lift_place (const HcRungSearch *self, guint place, HcRung *rung)
{
  tell_code (&self->places[place], self->aim, rung);
  return lift_place (&self->places[place], self->aim, rung);
}

static gboolean
test_all (gint64 birds, gpointer data)
{
  return hc_rung_search_reaches (data, birds);
}

static double
lift_all_places (const HcRungSearch *self, HcFlock *flock, HcRung *rung)
{
  double lift = 0;

  for (guint i = 0; i < self->n_places; i++)
    {
      double amount;

      hc_need_context_count (&self->places[i], flock);
      if (hc_count_reaches (&self->places[i], self->aim))
        continue;
      amount = hc_rung_search_lift_place (self, i, rung);
      if (amount < 0)
        return -1;
      lift += amount;
    }
  return lift;
}

/* Lifts every space that one bird more would leave short; then asks again how
 * many birds the need carries. Nothing is told where no addition helps. */
void
hc_rung_search_find_lift (const HcRungSearch *self, HcRung *rung)
{
  gint64 next = rung->most + 1;
  g_autoptr (HcFlock) flock = hc_question_get_flock (self->question, next);
  double lift = lift_all_places (self, flock, rung);

  if (lift > 0)
    {
      rung->lift = lift;
      rung->lift_to = hc_search_most (test_all, (gpointer) self, next, HC_RUNG_NEVER);
    }
  for (guint i = 0; i < self->n_places; i++)
    self->places[i].extra_amount = 0;
}
