/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A table that forgets what was used longest ago. */
#pragma once

#include <glib.h>

G_BEGIN_DECLS

/* Private to needs/. */
typedef struct _HcLru HcLru;

HcLru *hc_lru_new (guint most, GHashFunc hash, GEqualFunc equal, GDestroyNotify free_key)
    G_GNUC_WARN_UNUSED_RESULT;
void hc_lru_free (HcLru *self);
gpointer hc_lru_find (HcLru *self, gconstpointer key);
void hc_lru_keep (HcLru *self, gpointer key, gpointer value, GDestroyNotify free_value);
guint hc_lru_get_size (const HcLru *self);

G_DEFINE_AUTOPTR_CLEANUP_FUNC (HcLru, hc_lru_free)

G_END_DECLS
