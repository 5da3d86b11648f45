/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The year from the command line: for people, programs and spreadsheets. */
#include "config.h"

#include "plan-program.h"

#include <string.h>

static char *
demo_path (void)
{
  return g_build_filename (TEST_DATA, "demo", "skerry-croft.hencote", NULL);
}

static void
the_worst_day_is_named_with_its_reason (void)
{
  g_autofree char *plan = demo_path ();
  g_auto (TestRun) run = test_run (NULL, "year", plan, "--weeks", "30", NULL);

  g_assert_cmpint (run.status, ==, 1);
  g_assert_nonnull (strstr (run.out, "2026-06-06"));
  g_assert_nonnull (strstr (run.out, "Pullet chicks: 15 come off heat"));
  g_assert_nonnull (strstr (run.out, "The worst day is 29 August 2026, with 40 birds."));
  g_assert_nonnull (strstr (run.out, "15 hens have no nest to lay in"));
}

static void
programs_get_every_day (void)
{
  g_autofree char *plan = demo_path ();
  g_auto (TestRun) run = test_run (NULL, "year", plan, "--weeks", "30", "--json", NULL);
  g_autoptr (JsonNode) node = test_run_parse (&run);
  JsonObject *year = json_node_get_object (node);
  JsonArray *days = json_object_get_array_member (year, "days");
  JsonObject *day = json_array_get_object_element (days, 0);

  g_assert_cmpuint (json_array_get_length (days), >=, 30);
  g_assert_cmpstr (json_object_get_string_member (year, "worst_day"), ==, "2026-08-29");
  g_assert_cmpstr (json_object_get_string_member (day, "date"), ==, "2026-04-12");
  g_assert_cmpint (json_object_get_int_member (day, "birds"), ==, 40);
  g_assert_cmpuint (json_array_get_length (json_object_get_array_member (day, "needs")), >, 8);
}

/* The check of a day says of it what the year says. */
static void
the_check_of_a_day_agrees (void)
{
  g_autofree char *plan = demo_path ();
  g_auto (TestRun) run
      = test_run (NULL, "check", plan, "--on", "2026-08-29", "--json", NULL);
  g_autoptr (JsonNode) node = test_run_parse (&run);
  JsonArray *needs = json_object_get_array_member (json_node_get_object (node), "needs");

  for (guint i = 0; i < json_array_get_length (needs); i++)
    {
      JsonObject *need = json_array_get_object_element (needs, i);

      if (!g_str_equal (json_object_get_string_member (need, "need"), "nests"))
        continue;
      g_assert_cmpint (json_object_get_int_member (need, "birds"), ==, 37);
      return;
    }
  g_assert_not_reached ();
}

static void
every_row_of_the_table_is_as_long (void)
{
  g_autofree char *plan = demo_path ();
  g_auto (TestRun) run = test_run (NULL, "year", plan, "--weeks", "30", "--csv", NULL);
  g_auto (GStrv) rows = g_strsplit (run.out, "\r\n", -1);
  guint fields = 0;

  g_assert_cmpuint (g_strv_length (rows), >, 30);
  for (guint i = 0; rows[i] != NULL && *rows[i] != '\0'; i++)
    {
      g_auto (GStrv) cells = g_strsplit (rows[i], ",", -1);

      if (i == 0)
        fields = g_strv_length (cells);
      g_assert_cmpuint (g_strv_length (cells), ==, fields);
    }
}

static void
weeks_that_cannot_be_are_refused (void)
{
  static const char *const weeks[] = { "0", "521", "-3", "many", "5200" };
  g_autofree char *plan = demo_path ();

  for (guint i = 0; i < G_N_ELEMENTS (weeks); i++)
    {
      g_auto (TestRun) run = test_run (NULL, "year", plan, "--weeks", weeks[i], NULL);

      g_assert_cmpint (run.status, ==, 2);
      g_assert_nonnull (strstr (run.err, "say a number from 1 to 520"));
    }
}

