/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Things the keeper must get a hand to. */
#pragma once

#include "supply/way-through.h"

G_BEGIN_DECLS

/* Private to needs/. @arm_mm: how far a hand reaches. */
gboolean hc_service_is_wanted (const HcFitting *fitting);
gboolean hc_service_reaches (const HcWayThrough *through, HcHouse *house, guint room,
                             guint fitting, double arm_mm);
gboolean hc_service_reaches_in (const HcWayThrough *through, HcHouse *house, guint room);
gboolean hc_service_has_outside_door (HcHouse *house, guint room);
const char *hc_service_find_blocker (const HcWayThrough *through, HcHouse *house, guint room,
                                     guint fitting);

G_END_DECLS
