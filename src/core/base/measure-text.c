/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Reads measures such as 2' 3 1/2" or 0,7 m by a table of units. */
#include "config.h"

#include "base/measure-text.h"

#include <locale.h>
#include <math.h>
#include <string.h>

/* More digits than this are no measure, and could overflow a fraction. */
#define MOST_DIGITS 9

typedef struct
{
  gunichar sign;
  const char *plain;
} PlainSign;

/* What phones, word processors and German keyboards write for the plain signs. */
static const PlainSign plain_signs[] = {
  { 0x00A0, " " },     { 0x2009, " " },     { 0x202F, " " },     { '\t', " " },
  { 0x2032, "'" },     { 0x2019, "'" },     { 0x2018, "'" },     { 0x00B4, "'" },
  { 0x02B9, "'" },     { 0x2033, "\"" },    { 0x201D, "\"" },    { 0x201C, "\"" },
  { 0x02BA, "\"" },    { 0x2212, "-" },     { 0x2044, "/" },     { 0x00B2, "2" },
  { 0x066B, "," },     { 0x00BD, " 1/2 " }, { 0x00BC, " 1/4 " }, { 0x00BE, " 3/4 " },
  { 0x2153, " 1/3 " }, { 0x2154, " 2/3 " }, { 0x215B, " 1/8 " }, { 0x215C, " 3/8 " },
  { 0x215D, " 5/8 " }, { 0x215E, " 7/8 " },
};

static void
append_plain (GString *plain,
              gunichar c)
{
  for (guint i = 0; i < G_N_ELEMENTS (plain_signs); i++)
    if (plain_signs[i].sign == c)
      {
        g_string_append (plain, plain_signs[i].plain);
        return;
      }
  g_string_append_unichar (plain, c < 0x80 ? (gunichar) g_ascii_tolower ((char) c) : c);
}

static char *
make_plain (const char *text)
{
  GString *plain = g_string_new (NULL);

  for (const char *p = text; *p != '\0'; p = g_utf8_next_char (p))
    append_plain (plain, g_utf8_get_char (p));
  g_string_replace (plain, "''", "\"", 0);
  return g_strstrip (g_string_free (plain, FALSE));
}

static void
skip_spaces (const char **cursor)
{
  while (**cursor == ' ')
    (*cursor)++;
}

static gboolean
read_digits (const char **cursor,
             double *whole)
{
  const char *start = *cursor;

  *whole = 0;
  for (; g_ascii_isdigit (**cursor); (*cursor)++)
    *whole = *whole * 10 + (**cursor - '0');
  return *cursor > start && *cursor - start <= MOST_DIGITS;
}

/* Reads '/16' after the digits before it. */
static gboolean
read_denominator (const char **cursor,
                  double *denominator)
{
  const char *p = *cursor;

  skip_spaces (&p);
  if (*p != '/')
    return FALSE;
  p++;
  skip_spaces (&p);
  if (!read_digits (&p, denominator) || *denominator == 0)
    return FALSE;
  *cursor = p;
  return TRUE;
}

/* Reads the 1/2 of '3 1/2' or '3-1/2', if there is one. */
static double
read_fraction_after_whole (const char **cursor)
{
  const char *p = *cursor;
  double above, below;

  skip_spaces (&p);
  if (*p == '-')
    p++;
  if (p == *cursor || !read_digits (&p, &above) || !read_denominator (&p, &below)
      || above >= below)
    return 0;
  *cursor = p;
  return above / below;
}

/* '1,200 mm' is 1200 to one keeper and 1.2 to another; where decimals follow a
 * comma, so is '1.200 mm'. */
static gboolean
may_group_thousands (const char *start,
                     const char *end)
{
  char grouping = *localeconv ()->decimal_point == ',' ? '.' : ',';
  const char *sign = memchr (start, grouping, end - start);

  return sign != NULL && end - sign == 4 && *start != '0' && sign > start;
}

