/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Keeps members this version does not know as the text they were written in,
 * without its white space: numbers longer than a double stay whole. */
#include "config.h"

#include "files/extra.h"

#include "files/indent.h"

#include <string.h>

/* The byte after a text that starts at @at with its quote. */
static const char *
end_of_text (const char *at)
{
  for (at++; *at != '"'; at++)
    if (*at == '\\')
      at++;
  return at + 1;
}

static void
append_tight (GString *into,
              const char *from,
              const char *to)
{
  while (from < to)
    if (*from == '"')
      {
        const char *end = end_of_text (from);

        g_string_append_len (into, from, end - from);
        from = end;
      }
    else
      {
        if (strchr (" \t\r\n", *from) == NULL)
          g_string_append_c (into, *from);
        from++;
      }
}

/**
 * hc_extra_add: (skip)
 * @extra: members kept so far as one JSON object, empty for none
 * @json: a scanned text
 * @name: the name of a member to keep
 */
void
hc_extra_add (GString *extra,
              const HcJsonText *json,
              guint name)
{
  const HcJsonValue *value = &json->values[name + 1];
  guint quote = value->kind == HC_JSON_TEXT;

  if (extra->len == 0)
    g_string_append_c (extra, '{');
  else
    extra->str[extra->len - 1] = ',';
  append_tight (extra, json->text + json->values[name].start - 1,
                json->text + value->end + quote);
  g_string_append_c (extra, '}');
}

/* Adds what starts at @at, one mark or one text. */
static const char *
append_step (GString *into,
             const char *at,
             guint *depth)
{
  const char *end = *at == '"' ? end_of_text (at) : at + 1;
  gboolean opens = *at == '{' || *at == '[';

  if (opens && (*end == '}' || *end == ']'))
    end++;
  else if (opens)
    ++*depth;
  else if (*at == '}' || *at == ']')
    hc_indent (into, --*depth);
  g_string_append_len (into, at, end - at);
  if (*at == ':')
    g_string_append_c (into, ' ');
  if (*at == ',' || (opens && end == at + 1))
    hc_indent (into, *depth);
  return end;
}

/**
 * hc_extra_write: (skip)
 * @extra: members kept, as one JSON object without white space
 * @depth: how deep they stand
 * @into: what to add them to, commas and new lines between them
 */
void
hc_extra_write (const char *extra,
                guint depth,
                GString *into)
{
  const char *end = extra + strlen (extra) - 1;

  for (const char *at = extra + 1; at < end;)
    at = append_step (into, at, &depth);
}
