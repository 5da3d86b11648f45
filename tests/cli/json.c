/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * JSON for programs: sound, with the members the documentation promises. */
#include "config.h"

#include "plan-program.h"

#include <string.h>

static JsonNode *
run_json (int status, const char *verb, const char *argument, const char *option,
          const char *value)
{
  g_auto (TestRun) run = test_run (NULL, verb, "--json", argument, option, value, NULL);

  g_assert_cmpstr (run.err, ==, "");
  g_assert_cmpint (run.status, ==, status);
  return test_run_parse (&run);
}

static void
assert_members (JsonObject *object, const char *names)
{
  g_auto (GStrv) wanted = g_strsplit (names, " ", -1);
  g_autoptr (GList) found = json_object_get_members (object);
  guint i = 0;

  for (GList *l = found; l != NULL; l = l->next)
    g_assert_cmpstr (l->data, ==, wanted[i++]);
  g_assert_null (wanted[i]);
}

static JsonObject *
find_need (JsonObject *check, const char *word)
{
  JsonArray *needs = json_object_get_array_member (check, "needs");

  for (guint i = 0; i < json_array_get_length (needs); i++)
    {
      JsonObject *need = json_array_get_object_element (needs, i);

      if (g_str_equal (json_object_get_string_member (need, "need"), word))
        return need;
    }
  g_error ("no need ‘%s’", word);
}

static void
test_check (void)
{
  g_autofree char *plan = test_plan_path ("byre.hencote");
  g_autoptr (JsonNode) node = run_json (1, "check", plan, NULL, NULL);
  JsonObject *check = json_node_get_object (node);
  JsonObject *nests = find_need (check, "nests");
  JsonArray *findings = json_object_get_array_member (nests, "findings");
  JsonObject *finding = json_array_get_object_element (findings, 0);

  assert_members (check, "title uid date condition rules birds level needs");
  assert_members (nests, "need level birds served findings");
  assert_members (finding,
                  "code level sentence todo detail ids birds more measured required unit "
                  "figure rules");
  g_assert_cmpstr (json_object_get_string_member (check, "uid"), ==, "u-byre");
  g_assert_cmpstr (json_object_get_string_member (check, "date"), ==, "2026-04-10");
  g_assert_cmpstr (json_object_get_string_member (check, "level"), ==, "short");
  g_assert_cmpint (json_object_get_int_member (check, "birds"), ==, 40);
  g_assert_cmpstr (json_object_get_string_member (nests, "level"), ==, "short");
  g_assert_cmpint (json_object_get_int_member (nests, "birds"), ==, 24);
}

static void
test_check_in_each_condition (void)
{
  static const char *const conditions[] = { "day", "night", "shut-in" };
  g_autofree char *plan = test_plan_path ("shed.hencote");

  for (guint i = 0; i < G_N_ELEMENTS (conditions); i++)
    {
      g_autoptr (JsonNode) node = run_json (0, "check", plan, "--condition", conditions[i]);

      g_assert_cmpstr (
          json_object_get_string_member (json_node_get_object (node), "condition"), ==,
          conditions[i]);
    }
}

static void
test_units_change_sentences_alone (void)
{
  g_autofree char *plan = test_plan_path ("byre.hencote");
  g_autoptr (JsonNode) metric = run_json (1, "check", plan, "--units", "metric");
  g_autoptr (JsonNode) feet = run_json (1, "check", plan, "--units", "feet");
  JsonObject *a = find_need (json_node_get_object (metric), "nests");
  JsonObject *b = find_need (json_node_get_object (feet), "nests");

  g_assert_true (json_node_equal (json_object_get_member (a, "served"),
                                  json_object_get_member (b, "served")));
}

