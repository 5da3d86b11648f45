/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Tells why birds do not get up, or not down unhurt. */
#pragma once

#include "needs/answer.h"
#include "needs/climb/routes.h"
#include "needs/context.h"

G_BEGIN_DECLS

/* Private to needs/. */
void hc_climb_tell (const HcNeedContext *context, const HcRoutes *routes, HcRoute route,
                    guint ledge, guint body, HcAnswer *answer);

G_END_DECLS
