/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What is written can be read, and what was read is written again. */
#include "config.h"

#include "files/read.h"
#include "files/write.h"
#include "plan-maker.h"
#include "plan/soundness.h"

#include <json-glib/json-glib.h>
#include <string.h>

static HcPlan *
make_any_plan (void)
{
  guint32 seed = (guint32) g_test_rand_int ();
  guint n_pens = (guint) g_test_rand_int_range (1, 5);
  guint n_fittings = (guint) g_test_rand_int_range (0, 20);

  return plan_maker_make_wild (seed, n_pens, n_fittings);
}

static char *
write_plan (const HcPlan *plan)
{
  g_autoptr (GError) error = NULL;
  char *text = hc_plan_write (plan, NULL, &error);

  g_assert_no_error (error);
  return text;
}

static HcPlanFile *
read_plan (const char *text)
{
  g_autoptr (GError) error = NULL;
  HcPlanFile *file = hc_plan_file_read (text, strlen (text), &error);

  g_assert_no_error (error);
  return file;
}

static gboolean
are_json_equal (const char *a,
                const char *b)
{
  g_autoptr (JsonNode) one = json_from_string (a, NULL);
  g_autoptr (JsonNode) other = json_from_string (b, NULL);

  return json_node_equal (one, other);
}

static void
made_plans_are_sound (void)
{
  for (guint i = 0; i < 50; i++)
    {
      g_autoptr (HcPlan) plan = make_any_plan ();
      g_autoptr (GError) error = NULL;

      hc_plan_is_sound (plan, &error);
      g_assert_no_error (error);
    }
}

static void
reading_what_was_written_gives_the_same_plan (void)
{
  for (guint i = 0; i < 200; i++)
    {
      g_autoptr (HcPlan) plan = make_any_plan ();
      g_autofree char *text = write_plan (plan);
      g_autoptr (HcPlanFile) file = read_plan (text);
      g_autofree char *again = write_plan (file->plan);

      g_assert_true (hc_plan_equal (file->plan, plan));
      g_assert_cmpstr (again, ==, text);
      g_assert_false (file->read_only);
      g_assert_cmpuint (file->n_unknown, ==, 0);
    }
}

static const char whole_file[]
    = "{\"uid\":\"croft\",\"version\":1.0,\"format\":\"hencote-plan\",\n"
      " \"images\" : { \"oak\": 12345678901234567890, \"list\": [ 1, \"a  b\" , [ ] ] },\n"
      " \"title\": \"\\u0053kerry\", \"notes\": \"\", \"as_of\": \"2026-04-30\",\n"
      " \"site\": {}, \"rules\": {\"own_figures\": [], \"new\": null},\n"
      " \"variants\": [{\"id\": \"a\", \"corners\": [{"
      "\"x_mm\": -0.125, \"y_mm\": 1e3, \"id\": \"c\"}]}],\n"
      " \"batches\": [{\"id\": \"b\", \"losses\": [{\"on\": \"2026-05-01\", \"count\": 1}],\n"
      "   \"females\": 3, \"males\": 0}]\n}";

static void
writing_what_was_read_gives_equal_json (void)
{
  g_autoptr (HcPlanFile) file = read_plan (whole_file);
  g_autofree char *text = write_plan (file->plan);

  g_assert_true (are_json_equal (text, whole_file));
  g_assert_nonnull (strstr (text, "12345678901234567890,"));
  g_assert_nonnull (strstr (text, "\"a  b\""));
}

static void
unknown_members_survive_at_every_depth (void)
{
  g_autoptr (HcPlanFile) file = read_plan (whole_file);
  const HcPlanValues *values = hc_plan_get (file->plan);

  g_assert_cmpstr (hc_part_get_extra (file->plan), ==,
                   "{\"images\":{\"oak\":12345678901234567890,\"list\":[1,\"a  b\",[]]}}");
  g_assert_cmpstr (hc_part_get_extra (values->rules), ==, "{\"new\":null}");
  g_assert_cmpstr (hc_part_get_extra (values->batches->pdata[0]), ==,
                   "{\"losses\":[{\"on\":\"2026-05-01\",\"count\":1}]}");
}

