/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Texts and tables freed together. */
#include "config.h"

#include "book/keep.h"

struct _HcKeep
{
  GStringChunk *texts;
  GPtrArray *tables;
};

HcKeep *
hc_keep_new (void)
{
  HcKeep *self = g_atomic_rc_box_new0 (HcKeep);

  self->texts = g_string_chunk_new (4096);
  self->tables = g_ptr_array_new_with_free_func (g_free);
  return self;
}

HcKeep *
hc_keep_ref (HcKeep *self)
{
  return g_atomic_rc_box_acquire (self);
}

static void
clear (gpointer data)
{
  HcKeep *self = data;

  g_string_chunk_free (self->texts);
  g_ptr_array_unref (self->tables);
}

void
hc_keep_unref (HcKeep *self)
{
  g_atomic_rc_box_release_full (self, clear);
}

/* Equal texts are kept once. */
const char *
hc_keep_text (HcKeep *self, const char *text)
{
  return text != NULL ? g_string_chunk_insert_const (self->texts, text) : NULL;
}

/* Takes the elements of @table, which is used up; NULL when there are none. */
gpointer
hc_keep_table (HcKeep *self, GArray *table)
{
  gpointer elements = g_array_free (table, FALSE);

  if (elements != NULL)
    g_ptr_array_add (self->tables, elements);
  return elements;
}
