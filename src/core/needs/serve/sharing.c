/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * All are served, or those who ask least are served first. */
#include "config.h"

#include "needs/serve/sharing.h"

#include <math.h>
#include <string.h>

typedef struct
{
  const HcSharing *sharing;
  const HcNeedContext *context;
  guint n_bodies;
  HcBodies bodies;
  HcAsking asking[HC_FLOW_SORTS];
  double each[HC_MOST_BODIES][HC_FLOW_SORTS];
  HcFounds founds;
  GArray *places;
  gboolean kept;
} Share;

static HcBodies
find_concerned (const Share *share)
{
  HcBodies bodies = share->sharing->bodies & hc_need_context_get_bodies (share->context);

  for (guint body = 0; body < share->n_bodies; body++)
    {
      gboolean asks = FALSE;

      for (guint sort = 0; sort < share->sharing->n_sorts; sort++)
        asks = asks || share->asking[sort].of[body] != NULL;
      if (!asks)
        bodies &= ~((HcBodies) 1 << body);
    }
  return bodies;
}

static double
least_ask (const Share *share, const HcFound *found)
{
  gint64 birds = hc_need_context_count_birds (share->context, share->bodies);
  double least = 0;

  for (guint body = 0; body < share->n_bodies; body++)
    {
      double each = (share->bodies & found->suits) >> body & 1
                        ? hc_asking_get_each (&share->asking[found->sort], body, birds)
                        : -1;

      if (share->context->counts[body] > 0 && each > 0 && (least == 0 || each < least))
        least = each;
    }
  return least;
}

/* No more of a place counts than the birds it is made for ask of it. */
static void
keep_to_most (Share *share, HcFound *found)
{
  gint64 most = share->sharing->most != NULL && found->place != NULL
                    ? share->sharing->most (share->context, found->place)
                    : 0;
  double amount = (double) most * least_ask (share, found);

  if (amount <= 0 || amount >= found->amount)
    return;
  found->amount = amount;
  share->kept = TRUE;
}

static void
gather (Share *share, HcLevel level)
{
  const HcSharing *sharing = share->sharing;

  hc_founds_init (&share->founds);
  for (guint sort = 0; sort < sharing->n_sorts; sort++)
    if (sort == 0 || sharing->split == NULL)
      hc_founds_gather (&share->founds, share->context, sharing->sorts[sort].kind, sort, level,
                        sharing->test);
  share->places = g_array_new (FALSE, FALSE, sizeof (HcFlowPlace));
  for (guint i = 0; i < share->founds.places->len; i++)
    {
      HcFound *found = hc_founds_get (&share->founds, i);
      HcFlowPlace place;

      if (sharing->split != NULL && found->place != NULL)
        found->sort = sharing->split (share->context, found->place);
      keep_to_most (share, found);
      place = (HcFlowPlace) { found->sort, found->amount, found->suits };
      g_array_append_val (share->places, place);
    }
}

static void
open_share (Share *share, const HcSharing *sharing, const HcNeedContext *context, HcLevel level)
{
  memset (share, 0, sizeof *share);
  share->sharing = sharing;
  share->context = context;
  share->n_bodies = hc_need_context_get_n_bodies (context);
  for (guint sort = 0; sort < sharing->n_sorts; sort++)
    {
      HcAsking *asking = &share->asking[sort];

      hc_asking_init (asking, context, sharing->sorts[sort].figure, level);
      asking->times = sharing->times > 0 ? sharing->times : 1;
      if (sharing->basis != NULL)
        asking->basis = *sharing->basis;
    }
  share->bodies = find_concerned (share);
  for (guint sort = 0; sort < sharing->n_sorts; sort++)
    share->asking[sort].basis_birds = hc_need_context_count_birds (context, share->bodies);
  gather (share, level);
}

static void
close_share (Share *share)
{
  hc_founds_clear (&share->founds);
  g_array_unref (share->places);
}

static HcFlow
make_flow (Share *share, const gint64 *counts)
{
  gint64 birds = 0;

  for (guint body = 0; body < share->n_bodies; body++)
    birds += counts[body];
  for (guint body = 0; body < share->n_bodies; body++)
    for (guint sort = 0; sort < HC_FLOW_SORTS; sort++)
      share->each[body][sort] = sort < share->sharing->n_sorts
                                    ? hc_asking_get_each (&share->asking[sort], body, birds)
                                    : -1;
  return (HcFlow) { share->n_bodies, counts, (const double (*)[HC_FLOW_SORTS]) share->each,
                    share->places->len, (const HcFlowPlace *) share->places->data };
}

static gboolean
serves (Share *share, const gint64 *counts)
{
  HcFlow flow = make_flow (share, counts);

  return hc_flow_serves_all (&flow);
}

