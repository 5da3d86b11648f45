/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Measures are understood as keepers type them, or refused with advice. */
#include "config.h"

#include "base/error.h"
#include "base/units.h"

#include <locale.h>
#include <math.h>
#include <string.h>

#define FEET HC_UNITS_FEET
#define METRIC HC_UNITS_METRIC

typedef struct
{
  const char *text;
  HcUnits assumed;
  double mm;
} Understood;

static const Understood understood[] = {
  { "2' 3 1/2\"", METRIC, 698.5 },
  { "2'3.5\"", METRIC, 698.5 },
  { "27.5 in", METRIC, 698.5 },
  { "27.5in.", METRIC, 698.5 },
  { "2 ft 3 in", METRIC, 685.8 },
  { "2 feet 3 inches", METRIC, 685.8 },
  { "2' 3", METRIC, 685.8 },
  { "2 ft", METRIC, 609.6 },
  { "1 foot", METRIC, 304.8 },
  { "2 1/2 ft", METRIC, 762 },
  { "3-1/2 in", METRIC, 88.9 },
  { "3/4\"", METRIC, 19.05 },
  { "3 / 4 in", METRIC, 19.05 },
  { "1''", METRIC, 25.4 },
  { "2′ 3½″", METRIC, 698.5 },
  { "2’ 3 ¼”", METRIC, 692.15 },
  { "¾ in", METRIC, 19.05 },
  { "⅛″", METRIC, 3.175 },
  { "2' 1/2\"", METRIC, 622.3 },
  { "70 cm", FEET, 700 },
  { "0.7m", FEET, 700 },
  { "0,7 m", FEET, 700 },
  { "0,700 m", FEET, 700 },
  { "700mm", FEET, 700 },
  { "700 MM", FEET, 700 },
  { "1 m 80", FEET, 1800 },
  { "2 m 35 cm", FEET, 2350 },
  { ".5 m", FEET, 500 },
  { "  70\u00a0cm\t", FEET, 700 },
  { "70", METRIC, 700 },
  { "70,5", METRIC, 705 },
  { "70", FEET, 1778 },
  { "70 1/2", FEET, 1790.7 },
  { "0", METRIC, 0 },
  { "1000 m", METRIC, 1000000 },
  { "+5 cm", METRIC, 50 },
};

static const char *const refused[] = {
  "",       " ",       "cm",        "nan",       "inf",     "infinity", "0x10",   "1e3",
  "1.2.3",  "1,2,3",   "1.234,5 m", "1,200 mm",  "5 6",     "5 mice",   "5 miles", "70 cm x",
  "1/0 in", "1/ in",   "/2 in",     "3 in 2 ft", "2 m 3 in", "2' 3\" 4", "2' -3\"", "--5 cm",
  "1001 m", "-5 cm",   "5 mm 5",    "9999999999", "\xff",     "5 . 5 cm", "5.",     "1 m 2 m",
  "∞",      "５ cm", "2′′′",
};

static void
is_understood (gconstpointer data)
{
  const Understood *row = data;
  g_autoptr (GError) error = NULL;
  double mm = -1;

  g_assert_true (hc_length_parse (row->text, row->assumed, &mm, &error));
  g_assert_no_error (error);
  g_assert_cmpfloat (mm, ==, row->mm);
}

static void
is_refused (gconstpointer text)
{
  g_autoptr (GError) error = NULL;
  double mm = -1;

  g_assert_false (hc_length_parse (text, METRIC, &mm, &error));
  g_assert_error (error, HC_ERROR, HC_ERROR_TYPED);
  g_assert_true (g_utf8_validate (error->message, -1, NULL));
  g_assert_cmpfloat (mm, ==, -1);
}

static void
no_text_at_all_is_refused (void)
{
  is_refused (NULL);
}

static void
a_position_may_be_negative (void)
{
  double mm = 0;

  g_assert_true (hc_position_parse ("-5 cm", METRIC, &mm, NULL));
  g_assert_cmpfloat (mm, ==, -50);
  g_assert_true (hc_position_parse ("−1′ 2″", METRIC, &mm, NULL));
  g_assert_cmpfloat (mm, ==, -355.6);
  g_assert_false (hc_position_parse ("-1001 m", METRIC, &mm, NULL));
}

static void
the_advice_shows_what_would_be_understood (void)
{
  g_autoptr (GError) error = NULL;
  double mm;

  g_assert_false (hc_length_parse ("two feet", METRIC, &mm, &error));
  g_assert_nonnull (strstr (error->message, "two feet"));
  g_assert_nonnull (strstr (error->message, "70 cm"));
}

static void
where_decimals_follow_a_comma_a_point_may_mean_thousands (void)
{
  g_autofree char *text = NULL;
  double mm = 0;

  if (setlocale (LC_NUMERIC, "de_DE.UTF-8") == NULL)
    {
      g_test_skip ("no German locale here");
      return;
    }
  text = hc_length_format (4243, METRIC);
  g_assert_cmpstr (text, ==, "4,243 m");
  g_assert_true (hc_length_parse (text, METRIC, &mm, NULL));
  g_assert_cmpfloat (mm, ==, 4243);
  g_assert_false (hc_length_parse ("1.200 mm", METRIC, &mm, NULL));
  setlocale (LC_NUMERIC, "C");
}

