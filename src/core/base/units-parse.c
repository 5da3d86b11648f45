/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Measures as a keeper types them. */
#include "config.h"

#include "base/units.h"

#include "base/error.h"
#include "base/measure-text.h"
#include "base/whole.h"

#include <glib/gi18n-lib.h>
#include <math.h>

#define MOST_MM 1e6
#define MOST_MM2 1e12
#define MOST_KG 1e5
#define COLDEST_C -90.0
#define HOTTEST_C 90.0

static const HcUnitSpelling lengths[] = {
  { "mm", 1, 0 },
  { "cm", 10, 1 },
  { "m", 1000, 10 },
  { "\"", HC_MM_PER_INCH, 0 },
  { "in", HC_MM_PER_INCH, 0 },
  { "in.", HC_MM_PER_INCH, 0 },
  { "inch", HC_MM_PER_INCH, 0 },
  { "inches", HC_MM_PER_INCH, 0 },
  { "'", HC_MM_PER_FOOT, HC_MM_PER_INCH },
  { "ft", HC_MM_PER_FOOT, HC_MM_PER_INCH },
  { "ft.", HC_MM_PER_FOOT, HC_MM_PER_INCH },
  { "foot", HC_MM_PER_FOOT, HC_MM_PER_INCH },
  { "feet", HC_MM_PER_FOOT, HC_MM_PER_INCH },
  { NULL, 0, 0 },
};

static const HcUnitSpelling areas[] = {
  { "mm2", 1, 0 },
  { "cm2", 100, 0 },
  { "sq cm", 100, 0 },
  { "m2", HC_MM2_PER_M2, 0 },
  { "sqm", HC_MM2_PER_M2, 0 },
  { "sq m", HC_MM2_PER_M2, 0 },
  { "in2", HC_MM_PER_INCH * HC_MM_PER_INCH, 0 },
  { "sq in", HC_MM_PER_INCH * HC_MM_PER_INCH, 0 },
  { "ft2", HC_MM2_PER_FT2, 0 },
  { "sqft", HC_MM2_PER_FT2, 0 },
  { "sq ft", HC_MM2_PER_FT2, 0 },
  { NULL, 0, 0 },
};

static const HcUnitSpelling masses[] = {
  { "g", 0.001, 0 },
  { "kg", 1, 0.001 },
  { "oz", HC_KG_PER_LB / 16, 0 },
  { "lb", HC_KG_PER_LB, HC_KG_PER_LB / 16 },
  { "lbs", HC_KG_PER_LB, HC_KG_PER_LB / 16 },
  { NULL, 0, 0 },
};

static const HcUnitSpelling degrees[] = {
  { "°", 1, 0 }, { "°c", 1, 0 }, { "c", 1, 0 }, { "°f", 1, 0 }, { "f", 1, 0 }, { NULL, 0, 0 },
};

static gboolean
check_understood (HcMeasureResult result,
                  const char *text,
                  const char *advice,
                  GError **error)
{
  g_autofree char *shown = g_utf8_make_valid (text != NULL ? text : "", -1);

  if (result == HC_MEASURE_READ)
    return TRUE;
  if (result == HC_MEASURE_TWO_READINGS)
    g_set_error (error, HC_ERROR, HC_ERROR_TYPED,
                 _ ("“%s” can be read in two ways. Write it like 1200 or 1.2."),
                 shown);
  else
    g_set_error (error, HC_ERROR, HC_ERROR_TYPED,
                 /* Translators: first what was typed, then how to write it. */
                 _ ("“%s” is not clear. %s"), shown, advice);
  return FALSE;
}

static const char *
length_advice (void)
{
  return _ ("Write a length like 70 cm, 0.7 m, 2′ 3 1/2″ or 27.5 in.");
}

/**
 * hc_position_parse:
 * @text: (nullable): what was typed
 * @assumed: what a number without a unit means: cm or inches
 * @mm: (out): the distance, in mm
 * @error: where to put what is wrong
 *
 * Reads a distance that may be negative, with a minus in front. Otherwise like
 * [func@length_parse].
 *
 * Returns: whether @text was understood; if not, @mm is left alone and @error is
 *   %HC_ERROR_TYPED
 */
gboolean
hc_position_parse (const char *text,
                   HcUnits assumed,
                   double *mm,
                   GError **error)
{
  double read_mm;
  HcMeasureResult result
      = hc_measure_read (text, lengths, assumed == HC_UNITS_FEET ? HC_MM_PER_INCH : 10, &read_mm);

  if (!check_understood (result, text, length_advice (), error))
    return FALSE;
  if (fabs (read_mm) > MOST_MM)
    {
      g_set_error (error, HC_ERROR, HC_ERROR_TYPED,
                   _ ("“%s” is more than 1 km. Check the unit. %s"), text, length_advice ());
      return FALSE;
    }
  *mm = hc_mm (read_mm);
  return TRUE;
}

