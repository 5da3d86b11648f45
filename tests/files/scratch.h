/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A folder for one test, emptied and removed after it. */
#pragma once

#include <gio/gio.h>

G_BEGIN_DECLS

char *scratch_folder_new (void) G_GNUC_WARN_UNUSED_RESULT;
void scratch_folder_remove (char *folder);
guint scratch_folder_count (const char *folder);

char *scratch_read (const char *path) G_GNUC_WARN_UNUSED_RESULT;
void scratch_write (const char *path,
                    const char *text);

G_END_DECLS
