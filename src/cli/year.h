/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The year written out. */
#pragma once

#include "cli/call.h"
#include "season/ask/question.h"

G_BEGIN_DECLS

void hc_year_write_json (const HcCall *call, const HcYear *year, GString *out);
void hc_year_write_csv (const HcYear *year, GString *out);
gboolean hc_year_ask (const HcCall *call, HcTallier *tallier, GString *out, GError **error);
void hc_year_tell (const HcCall *call, const HcYear *year, GString *out);

G_END_DECLS