/**
 * hc_length_parse:
 * @text: (nullable): what was typed
 * @assumed: what a number without a unit means: cm or inches
 * @mm: (out): the length, in mm
 * @error: where to put what is wrong
 *
 * Reads a length in any unit a keeper may write: mm, cm, m, inches in decimals or
 * fractions, feet and inches. Decimal points and commas both do, but the one that
 * does not stand before decimals in the keeper's country is refused before
 * exactly three digits, since it may mean thousands.
 *
 * Returns: whether @text was understood; if not, @mm is left alone and @error is
 *   %HC_ERROR_TYPED
 */
gboolean
hc_length_parse (const char *text,
                 HcUnits assumed,
                 double *mm,
                 GError **error)
{
  double read_mm;

  if (!hc_position_parse (text, assumed, &read_mm, error))
    return FALSE;
  if (read_mm < 0)
    {
      g_set_error (error, HC_ERROR, HC_ERROR_TYPED,
                   _ ("“%s” is less than nothing. Leave out the minus."), text);
      return FALSE;
    }
  *mm = read_mm;
  return TRUE;
}

static gboolean
read_amount (const char *text,
             const HcUnitSpelling *spellings,
             double bare_factor,
             double most,
             const char *advice,
             double *value,
             GError **error)
{
  double amount;
  HcMeasureResult result = hc_measure_read (text, spellings, bare_factor, &amount);

  if (!check_understood (result, text, advice, error))
    return FALSE;
  if (amount < 0 || amount > most)
    {
      g_set_error (error, HC_ERROR, HC_ERROR_TYPED,
                   /* Translators: first what was typed, then how it could be written. */
                   _ ("“%s” cannot be right. %s"), text, advice);
      return FALSE;
    }
  *value = amount;
  return TRUE;
}

/**
 * hc_area_parse:
 * @text: (nullable): what was typed
 * @assumed: what a number without a unit means: m² or square feet
 * @mm2: (out): the area, in mm²
 * @error: where to put what is wrong
 *
 * Reads an area in m², cm², square feet or square inches.
 *
 * Returns: whether @text was understood; if not, @mm2 is left alone and @error
 *   is %HC_ERROR_TYPED
 */
gboolean
hc_area_parse (const char *text,
               HcUnits assumed,
               double *mm2,
               GError **error)
{
  return read_amount (text, areas, assumed == HC_UNITS_FEET ? HC_MM2_PER_FT2 : HC_MM2_PER_M2,
                      MOST_MM2, _ ("Write an area like 4.5 m² or 48 ft²."), mm2, error);
}

/**
 * hc_mass_parse:
 * @text: (nullable): what was typed
 * @assumed: what a number without a unit means: kg or pounds
 * @kg: (out): the mass, in kg
 * @error: where to put what is wrong
 *
 * Reads a mass in kilograms, grams, pounds or ounces.
 *
 * Returns: whether @text was understood; if not, @kg is left alone and @error is
 *   %HC_ERROR_TYPED
 */
gboolean
hc_mass_parse (const char *text,
               HcUnits assumed,
               double *kg,
               GError **error)
{
  return read_amount (text, masses, assumed == HC_UNITS_FEET ? HC_KG_PER_LB : 1, MOST_KG,
                      _ ("Write a weight like 2.4 kg, 850 g or 5 lb 4 oz."), kg, error);
}

static gboolean
is_fahrenheit (const char *text,
               HcUnits assumed)
{
  g_autofree char *trimmed = g_strstrip (g_ascii_strdown (text, -1));

  if (g_str_has_suffix (trimmed, "f"))
    return TRUE;
  return assumed == HC_UNITS_FEET && !g_str_has_suffix (trimmed, "c");
}

/**
 * hc_temperature_parse:
 * @text: (nullable): what was typed
 * @assumed: what a number without a unit means: °C or °F
 * @celsius: (out): the temperature, in °C
 * @error: where to put what is wrong
 *
 * Reads a temperature between −90 and 90 °C.
 *
 * Returns: whether @text was understood; if not, @celsius is left alone and
 *   @error is %HC_ERROR_TYPED
 */
gboolean
hc_temperature_parse (const char *text,
                      HcUnits assumed,
                      double *celsius,
                      GError **error)
{
  const char *advice = _ ("Write a temperature like −5 °C or 23 °F.");
  double number;

  if (!check_understood (hc_measure_read (text, degrees, 1, &number), text, advice, error))
    return FALSE;
  if (is_fahrenheit (text, assumed))
    number = (number - 32) * 5 / 9;
  if (number < COLDEST_C || number > HOTTEST_C)
    {
      g_set_error (error, HC_ERROR, HC_ERROR_TYPED, _ ("“%s” is no weather for birds. %s"), text,
                   advice);
      return FALSE;
    }
  *celsius = number;
  return TRUE;
}