static HcMeasureResult
read_decimals (const char *start,
               const char **cursor,
               double *value)
{
  g_autofree char *number = NULL;
  const char *decimals = ++(*cursor);

  while (g_ascii_isdigit (**cursor))
    (*cursor)++;
  if (*cursor == decimals || *cursor - decimals > MOST_DIGITS || **cursor == '.' || **cursor == ',')
    return HC_MEASURE_NOT_UNDERSTOOD;
  if (may_group_thousands (start, *cursor))
    return HC_MEASURE_TWO_READINGS;
  number = g_strndup (start, *cursor - start);
  g_strdelimit (number, ",", '.');
  *value = g_ascii_strtod (number, NULL);
  return HC_MEASURE_READ;
}

static HcMeasureResult
read_number (const char **cursor,
             double *value)
{
  const char *start = *cursor;
  double denominator;

  if (!read_digits (cursor, value) && *cursor != start)
    return HC_MEASURE_NOT_UNDERSTOOD;
  if (**cursor == '.' || **cursor == ',')
    return read_decimals (start, cursor, value);
  if (*cursor == start)
    return HC_MEASURE_NOT_UNDERSTOOD;
  if (read_denominator (cursor, &denominator))
    *value /= denominator;
  else
    *value += read_fraction_after_whole (cursor);
  return HC_MEASURE_READ;
}

static const HcUnitSpelling *
read_unit (const char **cursor,
           const HcUnitSpelling *spellings)
{
  const HcUnitSpelling *longest = NULL;
  gsize longest_length = 0;

  for (const HcUnitSpelling *s = spellings; s->spelling != NULL; s++)
    {
      gsize length = strlen (s->spelling);
      gboolean ends_in_letter = g_ascii_isalpha (s->spelling[length - 1]);

      if (length > longest_length && g_str_has_prefix (*cursor, s->spelling)
          && !(ends_in_letter && g_ascii_isalpha ((*cursor)[length])))
        {
          longest = s;
          longest_length = length;
        }
    }
  *cursor += longest_length;
  return longest;
}

/* Reads terms of ever smaller units, such as 2 ft 3 in or 2' 3; a number without
 * a unit takes the one below the unit before it. */
static HcMeasureResult
read_terms (const char *cursor,
            const HcUnitSpelling *spellings,
            double bare_factor,
            double *value)
{
  double last_factor = INFINITY, next_factor = bare_factor;

  *value = 0;
  do
    {
      double number;
      const HcUnitSpelling *unit;
      HcMeasureResult result = read_number (&cursor, &number);

      if (result != HC_MEASURE_READ)
        return result;
      skip_spaces (&cursor);
      unit = read_unit (&cursor, spellings);
      if (unit == NULL && (next_factor == 0 || *cursor != '\0'))
        return HC_MEASURE_NOT_UNDERSTOOD;
      if (isfinite (last_factor) && (unit != NULL ? unit->factor : next_factor) != next_factor)
        return HC_MEASURE_NOT_UNDERSTOOD;
      last_factor = unit != NULL ? unit->factor : next_factor;
      next_factor = unit != NULL ? unit->next_factor : 0;
      *value += number * last_factor;
      skip_spaces (&cursor);
    }
  while (*cursor != '\0');
  return HC_MEASURE_READ;
}

/* Reads @text by a table that ends in an empty spelling; factors lead to the
 * unit of @value, and next_factor names the smaller unit that may follow. */
HcMeasureResult
hc_measure_read (const char *text,
                 const HcUnitSpelling *spellings,
                 double bare_factor,
                 double *value)
{
  g_autofree char *plain = NULL;
  const char *cursor;
  gboolean is_negative;
  HcMeasureResult result;

  if (text == NULL || !g_utf8_validate (text, -1, NULL))
    return HC_MEASURE_NOT_UNDERSTOOD;
  plain = make_plain (text);
  cursor = plain;
  is_negative = *cursor == '-';
  if (*cursor == '-' || *cursor == '+')
    cursor++;
  skip_spaces (&cursor);
  result = read_terms (cursor, spellings, bare_factor, value);
  if (is_negative)
    *value = 0 - *value;
  return result;
}