static void
a_question_is_answered_with_its_limit (void)
{
  g_autofree char *plan = demo_path ();
  g_auto (TestRun) run = test_run (NULL, "year", plan, "--ask", "gone", "--of", "pullets", NULL);

  g_assert_cmpint (run.status, ==, 0);
  g_assert_cmpstr (run.out, ==,
                   "All 15 birds must be gone by 06 June 2026.\n"
                   "Room outside: if they stay longer, 15 birds go short on 06 June 2026.\n");
}

static void
eggs_in_hand_are_told_with_eggs_to_set (void)
{
  g_autofree char *plan = demo_path ();
  g_auto (TestRun) run = test_run (NULL, "year", plan, "--ask", "eggs", "--kind", "heavy_breed",
                                   "--wanted", "8", "--who", "females", NULL);

  g_assert_cmpint (run.status, ==, 0);
  g_assert_nonnull (strstr (run.out, "at least 8 females"));
  g_assert_nonnull (strstr (run.out, "of 8 females with males enough"));
}

static void
the_forecast_comes_as_table_and_for_programs (void)
{
  g_autofree char *plan = demo_path ();
  g_auto (TestRun) told = test_run (NULL, "forecast", plan, "--weeks", "4", NULL);
  g_auto (TestRun) json = test_run (NULL, "forecast", plan, "--weeks", "4", "--json", NULL);
  g_auto (TestRun) csv = test_run (NULL, "forecast", plan, "--weeks", "4", "--csv", NULL);
  g_autoptr (JsonNode) node = test_run_parse (&json);
  JsonArray *weeks = json_object_get_array_member (json_node_get_object (node), "weeks");
  g_auto (GStrv) rows = g_strsplit (csv.out, "\r\n", -1);

  g_assert_cmpint (told.status, ==, 0);
  g_assert_nonnull (strstr (told.out, "layer feed"));
  g_assert_cmpuint (json_array_get_length (weeks), ==, 4);
  g_assert_cmpuint (g_strv_length (rows), ==, 6);
  g_assert_true (g_str_has_prefix (rows[1], "2026-04-12,40,"));
}

static void
what_a_question_lacks_is_said (void)
{
  static const struct
  {
    const char *option, *value, *says;
  } calls[] = {
    { "--wanted", "8", "Say which kind of bird" },
    { "--kind", "ostrich", "there is no such kind" },
    { "--wanted", "none", "say a number of chicks" },
    { "--chance", "100", "say a percentage from 1 to 99" },
    { "--who", "hens", "‘females’" },
    { "--pen", "attic", "no pen with that id" },
  };
  g_autofree char *plan = demo_path ();

  for (guint i = 0; i < G_N_ELEMENTS (calls); i++)
    {
      g_auto (TestRun) run = test_run (NULL, "year", plan, "--ask", "eggs", calls[i].option,
                                       calls[i].value, NULL);

      g_assert_cmpint (run.status, ==, 2);
      g_assert_nonnull (strstr (run.err, calls[i].says));
    }
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/year/worst-day", the_worst_day_is_named_with_its_reason);
  g_test_add_func ("/year/json", programs_get_every_day);
  g_test_add_func ("/year/agrees-with-check", the_check_of_a_day_agrees);
  g_test_add_func ("/year/csv", every_row_of_the_table_is_as_long);
  g_test_add_func ("/year/weeks", weeks_that_cannot_be_are_refused);
  g_test_add_func ("/year/question", a_question_is_answered_with_its_limit);
  g_test_add_func ("/year/eggs-in-hand", eggs_in_hand_are_told_with_eggs_to_set);
  g_test_add_func ("/year/forecast", the_forecast_comes_as_table_and_for_programs);
  g_test_add_func ("/year/question-that-lacks", what_a_question_lacks_is_said);
  return g_test_run ();
}
