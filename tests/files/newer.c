/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Plans of a newer version open to be looked at, without what is not known. */
#include "config.h"

#include "base/error.h"
#include "files/read.h"
#include "plan/soundness.h"
#include "sound-plan.h"

static HcPlanFile *
read_newer (const char *what,
            const char *instead,
            GError **error)
{
  g_autofree char *text = sound_plan_with (what, instead);
  g_auto (GStrv) around = g_strsplit (text, "\"version\": 1,", 2);
  g_autofree char *newer = g_strjoinv ("\"version\": 3,", around);

  return hc_plan_file_read (newer, strlen (newer), error);
}

static HcPlanFile *
open_newer (const char *what,
            const char *instead,
            guint n_unknown)
{
  g_autoptr (GError) error = NULL;
  HcPlanFile *file = read_newer (what, instead, &error);

  g_assert_no_error (error);
  g_assert_true (file->read_only);
  g_assert_cmpuint (file->version, ==, 3);
  g_assert_cmpuint (file->n_unknown, ==, n_unknown);
  g_assert_true (hc_plan_is_sound (file->plan, NULL));
  return file;
}

static const HcLayoutValues *
layout_of (const HcPlanFile *file)
{
  return hc_layout_get (hc_plan_get_layout (file->plan));
}

static void
what_is_known_is_read_whole (void)
{
  g_autoptr (HcPlanFile) old = hc_plan_file_read (sound_plan, strlen (sound_plan), NULL);
  g_autoptr (HcPlanFile) file = open_newer ("\"bars\": 2", "\"bars\": 2", 0);

  g_assert_true (hc_plan_equal (file->plan, old->plan));
  g_assert_false (old->read_only);
  g_assert_cmpuint (old->version, ==, 1);
}

static void
a_fitting_of_an_unknown_kind_is_left_out (void)
{
  g_autoptr (HcPlanFile) file = open_newer ("\"roost\", \"x_mm\"", "\"trapeze\", \"x_mm\"", 1);

  g_assert_cmpuint (hc_pen_get (layout_of (file)->pens->pdata[0])->fittings->len, ==, 0);
}

static void
members_of_another_type_take_their_normal_values (void)
{
  g_autoptr (HcPlanFile) file = open_newer ("\"metric\"", "{\"length\": \"ells\"}", 1);
  g_autoptr (HcPlanFile) whole
      = open_newer ("{\"units\": \"metric\", \"birds_go_out\": true, \"predators\": [\"fox\"]}",
                    "\"moved elsewhere\"", 1);

  g_assert_cmpint (hc_plan_get_site (file->plan)->units, ==, HC_UNITS_METRIC);
  g_assert_cmpstr (hc_plan_get_site (file->plan)->predators[0], ==, "fox");
  g_assert_null (hc_plan_get_site (whole->plan)->predators[0]);
}

static void
numbers_beyond_what_is_known_leave_out_their_part (void)
{
  g_autoptr (HcPlanFile) file = open_newer ("\"bars\": 2", "\"bars\": 2000", 1);

  g_assert_cmpuint (hc_pen_get (layout_of (file)->pens->pdata[0])->fittings->len, ==, 0);
}

static void
what_leans_on_what_is_left_out_is_left_out (void)
{
  g_autoptr (HcPlanFile) pen = open_newer ("\"indoor\"", "\"cellar\"", 2);
  g_autoptr (HcPlanFile) wall = open_newer ("\"to\": \"c3\"", "\"to\": {\"curve\": \"c3\"}", 3);

  g_assert_cmpuint (hc_plan_get (pen->plan)->batches->len, ==, 0);
  g_assert_cmpuint (layout_of (pen)->pens->len, ==, 0);
  g_assert_cmpuint (layout_of (wall)->walls->len, ==, 3);
  g_assert_cmpuint (layout_of (wall)->openings->len, ==, 2);
  g_assert_cmpuint (layout_of (wall)->pens->len, ==, 0);
  g_assert_cmpuint (hc_plan_get (wall->plan)->batches->len, ==, 0);
}

static void
places_are_counted_without_what_was_left_out (void)
{
  g_autoptr (HcPlanFile) file
      = open_newer ("\"openings\": [",
                    "\"openings\": [{\"id\": \"n\", \"kind\": \"chimney\"},"
                    "{\"id\": \"m\", \"kind\": \"vent\", \"wall\": \"w9\", \"along_mm\": 1, "
                    "\"width_mm\": 10, \"height_mm\": 10},",
                    2);

  g_assert_cmpuint (layout_of (file)->openings->len, ==, 2);
  g_assert_cmpstr (hc_part_get_id (layout_of (file)->openings->pdata[0]), ==, "o1");
}

static void
a_variant_that_is_gone_is_not_named (void)
{
  g_autoptr (HcPlanFile) file = open_newer ("\"variant\": \"main\"", "\"variant\": \"cloud\"", 1);

  g_assert_cmpstr (hc_layout_get_id (hc_plan_get_layout (file->plan)), ==, "main");
}

static void
assert_too_new (const char *what,
                const char *instead)
{
  g_autoptr (GError) error = NULL;

  g_assert_null (read_newer (what, instead, &error));
  g_assert_error (error, HC_ERROR, HC_ERROR_NEWER);
}

static void
files_that_are_all_new_are_not_opened (void)
{
  assert_too_new ("\"variants\": [", "\"variants\": 5, \"layouts\": [");
  assert_too_new ("\"variants\": [{\"id\": \"main\"", "\"variants\": [{\"id\": \"MAIN\"");
  assert_too_new ("\"uid\": \"croft\"", "\"uid\": \"9 of 10\"");
}

static void
many_unknown_parts_are_left_out (void)
{
  GString *fittings = g_string_new ("\"fittings\": [");
  g_autofree char *text = NULL;

  for (guint i = 0; i < 1000; i++)
    g_string_append_printf (fittings, "{\"id\": \"n%u\", \"kind\": \"swing\"},", i);
  text = g_string_free (fittings, FALSE);
  hc_plan_file_free (open_newer ("\"fittings\": [", text, 1000));
}

static void
text_that_is_not_json_is_an_error_in_any_version (void)
{
  g_autoptr (GError) error = NULL;

  g_assert_null (read_newer ("\"females\": 9", "\"females\": nine", &error));
  g_assert_error (error, HC_ERROR, HC_ERROR_FILE);
}

int
main (int argc,
      char *argv[])
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/newer/known", what_is_known_is_read_whole);
  g_test_add_func ("/newer/kind", a_fitting_of_an_unknown_kind_is_left_out);
  g_test_add_func ("/newer/type", members_of_another_type_take_their_normal_values);
  g_test_add_func ("/newer/number", numbers_beyond_what_is_known_leave_out_their_part);
  g_test_add_func ("/newer/leaning", what_leans_on_what_is_left_out_is_left_out);
  g_test_add_func ("/newer/places", places_are_counted_without_what_was_left_out);
  g_test_add_func ("/newer/variant", a_variant_that_is_gone_is_not_named);
  g_test_add_func ("/newer/too-new", files_that_are_all_new_are_not_opened);
  g_test_add_func ("/newer/many", many_unknown_parts_are_left_out);
  g_test_add_func ("/newer/not-json", text_that_is_not_json_is_an_error_in_any_version);
  return g_test_run ();
}
