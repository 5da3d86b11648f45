/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What cannot happen is refused with a sentence, and what is only odd does no
 * harm. */
#include "config.h"

#include "demo.h"

#include "base/day.h"
#include "base/error.h"
#include "plan/edit-season.h"
#include "season/forecast/forecast.h"

#include <string.h>

static void
assert_refused (HcPlan *plan, GError **error)
{
  g_assert_null (plan);
  g_assert_error (*error, HC_ERROR, HC_ERROR_EDIT);
  g_assert_cmpuint (strlen ((*error)->message), >, 10);
  g_clear_error (error);
}

static void
refuse_leaving (Demo *demo, guint32 on, int females, const char *from)
{
  HcLeavingValues values = { on, HC_LEAVING_HARVESTED, (char *) from, females, 0, NULL };
  g_autoptr (HcLeaving) leaving = hc_leaving_new ("x", &values);
  GError *error = NULL;

  assert_refused (hc_plan_put_leaving (demo->plan, "pullets", leaving, &error), &error);
}

static void
birds_cannot_go_before_they_hatch_or_more_than_there_are (Demo *demo, gconstpointer data)
{
  refuse_leaving (demo, DEMO_FROM - 10, 3, NULL);
  refuse_leaving (demo, DEMO_FROM + 100, 16, NULL);
  refuse_leaving (demo, 0, 1, NULL);
  refuse_leaving (demo, DEMO_FROM + 100, 1, "no-such-pen");
}

static void
birds_cannot_move_to_a_pen_that_is_gone (Demo *demo, gconstpointer data)
{
  HcMoveValues values = { DEMO_FROM + 100, NULL, (char *) "pulled-down", 3, 0 };
  g_autoptr (HcMove) move = hc_move_new ("x", &values);
  GError *error = NULL;

  assert_refused (hc_plan_put_move (demo->plan, "pullets", move, &error), &error);
}

static void
refuse_clutch (Demo *demo, HcClutchValues values)
{
  g_autoptr (HcClutch) clutch = NULL;
  GError *error = NULL;

  values.kind = (char *) "duck";
  clutch = hc_clutch_new ("x", &values);
  assert_refused (hc_plan_put_clutch (demo->plan, clutch, &error), &error);
}

static void
eggs_cannot_be_what_no_eggs_are (Demo *demo, gconstpointer data)
{
  HcClutchValues usual, values;

  hc_clutch_values_init (&usual);
  usual.set_on = DEMO_FROM;
  usual.eggs = 12;
  values = usual;
  values.harvest_on = DEMO_FROM - 1;
  refuse_clutch (demo, values);
  values = usual;
  values.hatch_low_percent = 90;
  values.hatch_high_percent = 140;
  refuse_clutch (demo, values);
  values = usual;
  values.fertile_low_percent = 90;
  values.fertile_high_percent = 60;
  refuse_clutch (demo, values);
  values = usual;
  values.eggs = -4;
  refuse_clutch (demo, values);
}

static void
days_that_do_not_exist_are_no_days (Demo *demo, gconstpointer data)
{
  static const char *const texts[] = { "2026-02-29", "2026-13-01", "2026-00-10", "2026-04-31",
                                       "26-04-01", "2026-4-1", "2026-04-01T", "", "tomorrow" };
  guint32 day;

  for (guint i = 0; i < G_N_ELEMENTS (texts); i++)
    g_assert_false (hc_day_parse (texts[i], strlen (texts[i]), &day));
  g_assert_true (hc_day_parse ("2024-02-29", 10, &day));
}

/* A plan of a century, and weeks of a century asked for. */
static void
a_century_is_looked_at_no_further_than_ten_years (Demo *demo, gconstpointer data)
{
  g_autoptr (HcPlan) early
      = demo_with_clutch (demo->plan, "duck", "ducks", 10, DEMO_FROM - 50 * 365);
  g_autoptr (HcPlan) plan = demo_with_clutch (early, "goose", "hens", 10, DEMO_FROM + 50 * 365);
  g_autoptr (HcYear) year
      = hc_year_work_out (demo->tallier, plan, DEMO_FROM, 5200, HC_YEAR_COUNTING);
  g_autoptr (HcForecast) forecast = hc_forecast_new (plan, demo->book, DEMO_FROM, 5200);

  g_assert_cmpuint (hc_year_get_until (year), ==, DEMO_FROM + HC_YEAR_MOST_WEEKS * 7);
  g_assert_cmpuint (hc_forecast_get_n_weeks (forecast), ==, HC_YEAR_MOST_WEEKS);
  for (guint i = 0; i < HC_YEAR_MOST_WEEKS; i++)
    g_assert_cmpfloat (hc_forecast_get_week (forecast, i)->eggs, >=, 0);
}

static void
add (const char *name, void (*test) (Demo *, gconstpointer))
{
  g_autofree char *path = g_strconcat ("/season/bad-input/", name, NULL);

  g_test_add (path, Demo, NULL, demo_set_up, test, demo_tear_down);
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  add ("leavings", birds_cannot_go_before_they_hatch_or_more_than_there_are);
  add ("moves", birds_cannot_move_to_a_pen_that_is_gone);
  add ("eggs", eggs_cannot_be_what_no_eggs_are);
  add ("days", days_that_do_not_exist_are_no_days);
  add ("century", a_century_is_looked_at_no_further_than_ten_years);
  return g_test_run ();
}
