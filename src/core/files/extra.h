/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Members this version does not know, kept for those that do. */
#pragma once

#include "base/json-text.h"

G_BEGIN_DECLS

void hc_extra_add (GString *extra,
                   const HcJsonText *json,
                   guint name);
void hc_extra_write (const char *extra,
                     guint depth,
                     GString *into);

G_END_DECLS
