/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The flock of a day, from the groups of birds in a plan. */
#include "config.h"

#include "flock/flock-private.h"

#include "flock/heat.h"
#include "flock/own-standard.h"

/* Past this width of an age band every young bird counts as grown. */
#define WIDEST_BAND_WEEKS 1024

typedef struct
{
  HcFlock *flock;
  HcBook *book;
  HcStandard *standard;
  const HcSiteValues *site;
  guint32 day;
  int band_weeks;
} Gathering;

static const HcKind *
find_kind (HcBook *book, const HcBatchValues *batch)
{
  const HcBreed *breed = hc_book_get_breed (book, batch->breed);

  return breed != NULL ? breed->kind : hc_book_get_kind (book, batch->kind);
}

static int
age_in_weeks (const Gathering *gathering, const HcBatchValues *batch)
{
  int weeks;

  if (batch->hatched == 0 || gathering->band_weeks == WIDEST_BAND_WEEKS)
    return HC_WEEK_GROWN;
  weeks = (int) MIN ((gathering->day - batch->hatched) / 7, HC_WEEK_GROWN);
  return weeks - weeks % gathering->band_weeks;
}

static gboolean
add_birds (Gathering *gathering, const HcBatch *batch, gboolean female, int count)
{
  const HcBatchValues *values = hc_batch_get (batch);
  const HcKind *kind = find_kind (gathering->book, values);
  HcFlockRow row = { 0, count, g_intern_string (values->pen != NULL ? values->pen : ""),
                     g_intern_string (hc_batch_get_id (batch)) };
  HcBody body;

  if (kind == NULL || count <= 0 || values->hatched > gathering->day)
    return TRUE;
  hc_body_init (&body, kind, female, age_in_weeks (gathering, values),
                hc_heat_get_weeks (gathering->standard, kind, gathering->site));
  if (!hc_bodies_intern (gathering->flock->bodies, &body, &row.body))
    return FALSE;
  hc_flock_add_row (gathering->flock, &row);
  return TRUE;
}

static gboolean
add_batches (Gathering *gathering, HcParts *batches)
{
  for (guint i = 0; i < batches->len; i++)
    {
      const HcBatchValues *values = hc_batch_get (batches->pdata[i]);

      if (!add_birds (gathering, batches->pdata[i], TRUE, values->females)
          || !add_birds (gathering, batches->pdata[i], FALSE, values->males))
        return FALSE;
    }
  return TRUE;
}

static HcFlock *
new_flock (HcBook *book)
{
  g_autoptr (GArray) bodies = g_array_new (FALSE, FALSE, sizeof (HcBody));

  return hc_flock_new (book, bodies);
}

/**
 * hc_flock_on:
 * @plan: a plan
 * @book: the book
 * @day: a Julian day
 *
 * Groups that have not hatched on that day, and groups whose kind of bird the
 * book does not know, are not counted. Ages go by the week; where that gives
 * more bodies than a mask holds, by two, four and more weeks.
 *
 * Returns: (transfer full): the birds of that day
 */
HcFlock *
hc_flock_on (const HcPlan *plan, HcBook *book, guint32 day)
{
  g_autoptr (HcStandard) standard = hc_plan_get_own_standard (plan, book);
  Gathering gathering = { new_flock (book), book, standard, hc_plan_get_site (plan), day, 1 };

  while (!add_batches (&gathering, hc_plan_get (plan)->batches)
         && gathering.band_weeks < WIDEST_BAND_WEEKS)
    {
      hc_flock_unref (gathering.flock);
      gathering.flock = new_flock (book);
      gathering.band_weeks *= 2;
    }
  return gathering.flock;
}
