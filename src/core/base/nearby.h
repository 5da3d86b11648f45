/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Finds what lies near a place without looking at everything. */
#pragma once

#include "base/box.h"

G_BEGIN_DECLS

typedef struct _HcNearby HcNearby;

HcNearby *hc_nearby_new (const HcBox *boxes, guint n_boxes) G_GNUC_WARN_UNUSED_RESULT;
void hc_nearby_free (HcNearby *nearby);
GArray *hc_nearby_find (const HcNearby *nearby, HcBox box) G_GNUC_WARN_UNUSED_RESULT;

G_DEFINE_AUTOPTR_CLEANUP_FUNC (HcNearby, hc_nearby_free)

G_END_DECLS
