/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Floor that no fitting and no other bird is on. */
#pragma once

#include "base/box.h"
#include "plan/layout.h"

G_BEGIN_DECLS

typedef struct _HcElbowRoom HcElbowRoom;

HcElbowRoom *hc_elbow_room_new (const HcLayout *layout);
void hc_elbow_room_free (HcElbowRoom *self);
gboolean hc_elbow_room_is_free (const HcElbowRoom *self, const char *pen, HcPoint at,
                                double radius_mm);
gboolean hc_elbow_room_find (const HcElbowRoom *self, const char *pen, double radius_mm,
                             guint seed, HcPoint *at);
void hc_elbow_room_take (HcElbowRoom *self, HcPoint at, double radius_mm);
double hc_elbow_room_get_area_mm2 (const HcElbowRoom *self, const char *pen);

G_DEFINE_AUTOPTR_CLEANUP_FUNC (HcElbowRoom, hc_elbow_room_free)

G_END_DECLS
