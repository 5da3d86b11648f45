/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The keeper's language for what the data says in English. */
#pragma once

#include <glib.h>

G_BEGIN_DECLS

/* Private to book/. NULL stays NULL. */
const char *hc_translate (const char *english);
const char *hc_translate_count (const char *one, const char *many, gulong count);

G_END_DECLS
