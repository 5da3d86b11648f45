/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Whether there is clear floor to land on in front of a ledge. */
#pragma once

#include "needs/climb/ledge.h"

G_BEGIN_DECLS

void hc_landing_find (const HcRoom *room, HcLedge *ledge, double width_mm);
HcShape *hc_landing_get_strip (const HcLedge *ledge, double depth_mm) G_GNUC_WARN_UNUSED_RESULT;

G_END_DECLS
