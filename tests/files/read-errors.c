/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A sound plan is spoilt in one way, and the error says where and how. */
#include "config.h"

#include "base/error.h"
#include "files/read.h"
#include "sound-plan.h"
#include "spoilt-plans.h"

static void
says_where_and_what (gconstpointer data)
{
  const Spoilt *spoilt = data;
  g_autofree char *text = sound_plan_with (spoilt->what, spoilt->instead);
  g_autofree char *place = g_strconcat (spoilt->place, ": ", NULL);
  g_autoptr (GError) error = NULL;

  g_assert_null (hc_plan_file_read (text, strlen (text), &error));
  g_assert_error (error, HC_ERROR, HC_ERROR_FILE);
  g_test_message ("%s", error->message);
  if (!g_str_has_prefix (error->message, place) || strstr (error->message, spoilt->words) == NULL)
    g_test_fail_printf ("“%s” is not “%s … %s”", error->message, place, spoilt->words);
}

static void
the_plan_is_sound_before (void)
{
  g_autoptr (GError) error = NULL;
  g_autoptr (HcPlanFile) file = hc_plan_file_read (sound_plan, strlen (sound_plan), &error);

  g_assert_no_error (error);
}

static void
openings_may_stand_one_above_the_other (void)
{
  g_autofree char *text = sound_plan_with (
      "\"along_mm\": 1500,", "\"along_mm\": 500, \"sill_mm\": 350,");
  g_autoptr (GError) error = NULL;
  g_autoptr (HcPlanFile) file = hc_plan_file_read (text, strlen (text), &error);

  g_assert_no_error (error);
}

static void
slips_of_a_millimetre_are_no_fault (void)
{
  g_autofree char *text = sound_plan_with ("\"along_mm\": 1500,", "\"along_mm\": 3801,");
  g_autofree char *overlap = sound_plan_with ("\"along_mm\": 1500,", "\"along_mm\": 849,");
  g_autoptr (GError) error = NULL;
  g_autoptr (HcPlanFile) file = hc_plan_file_read (text, strlen (text), &error);
  g_autoptr (HcPlanFile) other = hc_plan_file_read (overlap, strlen (overlap), &error);

  g_assert_no_error (error);
}

/* Many walls round one pen, many openings in one wall: hostile, not slow. */
static void
crowds_are_refused (void)
{
  GString *walls = g_string_new ("\"walls\": [\"w1\"");
  GString *openings = g_string_new ("\"openings\": [");
  g_autofree char *round_pen = NULL;
  g_autofree char *in_wall = NULL;

  for (guint i = 0; i < 600; i++)
    g_string_append_printf (openings,
                            "{\"id\":\"x%u\",\"kind\":\"vent\",\"wall\":\"w1\",\"along_mm\":500,"
                            "\"width_mm\":10,\"height_mm\":10,\"sill_mm\":%u},",
                            i, i * 20);
  for (guint i = 0; i < 600; i++)
    g_string_append (walls, ",\"w2\"");
  g_string_append (walls, ", \"w2\"");
  round_pen = sound_plan_with ("\"walls\": [\"w1\", \"w2\"", walls->str);
  in_wall = sound_plan_with ("\"openings\": [", openings->str);
  g_assert_null (hc_plan_file_read (round_pen, strlen (round_pen), NULL));
  g_assert_null (hc_plan_file_read (in_wall, strlen (in_wall), NULL));
  g_string_free (walls, TRUE);
  g_string_free (openings, TRUE);
}

int
main (int argc,
      char *argv[])
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/read-errors/sound", the_plan_is_sound_before);
  g_test_add_func ("/read-errors/above", openings_may_stand_one_above_the_other);
  g_test_add_func ("/read-errors/slips", slips_of_a_millimetre_are_no_fault);
  g_test_add_func ("/read-errors/crowds", crowds_are_refused);
  for (guint i = 0; i < G_N_ELEMENTS (spoilt_plans); i++)
    {
      g_autofree char *path = g_strconcat ("/read-errors/", spoilt_plans[i].name, NULL);

      g_test_add_data_func (path, &spoilt_plans[i], says_where_and_what);
    }
  return g_test_run ();
}
