/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * How much avoidable risk a night holds. */
#pragma once

#include "climate/night.h"

G_BEGIN_DECLS

/**
 * HC_NIGHT_VENT_FAULTS:
 *
 * What vents can do something about: all but open water.
 */
#define HC_NIGHT_VENT_FAULTS \
  (HC_NIGHT_DAMP_AIR | HC_NIGHT_SWEATING | HC_NIGHT_DRAUGHT | HC_NIGHT_STALE)

guint hc_night_get_faults (const HcNight *night);
guint hc_night_count_faults (const HcNight *night, guint mask);
double hc_night_get_risk (const HcHouseAir *house, const HcHouseAirAsk *ask,
                          const HcNight *night, guint mask);
double hc_night_get_damp_humidity (const HcHouseAir *house, const HcHouseAirAsk *ask);

G_END_DECLS
