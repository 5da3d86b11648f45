/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Serving birds with seats side by side. */
#pragma once

#include "needs/serve/serving.h"

G_BEGIN_DECLS

/* Private to needs/. */
void hc_seating_serve (const HcNeedContext *context, HcOfferKind kind, const char *figure,
                       HcBodies bodies, HcLevel level, gboolean details, HcServing *serving);

G_END_DECLS
