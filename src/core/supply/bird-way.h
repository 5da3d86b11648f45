/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * How far birds walk to what they need, round what stands on the floor and
 * through the openings between rooms. */
#pragma once

#include "supply/bird-floor.h"

G_BEGIN_DECLS

typedef struct _HcBirdWay HcBirdWay;

HcBirdWay *hc_bird_way_new (HcRoom *const *rooms, guint n_rooms, const HcWalker *bird,
                            HcFittingKind kind) G_GNUC_WARN_UNUSED_RESULT;
void hc_bird_way_free (HcBirdWay *self);
const HcFitting *hc_bird_way_find_straight (const HcBirdWay *self, HcPoint from,
                                            double *distance_mm);
const HcFitting *hc_bird_way_find (HcBirdWay *self, guint room, HcPoint from,
                                   double *distance_mm);

G_DEFINE_AUTOPTR_CLEANUP_FUNC (HcBirdWay, hc_bird_way_free)

G_END_DECLS
