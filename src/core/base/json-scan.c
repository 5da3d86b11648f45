/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The grammar of JSON, RFC 8259, walked once over text from anywhere. */
#include "config.h"

#include "base/error.h"
#include "base/json-names.h"
#include "base/json-text.h"

#include <glib/gi18n-lib.h>
#include <math.h>
#include <string.h>

#define LONGEST_NUMBER 400

const HcJsonGuardLimits hc_json_usual_limits = { 16 * 1024 * 1024, 64, 200000 };

typedef struct
{
  const char *text;
  const char *at;
  const char *end;
  const HcJsonGuardLimits *limits;
  guint depth;
  guint n_values;
  GArray *values;
  HcJsonNames names;
  GError **error;
} Scan;

static gboolean scan_value (Scan *scan);

static gboolean
fail (Scan *scan,
      const char *at,
      const char *what)
{
  HcTextPlace place = hc_text_place (scan->text, (gsize) (at - scan->text));

  g_set_error (scan->error, HC_ERROR, HC_ERROR_FILE, _("Line %u, column %u: %s"), place.line,
               place.column, what);
  return FALSE;
}

static gboolean
fail_here (Scan *scan,
           const char *what)
{
  if (scan->at >= scan->end)
    return fail (scan, scan->end, _("the text ends too early; part of the file is missing."));
  return fail (scan, scan->at, what);
}

static int
peek (const Scan *scan)
{
  return scan->at < scan->end ? (guchar) *scan->at : -1;
}

static gboolean
take (Scan *scan,
      char byte)
{
  if (peek (scan) != byte)
    return FALSE;
  scan->at++;
  return TRUE;
}

static void
skip_space (Scan *scan)
{
  while (scan->at < scan->end
         && (*scan->at == ' ' || *scan->at == '\n' || *scan->at == '\r' || *scan->at == '\t'))
    scan->at++;
}

static guint
open_value (Scan *scan,
            HcJsonKind kind)
{
  HcJsonValue value = { (guint32) (scan->at - scan->text), 0, 0, kind, FALSE, FALSE };

  g_array_append_val (scan->values, value);
  return scan->values->len - 1;
}

static void
close_value (Scan *scan,
             guint index)
{
  HcJsonValue *value = &g_array_index (scan->values, HcJsonValue, index);

  value->end = (guint32) (scan->at - scan->text);
  value->next = scan->values->len;
}

static gboolean
scan_word (Scan *scan,
           HcJsonKind kind,
           const char *word)
{
  gsize length = strlen (word);
  guint index = open_value (scan, kind);

  if ((gsize) (scan->end - scan->at) < length || memcmp (scan->at, word, length) != 0)
    return fail_here (scan, _("this is not a value; text stands in quotes."));
  scan->at += length;
  close_value (scan, index);
  return TRUE;
}

static gboolean
skip_digits (Scan *scan)
{
  const char *from = scan->at;

  while (g_ascii_isdigit (peek (scan)))
    scan->at++;
  return scan->at > from;
}

static gboolean
number_is_finite (const char *from,
                  const char *to)
{
  char copy[LONGEST_NUMBER + 1];

  memcpy (copy, from, (gsize) (to - from));
  copy[to - from] = '\0';
  return isfinite (g_ascii_strtod (copy, NULL));
}

static gboolean
skip_exponent (Scan *scan)
{
  if (!take (scan, '+'))
    take (scan, '-');
  return skip_digits (scan);
}

static gboolean
scan_number (Scan *scan)
{
  const char *from = scan->at;
  guint index = open_value (scan, HC_JSON_NUMBER);
  gboolean raised;

  take (scan, '-');
  if (!take (scan, '0') && !skip_digits (scan))
    return fail_here (scan, _("a number has a digit here."));
  if (g_ascii_isdigit (peek (scan)))
    return fail (scan, from, _("a number does not start with 0 and another digit."));
  if (take (scan, '.') && !skip_digits (scan))
    return fail_here (scan, _("a number has a digit after its point."));
  raised = take (scan, 'e') || take (scan, 'E');
  if (raised && !skip_exponent (scan))
    return fail_here (scan, _("a number has a digit after its e."));
  if (scan->at - from > LONGEST_NUMBER)
    return fail (scan, from, _("this number has too many digits."));
  if ((raised || scan->at - from > 300) && !number_is_finite (from, scan->at))
    return fail (scan, from, _("this number is too large."));
  close_value (scan, index);
  return TRUE;
}

