/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Reads members that hold one value. Bounds are looked at once the whole plan
 * is there. */
#include "config.h"

#include "files/reader.h"

#include "base/day.h"

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

static gboolean
read_day (HcReader *self,
          guint value,
          guint32 *day)
{
  const HcJsonValue *found = &self->json->values[value];

  return found->kind == HC_JSON_TEXT
         && hc_day_parse (self->json->text + found->start, found->end - found->start, day);
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
