/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Measures are written as keepers read them, and read again as the same. */
#include "config.h"

#include "base/units.h"

#include <math.h>
#include <string.h>

#define FEET HC_UNITS_FEET
#define METRIC HC_UNITS_METRIC

typedef struct
{
  char *(*format) (double value,
                   HcUnits units);
  double value;
  HcUnits units;
  const char *text;
} Written;

static const Written written[] = {
  { hc_length_format, 700, METRIC, "70 cm" },
  { hc_length_format, 705, METRIC, "70.5 cm" },
  { hc_length_format, 2350, METRIC, "2.35 m" },
  { hc_length_format, 2355, METRIC, "2.355 m" },
  { hc_length_format, 2000, METRIC, "2 m" },
  { hc_length_format, 999.6, METRIC, "1 m" },
  { hc_length_format, 18, METRIC, "18 mm" },
  { hc_length_format, 0, METRIC, "0 mm" },
  { hc_length_format, -0.2, METRIC, "0 mm" },
  { hc_length_format, -350, METRIC, "−35 cm" },
  { hc_length_format, 698.5, FEET, "2′ 3 1/2″" },
  { hc_length_format, 609.6, FEET, "2′" },
  { hc_length_format, 304.7, FEET, "1′" },
  { hc_length_format, 19.05, FEET, "3/4″" },
  { hc_length_format, 1.5875, FEET, "1/16″" },
  { hc_length_format, 622.3, FEET, "2′ 1/2″" },
  { hc_length_format, 0, FEET, "0″" },
  { hc_length_format, -0.2, FEET, "0″" },
  { hc_length_format, -76.2, FEET, "−3″" },
  { hc_length_format, NAN, FEET, "–" },
  { hc_length_format, INFINITY, METRIC, "–" },
  { hc_area_format, 4.5e6, METRIC, "4.5 m²" },
  { hc_area_format, 40e6, METRIC, "40 m²" },
  { hc_area_format, 90000, METRIC, "900 cm²" },
  { hc_area_format, 48 * 92903.04, FEET, "48 ft²" },
  { hc_area_format, 645.16 * 12, FEET, "12 in²" },
  { hc_area_format, NAN, METRIC, "–" },
  { hc_mass_format, 2.4, METRIC, "2.4 kg" },
  { hc_mass_format, 0.85, METRIC, "850 g" },
  { hc_mass_format, 2.5 * 0.45359237, FEET, "2.5 lb" },
  { hc_mass_format, 0.45359237 / 2, FEET, "8 oz" },
  { hc_mass_format, INFINITY, METRIC, "–" },
  { hc_temperature_format, -5, METRIC, "−5 °C" },
  { hc_temperature_format, -5, FEET, "23 °F" },
  { hc_temperature_format, -0.3, METRIC, "0 °C" },
  { hc_temperature_format, NAN, FEET, "–" },
};

static void
is_written (gconstpointer data)
{
  const Written *row = data;
  g_autofree char *text = row->format (row->value, row->units);

  g_assert_cmpstr (text, ==, row->text);
}

static void
assert_length_comes_back (double mm,
                          HcUnits units,
                          double within_mm)
{
  g_autofree char *text = hc_length_format (mm, units);
  g_autofree char *again = NULL;
  double read_mm = NAN;

  g_assert_true (hc_position_parse (text, METRIC, &read_mm, NULL));
  g_assert_cmpfloat_with_epsilon (read_mm, mm, within_mm);
  again = hc_length_format (read_mm, units);
  g_assert_cmpstr (again, ==, text);
}

static void
lengths_come_back_from_their_text (void)
{
  for (guint i = 0; i < 20000; i++)
    {
      double mm = g_test_rand_double_range (-20000, 20000);

      assert_length_comes_back (mm, METRIC, 0.5 + 0.001);
      assert_length_comes_back (mm, FEET, 25.4 / 32 + 0.001);
    }
}

static void
inches_are_never_twelve_and_fractions_are_reduced (void)
{
  for (int sixteenths = 0; sixteenths < 5 * 192; sixteenths++)
    {
      g_autofree char *text = hc_length_format (sixteenths * 25.4 / 16, FEET);
      const char *slash = strchr (text, '/');

      g_assert_null (strstr (text, "12″"));
      if (slash != NULL)
        g_assert_cmpint ((slash[-1] - '0') % 2, ==, 1);
    }
}

static void
areas_and_masses_come_back_from_their_text (void)
{
  for (guint i = 0; i < 5000; i++)
    {
      HcUnits units = g_test_rand_bit () ? FEET : METRIC;
      double mm2 = g_test_rand_double_range (0, 5e7), kg = g_test_rand_double_range (0, 50);
      g_autofree char *area = hc_area_format (mm2, units);
      g_autofree char *mass = hc_mass_format (kg, units);
      double read_mm2 = NAN, read_kg = NAN;

      g_assert_true (hc_area_parse (area, METRIC, &read_mm2, NULL));
      g_assert_cmpfloat_with_epsilon (read_mm2, mm2, 5001);
      g_assert_true (hc_mass_parse (mass, METRIC, &read_kg, NULL));
      g_assert_cmpfloat_with_epsilon (read_kg, kg, 0.0228);
    }
}

static void
temperatures_come_back_from_their_text (void)
{
  for (double celsius = -40; celsius < 60; celsius += 0.37)
    {
      g_autofree char *metric = hc_temperature_format (celsius, METRIC);
      g_autofree char *feet = hc_temperature_format (celsius, FEET);
      double read = NAN;

      g_assert_true (hc_temperature_parse (metric, FEET, &read, NULL));
      g_assert_cmpfloat_with_epsilon (read, celsius, 0.5001);
      g_assert_true (hc_temperature_parse (feet, METRIC, &read, NULL));
      g_assert_cmpfloat_with_epsilon (read, celsius, 0.2779);
    }
}

int
main (int argc,
      char **argv)
{
  g_test_init (&argc, &argv, NULL);
  for (guint i = 0; i < G_N_ELEMENTS (written); i++)
    {
      g_autofree char *path = g_strdup_printf ("/units/written/%u", i);

      g_test_add_data_func (path, &written[i], is_written);
    }
  g_test_add_func ("/units/length-again", lengths_come_back_from_their_text);
  g_test_add_func ("/units/inches", inches_are_never_twelve_and_fractions_are_reduced);
  g_test_add_func ("/units/again", areas_and_masses_come_back_from_their_text);
  g_test_add_func ("/units/temperature-again", temperatures_come_back_from_their_text);
  return g_test_run ();
}
