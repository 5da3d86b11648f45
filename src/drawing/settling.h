/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Settling birds one after another; private to bird-scene. */
#pragma once

#include "drawing/bird-scene.h"
#include "drawing/bird-spot.h"
#include "drawing/elbow-room.h"

G_BEGIN_DECLS

/**
 * HcSettling:
 * @scene: who is to be settled
 * @room: the floor that is left
 * @places: (element-type HcBirdPlace): where those settled are
 * @settled: for each bird, whether it is
 * @used: for each seat, how many have it by day
 */
typedef struct
{
  const HcBirdScene *scene;
  HcElbowRoom *room;
  GArray *places;
  gboolean *settled;
  gint64 *used;
} HcSettling;

const HcSceneBird *hc_settling_bird (const HcSettling *work, guint bird);
const HcSceneSeat *hc_settling_seat (const HcSettling *work, guint seat);
HcBirdLook hc_settling_look (const HcSceneBird *bird);
gboolean hc_settling_may_go_to (const HcSceneBird *bird, const char *pen);
const HcFittingValues *hc_settling_fitting (const HcSettling *work, const char *id);
void hc_settling_settle (HcSettling *work, guint which, HcBirdSpot spot, HcBirdDoing doing,
                         gboolean wanting);
void hc_settle_for_the_night (HcSettling *work);
void hc_settle_by_day (HcSettling *work);

G_END_DECLS
