/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What happens through the year, put into a plan, and what is refused. */
#include "config.h"

#include "../sample/two-pens.h"

#include "plan/edit-flock.h"
#include "plan/edit-pen.h"
#include "plan/edit-season.h"

/* 2026-03-01 */
#define HATCHED 739676

static HcPlan *
plan_with_chicks (void)
{
  g_autoptr (HcPlan) plan = two_pens_new ();
  g_autoptr (HcBatch) batch = NULL;
  HcBatchValues values;
  HcPlan *after;

  hc_batch_values_init (&values);
  values.females = 6;
  values.males = 4;
  values.hatched = HATCHED;
  values.pen = (char *) "left";
  batch = hc_batch_new ("chicks", &values);
  after = hc_plan_add_batch (plan, batch, NULL);
  g_assert_nonnull (after);
  return after;
}

static HcMove *
move_new (guint32 on, const char *pen)
{
  HcMoveValues values;

  hc_move_values_init (&values);
  values.on = on;
  values.pen = (char *) pen;
  return hc_move_new ("m1", &values);
}

static HcLeaving *
leaving_new (const char *id, guint32 on, int females, int males)
{
  HcLeavingValues values;

  hc_leaving_values_init (&values);
  values.on = on;
  values.females = females;
  values.males = males;
  return hc_leaving_new (id, &values);
}

static void
a_move_is_put_replaced_and_taken_out (void)
{
  g_autoptr (HcPlan) plan = plan_with_chicks ();
  g_autoptr (HcMove) first = move_new (HATCHED + 42, "right");
  g_autoptr (HcMove) later = move_new (HATCHED + 49, "right");
  g_autoptr (HcPlan) moved = hc_plan_put_move (plan, "chicks", first, NULL);
  g_autoptr (HcPlan) again = hc_plan_put_move (moved, "chicks", later, NULL);
  g_autoptr (HcPlan) same = hc_plan_put_move (again, "chicks", later, NULL);
  g_autoptr (HcPlan) undone = hc_plan_remove_from_batch (again, "chicks", "m1");
  HcBatch *chicks = hc_parts_find (hc_plan_get (again)->batches, "chicks");

  g_assert_cmpuint (hc_batch_get (chicks)->moves->len, ==, 1);
  g_assert_true (same == again);
  g_assert_true (hc_plan_equal (undone, plan));
}

static void
what_cannot_happen_is_refused (void)
{
  g_autoptr (HcPlan) plan = plan_with_chicks ();
  g_autoptr (HcMove) nowhere = move_new (HATCHED + 42, "gone");
  g_autoptr (HcMove) early = move_new (HATCHED - 1, "right");
  g_autoptr (HcMove) never = move_new (0, "right");
  g_autoptr (HcLeaving) many = leaving_new ("l1", HATCHED + 70, 7, 0);
  g_autoptr (GError) error = NULL;

  g_assert_null (hc_plan_put_move (plan, "chicks", nowhere, &error));
  assert_refused (NULL, &error);
  g_clear_error (&error);
  g_assert_null (hc_plan_put_move (plan, "chicks", early, &error));
  assert_refused (NULL, &error);
  g_clear_error (&error);
  g_assert_null (hc_plan_put_move (plan, "chicks", never, &error));
  assert_refused (NULL, &error);
  g_clear_error (&error);
  g_assert_null (hc_plan_put_leaving (plan, "chicks", many, &error));
  assert_refused (NULL, &error);
  g_clear_error (&error);
  g_assert_null (hc_plan_put_move (plan, "nobody", early, &error));
  assert_refused (NULL, &error);
}

static void
losses_count_in_the_order_of_their_days (void)
{
  g_autoptr (HcPlan) plan = plan_with_chicks ();
  g_autoptr (HcLeaving) rest = leaving_new ("l1", HATCHED + 90, 0, 0);
  g_autoptr (HcLeaving) one = leaving_new ("l2", HATCHED + 50, 1, 1);
  g_autoptr (HcLeaving) late = leaving_new ("l3", HATCHED + 91, 1, 0);
  g_autoptr (HcPlan) harvested = hc_plan_put_leaving (plan, "chicks", rest, NULL);
  g_autoptr (HcPlan) with_loss = hc_plan_put_leaving (harvested, "chicks", one, NULL);
  g_autoptr (GError) error = NULL;

  g_assert_nonnull (with_loss);
  g_assert_null (hc_plan_put_leaving (with_loss, "chicks", late, &error));
  assert_refused (NULL, &error);
}

static void
fewer_birds_than_were_lost_are_refused (void)
{
  g_autoptr (HcPlan) plan = plan_with_chicks ();
  g_autoptr (HcLeaving) lost = leaving_new ("l1", HATCHED + 9, 5, 0);
  g_autoptr (HcPlan) after = hc_plan_put_leaving (plan, "chicks", lost, NULL);
  HcBatchValues values = *hc_batch_get (hc_parts_find (hc_plan_get (after)->batches, "chicks"));
  g_autoptr (GError) error = NULL;

  values.females = 4;
  g_assert_null (hc_plan_set_batch (after, "chicks", &values, &error));
  assert_refused (NULL, &error);
}

static HcClutch *
clutch_new (double hatch_low_percent, double hatch_high_percent)
{
  HcClutchValues values;

  hc_clutch_values_init (&values);
  values.kind = (char *) "bantam";
  values.set_on = HATCHED;
  values.eggs = 12;
  values.pen = (char *) "right";
  values.hatch_low_percent = hatch_low_percent;
  values.hatch_high_percent = hatch_high_percent;
  return hc_clutch_new ("eggs", &values);
}

