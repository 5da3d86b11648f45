/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The demo house on its coldest night, as it is planned or spoilt. */
#include "config.h"

#include "sample/demo-night.h"

#include "files/read.h"
#include "plan/edit-fitting.h"
#include "plan/edit-opening.h"

/* Read once: books do not change. */
HcBook *
demo_book (void)
{
  static HcBook *book;
  g_autoptr (GError) error = NULL;

  if (book == NULL)
    book = hc_book_load_default (&error);
  g_assert_no_error (error);
  return book;
}

HcPlan *
demo_plan (void)
{
  g_autoptr (GError) error = NULL;
  g_autoptr (HcPlanFile) file = NULL;
  g_autofree char *text = NULL;
  gsize length;

  g_assert_true (g_file_get_contents (DEMO_PLAN, &text, &length, NULL));
  file = hc_plan_file_read (text, length, &error);
  g_assert_no_error (error);
  return hc_plan_ref (file->plan);
}

static HcPlan *
take_over (HcPlan *before, HcPlan *after)
{
  g_assert_nonnull (after);
  hc_plan_unref (before);
  return after;
}

HcPlan *
demo_with_vents (HcPlan *plan, double open)
{
  HcParts *openings = hc_layout_get (hc_plan_get_layout (plan))->openings;
  HcPlan *changed = hc_plan_ref (plan);

  for (guint i = 0; i < openings->len; i++)
    {
      HcOpeningValues values = *hc_opening_get (openings->pdata[i]);

      if (values.kind != HC_OPENING_VENT && values.kind != HC_OPENING_WINDOW)
        continue;
      values.open_winter = open;
      changed = take_over (changed,
                           hc_plan_set_opening (changed, hc_opening_get_id (openings->pdata[i]),
                                                &values, NULL));
    }
  return changed;
}

static HcPlan *
with_water_of (HcPlan *plan, HcParts *fittings)
{
  for (guint i = 0; fittings != NULL && i < fittings->len; i++)
    {
      HcFittingValues values = *hc_fitting_get (fittings->pdata[i]);

      values.out_at_night = FALSE;
      plan = take_over (
          plan, hc_plan_set_fitting (plan, hc_fitting_get_id (fittings->pdata[i]), &values, NULL));
    }
  return plan;
}

HcPlan *
demo_with_water_inside (HcPlan *plan)
{
  HcParts *pens = hc_layout_get (hc_plan_get_layout (plan))->pens;
  HcPlan *changed = hc_plan_ref (plan);

  for (guint i = 0; i < pens->len; i++)
    changed = with_water_of (changed, hc_pen_get (pens->pdata[i])->fittings);
  return changed;
}

HcHouseNight *
demo_night (HcPlan *plan)
{
  g_autoptr (HcFlock) flock = hc_flock_on (plan, demo_book (), hc_plan_get_day (plan));

  return hc_house_night_new (plan, NULL, flock, NULL);
}
