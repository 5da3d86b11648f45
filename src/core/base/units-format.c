/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Measures as a keeper reads them. */
#include "config.h"

#include "base/units.h"

#include <glib/gi18n-lib.h>
#include <math.h>
#include <string.h>

#define SIXTEENTHS_PER_INCH 16
#define SIXTEENTHS_PER_FOOT (12 * SIXTEENTHS_PER_INCH)

/* Boards and mesh are spoken of in mm, furniture in cm, rooms in m. */
#define LEAST_MM_IN_CM 50
#define LEAST_MM_IN_M 1000

/* Prints with as many decimals as are needed, @decimals at most. */
static char *
format_number (double number,
               int decimals)
{
  double scale = pow (10, decimals);
  double rounded = round (number * scale) / scale;
  char *text = g_strdup_printf ("%.*f", decimals, fabs (rounded));
  char *sign_and_text;
  char *end = text + strlen (text);

  while (decimals > 0 && end[-1] == '0')
    *--end = '\0';
  if (decimals > 0 && !g_ascii_isdigit (end[-1]))
    end[-1] = '\0';
  if (rounded >= 0)
    return text;
  sign_and_text = g_strconcat ("−", text, NULL);
  g_free (text);
  return sign_and_text;
}

static char *
format_with_unit (double number,
                  int decimals,
                  const char *unit_format)
{
  g_autofree char *text = format_number (number, decimals);

  return g_strdup_printf (unit_format, text);
}

static char *
format_metric_length (double mm)
{
  double rounded = round (mm);

  if (fabs (rounded) < LEAST_MM_IN_CM)
    return format_with_unit (rounded, 0, _ ("%s mm"));
  if (fabs (rounded) < LEAST_MM_IN_M)
    return format_with_unit (rounded / 10, 1, _ ("%s cm"));
  return format_with_unit (rounded / 1000, 3, _ ("%s m"));
}

/* Writes inches as 3 1/2, 3 or 1/2, the fraction reduced. */
static void
append_inches (GString *text,
               gint64 sixteenths)
{
  gint64 whole = sixteenths / SIXTEENTHS_PER_INCH;
  gint64 above = sixteenths % SIXTEENTHS_PER_INCH;
  gint64 below = SIXTEENTHS_PER_INCH;

  for (; above != 0 && above % 2 == 0; above /= 2)
    below /= 2;
  if (whole != 0 || above == 0)
    g_string_append_printf (text, "%" G_GINT64_FORMAT, whole);
  if (whole != 0 && above != 0)
    g_string_append_c (text, ' ');
  if (above != 0)
    g_string_append_printf (text, "%" G_GINT64_FORMAT "/%" G_GINT64_FORMAT, above, below);
  g_string_append (text, "″");
}

static char *
format_feet (double mm)
{
  gint64 sixteenths = (gint64) round (fabs (mm) / HC_MM_PER_INCH * SIXTEENTHS_PER_INCH);
  gint64 feet = sixteenths / SIXTEENTHS_PER_FOOT;
  gint64 rest = sixteenths % SIXTEENTHS_PER_FOOT;
  GString *text = g_string_new (mm < 0 && sixteenths > 0 ? "−" : NULL);

  if (feet > 0)
    g_string_append_printf (text, "%" G_GINT64_FORMAT "′", feet);
  if (feet > 0 && rest > 0)
    g_string_append_c (text, ' ');
  if (feet == 0 || rest > 0)
    append_inches (text, rest);
  return g_string_free (text, FALSE);
}

static char *
format_unknown (void)
{
  return g_strdup ("–");
}

/**
 * hc_length_format:
 * @mm: a length or a position, in mm
 * @units: what the keeper measures in
 *
 * Writes a length to the millimetre (18 mm, 70 cm, 2.35 m) or to a sixteenth of
 * an inch (2′ 3 1/2″). [func@length_parse] reads it again.
 *
 * Returns: (transfer full): the text; a dash for what is not finite
 */
char *
hc_length_format (double mm,
                  HcUnits units)
{
  if (!isfinite (mm) || fabs (mm) > 1e12)
    return format_unknown ();
  return units == HC_UNITS_FEET ? format_feet (mm) : format_metric_length (mm);
}

/**
 * hc_area_format:
 * @mm2: an area, in mm²
 * @units: what the keeper measures in
 *
 * Writes an area in m² to 0.01 (small ones in cm²), or in square feet to 0.1
 * (small ones in square inches).
 *
 * Returns: (transfer full): the text; a dash for what is not finite
 */
char *
hc_area_format (double mm2,
                HcUnits units)
{
  double in2 = mm2 / (HC_MM_PER_INCH * HC_MM_PER_INCH);

  if (!isfinite (mm2))
    return format_unknown ();
  if (units == HC_UNITS_METRIC && fabs (mm2) < 0.1 * HC_MM2_PER_M2)
    return format_with_unit (mm2 / 100, 0, _ ("%s cm²"));
  if (units == HC_UNITS_METRIC)
    return format_with_unit (mm2 / HC_MM2_PER_M2, 2, _ ("%s m²"));
  if (fabs (mm2) < HC_MM2_PER_FT2)
    return format_with_unit (in2, 0, _ ("%s in²"));
  return format_with_unit (mm2 / HC_MM2_PER_FT2, 1, _ ("%s ft²"));
}

/**
 * hc_mass_format:
 * @kg: a mass, in kg
 * @units: what the keeper measures in
 *
 * Writes a mass in kg to 0.01 (small ones in g), or in pounds to 0.1 (small ones
 * in ounces to 0.1).
 *
 * Returns: (transfer full): the text; a dash for what is not finite
 */
char *
hc_mass_format (double kg,
                HcUnits units)
{
  if (!isfinite (kg))
    return format_unknown ();
  if (units == HC_UNITS_METRIC && fabs (kg) < 1)
    return format_with_unit (kg * 1000, 0, _ ("%s g"));
  if (units == HC_UNITS_METRIC)
    return format_with_unit (kg, 2, _ ("%s kg"));
  if (fabs (kg) < HC_KG_PER_LB)
    return format_with_unit (kg / HC_KG_PER_LB * 16, 1, _ ("%s oz"));
  return format_with_unit (kg / HC_KG_PER_LB, 1, _ ("%s lb"));
}

/**
 * hc_temperature_format:
 * @celsius: a temperature, in °C
 * @units: what the keeper measures in
 *
 * Writes a temperature to the whole degree of the keeper's scale.
 *
 * Returns: (transfer full): the text; a dash for what is not finite
 */
char *
hc_temperature_format (double celsius,
                       HcUnits units)
{
  if (!isfinite (celsius))
    return format_unknown ();
  if (units == HC_UNITS_FEET)
    return format_with_unit (celsius * 9 / 5 + 32, 0, _ ("%s °F"));
  return format_with_unit (celsius, 0, _ ("%s °C"));
}
