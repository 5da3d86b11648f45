/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What cold alone does to combs. Indicative: our own bands, not published ones. */
#include "config.h"

#include "climate/night.h"

#include "flock/heat-stress.h"

/* Wind at the height of a face is two thirds of what a mast of 10 m shows, km/h. */
#define MAST_SHARE (1.5 * 3.6)

static double
find (const HcBook *book, const char *id)
{
  return hc_book_get_air_figure (book, id)->value;
}

static int
find_band (const HcBook *book, double t_c)
{
  static const char *const bands[]
      = { "comb_low_c", "comb_moderate_c", "comb_high_c", "comb_severe_c" };
  int band = 0;

  for (guint i = 0; i < G_N_ELEMENTS (bands); i++)
    if (t_c < find (book, bands[i]))
      band = (int) i + 1;
  return band;
}

/**
 * hc_cold_risk: (skip)
 * @book: the book
 * @t_c: temperature at the roost, °C
 * @draught_m_s: air that blows on it, m/s
 * @comb: the largest comb of those who sleep there
 *
 * Indicative: the bands are our own; no trial of freezing combs was found. Damp is
 * told apart, since it can be mended.
 *
 * Returns: what cold alone does to the combs
 */
HcColdRisk
hc_cold_risk (const HcBook *book, double t_c, double draught_m_s, HcComb comb)
{
  double felt_c = draught_m_s >= find (book, "chill_m_s")
                      ? hc_wind_chill_c (t_c, draught_m_s * MAST_SHARE) : t_c;
  int band = find_band (book, felt_c);

  if (comb == HC_COMB_NONE || band == 0)
    return HC_COLD_NONE;
  if (comb == HC_COMB_LARGE)
    band++;
  if (comb == HC_COMB_SMALL)
    band--;
  return (HcColdRisk) CLAMP (band, HC_COLD_NONE, HC_COLD_SEVERE);
}

/**
 * hc_cold_find_comb: (skip)
 * @house: the house
 * @ask: what it is made from
 * @space: a space of it
 *
 * Returns: the largest comb of those who sleep there
 */
HcComb
hc_cold_find_comb (const HcHouseAir *house, const HcHouseAirAsk *ask, guint space)
{
  HcComb largest = HC_COMB_NONE;

  for (guint i = 0; i < hc_flock_get_n_rows (ask->flock); i++)
    {
      const HcFlockRow *row = hc_flock_get_row (ask->flock, i);

      const HcBody *body = hc_flock_get_body (ask->flock, row->body);

      if (row->count > 0 && !body->under_heat
          && hc_house_air_get_space (house, ask, row->pen) == (int) space)
        largest = MAX (largest, body->kind->comb);
    }
  return largest;
}