static void
test_capacity (void)
{
  g_autofree char *plan = test_plan_path ("shed.hencote");
  g_autoptr (JsonNode) mix = run_json (0, "capacity", plan, NULL, NULL);
  g_autoptr (JsonNode) more = run_json (0, "capacity", plan, "--kind", "bantam");
  JsonObject *object = json_node_get_object (mix);
  JsonArray *ladder = json_object_get_array_member (object, "ladder");

  assert_members (object, "title uid date rules question kind condition birds good least "
                          "mend_first ladder");
  assert_members (json_array_get_object_element (ladder, 0),
                  "need most code lift lift_unit lift_to sentence");
  g_assert_cmpint (json_object_get_int_member (object, "birds"), ==, 4);
  g_assert_cmpint (json_object_get_int_member (object, "good"), >=, 4);
  g_assert_cmpint (json_object_get_int_member (object, "least"), >=,
                   json_object_get_int_member (object, "good"));
  g_assert_cmpstr (json_object_get_string_member (object, "question"), ==, "mix");
  g_assert_cmpstr (
      json_object_get_string_member (json_node_get_object (more), "question"), ==, "more");
}

static void
test_rules (void)
{
  g_autofree char *plan = test_plan_path ("shed.hencote");
  g_autoptr (JsonNode) list = run_json (0, "rules", NULL, NULL, NULL);
  g_autoptr (JsonNode) named = run_json (0, "rules", "home-cold", NULL, NULL);
  g_autoptr (JsonNode) own = run_json (0, "rules", plan, NULL, NULL);
  JsonObject *rules = json_node_get_object (named);
  JsonArray *demands = json_object_get_array_member (rules, "demands");

  g_assert_cmpuint (json_array_get_length (json_node_get_array (list)), >=, 2);
  assert_members (rules, "rules name minimum_only demands limits");
  assert_members (json_array_get_object_element (demands, 0),
                  "id name unit least good plenty basis source note");
  g_assert_true (json_node_equal (named, own));
}

static void
test_describe (void)
{
  g_autofree char *plan = test_plan_path ("byre.hencote");
  g_autoptr (JsonNode) node = run_json (0, "describe", plan, NULL, NULL);
  JsonObject *object = json_node_get_object (node);
  JsonArray *pens = json_object_get_array_member (object, "pens");

  assert_members (object, "title date birds headline pens");
  g_assert_cmpuint (json_array_get_length (pens), ==, 3);
  assert_members (json_array_get_object_element (pens, 0),
                  "id name about birds openings fittings");
}

static void
test_night (void)
{
  g_autofree char *plan = test_plan_path ("byre.hencote");
  g_autoptr (JsonNode) node = run_json (0, "night", plan, "--outside", "8");
  JsonObject *object = json_node_get_object (node);
  JsonArray *spaces = json_object_get_array_member (object, "spaces");

  assert_members (object, "title date outside_c outside_humidity wind_m_s states indicative "
                          "spaces advice advised_opening birds_well_from birds_well_to "
                          "remedies hot_day_inside_c hot_day_index_c "
                          "hot_day_shade_k hot_day_vents_m2 hot_day_water_l chicks");
  g_assert_cmpfloat (json_object_get_double_member (object, "outside_c"), ==, 8);
  g_assert_cmpuint (json_array_get_length (spaces), >=, 1);
  assert_members (json_array_get_object_element (spaces, 0),
                  "pen birds inside_c inside_c_range humidity humidity_range dew_point_c "
                  "fresh_m3_h co2_ppm co2_ppm_range ammonia_ppm water_g_h draught_m_s "
                  "wet_surfaces avoidable plain_cold");
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/json/check", test_check);
  g_test_add_func ("/json/check-in-each-condition", test_check_in_each_condition);
  g_test_add_func ("/json/units", test_units_change_sentences_alone);
  g_test_add_func ("/json/capacity", test_capacity);
  g_test_add_func ("/json/rules", test_rules);
  g_test_add_func ("/json/describe", test_describe);
  g_test_add_func ("/json/night", test_night);
  return g_test_run ();
}