static void
files_look_as_documented (void)
{
  static const char expected[] = "{\n"
                                 "  \"format\": \"hencote-plan\",\n"
                                 "  \"version\": 1,\n"
                                 "  \"uid\": \"croft\",\n"
                                 "  \"title\": \"Skerry\",\n"
                                 "  \"notes\": \"\",\n"
                                 "  \"as_of\": \"2026-04-30\",\n"
                                 "  \"site\": {},\n"
                                 "  \"rules\": {\n"
                                 "    \"own_figures\": [],\n"
                                 "    \"new\": null\n"
                                 "  },\n"
                                 "  \"variants\": [\n"
                                 "    {\n"
                                 "      \"id\": \"a\",\n"
                                 "      \"corners\": [\n"
                                 "        {\n"
                                 "          \"id\": \"c\",\n"
                                 "          \"x_mm\": -0.125,\n"
                                 "          \"y_mm\": 1000\n"
                                 "        }\n"
                                 "      ]\n"
                                 "    }\n"
                                 "  ],\n"
                                 "  \"batches\": [\n"
                                 "    {\n"
                                 "      \"id\": \"b\",\n"
                                 "      \"females\": 3,\n"
                                 "      \"males\": 0,\n"
                                 "      \"losses\": [\n"
                                 "        {\n"
                                 "          \"on\": \"2026-05-01\",\n"
                                 "          \"count\": 1\n"
                                 "        }\n"
                                 "      ]\n"
                                 "    }\n"
                                 "  ],\n"
                                 "  \"images\": {\n"
                                 "    \"oak\": 12345678901234567890,\n"
                                 "    \"list\": [\n"
                                 "      1,\n"
                                 "      \"a  b\",\n"
                                 "      []\n"
                                 "    ]\n"
                                 "  }\n"
                                 "}\n";
  g_autoptr (HcPlanFile) file = read_plan (whole_file);
  g_autofree char *text = write_plan (file->plan);

  g_assert_cmpstr (text, ==, expected);
}

static void
missing_members_take_their_normal_values (void)
{
  g_autoptr (HcPlanFile) file
      = read_plan ("{\"format\": \"hencote-plan\", \"version\": 1, \"uid\": \"u\","
                   " \"variants\": [{\"id\": \"a\"}]}");
  const HcSiteValues *site = hc_plan_get_site (file->plan);
  HcSiteValues normal;

  hc_site_values_init (&normal);
  g_assert_cmpfloat (site->coldest_night_c, ==, normal.coldest_night_c);
  g_assert_cmpint (site->birds_go_out, ==, normal.birds_go_out);
  g_assert_cmpint (site->males_allowed, ==, normal.males_allowed);
  g_assert_cmpuint (hc_plan_get (file->plan)->as_of, ==, 0);
}

static void
an_empty_plan_is_small (void)
{
  g_autoptr (HcPlan) plan = hc_plan_new_empty ("u", "T");
  g_autofree char *text = write_plan (plan);

  g_assert_cmpstr (text, ==,
                   "{\n  \"format\": \"hencote-plan\",\n  \"version\": 1,\n  \"uid\": \"u\",\n"
                   "  \"title\": \"T\",\n  \"variants\": [\n    {\n      \"id\": \"main\"\n"
                   "    }\n  ],\n  \"variant\": \"main\"\n}\n");
}

/* A plan of the size the benchmarks hold. */
static void
five_thousand_fittings_are_read (void)
{
  g_autoptr (HcPlan) plan = plan_maker_make (1, 20, 5000);
  g_autofree char *text = write_plan (plan);
  g_autoptr (HcPlanFile) file = read_plan (text);

  g_assert_true (hc_plan_equal (file->plan, plan));
}

int
main (int argc,
      char *argv[])
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/round-trip/maker", made_plans_are_sound);
  g_test_add_func ("/round-trip/plan", reading_what_was_written_gives_the_same_plan);
  g_test_add_func ("/round-trip/text", writing_what_was_read_gives_equal_json);
  g_test_add_func ("/round-trip/unknown", unknown_members_survive_at_every_depth);
  g_test_add_func ("/round-trip/form", files_look_as_documented);
  g_test_add_func ("/round-trip/missing", missing_members_take_their_normal_values);
  g_test_add_func ("/round-trip/empty", an_empty_plan_is_small);
  g_test_add_func ("/round-trip/large", five_thousand_fittings_are_read);
  return g_test_run ();
}
