/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Amounts with their units: what is offered rounds down, what is asked up. */
#include "config.h"

#include "words/words.h"

#include "base/whole.h"

#include <glib/gi18n-lib.h>
#include <math.h>

#define SIXTEENTH_MM (HC_MM_PER_INCH / 16)

/* The part of a step that rounded coordinates may be off by: it must not push
 * a number to the next step. */
#define NOISE 1e-3

/* The step the text of an amount goes by. */
static double
step_of (double amount, const char *unit, HcUnits units)
{
  if (g_str_equal (unit, "mm"))
    return units == HC_UNITS_FEET ? SIXTEENTH_MM : 1;
  if (!g_str_equal (unit, "mm2"))
    return 0;
  if (units == HC_UNITS_FEET)
    return ABS (amount) < HC_MM2_PER_FT2 ? HC_MM_PER_INCH * HC_MM_PER_INCH
                                         : HC_MM2_PER_FT2 / 10;
  return ABS (amount) < HC_MM2_PER_M2 / 100 ? 100 : HC_MM2_PER_M2 / 100;
}

static double
round_to (double amount, const char *unit, HcUnits units, double (*way) (double))
{
  double step = step_of (amount, unit, units);
  double nearest;

  if (step == 0)
    return amount;
  nearest = floor (amount / step + 0.5);
  if (fabs (amount / step - nearest) < NOISE)
    return nearest * step;
  return way (amount / step) * step;
}

static gint64
whole_things (double amount)
{
  return (gint64) CLAMP (amount, 0, (double) HC_WHOLE_MANY);
}

static char *
boxes (double amount)
{
  gint64 n = whole_things (amount);

  /* Translators: %d is a number of nest boxes. */
  return g_strdup_printf (ngettext ("%d nest box", "%d nest boxes", (gulong) n), (int) n);
}

static char *
nipples (double amount)
{
  gint64 n = whole_things (amount);

  return g_strdup_printf (ngettext ("%d nipple", "%d nipples", (gulong) n), (int) n);
}

static char *
days (double amount)
{
  gint64 n = whole_things (amount);

  return g_strdup_printf (ngettext ("%d day", "%d days", (gulong) n), (int) n);
}

static char *
weeks (double amount)
{
  gint64 n = whole_things (amount);

  return g_strdup_printf (ngettext ("%d week", "%d weeks", (gulong) n), (int) n);
}

static char *
number (double amount, const char *after)
{
  return g_strdup_printf ("%.*f%s", fabs (amount - round (amount)) < 0.05 ? 0 : 1, amount, after);
}

/**
 * hc_words_amount: (skip)
 * @amount: how much
 * @unit: a unit word of findings and rungs
 * @units: what the keeper measures in
 *
 * Returns: (transfer full): the amount with its unit, to the nearest
 */
char *
hc_words_amount (double amount, const char *unit, HcUnits units)
{
  g_return_val_if_fail (unit != NULL, NULL);
  if (g_str_equal (unit, "mm"))
    return hc_length_format (amount, units);
  if (g_str_equal (unit, "mm2"))
    return hc_area_format (amount, units);
  if (g_str_equal (unit, "kg"))
    return hc_mass_format (amount, units);
  if (g_str_equal (unit, "celsius"))
    return hc_temperature_format (amount, units);
  if (g_str_equal (unit, "percent"))
    return number (amount * 100, " %");
  if (g_str_equal (unit, "degrees"))
    return number (amount, "°");
  if (g_str_equal (unit, "boxes"))
    return boxes (amount);
  if (g_str_equal (unit, "nipples"))
    return nipples (amount);
  if (g_str_equal (unit, "days"))
    return days (amount);
  if (g_str_equal (unit, "weeks"))
    return weeks (amount);
  return number (amount, "");
}

/**
 * hc_words_offered: (skip)
 * @amount: how much there is
 * @unit: a unit word
 * @units: what the keeper measures in
 *
 * Returns: (transfer full): the amount, never more than there is
 */
char *
hc_words_offered (double amount, const char *unit, HcUnits units)
{
  return hc_words_amount (round_to (amount, unit, units, floor), unit, units);
}

/**
 * hc_words_asked: (skip)
 * @amount: how much is asked
 * @unit: a unit word
 * @units: what the keeper measures in
 *
 * Returns: (transfer full): the amount, never less than is asked
 */
char *
hc_words_asked (double amount, const char *unit, HcUnits units)
{
  return hc_words_amount (round_to (amount, unit, units, ceil), unit, units);
}
