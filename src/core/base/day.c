/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Julian days to and from ISO 8601. */
#include "config.h"

#include "base/day.h"

static const char shape[] = "0000-00-00";

static gboolean
looks_like_a_day (const char *text)
{
  for (guint i = 0; shape[i] != '\0'; i++)
    if (shape[i] == '0' ? !g_ascii_isdigit (text[i]) : text[i] != shape[i])
      return FALSE;
  return TRUE;
}

static guint
two_digits (const char *text)
{
  return (guint) (g_ascii_digit_value (text[0]) * 10 + g_ascii_digit_value (text[1]));
}

/**
 * hc_day_parse: (skip)
 * @text: a day as 2026-11-25
 * @length: its length in bytes
 * @day: (out): the Julian day
 *
 * Returns: whether it is written so, and there is such a day
 */
gboolean
hc_day_parse (const char *text, gsize length, guint32 *day)
{
  guint year, month, of_month;
  GDate date;

  if (length != sizeof shape - 1 || !looks_like_a_day (text))
    return FALSE;
  year = two_digits (text) * 100 + two_digits (text + 2);
  month = two_digits (text + 5);
  of_month = two_digits (text + 8);
  if (!g_date_valid_dmy ((GDateDay) of_month, (GDateMonth) month, (GDateYear) year))
    return FALSE;
  g_date_clear (&date, 1);
  g_date_set_dmy (&date, (GDateDay) of_month, (GDateMonth) month, (GDateYear) year);
  *day = g_date_get_julian (&date);
  return TRUE;
}

static void
init_date (GDate *date, guint32 day)
{
  g_date_clear (date, 1);
  g_date_set_julian (date, day);
}

/**
 * hc_day_format: (skip)
 * @day: a Julian day
 *
 * Returns: (transfer full): the day as 2026-11-25
 */
char *
hc_day_format (guint32 day)
{
  GDate date;

  init_date (&date, day);
  return g_strdup_printf ("%04u-%02u-%02u", g_date_get_year (&date),
                          (guint) g_date_get_month (&date), g_date_get_day (&date));
}

/**
 * hc_day_get_day_of_year: (skip)
 * @day: a Julian day
 *
 * Returns: which day of its year it is, from 1
 */
guint
hc_day_get_day_of_year (guint32 day)
{
  GDate date;

  init_date (&date, day);
  return g_date_get_day_of_year (&date);
}