static double
least_each (const Share *share, guint body)
{
  double least = G_MAXDOUBLE;

  for (guint sort = 0; sort < share->sharing->n_sorts; sort++)
    if (share->each[body][sort] >= 0)
      least = MIN (least, share->each[body][sort]);
  return least;
}

/* Those who ask least come first: so the most are served. Kind, sex and age
 * settle the rest, and never the order in the plan. */
static int
compare_bodies (gconstpointer a, gconstpointer b, gpointer data)
{
  const Share *share = data;
  guint one = *(const guint *) a;
  guint other = *(const guint *) b;
  const HcBody *body = hc_need_context_get_body (share->context, one);
  const HcBody *other_body = hc_need_context_get_body (share->context, other);
  double difference = least_each (share, one) - least_each (share, other);

  if (difference != 0)
    return difference < 0 ? -1 : 1;
  if (body->kind != other_body->kind)
    return (int) body->kind->order - (int) other_body->kind->order;
  if (body->female != other_body->female)
    return body->female ? -1 : 1;
  return body->age_weeks - other_body->age_weeks;
}

static gint64
find_most_of (Share *share, guint body, gint64 *counts)
{
  gint64 enough = 0;
  gint64 beyond = share->context->counts[body] + 1;

  while (beyond - enough > 1)
    {
      counts[body] = enough + (beyond - enough) / 2;
      if (serves (share, counts))
        enough = counts[body];
      else
        beyond = counts[body];
    }
  return enough;
}

static void
find_served (Share *share, gint64 *served)
{
  guint order[HC_MOST_BODIES];
  guint n = 0;

  for (guint body = 0; body < share->n_bodies; body++)
    {
      served[body] = share->bodies >> body & 1 ? share->context->counts[body] : 0;
      if (served[body] > 0)
        order[n++] = body;
    }
  if (serves (share, served))
    return;
  g_qsort_with_data (order, (gint) n, sizeof (guint), compare_bodies, share);
  memset (served, 0, sizeof (gint64) * share->n_bodies);
  for (guint i = 0; i < n; i++)
    served[order[i]] = find_most_of (share, order[i], served);
}

/* One measure says it all where only one sort of place is there; with several,
 * or where a maker says how many, the birds they serve together. */
static void
measure (Share *share, HcServing *serving)
{
  const HcSharing *sharing = share->sharing;
  guint sorts_there = 0;
  guint sort = 0;

  for (guint i = 0; i < sharing->n_sorts; i++)
    if (hc_founds_sum (&share->founds, i) > 0 && sorts_there++ == 0)
      sort = i;
  serving->nothing = sorts_there == 0;
  serving->offered = hc_founds_sum (&share->founds, sort);
  serving->required = hc_asking_get_total (&share->asking[sort], share->context->counts,
                                           share->bodies, &serving->figure);
  serving->unit = sharing->sorts[sort].unit;
  serving->kept = share->kept;
  if (sorts_there < 2 && !share->kept)
    return;
  serving->offered = (double) serving->served;
  serving->required = (double) serving->there;
  serving->unit = "birds";
}

/* Shares of birds become whole birds: the sum up to any place is rounded. */
static gint64 *
make_whole (Share *share, const double *shares)
{
  guint n_places = share->places->len;
  gint64 *seats = g_new0 (gint64, share->n_bodies * n_places + 1);

  for (guint body = 0; body < share->n_bodies; body++)
    {
      double sum = 0;
      gint64 given = 0;

      for (guint i = 0; i < n_places; i++)
        {
          sum += shares[body * n_places + i];
          seats[body * n_places + i] = (gint64) floor (sum + 0.5) - given;
          given += seats[body * n_places + i];
        }
    }
  return seats;
}

static void
tell_details (Share *share, const gint64 *served, HcServing *serving)
{
  HcFlow flow = make_flow (share, served);
  g_autofree double *shares = hc_flow_share_out (&flow);
  g_autofree gint64 *seats = make_whole (share, shares);
  HcBodies left_over = hc_serving_get_left_over (serving);

  measure (share, serving);
  hc_serving_allot (serving, &share->founds, seats, share->n_bodies);
  if (left_over != 0)
    {
      g_autofree gboolean *within = g_new0 (gboolean, share->places->len + 1);
      HcBodies bodies = hc_flow_find_cut (&flow, shares, left_over, within);

      hc_serving_confine (serving, bodies, &share->founds, within);
    }
}

void
hc_sharing_serve (const HcSharing *self, const HcNeedContext *context, HcLevel level,
                  gboolean details, HcServing *serving)
{
  Share share;
  gint64 served[HC_MOST_BODIES] = { 0 };

  open_share (&share, self, context, level);
  serving->exact = TRUE;
  find_served (&share, served);
  hc_serving_set_served (serving, context, share.bodies, served);
  if (details)
    tell_details (&share, served, serving);
  close_share (&share);
}
