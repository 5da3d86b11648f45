/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Finds members that stand twice in one object: sorted by a hash of the name
 * as decoded, so that a thousand members cost little and none has a copy. */
#include "config.h"

#include "base/json-names.h"

#include "base/json-escape.h"

#include <stdlib.h>
#include <string.h>

typedef struct
{
  guint64 hash;
  const char *text;
  HcJsonValue place;
} Name;

/* FNV-1a, 64 bits: http://www.isthe.com/chongo/tech/comp/fnv/ */
static guint64
hash_of (const char *bytes,
         gsize length)
{
  guint64 hash = G_GUINT64_CONSTANT (14695981039346656037);

  for (gsize i = 0; i < length; i++)
    hash = (hash ^ (guchar) bytes[i]) * G_GUINT64_CONSTANT (1099511628211);
  return hash;
}

static int
compare_bytes (const char *a,
               gsize a_length,
               const char *b,
               gsize b_length)
{
  int order = memcmp (a, b, MIN (a_length, b_length));

  return order != 0 ? order : (a_length > b_length) - (a_length < b_length);
}

static int
compare_decoded (const Name *a,
                 const Name *b)
{
  g_autoptr (GString) one = g_string_new (NULL);
  g_autoptr (GString) other = g_string_new (NULL);

  hc_json_unescape (a->text + a->place.start, a->text + a->place.end, one);
  hc_json_unescape (b->text + b->place.start, b->text + b->place.end, other);
  return compare_bytes (one->str, one->len, other->str, other->len);
}

static int
compare_names (const Name *a,
               const Name *b)
{
  if (a->hash != b->hash)
    return a->hash < b->hash ? -1 : 1;
  if (a->place.escaped || b->place.escaped)
    return compare_decoded (a, b);
  return compare_bytes (a->text + a->place.start, a->place.end - a->place.start,
                        b->text + b->place.start, b->place.end - b->place.start);
}

static int
compare_for_sorting (gconstpointer a,
                     gconstpointer b)
{
  const Name *one = a, *other = b;
  int order = compare_names (one, other);

  return order != 0 ? order : (one->place.start > other->place.start) - 1;
}

void
hc_json_names_init (HcJsonNames *self)
{
  self->stack = g_array_new (FALSE, FALSE, sizeof (Name));
  self->decoded = g_string_new (NULL);
}

void
hc_json_names_clear (HcJsonNames *self)
{
  g_array_unref (self->stack);
  g_string_free (self->decoded, TRUE);
}

/**
 * hc_json_names_open: (skip)
 * @self: the names
 *
 * Returns: where the names of an object that opens here will start
 */
guint
hc_json_names_open (const HcJsonNames *self)
{
  return self->stack->len;
}

void
hc_json_names_add (HcJsonNames *self,
                   const char *text,
                   const HcJsonValue *name)
{
  Name added = { 0, text, *name };

  if (!name->escaped)
    added.hash = hash_of (text + name->start, name->end - name->start);
  else
    {
      g_string_truncate (self->decoded, 0);
      hc_json_unescape (text + name->start, text + name->end, self->decoded);
      added.hash = hash_of (self->decoded->str, self->decoded->len);
    }
  g_array_append_val (self->stack, added);
}

/**
 * hc_json_names_close: (skip)
 * @self: the names
 * @opened: what hc_json_names_open() gave for the object
 * @twice: (out): where a name stands the second time
 *
 * Forgets the names of an object that closes.
 *
 * Returns: whether every name stood once
 */
gboolean
hc_json_names_close (HcJsonNames *self,
                     guint opened,
                     gsize *twice)
{
  Name *names = &g_array_index (self->stack, Name, opened);
  guint n = self->stack->len - opened;
  gboolean once = TRUE;

  if (n > 1)
    qsort (names, n, sizeof (Name), compare_for_sorting);
  for (guint i = 1; i < n && once; i++)
    if (compare_names (&names[i - 1], &names[i]) == 0)
      {
        *twice = names[i].place.start;
        once = FALSE;
      }
  g_array_set_size (self->stack, opened);
  return once;
}
