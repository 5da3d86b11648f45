/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Writes members that hold one value. */
#include "config.h"

#include "files/write-scalar.h"

#include "base/day.h"
#include "base/json-escape.h"

#include <math.h>
#include <stdlib.h>

/* In whole units of the last decimal, so that nothing is left to printf. */
static void
write_in_units (double number,
                long long units_in_one,
                int decimals,
                GString *into)
{
  long long units = llround (number * (double) units_in_one);
  lldiv_t parts = lldiv (llabs (units), units_in_one);

  if (units < 0)
    g_string_append_c (into, '-');
  g_string_append_printf (into, "%lld", parts.quot);
  if (parts.rem == 0)
    return;
  g_string_append_printf (into, ".%0*lld", decimals, parts.rem);
  while (into->str[into->len - 1] == '0')
    g_string_truncate (into, into->len - 1);
}

/**
 * hc_number_write: (skip)
 * @number: a number within a million million of nothing
 * @into: what to add it to: at most three decimals, no exponent, never -0
 */
void
hc_number_write (double number,
                 GString *into)
{
  write_in_units (number, 1000, 3, into);
}

static void
write_day (guint32 day,
           GString *into)
{
  g_autofree char *text = hc_day_format (day);

  g_string_append_printf (into, "\"%s\"", text);
}

/**
 * hc_scalar_write: (skip)
 * @member: the row of a number, count, flag, date, word or text
 * @at: its value
 * @into: what to add it to
 */
void
hc_scalar_write (const HcMember *member,
                 gconstpointer at,
                 GString *into)
{
  switch (member->kind)
    {
    case HC_MEMBER_LENGTH:
    case HC_MEMBER_NUMBER:
      hc_number_write (*(const double *) at, into);
      break;
    case HC_MEMBER_FIGURE:
      write_in_units (*(const double *) at, 1000000, 6, into);
      break;
    case HC_MEMBER_COUNT:
      g_string_append_printf (into, "%d", *(const int *) at);
      break;
    case HC_MEMBER_FLAG:
      g_string_append (into, *(const gboolean *) at ? "true" : "false");
      break;
    case HC_MEMBER_DATE:
      write_day (*(const guint32 *) at, into);
      break;
    case HC_MEMBER_WORD:
      hc_json_escape (member->words[*(const int *) at], into);
      break;
    default:
      hc_json_escape (*(char *const *) at != NULL ? *(char *const *) at : "", into);
      break;
    }
}

static gboolean
is_normal (const HcMember *member,
           gconstpointer at)
{
  switch (member->kind)
    {
    case HC_MEMBER_LENGTH:
    case HC_MEMBER_FIGURE:
    case HC_MEMBER_NUMBER:
      return *(const double *) at == member->normal;
    case HC_MEMBER_COUNT:
    case HC_MEMBER_WORD:
      return *(const int *) at == (int) member->normal;
    case HC_MEMBER_FLAG:
      return !*(const gboolean *) at == !member->normal;
    case HC_MEMBER_TEXT:
      return *(char *const *) at == NULL || **(char *const *) at == '\0';
    case HC_MEMBER_IDS:
      return **(char **const *) at == NULL;
    case HC_MEMBER_PARTS:
      return (*(HcParts *const *) at)->len == 0;
    default:
      return FALSE;
    }
}

/**
 * hc_member_is_left_out: (skip)
 * @part: a part
 * @index: the row of a member
 *
 * A missing member means its normal value. A file that said so keeps saying
 * so; a day that was taken away has no other way to be said.
 *
 * Returns: whether a file leaves the member out
 */
gboolean
hc_member_is_left_out (const HcPart *part,
                       guint index)
{
  const HcMember *member = &part->klass->members[index];
  gconstpointer at = (const char *) hc_part_get_values (part) + member->offset;

  if (member->kind == HC_MEMBER_DATE)
    return *(const guint32 *) at == 0;
  return !member->required && !(part->given >> index & 1) && is_normal (member, at);
}
