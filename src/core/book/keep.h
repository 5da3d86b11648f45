/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What a book keeps: texts and tables freed together with the last user. */
#pragma once

#include <glib.h>

G_BEGIN_DECLS

/* Private to book/. Filled while loading by one thread, only read after. */
typedef struct _HcKeep HcKeep;

HcKeep *hc_keep_new (void) G_GNUC_WARN_UNUSED_RESULT;
HcKeep *hc_keep_ref (HcKeep *self);
void hc_keep_unref (HcKeep *self);
const char *hc_keep_text (HcKeep *self, const char *text);
gpointer hc_keep_table (HcKeep *self, GArray *table);

G_DEFINE_AUTOPTR_CLEANUP_FUNC (HcKeep, hc_keep_unref)

G_END_DECLS
