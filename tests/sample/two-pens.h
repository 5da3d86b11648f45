/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A small plan to edit: two pens of 3 × 2 m side by side, sharing a wall. */
#pragma once

#include "plan/plan.h"

/* Pens "left" and "right" with corners
 *
 *   k1 (0,0) ---a--- k2 (3000,0) ---e--- k5 (6000,0)
 *   d               m                  f
 *   k4 (0,2000) -c-- k3 (3000,2000) -g-- k6 (6000,2000)
 *
 * all walls 100 mm thick; m runs from k3 to k2. "feeder" stands in the left pen
 * at (1000, 1000), "drinker" in the right one at (5000, 1000), "post" loose at
 * (9000, 9000); "door" is in wall a at 1500, "hole" in wall c at 700; the group
 * "hens" lives on the left. */
HcPlan *two_pens_new (void);

HcFitting *sample_fitting (const char *id, double x_mm, double y_mm);
HcOpening *sample_opening (const char *id, const char *wall, double along_mm, double width_mm);
const HcFittingValues *fitting_in (HcPlan *plan, const char *id);
const HcOpeningValues *opening_in (HcPlan *plan, const char *id);
const char *home_of_fitting (HcPlan *plan, const char *id);
HcPoint place_of (HcPlan *plan, const char *opening);
void assert_sound (HcPlan *plan);
void assert_refused (HcPlan *plan, GError **error);
