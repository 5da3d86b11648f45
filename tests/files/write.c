/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * How numbers are written, and what is not written at all. */
#include "config.h"

#include "base/error.h"
#include "files/read.h"
#include "files/write-scalar.h"
#include "files/write.h"
#include "plan/edit-rules.h"

#include <string.h>

static const struct
{
  double number;
  const char *text;
} numbers[] = {
  { 0, "0" },
  { -0.0, "0" },
  { 0.0004, "0" },
  { -0.0004, "0" },
  { 0.001, "0.001" },
  { -0.001, "-0.001" },
  { 0.1, "0.1" },
  { 0.25, "0.25" },
  { 0.1 + 0.2, "0.3" },
  { 1200, "1200" },
  { 1200.5, "1200.5" },
  { -1200.055, "-1200.055" },
  { 1e6, "1000000" },
  { 999999.999, "999999.999" },
  { 0.9996, "1" },
  { 1234567890.125, "1234567890.125" },
};

static void
numbers_have_three_decimals_at_most (void)
{
  for (guint i = 0; i < G_N_ELEMENTS (numbers); i++)
    {
      g_autoptr (GString) text = g_string_new (NULL);

      hc_number_write (numbers[i].number, text);
      g_assert_cmpstr (text->str, ==, numbers[i].text);
    }
}

static void
own_figures_have_six_decimals_at_most (void)
{
  g_autoptr (HcPlan) empty = hc_plan_new_empty ("croft", "Skerry Croft");
  g_autoptr (HcPlan) plan = hc_plan_set_own_figure (empty, "f", "floor.light", 4 * 0.09290304,
                                                    "square feet", NULL);
  g_autofree char *text = hc_plan_write (plan, NULL, NULL);

  g_assert_nonnull (strstr (text, "\"value\": 0.371612,"));
}

static HcPlan *
plan_with_batch (const HcBatchValues *batch)
{
  g_autoptr (HcPlan) empty = hc_plan_new_empty ("croft", "Skerry Croft");
  g_autoptr (HcParts) batches = hc_parts_new ();
  HcPlanValues values = *hc_plan_get (empty);

  g_ptr_array_add (batches, hc_batch_new ("b1", batch));
  values.batches = batches;
  return hc_plan_with (empty, &values);
}

static void
days_are_written_as_iso_8601 (void)
{
  HcBatchValues batch;
  g_autoptr (HcPlan) plan = NULL;
  g_autofree char *text = NULL;
  GDate day;

  hc_batch_values_init (&batch);
  g_date_clear (&day, 1);
  g_date_set_dmy (&day, 7, G_DATE_MARCH, 987);
  batch.hatched = g_date_get_julian (&day);
  plan = plan_with_batch (&batch);
  text = hc_plan_write (plan, NULL, NULL);
  g_assert_nonnull (strstr (text, "\"hatched\": \"0987-03-07\""));
}

static void
the_length_is_that_of_the_text (void)
{
  g_autoptr (HcPlan) plan = hc_plan_new_empty ("croft", "H\xc3\xa9n");
  gsize length = 0;
  g_autofree char *text = hc_plan_write (plan, &length, NULL);

  g_assert_cmpuint (length, ==, strlen (text));
  g_assert_cmpint (text[length - 1], ==, '\n');
}

static void
unsound_plans_are_refused (void)
{
  HcBatchValues batch;
  g_autoptr (HcPlan) plan = NULL;
  g_autoptr (GError) error = NULL;

  hc_batch_values_init (&batch);
  batch.pen = (char *) "nowhere";
  plan = plan_with_batch (&batch);
  g_assert_null (hc_plan_write (plan, NULL, &error));
  g_assert_error (error, HC_ERROR, HC_ERROR_SAVE);
  g_assert_nonnull (strstr (error->message, "batches[0].pen"));
  g_assert_nonnull (strstr (error->message, "nowhere"));
}

/* More than any reader takes. */
static void
plans_too_large_to_read_are_refused (void)
{
  HcBatchValues batch;
  g_autoptr (HcPlan) plan = NULL;
  g_autoptr (GError) error = NULL;
  g_autofree char *name = g_strnfill (17 * 1024 * 1024, 'x');

  hc_batch_values_init (&batch);
  batch.name = name;
  plan = plan_with_batch (&batch);
  g_assert_null (hc_plan_write (plan, NULL, &error));
  g_assert_error (error, HC_ERROR, HC_ERROR_SAVE);
  g_assert_nonnull (strstr (error->message, "too large"));
}

static void
a_day_taken_away_is_not_written (void)
{
  static const char file_text[]
      = "{\"format\": \"hencote-plan\", \"version\": 1, \"uid\": \"u\", \"as_of\": \"2026-01-01\","
        " \"variants\": [{\"id\": \"a\"}]}";
  g_autoptr (HcPlanFile) file = hc_plan_file_read (file_text, strlen (file_text), NULL);
  HcPlanValues values = *hc_plan_get (file->plan);
  g_autoptr (HcPlan) without = NULL;
  g_autofree char *text = NULL;

  values.as_of = 0;
  without = hc_plan_with (file->plan, &values);
  text = hc_plan_write (without, NULL, NULL);
  g_assert_null (strstr (text, "as_of"));
}

int
main (int argc,
      char *argv[])
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/write/numbers", numbers_have_three_decimals_at_most);
  g_test_add_func ("/write/own-figures", own_figures_have_six_decimals_at_most);
  g_test_add_func ("/write/days", days_are_written_as_iso_8601);
  g_test_add_func ("/write/length", the_length_is_that_of_the_text);
  g_test_add_func ("/write/unsound", unsound_plans_are_refused);
  g_test_add_func ("/write/too-large", plans_too_large_to_read_are_refused);
  g_test_add_func ("/write/no-day", a_day_taken_away_is_not_written);
  return g_test_run ();
}
