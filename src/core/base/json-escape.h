/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Text as JSON writes it, and back. */
#pragma once

#include <glib.h>

G_BEGIN_DECLS

void hc_json_unescape (const char *from,
                       const char *to,
                       GString *into);
void hc_json_escape (const char *text,
                     GString *into);

G_END_DECLS
