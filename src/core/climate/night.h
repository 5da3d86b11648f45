/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * One night in the house: how cold, how damp, how stale, and what of it can be mended. */
#pragma once

#include "climate/house-air.h"

G_BEGIN_DECLS

/**
 * HcNightFault:
 * @HC_NIGHT_DAMP_AIR: air at the roost is damp
 * @HC_NIGHT_SWEATING: walls or roof sweat or freeze over
 * @HC_NIGHT_OPEN_WATER: open water stands where birds with combs sleep in frost
 * @HC_NIGHT_DRAUGHT: air blows on the roost
 * @HC_NIGHT_STALE: ammonia or carbon dioxide is over its limit
 *
 * What harms combs and lungs at night and can be mended: a set. Indicative.
 */
typedef enum
{
  HC_NIGHT_DAMP_AIR = 1 << 0,
  HC_NIGHT_SWEATING = 1 << 1,
  HC_NIGHT_OPEN_WATER = 1 << 2,
  HC_NIGHT_DRAUGHT = 1 << 3,
  HC_NIGHT_STALE = 1 << 4,
} HcNightFault;

/**
 * HcColdRisk:
 * @HC_COLD_NONE: combs do not freeze
 * @HC_COLD_LOW: they hardly do
 * @HC_COLD_MODERATE: they may
 * @HC_COLD_HIGH: they are likely to
 * @HC_COLD_SEVERE: they do
 *
 * What cold alone does to the combs of a flock. Indicative.
 */
typedef enum
{
  HC_COLD_NONE,
  HC_COLD_LOW,
  HC_COLD_MODERATE,
  HC_COLD_HIGH,
  HC_COLD_SEVERE,
} HcColdRisk;

/**
 * HcRange:
 * @low: the lowest it may be
 * @high: the highest it may be
 *
 * How sure a figure is.
 */
typedef struct
{
  double low;
  double high;
} HcRange;

/**
 * HcNightSpace:
 * @pen: (transfer none): id of the first pen of the space
 * @birds: birds that sleep there
 * @air: its air
 * @fresh_m3_h: fresh air, m³/h
 * @water_g_h: fog, dew and frost that settle, g/h
 * @draught_m_s: air that blows on the roost, m/s
 * @n_wet_surfaces: walls and roofs that sweat or freeze over and need not
 * @faults: a set of #HcNightFault
 * @cold: what cold alone does
 * @t_c: how sure the temperature is, °C
 * @humidity: how sure the humidity is
 * @co2_ppm: how sure the carbon dioxide is, ppm
 *
 * The night of one air space.
 */
typedef struct
{
  const char *pen;
  gint64 birds;
  HcAirSpaceState air;
  double fresh_m3_h;
  double water_g_h;
  double draught_m_s;
  guint n_wet_surfaces;
  guint faults;
  HcColdRisk cold;
  HcRange t_c;
  HcRange humidity;
  HcRange co2_ppm;
} HcNightSpace;

/**
 * HcNight:
 * @air_faults: a set of #HcAirFault
 * @n_states: in how many states the house can stay
 * @n_spaces: how many spaces it has; 0 where nothing is under a roof
 * @spaces: (array length=n_spaces): each of them
 * @worst: the space with birds that is worst off
 * @state: the state told of
 *
 * One night in the house: of several states it can stay in, the dampest.
 */
typedef struct
{
  guint air_faults;
  guint n_states;
  guint n_spaces;
  HcNightSpace spaces[HC_AIR_MOST_SPACES];
  guint worst;
  HcAirState state;
} HcNight;

void hc_night_work_out (const HcHouseAirAsk *ask, HcNight *night);
void hc_night_settle (const HcHouseAir *house, const HcHouseAirAsk *ask, const HcAirState *near,
                      HcNight *night);
const HcNightSpace *hc_night_get_worst (const HcNight *night);
gboolean hc_night_is_sweating (const HcNight *night, const HcHouseAir *house, guint surface);
void hc_night_find_ranges (const HcHouseAirAsk *ask, HcNight *night);

/* Where birds sleep, and what blows on them. */
double hc_roost_get_draught_m_s (const HcBook *book, const HcHouseAir *house,
                                 const HcAirState *state, guint space);
HcColdRisk hc_cold_risk (const HcBook *book, double t_c, double draught_m_s, HcComb comb);
HcComb hc_cold_find_comb (const HcHouseAir *house, const HcHouseAirAsk *ask, guint space);

G_END_DECLS