static void
areas_are_understood (void)
{
  double mm2 = 0;

  g_assert_true (hc_area_parse ("4,5 m²", METRIC, &mm2, NULL));
  g_assert_cmpfloat (mm2, ==, 4.5e6);
  g_assert_true (hc_area_parse ("900 cm2", METRIC, &mm2, NULL));
  g_assert_cmpfloat (mm2, ==, 90000);
  g_assert_true (hc_area_parse ("48 sq ft", METRIC, &mm2, NULL));
  g_assert_cmpfloat_with_epsilon (mm2, 48 * 92903.04, 0.001);
  g_assert_true (hc_area_parse ("48", FEET, &mm2, NULL));
  g_assert_cmpfloat_with_epsilon (mm2, 48 * 92903.04, 0.001);
  g_assert_false (hc_area_parse ("4.5 m", METRIC, &mm2, NULL));
  g_assert_false (hc_area_parse ("-4 m²", METRIC, &mm2, NULL));
}

static void
masses_are_understood (void)
{
  double kg = 0;

  g_assert_true (hc_mass_parse ("850 g", METRIC, &kg, NULL));
  g_assert_cmpfloat_with_epsilon (kg, 0.85, 1e-12);
  g_assert_true (hc_mass_parse ("5 lb 4 oz", METRIC, &kg, NULL));
  g_assert_cmpfloat_with_epsilon (kg, 5.25 * 0.45359237, 1e-12);
  g_assert_true (hc_mass_parse ("2,4", METRIC, &kg, NULL));
  g_assert_cmpfloat_with_epsilon (kg, 2.4, 1e-12);
  g_assert_true (hc_mass_parse ("2", FEET, &kg, NULL));
  g_assert_cmpfloat_with_epsilon (kg, 2 * 0.45359237, 1e-12);
  g_assert_false (hc_mass_parse ("1e9 kg", METRIC, &kg, NULL));
}

static void
temperatures_are_understood (void)
{
  double celsius = 0;

  g_assert_true (hc_temperature_parse ("−5 °C", FEET, &celsius, NULL));
  g_assert_cmpfloat (celsius, ==, -5);
  g_assert_true (hc_temperature_parse ("23 °F", METRIC, &celsius, NULL));
  g_assert_cmpfloat_with_epsilon (celsius, -5, 1e-12);
  g_assert_true (hc_temperature_parse ("32", FEET, &celsius, NULL));
  g_assert_cmpfloat_with_epsilon (celsius, 0, 1e-12);
  g_assert_true (hc_temperature_parse ("12,5°", METRIC, &celsius, NULL));
  g_assert_cmpfloat (celsius, ==, 12.5);
  g_assert_false (hc_temperature_parse ("500", METRIC, &celsius, NULL));
  g_assert_false (hc_temperature_parse ("warm", METRIC, &celsius, NULL));
  g_assert_false (hc_temperature_parse (NULL, METRIC, &celsius, NULL));
}

static void
any_text_is_read_or_refused (void)
{
  static const char signs[] = "0123456789 .,/'\"-+mcftin°½′";

  for (guint i = 0; i < 20000; i++)
    {
      char text[16] = { 0 };
      g_autoptr (GError) error = NULL;
      double mm = -1;

      for (int j = g_test_rand_int_range (0, sizeof text); j > 0; j--)
        text[j - 1] = signs[g_test_rand_int_range (0, sizeof signs - 1)];
      if (hc_length_parse (text, METRIC, &mm, &error))
        g_assert_true (isfinite (mm) && mm >= 0 && mm <= 1e6);
      else
        g_assert_error (error, HC_ERROR, HC_ERROR_TYPED);
    }
}

int
main (int argc,
      char **argv)
{
  g_test_init (&argc, &argv, NULL);
  for (guint i = 0; i < G_N_ELEMENTS (understood); i++)
    {
      g_autofree char *path = g_strdup_printf ("/units/understood/%u", i);

      g_test_add_data_func (path, &understood[i], is_understood);
    }
  for (guint i = 0; i < G_N_ELEMENTS (refused); i++)
    {
      g_autofree char *path = g_strdup_printf ("/units/refused/%u", i);

      g_test_add_data_func (path, refused[i], is_refused);
    }
  g_test_add_func ("/units/no-text", no_text_at_all_is_refused);
  g_test_add_func ("/units/position", a_position_may_be_negative);
  g_test_add_func ("/units/advice", the_advice_shows_what_would_be_understood);
  g_test_add_func ("/units/decimals-follow-a-comma",
                   where_decimals_follow_a_comma_a_point_may_mean_thousands);
  g_test_add_func ("/units/area", areas_are_understood);
  g_test_add_func ("/units/mass", masses_are_understood);
  g_test_add_func ("/units/temperature", temperatures_are_understood);
  g_test_add_func ("/units/any-text", any_text_is_read_or_refused);
  return g_test_run ();
}