static gboolean
take_four_digits (Scan *scan,
                  guint *unit)
{
  *unit = 0;
  for (guint i = 0; i < 4; i++, scan->at++)
    {
      if (!g_ascii_isxdigit (peek (scan)))
        return fail_here (scan, _("four digits from 0 to f follow \\u."));
      *unit = *unit * 16 + (guint) g_ascii_xdigit_value (*scan->at);
    }
  return TRUE;
}

static gboolean
scan_unicode (Scan *scan)
{
  const char *from = scan->at;
  guint unit, second = 0;

  if (!take_four_digits (scan, &unit))
    return FALSE;
  if (unit == 0)
    return fail (scan, from, _("text cannot hold the character 0."));
  if (unit < 0xd800 || unit > 0xdfff)
    return TRUE;
  if (unit < 0xdc00 && take (scan, '\\') && take (scan, 'u')
      && !take_four_digits (scan, &second))
    return FALSE;
  if (second < 0xdc00 || second > 0xdfff)
    return fail (scan, from, _("this is half a character; its other half is missing."));
  return TRUE;
}

static gboolean
scan_escape (Scan *scan)
{
  if (take (scan, 'u'))
    return scan_unicode (scan);
  if (peek (scan) <= 0 || strchr ("\"\\/bfnrt", peek (scan)) == NULL)
    return fail_here (scan, _("a backslash cannot stand before this character."));
  scan->at++;
  return TRUE;
}

/* The value's bytes are those between the quotes. */
static gboolean
scan_text (Scan *scan)
{
  guint index = open_value (scan, HC_JSON_TEXT);
  HcJsonValue *value = &g_array_index (scan->values, HcJsonValue, index);

  value->start++;
  scan->at++;
  while (peek (scan) != '"')
    {
      if (peek (scan) < 0x20)
        return fail_here (scan, _("text ends on the line it starts on: a quote is missing."));
      if (take (scan, '\\'))
        {
          value->escaped = TRUE;
          if (!scan_escape (scan))
            return FALSE;
        }
      else
        scan->at++;
    }
  close_value (scan, index);
  scan->at++;
  return TRUE;
}

static gboolean
scan_list (Scan *scan)
{
  guint index = open_value (scan, HC_JSON_LIST);

  scan->at++;
  skip_space (scan);
  if (peek (scan) != ']')
    do
      if (!scan_value (scan))
        return FALSE;
    while (take (scan, ','));
  if (!take (scan, ']'))
    return fail_here (scan, _("a comma or ] is missing here."));
  close_value (scan, index);
  return TRUE;
}

static gboolean
scan_member (Scan *scan)
{
  guint name = scan->values->len;

  skip_space (scan);
  if (peek (scan) != '"')
    return fail_here (scan, _("a member's name in quotes is missing here."));
  if (!scan_text (scan))
    return FALSE;
  hc_json_names_add (&scan->names, scan->text, &g_array_index (scan->values, HcJsonValue, name));
  skip_space (scan);
  if (!take (scan, ':'))
    return fail_here (scan, _("a colon is missing here."));
  return scan_value (scan);
}

static gboolean
scan_object (Scan *scan)
{
  guint index = open_value (scan, HC_JSON_OBJECT);
  guint opened = hc_json_names_open (&scan->names);
  gsize twice;

  scan->at++;
  skip_space (scan);
  if (peek (scan) != '}')
    do
      if (!scan_member (scan))
        return FALSE;
    while (take (scan, ','));
  if (!take (scan, '}'))
    return fail_here (scan, _("a comma or } is missing here."));
  if (!hc_json_names_close (&scan->names, opened, &twice))
    return fail (scan, scan->text + twice, _("this member stands here twice; keep one."));
  close_value (scan, index);
  return TRUE;
}

