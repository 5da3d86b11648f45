/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The day by which birds raised for meat, or one group, must be gone. */
#include "config.h"

#include "season/ask/asked.h"

#include "flock/flock-on.h"
#include "flock/own-standard.h"

#include <glib/gi18n-lib.h>

/* The plan in which none of them is slaughtered or sold. */
static HcBatch *
kept_batch (HcBatch *batch)
{
  HcBatchValues values = *hc_batch_get (batch);
  g_autoptr (HcParts) leavings = hc_parts_new ();

  for (guint i = 0; i < values.leavings->len; i++)
    {
      HcLeaving *leaving = values.leavings->pdata[i];

      if (hc_leaving_get (leaving)->why < HC_LEAVING_SOLD)
        g_ptr_array_add (leavings, hc_leaving_ref (leaving));
    }
  values.leavings = leavings;
  return hc_batch_with (batch, &values);
}

static HcClutch *
kept_clutch (HcClutch *clutch)
{
  HcClutchValues values = *hc_clutch_get (clutch);
  g_autoptr (HcParts) steps = hc_parts_new ();

  for (guint i = 0; i < values.steps->len; i++)
    {
      HcStep *step = values.steps->pdata[i];

      if (hc_step_get (step)->deed == HC_STEP_MOVE)
        g_ptr_array_add (steps, hc_step_ref (step));
    }
  values.steps = steps;
  values.harvest_on = 0;
  return hc_clutch_with (clutch, &values);
}

static gboolean
is_meant (const HcAsked *asked, const char *id, const HcKind *kind)
{
  if (asked->question->of != NULL)
    return g_strcmp0 (id, asked->question->of) == 0;
  return kind != NULL && kind->raised_for_meat;
}

static const HcKind *
get_kind (HcBook *book, const HcBatchValues *batch)
{
  const HcBreed *breed = hc_book_get_breed (book, batch->breed);

  return breed != NULL ? breed->kind : hc_book_get_kind (book, batch->kind);
}

static HcParts *
keep_batches (const HcAsked *asked)
{
  HcParts *batches = hc_plan_get (asked->plan)->batches;
  HcBook *book = hc_tallier_get_book (asked->tallier);
  HcParts *kept = hc_parts_new ();

  for (guint i = 0; i < batches->len; i++)
    {
      HcBatch *batch = batches->pdata[i];
      gboolean meant
          = is_meant (asked, hc_batch_get_id (batch), get_kind (book, hc_batch_get (batch)));

      g_ptr_array_add (kept, meant ? kept_batch (batch) : hc_batch_ref (batch));
    }
  return kept;
}

static HcParts *
keep_clutches (const HcAsked *asked)
{
  HcParts *clutches = hc_plan_get (asked->plan)->clutches;
  HcBook *book = hc_tallier_get_book (asked->tallier);
  HcParts *kept = hc_parts_new ();

  for (guint i = 0; i < clutches->len; i++)
    {
      HcClutch *clutch = clutches->pdata[i];
      gboolean meant
          = is_meant (asked, hc_clutch_get_id (clutch), hc_clutch_get_kind_of (clutch, book));

      g_ptr_array_add (kept, meant ? kept_clutch (clutch) : hc_clutch_ref (clutch));
    }
  return kept;
}

static HcPlan *
keep_all (const HcAsked *asked)
{
  HcPlanValues values = *hc_plan_get (asked->plan);
  g_autoptr (HcParts) batches = keep_batches (asked);
  g_autoptr (HcParts) clutches = keep_clutches (asked);

  values.batches = batches;
  values.clutches = clutches;
  return hc_plan_with (asked->plan, &values);
}

static HcFlock *
without_them (const HcAsked *asked, HcFlock *flock, gint64 *gone)
{
  g_autofree gint64 *counts = g_new0 (gint64, hc_flock_get_n_rows (flock) + 1);

  *gone = 0;
  for (guint i = 0; i < hc_flock_get_n_rows (flock); i++)
    {
      const HcFlockRow *row = hc_flock_get_row (flock, i);
      const HcKind *kind = hc_flock_get_body (flock, row->body)->kind;

      if (is_meant (asked, row->batch, kind))
        {
          *gone += row->count;
          asked->answer->kind = kind;
        }
      else
        counts[i] = row->count;
    }
  return hc_flock_with_counts (flock, counts);
}

/* Whether somebody goes short on that day if they are still there. */
static gboolean
are_too_many (HcAsked *asked, const HcTimeline *timeline, HcStandard *standard, guint32 day)
{
  HcYearAnswer *answer = asked->answer;
  g_autoptr (HcFlock) flock
      = hc_flock_on_timeline (timeline, standard, hc_plan_get_site (asked->plan), day);
  gint64 gone;
  g_autoptr (HcFlock) without = without_them (asked, flock, &gone);

  answer->birds = MAX (answer->birds, gone);
  if (gone == 0 || !hc_shortfall_find (asked->tallier, flock, without, day, &answer->shortfall))
    return FALSE;
  answer->birds = gone;
  return TRUE;
}

gboolean
hc_ask_gone (HcAsked *asked, GError **error)
{
  HcBook *book = hc_tallier_get_book (asked->tallier);
  guint32 until = asked->question->from + asked->question->weeks * 7;
  g_autoptr (HcPlan) kept = keep_all (asked);
  g_autoptr (HcTimeline) timeline = hc_timeline_of (kept, book);
  g_autoptr (HcStandard) standard = hc_plan_get_own_standard (kept, book);

  for (guint32 day = asked->question->from; day < until; day++)
    if (are_too_many (asked, timeline, standard, day))
      {
        asked->answer->limited = TRUE;
        asked->answer->day = day;
        return TRUE;
      }
  if (asked->answer->birds == 0)
    return hc_asked_refuse (error, _("There are no birds raised for meat in these weeks. Say "
                                     "which group is meant."));
  return TRUE;
}
