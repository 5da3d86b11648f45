/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Ways to mend the air of the demo house, each judged by the night it makes. */
#include "config.h"

#include "climate/risk.h"
#include "mend/air.h"
#include "plan/edit-opening.h"
#include "sample/demo-night.h"
#include "words/remedy-words.h"

#define ALL (~0u)

static HcHouseNight *
spoilt_night (void)
{
  g_autoptr (HcPlan) demo = demo_plan ();
  g_autoptr (HcPlan) wet = demo_with_water_inside (demo);
  g_autoptr (HcPlan) shut = demo_with_vents (wet, 0);

  return demo_night (shut);
}

static guint
count_after (const HcRemedy *remedy)
{
  g_autoptr (HcHouseNight) after = demo_night (remedy->plan);

  return hc_night_count_faults (&after->night, ALL);
}

static void
test_nothing_to_mend (void)
{
  g_autoptr (HcPlan) plan = demo_plan ();
  g_autoptr (HcHouseNight) night = demo_night (plan);
  g_autoptr (GPtrArray) remedies = hc_mend_air (night);

  g_assert_cmpuint (hc_night_get_faults (&night->night), ==, 0);
  g_assert_cmpuint (remedies->len, ==, 0);
}

/* Shut up, with the drinkers inside, the house sweats, is damp, and wattles get wet. */
static void
test_spoilt_house_has_avoidable_risk (void)
{
  g_autoptr (HcHouseNight) night = spoilt_night ();
  guint faults = hc_night_get_faults (&night->night);

  g_assert_cmpuint (faults & HC_NIGHT_DAMP_AIR, !=, 0);
  g_assert_cmpuint (faults & HC_NIGHT_SWEATING, !=, 0);
  g_assert_cmpuint (faults & HC_NIGHT_OPEN_WATER, !=, 0);
}

static void
test_all_that_helps_leaves_nothing (void)
{
  g_autoptr (HcHouseNight) night = spoilt_night ();
  g_autoptr (GPtrArray) remedies = hc_mend_air (night);
  const HcRemedy *all;

  g_assert_cmpuint (remedies->len, >=, 3);
  all = remedies->pdata[0];
  g_assert_cmpstr (all->code, ==, "air.all");
  g_assert_cmpuint (all->after, ==, 0);
  g_assert_cmpuint (count_after (all), ==, 0);
}

/* Cold is no fault of the house: it is told beside, before and after. */
static void
test_plain_cold_stays (void)
{
  g_autoptr (HcHouseNight) night = spoilt_night ();
  g_autoptr (GPtrArray) remedies = hc_mend_air (night);
  g_autoptr (HcHouseNight) after
      = demo_night (((const HcRemedy *) remedies->pdata[0])->plan);

  g_assert_cmpint (night->night.spaces[0].cold, >=, HC_COLD_LOW);
  g_assert_cmpint (after->night.spaces[0].cold, >=, night->night.spaces[0].cold);
  g_assert_cmpuint (after->night.spaces[0].faults, ==, 0);
}

static void
test_each_remedy_keeps_its_word (void)
{
  g_autoptr (HcHouseNight) night = spoilt_night ();
  g_autoptr (GPtrArray) remedies = hc_mend_air (night);
  guint before = hc_night_count_faults (&night->night, ALL);

  for (guint i = 0; i < remedies->len; i++)
    {
      const HcRemedy *remedy = remedies->pdata[i];
      g_autofree char *label = hc_words_remedy (night->plan, remedy, HC_UNITS_METRIC);
      g_autofree char *gain = hc_words_remedy_gain (remedy);

      g_test_message ("%s: %u to %u", label, remedy->before, remedy->after);
      g_assert_cmpuint (remedy->before, ==, before);
      g_assert_cmpuint (remedy->after, <=, before);
      g_assert_cmpuint (count_after (remedy), ==, remedy->after);
      g_assert_true (remedy->plan != night->plan);
      g_assert_cmpstr (label, !=, "");
      g_assert_cmpstr (hc_words_remedy_why (remedy), !=, "");
      g_assert_cmpstr (gain, !=, "");
    }
}

static HcPlan *
without_vents (HcPlan *plan)
{
  HcParts *openings = hc_layout_get (hc_plan_get_layout (plan))->openings;
  g_autoptr (GPtrArray) ids = g_ptr_array_new ();

  for (guint i = 0; i < openings->len; i++)
    if (hc_opening_get (openings->pdata[i])->kind == HC_OPENING_VENT
        || hc_opening_get (openings->pdata[i])->kind == HC_OPENING_WINDOW)
      g_ptr_array_add (ids, (gpointer) hc_opening_get_id (openings->pdata[i]));
  g_ptr_array_add (ids, NULL);
  return hc_plan_remove_openings (plan, (const char *const *) ids->pdata, NULL);
}

static void
test_no_vents_wants_one (void)
{
  g_autoptr (HcPlan) demo = demo_plan ();
  g_autoptr (HcPlan) bare = without_vents (demo);
  g_autoptr (HcHouseNight) night = demo_night (bare);
  g_autoptr (GPtrArray) remedies = hc_mend_air (night);
  gboolean found = FALSE;

  for (guint i = 0; i < remedies->len; i++)
    found |= g_str_equal (((const HcRemedy *) remedies->pdata[i])->code, "air.new-vent");
  g_assert_true (found);
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/mend-air/nothing", test_nothing_to_mend);
  g_test_add_func ("/mend-air/spoilt", test_spoilt_house_has_avoidable_risk);
  g_test_add_func ("/mend-air/all", test_all_that_helps_leaves_nothing);
  g_test_add_func ("/mend-air/plain-cold", test_plain_cold_stays);
  g_test_add_func ("/mend-air/each", test_each_remedy_keeps_its_word);
  g_test_add_func ("/mend-air/no-vents", test_no_vents_wants_one);
  return g_test_run ();
}
