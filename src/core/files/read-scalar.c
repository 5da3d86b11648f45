/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Reads members that hold one value. Bounds are looked at once the whole plan
 * is there. */
#include "config.h"

#include "files/reader.h"

#include <math.h>

static gboolean
read_number (HcReader *self,
             guint value,
             double *number)
{
  if (self->json->values[value].kind != HC_JSON_NUMBER)
    return FALSE;
  *number = hc_json_text_number (self->json, value);
  return TRUE;
}

/* What no int holds becomes the farthest that one does: out of every bound. */
static gboolean
read_count (HcReader *self,
            guint value,
            int *count)
{
  double number;

  if (!read_number (self, value, &number) || number != floor (number))
    return FALSE;
  *count = (int) CLAMP (number, G_MININT, G_MAXINT);
  return TRUE;
}

static gboolean
read_flag (HcReader *self,
           guint value,
           gboolean *flag)
{
  HcJsonKind kind = self->json->values[value].kind;

  if (kind != HC_JSON_TRUE && kind != HC_JSON_FALSE)
    return FALSE;
  *flag = kind == HC_JSON_TRUE;
  return TRUE;
}

static guint
two_digits (const char *at)
{
  return (guint) (g_ascii_digit_value (at[0]) * 10 + g_ascii_digit_value (at[1]));
}

static gboolean
looks_like_a_day (const char *text)
{
  static const char shape[] = "0000-00-00";

  for (guint i = 0; shape[i] != '\0'; i++)
    if (shape[i] == '0' ? !g_ascii_isdigit (text[i]) : text[i] != shape[i])
      return FALSE;
  return TRUE;
}

static gboolean
read_day (HcReader *self,
          guint value,
          guint32 *day)
{
  const HcJsonValue *found = &self->json->values[value];
  const char *text = self->json->text + found->start;
  guint year, month, of_month;
  GDate date;

  if (found->kind != HC_JSON_TEXT || found->end - found->start != 10 || !looks_like_a_day (text))
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

static gboolean
read_word (HcReader *self,
           guint value,
           const char *const *words,
           int *index)
{
  for (int i = 0; words[i] != NULL; i++)
    if (hc_json_text_is (self->json, value, words[i]))
      {
        *index = i;
        return TRUE;
      }
  return FALSE;
}

static gboolean
read_text (HcReader *self,
           guint value,
           const char **text)
{
  if (self->json->values[value].kind != HC_JSON_TEXT)
    return FALSE;
  *text = hc_reader_text (self, value);
  return TRUE;
}

static gboolean
read_kind (HcReader *self,
           guint value,
           const HcMember *member,
           gpointer at)
{
  switch (member->kind)
    {
    case HC_MEMBER_LENGTH:
    case HC_MEMBER_FIGURE:
    case HC_MEMBER_NUMBER:
      return read_number (self, value, at);
    case HC_MEMBER_COUNT:
      return read_count (self, value, at);
    case HC_MEMBER_FLAG:
      return read_flag (self, value, at);
    case HC_MEMBER_DATE:
      return read_day (self, value, at);
    case HC_MEMBER_WORD:
      return read_word (self, value, member->words, at);
    default:
      return read_text (self, value, at);
    }
}

/**
 * hc_reader_read_scalar: (skip)
 * @self: a reader
 * @value: the member's value
 * @member: its row: a number, count, flag, date, word or text
 * @at: where the member is kept
 *
 * Returns: whether the value is of the row's kind; if not, the error is set and
 *   the member is left as it is
 */
gboolean
hc_reader_read_scalar (HcReader *self,
                       guint value,
                       const HcMember *member,
                       gpointer at)
{
  return read_kind (self, value, member, at) || hc_reader_fail_member (self, value, member);
}
