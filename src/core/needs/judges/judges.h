/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * One record for each need. */
#pragma once

#include "needs/need.h"

G_BEGIN_DECLS

/* Private to needs/. */
extern const HcNeed hc_need_floor;
extern const HcNeed hc_need_run;
extern const HcNeed hc_need_roost;
extern const HcNeed hc_need_nests;
extern const HcNeed hc_need_feed;
extern const HcNeed hc_need_water;
extern const HcNeed hc_need_warmth;
extern const HcNeed hc_need_way_out;
extern const HcNeed hc_need_litter;
extern const HcNeed hc_need_light;
extern const HcNeed hc_need_air;
extern const HcNeed hc_need_reach;
extern const HcNeed hc_need_climb;
extern const HcNeed hc_need_clearance;
extern const HcNeed hc_need_predators;
extern const HcNeed hc_need_company;
extern const HcNeed hc_need_site_rules;

G_END_DECLS
