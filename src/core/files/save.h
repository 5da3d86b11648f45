/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Putting text in a file so that the old file or the new one is there. */
#pragma once

#include <gio/gio.h>

G_BEGIN_DECLS

gboolean hc_save_local (const char *path,
                        const char *text,
                        gsize length,
                        GError **error);
gboolean hc_save_remote (GFile *file,
                         const char *text,
                         gsize length,
                         const char *etag,
                         GError **error);

G_END_DECLS
