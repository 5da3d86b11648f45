/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What stands where in a scanned text, and its texts and numbers. */
#include "config.h"

#include "base/json-text.h"

#include "base/json-escape.h"

#include <string.h>

/* As many digits as a double holds without loss: numbers this short are
 * exact as a whole number over a power of ten. */
#define EXACT_DIGITS 15

/**
 * hc_json_text_free: (skip)
 * @self: (transfer full): a scanned text
 *
 * Frees the places; the text is its owner's.
 */
void
hc_json_text_free (HcJsonText *self)
{
  g_free (self->values);
  g_free (self);
}

/**
 * hc_json_text_is: (skip)
 * @self: a scanned text
 * @value: a text or a member's name
 * @word: what it may be
 *
 * Returns: whether the text is @word
 */
gboolean
hc_json_text_is (const HcJsonText *self,
                 guint value,
                 const char *word)
{
  const HcJsonValue *found = &self->values[value];
  gsize length = found->end - found->start;

  if (found->kind != HC_JSON_TEXT)
    return FALSE;
  if (found->escaped)
    {
      g_autoptr (GString) decoded = g_string_new (NULL);

      hc_json_text_decode (self, value, decoded);
      return g_str_equal (decoded->str, word);
    }
  return strncmp (self->text + found->start, word, length) == 0 && word[length] == '\0';
}

/**
 * hc_json_text_decode: (skip)
 * @self: a scanned text
 * @value: a text or a member's name
 * @into: what to add it to
 */
void
hc_json_text_decode (const HcJsonText *self,
                     guint value,
                     GString *into)
{
  const HcJsonValue *found = &self->values[value];

  if (found->escaped)
    hc_json_unescape (self->text + found->start, self->text + found->end, into);
  else
    g_string_append_len (into, self->text + found->start, found->end - found->start);
}

static gboolean
read_short_number (const char *from,
                   const char *to,
                   double *number)
{
  static const double tens[] = { 1e0, 1e1, 1e2,  1e3,  1e4,  1e5,  1e6,  1e7,
                                 1e8, 1e9, 1e10, 1e11, 1e12, 1e13, 1e14, 1e15 };
  const char *digits = *from == '-' ? from + 1 : from;
  const char *point = NULL;
  gint64 whole = 0;

  if (to - digits > EXACT_DIGITS)
    return FALSE;
  for (const char *at = digits; at < to; at++)
    if (*at == '.')
      point = at + 1;
    else if (g_ascii_isdigit (*at))
      whole = whole * 10 + (*at - '0');
    else
      return FALSE;
  *number = (double) whole / tens[point != NULL ? to - point : 0];
  if (digits != from)
    *number = -*number;
  return TRUE;
}

/**
 * hc_json_text_number: (skip)
 * @self: a scanned text
 * @value: a number
 *
 * Returns: the number, always finite
 */
double
hc_json_text_number (const HcJsonText *self,
                     guint value)
{
  const HcJsonValue *found = &self->values[value];
  g_autofree char *copy = NULL;
  double number;

  if (read_short_number (self->text + found->start, self->text + found->end, &number))
    return number;
  copy = g_strndup (self->text + found->start, found->end - found->start);
  return g_ascii_strtod (copy, NULL);
}

/**
 * hc_json_text_member: (skip)
 * @self: a scanned text
 * @object: an object
 * @name: the name of a member
 *
 * Returns: the member's value, or 0 when there is none
 */
guint
hc_json_text_member (const HcJsonText *self,
                     guint object,
                     const char *name)
{
  guint at = object + 1;

  while (at < self->values[object].next)
    {
      if (hc_json_text_is (self, at, name))
        return at + 1;
      at = self->values[at + 1].next;
    }
  return 0;
}

static guint
find_item (const HcJsonText *self,
           guint list,
           guint64 index)
{
  for (guint at = list + 1; at < self->values[list].next; at = self->values[at].next)
    if (!self->values[at].left_out && index-- == 0)
      return at;
  return 0;
}

/* Takes one step of a path, "[2]" or "name" or ".name", and moves on. */
static guint
take_step (const HcJsonText *self,
           guint value,
           const char **path)
{
  g_autofree char *name = NULL;
  gsize length;

  if (**path == '[')
    {
      char *closing;
      guint64 index = g_ascii_strtoull (*path + 1, &closing, 10);

      *path = *closing == ']' ? closing + 1 : closing;
      return self->values[value].kind == HC_JSON_LIST ? find_item (self, value, index) : 0;
    }
  *path += **path == '.';
  length = strcspn (*path, ".[");
  name = g_strndup (*path, length);
  *path += length;
  if (self->values[value].kind != HC_JSON_OBJECT)
    return 0;
  return hc_json_text_member (self, value, name);
}

/**
 * hc_json_text_find: (skip)
 * @self: a scanned text
 * @path: what to look for, such as "variants[0].pens[2].height_mm"
 * @value: (out): its value, or the last one on the way that exists
 *
 * Returns: whether the whole path exists
 */
gboolean
hc_json_text_find (const HcJsonText *self,
                   const char *path,
                   guint *value)
{
  *value = 0;
  while (*path != '\0')
    {
      guint next = take_step (self, *value, &path);

      if (next == 0)
        return FALSE;
      *value = next;
    }
  return TRUE;
}

static guint
append_item_step (const HcJsonText *self,
                  guint list,
                  guint inside,
                  GString *path)
{
  guint at = list + 1;
  guint index = 0;

  for (; self->values[at].next <= inside; index++)
    at = self->values[at].next;
  g_string_append_printf (path, "[%u]", index);
  return at;
}

static guint
append_member_step (const HcJsonText *self,
                    guint object,
                    guint inside,
                    GString *path)
{
  guint at = object + 1;

  while (self->values[at + 1].next <= inside)
    at = self->values[at + 1].next;
  if (path->len > 0)
    g_string_append_c (path, '.');
  hc_json_text_decode (self, at, path);
  return at + 1;
}

/**
 * hc_json_text_path_of: (skip)
 * @self: a scanned text
 * @value: a value, or a member's name
 *
 * Returns: (transfer full): the path to it, empty for the whole text
 */
char *
hc_json_text_path_of (const HcJsonText *self,
                      guint value)
{
  GString *path = g_string_new (NULL);
  guint at = 0;

  while (at < value)
    at = self->values[at].kind == HC_JSON_LIST ? append_item_step (self, at, value, path)
                                               : append_member_step (self, at, value, path);
  return g_string_free (path, FALSE);
}
