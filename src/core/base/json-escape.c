/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Turns text into JSON text and back. */
#include "config.h"

#include "base/json-escape.h"

#include <string.h>

static gunichar
four_digits (const char *at)
{
  gunichar unit = 0;

  for (guint i = 0; i < 4; i++)
    unit = unit * 16 + (gunichar) g_ascii_xdigit_value (at[i]);
  return unit;
}

/* Takes what follows "\u"; a first half of a pair is known to have its second. */
static const char *
append_unicode (const char *at,
                GString *into)
{
  gunichar unit = four_digits (at);

  if (unit < 0xd800 || unit > 0xdbff)
    {
      g_string_append_unichar (into, unit);
      return at + 4;
    }
  g_string_append_unichar (into, 0x10000 + ((unit - 0xd800) << 10) + four_digits (at + 6) - 0xdc00);
  return at + 10;
}

/* Takes what follows a backslash. */
static const char *
append_escaped (const char *at,
                GString *into)
{
  static const char letters[] = "bfnrt";
  static const char meant[] = "\b\f\n\r\t";
  const char *letter;

  if (*at == 'u')
    return append_unicode (at + 1, into);
  letter = strchr (letters, *at);
  g_string_append_c (into, letter != NULL ? meant[letter - letters] : *at);
  return at + 1;
}

/**
 * hc_json_unescape: (skip)
 * @from: the first byte of a text, after its quote, that passed the guard
 * @to: its closing quote
 * @into: what to add the text to
 */
void
hc_json_unescape (const char *from,
                  const char *to,
                  GString *into)
{
  while (from < to)
    {
      const char *escape = memchr (from, '\\', (gsize) (to - from));

      if (escape == NULL)
        escape = to;
      g_string_append_len (into, from, escape - from);
      from = escape < to ? append_escaped (escape + 1, into) : to;
    }
}

static void
append_escape (char byte,
               GString *into)
{
  switch (byte)
    {
    case '\n':
      g_string_append (into, "\\n");
      break;
    case '\t':
      g_string_append (into, "\\t");
      break;
    case '"':
    case '\\':
      g_string_append_c (into, '\\');
      g_string_append_c (into, byte);
      break;
    default:
      g_string_append_printf (into, "\\u%04x", (guchar) byte);
      break;
    }
}

/**
 * hc_json_escape: (skip)
 * @text: text in UTF-8
 * @into: what to add it to, in quotes and with the escapes JSON asks for
 */
void
hc_json_escape (const char *text,
                GString *into)
{
  const char *from = text;

  g_string_append_c (into, '"');
  for (const char *at = text; *at != '\0'; at++)
    if ((guchar) *at < 0x20 || *at == '"' || *at == '\\')
      {
        g_string_append_len (into, from, at - from);
        append_escape (*at, into);
        from = at + 1;
      }
  g_string_append (into, from);
  g_string_append_c (into, '"');
}