static gboolean
scan_nested (Scan *scan)
{
  gboolean sound;

  if (scan->depth >= scan->limits->most_depth)
    return fail_here (scan, _("too many lists stand inside one another."));
  scan->depth++;
  sound = peek (scan) == '{' ? scan_object (scan) : scan_list (scan);
  scan->depth--;
  return sound;
}

static gboolean
scan_kind (Scan *scan)
{
  switch (peek (scan))
    {
    case '{':
    case '[':
      return scan_nested (scan);
    case '"':
      return scan_text (scan);
    case 't':
      return scan_word (scan, HC_JSON_TRUE, "true");
    case 'f':
      return scan_word (scan, HC_JSON_FALSE, "false");
    case 'n':
      return scan_word (scan, HC_JSON_NULL, "null");
    default:
      if (peek (scan) == '-' || g_ascii_isdigit (peek (scan)))
        return scan_number (scan);
      return fail_here (scan, _("this is not a value; text stands in quotes."));
    }
}

static gboolean
scan_value (Scan *scan)
{
  gboolean sound;

  skip_space (scan);
  if (++scan->n_values > scan->limits->most_values)
    return fail_here (scan, _("there is more in this file than any plan holds."));
  sound = scan_kind (scan);
  skip_space (scan);
  return sound;
}

static gboolean
check_bytes (Scan *scan,
             gsize length)
{
  const char *valid_to;

  if (length > scan->limits->most_bytes)
    {
      g_set_error_literal (scan->error, HC_ERROR, HC_ERROR_FILE,
                           _("This file is too large to be a plan or a list of rules."));
      return FALSE;
    }
  if (length == 0)
    return fail (scan, scan->text, _("the file is empty."));
  if (length >= 3 && memcmp (scan->text, "\xef\xbb\xbf", 3) == 0)
    return fail (scan, scan->text,
                 _("the file starts with a byte order mark; save it as UTF-8 without one."));
  if (!g_utf8_validate_len (scan->text, length, &valid_to))
    return fail (scan, valid_to, _("this character is not UTF-8; save the file as UTF-8."));
  return TRUE;
}

static gboolean
scan_all (Scan *scan,
          gsize length)
{
  if (!check_bytes (scan, length) || !scan_value (scan))
    return FALSE;
  if (scan->at < scan->end)
    return fail_here (scan, _("nothing may follow the end of the plan or the list."));
  return TRUE;
}

/**
 * hc_json_text_scan: (skip)
 * @text: (array length=length): text from anywhere
 * @length: its length in bytes
 * @limits: (nullable): how much is read; %NULL for the usual
 * @error: where to put %HC_ERROR_FILE, naming line and column
 *
 * Checks @text as hc_json_guard() does and notes where its values stand.
 *
 * Returns: (transfer full) (nullable): the places in @text, which must outlive
 *   them
 */
HcJsonText *
hc_json_text_scan (const char *text,
                   gsize length,
                   const HcJsonGuardLimits *limits,
                   GError **error)
{
  Scan scan = { .text = text, .at = text, .end = text + length, .error = error };
  HcJsonText *scanned = NULL;

  scan.limits = limits != NULL ? limits : &hc_json_usual_limits;
  scan.values = g_array_new (FALSE, FALSE, sizeof (HcJsonValue));
  hc_json_names_init (&scan.names);
  if (scan_all (&scan, length))
    {
      scanned = g_new (HcJsonText, 1);
      *scanned = (HcJsonText){ text, length, NULL, scan.values->len };
      scanned->values = (HcJsonValue *) g_array_free (g_steal_pointer (&scan.values), FALSE);
    }
  g_clear_pointer (&scan.values, g_array_unref);
  hc_json_names_clear (&scan.names);
  return scanned;
}
