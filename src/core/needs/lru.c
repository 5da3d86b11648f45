/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A hash table beside a queue, the last used in front. */
#include "config.h"

#include "needs/lru.h"

typedef struct
{
  gpointer key;
  gpointer value;
  GDestroyNotify free_value;
} Entry;

struct _HcLru
{
  guint most;
  GHashTable *links;
  GQueue entries;
  GDestroyNotify free_key;
};

HcLru *
hc_lru_new (guint most, GHashFunc hash, GEqualFunc equal, GDestroyNotify free_key)
{
  HcLru *self = g_new0 (HcLru, 1);

  self->most = most;
  self->links = g_hash_table_new (hash, equal);
  self->free_key = free_key;
  return self;
}

static void
forget_last (HcLru *self)
{
  Entry *entry = g_queue_pop_tail (&self->entries);

  g_hash_table_remove (self->links, entry->key);
  entry->free_value (entry->value);
  self->free_key (entry->key);
  g_free (entry);
}

void
hc_lru_free (HcLru *self)
{
  while (!g_queue_is_empty (&self->entries))
    forget_last (self);
  g_hash_table_unref (self->links);
  g_free (self);
}

gpointer
hc_lru_find (HcLru *self, gconstpointer key)
{
  GList *link = g_hash_table_lookup (self->links, key);

  if (link == NULL)
    return NULL;
  g_queue_unlink (&self->entries, link);
  g_queue_push_head_link (&self->entries, link);
  return ((Entry *) link->data)->value;
}

/* Takes over @key and @value; @key must not be in the table yet. */
void
hc_lru_keep (HcLru *self, gpointer key, gpointer value, GDestroyNotify free_value)
{
  Entry *entry = g_new (Entry, 1);

  *entry = (Entry) { key, value, free_value };
  g_queue_push_head (&self->entries, entry);
  g_hash_table_insert (self->links, key, self->entries.head);
  if (self->entries.length > self->most)
    forget_last (self);
}

guint
hc_lru_get_size (const HcLru *self)
{
  return self->entries.length;
}
