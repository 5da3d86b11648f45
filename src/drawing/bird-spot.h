/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Where at a fitting a bird stands, sits or lies, and which way it faces. */
#pragma once

#include "drawing/bird-look.h"

#include "base/point.h"
#include "plan/fitting.h"

G_BEGIN_DECLS

/**
 * HcBirdSpot:
 * @at: the middle of the bird
 * @heading_deg: where it faces
 */
typedef struct
{
  HcPoint at;
  double heading_deg;
} HcBirdSpot;

HcBirdSpot hc_bird_spot_on_bar (HcPoint from, HcPoint to, double part, HcPoint towards);
HcBirdSpot hc_bird_spot_at_edge (const HcFittingValues *fitting, const HcBirdLook *look,
                                 guint seed);
HcBirdSpot hc_bird_spot_in_nest (const HcFittingValues *fitting, guint nest);
HcBirdSpot hc_bird_spot_in_bath (const HcFittingValues *fitting, guint seed);
HcBirdSpot hc_bird_spot_by_heater (const HcFittingValues *fitting, guint which, guint of,
                                   gboolean beside);

G_END_DECLS