static void
shares_of_eggs_are_shares (void)
{
  g_autoptr (HcPlan) plan = two_pens_new ();
  g_autoptr (HcClutch) good = clutch_new (50, 90);
  g_autoptr (HcClutch) much = clutch_new (50, 140);
  g_autoptr (HcClutch) crossed = clutch_new (90, 50);
  g_autoptr (HcPlan) set = hc_plan_put_clutch (plan, good, NULL);
  g_autoptr (GError) error = NULL;

  g_assert_nonnull (set);
  g_assert_null (hc_plan_put_clutch (plan, much, &error));
  g_assert_nonnull (strstr (error->message, "100"));
  assert_refused (NULL, &error);
  g_clear_error (&error);
  g_assert_null (hc_plan_put_clutch (plan, crossed, &error));
  assert_refused (NULL, &error);
}

static void
more_hatched_than_set_is_refused (void)
{
  g_autoptr (HcPlan) plan = two_pens_new ();
  g_autoptr (HcClutch) clutch = clutch_new (50, 90);
  g_autoptr (HcPlan) set = hc_plan_put_clutch (plan, clutch, NULL);
  HcResultValues values;
  g_autoptr (HcResult) result = NULL;
  g_autoptr (GError) error = NULL;

  hc_result_values_init (&values);
  values.what = HC_RESULT_HATCHED;
  values.of = (char *) "eggs";
  values.on = HATCHED + 21;
  values.count = 13;
  result = hc_result_new ("r1", &values);
  g_assert_null (hc_plan_put_result (set, result, &error));
  assert_refused (NULL, &error);
}

static void
birds_and_eggs_of_a_pen_that_goes_have_none (void)
{
  g_autoptr (HcPlan) plan = plan_with_chicks ();
  g_autoptr (HcMove) move = move_new (HATCHED + 42, "right");
  g_autoptr (HcClutch) clutch = clutch_new (50, 90);
  g_autoptr (HcPlan) moved = hc_plan_put_move (plan, "chicks", move, NULL);
  g_autoptr (HcPlan) set = hc_plan_put_clutch (moved, clutch, NULL);
  g_autoptr (HcPlan) after = hc_plan_remove_pen (set, "right", NULL);
  const HcBatchValues *chicks = hc_batch_get (hc_parts_find (hc_plan_get (after)->batches, "chicks"));

  g_assert_cmpstr (hc_move_get (chicks->moves->pdata[0])->pen, ==, NULL);
  g_assert_cmpstr (hc_clutch_get (hc_plan_get (after)->clutches->pdata[0])->pen, ==, NULL);
  g_assert_cmpstr (chicks->pen, ==, "left");
}

static void
lists_are_put_and_taken_out (void)
{
  g_autoptr (HcPlan) plan = two_pens_new ();
  HcChoreValues chore = { (char *) "candle", (char *) "eggs", HATCHED, NULL, HATCHED + 1 };
  HcPriceValues price = { (char *) "egg", 0.35, HC_PRICE_PIECE };
  HcStockValues stock = { (char *) "batten", 2400, 0, 12 };
  g_autoptr (HcChore) a_chore = hc_chore_new ("c1", &chore);
  g_autoptr (HcPrice) a_price = hc_price_new ("p1", &price);
  g_autoptr (HcStock) a_stock = hc_stock_new ("s1", &stock);
  g_autoptr (HcPlan) one = hc_plan_put_chore (plan, a_chore, NULL);
  g_autoptr (HcPlan) two = hc_plan_put_price (one, a_price, NULL);
  g_autoptr (HcPlan) three = hc_plan_put_stock (two, a_stock, NULL);
  g_autoptr (HcPlan) four = hc_plan_remove_chore (three, "c1");
  g_autoptr (HcPlan) five = hc_plan_remove_price (four, "p1");
  g_autoptr (HcPlan) six = hc_plan_remove_stock (five, "s1");

  g_assert_cmpuint (hc_plan_get (three)->stock->len, ==, 1);
  g_assert_true (hc_plan_equal (six, plan));
}

static void
how_birds_are_kept_has_bounds (void)
{
  g_autoptr (HcPlan) plan = two_pens_new ();
  HcKeepingValues values = *hc_plan_get_keeping (plan);
  g_autoptr (HcPlan) after = NULL;
  g_autoptr (GError) error = NULL;

  g_assert_cmpfloat (values.carry_percent, ==, 90);
  values.freezer_litres = 200;
  after = hc_plan_set_keeping (plan, &values, NULL);
  g_assert_cmpfloat (hc_plan_get_keeping (after)->freezer_litres, ==, 200);
  values.carry_percent = 140;
  g_assert_null (hc_plan_set_keeping (plan, &values, &error));
  assert_refused (NULL, &error);
}

int
main (int argc, char *argv[])
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/plan-season/move", a_move_is_put_replaced_and_taken_out);
  g_test_add_func ("/plan-season/refused", what_cannot_happen_is_refused);
  g_test_add_func ("/plan-season/order", losses_count_in_the_order_of_their_days);
  g_test_add_func ("/plan-season/fewer", fewer_birds_than_were_lost_are_refused);
  g_test_add_func ("/plan-season/shares", shares_of_eggs_are_shares);
  g_test_add_func ("/plan-season/hatched", more_hatched_than_set_is_refused);
  g_test_add_func ("/plan-season/pen-goes", birds_and_eggs_of_a_pen_that_goes_have_none);
  g_test_add_func ("/plan-season/lists", lists_are_put_and_taken_out);
  g_test_add_func ("/plan-season/keeping", how_birds_are_kept_has_bounds);
  return g_test_run ();
}
