/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Whole birds on each stretch of bar. */
#include "config.h"

#include "needs/serve/seating.h"

#include "base/whole.h"
#include "needs/allot/packing.h"

static HcBodies
find_concerned (const HcNeedContext *context, const HcAsking *asking, HcBodies bodies)
{
  bodies &= hc_need_context_get_bodies (context);
  for (guint body = 0; body < hc_need_context_get_n_bodies (context); body++)
    if (asking->of[body] == NULL)
      bodies &= ~((HcBodies) 1 << body);
  return bodies;
}

static GArray *
list_stretches (const HcFounds *founds)
{
  GArray *stretches = g_array_new (FALSE, FALSE, sizeof (HcPackStretch));

  for (guint i = 0; i < founds->places->len; i++)
    {
      const HcFound *found = hc_founds_get (founds, i);
      HcPackStretch stretch = { found->amount, found->suits };

      g_array_append_val (stretches, stretch);
    }
  return stretches;
}

/* More birds than bar, whoever sits where. */
static gboolean
is_hopeless (const HcPacking *packing)
{
  double asked_mm = 0;
  double there_mm = 0;

  for (guint body = 0; body < packing->n_bodies; body++)
    asked_mm += packing->seats_mm[body] * (double) packing->counts[body];
  for (guint i = 0; i < packing->n_stretches; i++)
    there_mm += packing->stretches[i].length_mm;
  return asked_mm > there_mm * (1 + HC_WHOLE_TOLERANCE);
}

/* Those left over, and the stretches that suit any of them. */
static void
find_confined (HcServing *serving, const HcFounds *founds)
{
  HcBodies left_over = hc_serving_get_left_over (serving);
  g_autofree gboolean *within = g_new0 (gboolean, founds->places->len + 1);

  if (left_over == 0)
    return;
  for (guint i = 0; i < founds->places->len; i++)
    within[i] = (hc_founds_get (founds, i)->suits & left_over) != 0;
  hc_serving_confine (serving, left_over, founds, within);
}

static void
tell_details (const HcAsking *asking, const HcNeedContext *context, HcBodies bodies,
              const HcFounds *founds, const gint64 *seats, HcServing *serving)
{
  serving->unit = "mm";
  serving->offered = hc_founds_sum (founds, 0);
  serving->nothing = serving->offered <= 0;
  serving->required
      = hc_asking_get_total (asking, context->counts, bodies, &serving->figure);
  hc_serving_allot (serving, founds, seats, hc_need_context_get_n_bodies (context));
  find_confined (serving, founds);
}

void
hc_seating_serve (const HcNeedContext *context, HcOfferKind kind, const char *figure,
                  HcBodies bodies, HcLevel level, gboolean details, HcServing *serving)
{
  guint n_bodies = hc_need_context_get_n_bodies (context);
  gint64 counts[HC_MOST_BODIES] = { 0 };
  gint64 served[HC_MOST_BODIES] = { 0 };
  double seats_mm[HC_MOST_BODIES] = { 0 };
  g_autoptr (GArray) stretches = NULL;
  g_autofree gint64 *seats = NULL;
  HcAsking asking;
  HcFounds founds;
  HcPacking packing;

  hc_asking_init (&asking, context, figure, level);
  bodies = find_concerned (context, &asking, bodies);
  hc_founds_init (&founds);
  hc_founds_gather (&founds, context, kind, 0, level, NULL);
  stretches = list_stretches (&founds);
  for (guint body = 0; body < n_bodies; body++)
    if (bodies >> body & 1)
      {
        counts[body] = context->counts[body];
        seats_mm[body] = hc_asking_get_each (&asking, body, 1);
      }
  packing = (HcPacking) { n_bodies, counts, seats_mm, stretches->len,
                          (const HcPackStretch *) stretches->data, HC_PACKING_STEPS };
  if (context->only_whether_all && !details && is_hopeless (&packing))
    packing.n_stretches = 0;
  seats = hc_packing_seat (&packing, &serving->exact);
  for (guint body = 0; body < n_bodies; body++)
    for (guint i = 0; i < packing.n_stretches; i++)
      served[body] += seats[body * packing.n_stretches + i];
  hc_serving_set_served (serving, context, bodies, served);
  if (details)
    tell_details (&asking, context, bodies, &founds, seats, serving);
  hc_founds_clear (&founds);
}
