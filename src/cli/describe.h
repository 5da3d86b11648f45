/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A plan in plain words, for those who hear it and do not see it. */
#pragma once

#include "cli/call.h"

G_BEGIN_DECLS

char *hc_describe_birds (const HcCall *call, const char *pen) G_GNUC_WARN_UNUSED_RESULT;
char *hc_describe_pen (const HcCall *call, const HcPen *pen) G_GNUC_WARN_UNUSED_RESULT;
char *hc_describe_openings (const HcCall *call, const HcPen *pen) G_GNUC_WARN_UNUSED_RESULT;
GPtrArray *hc_describe_fittings (const HcCall *call, const HcPen *pen)
    G_GNUC_WARN_UNUSED_RESULT;

G_END_DECLS
