/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Moisture of every space at temperatures that are tried. */
#include "config.h"

#include "air/trial.h"

#include "air/moist-air.h"

#include <math.h>
#include <string.h>

#define MOST_STEPS 1000

/* From the corners of the balance bold steps may go to and fro: from then on only
 * one in so many is bold. */
#define N_BOLD_STEPS 10
#define BOLD_EVERY 50

/* kg/kg: as good as none. */
#define SETTLED 1e-14

/* A careful step takes things that dry, have dried or lie in wetter air for wet: it
 * falls short and never goes too far. */
typedef struct
{
  gboolean careful;
  HcDense slope;
  double short_kg_s[HC_AIR_MOST_SPACES];
} Water;

/* Water that comes with the air, less what goes with it, and the slopes of that. */
static void
add_air (const HcAirTrial *trial, Water *water)
{
  for (guint i = 0; i < trial->house->n_spaces; i++)
    {
      const HcAirExchange *exchange = &trial->exchange;

      water->slope[i][i] += exchange->into_kg_s[i] + 1e-15;
      water->short_kg_s[i] += exchange->fresh_kg_s[i] * trial->outside_ratio
                              - exchange->into_kg_s[i] * trial->ratio[i]
                              + trial->source[i].vapour_kg_s;
      for (guint from = 0; from < trial->house->n_spaces; from++)
        {
          water->slope[i][from] -= exchange->between_kg_s[from][i];
          water->short_kg_s[i] += exchange->between_kg_s[from][i] * trial->ratio[from];
        }
    }
}

static double
find_wet_pa (const HcAirTrial *trial, const HcAirWet *wet)
{
  return hc_saturation_pa (wet->at_air ? trial->t_c[wet->space] : wet->t_c);
}

static void
add_wets (HcAirTrial *trial, const double *wet_pa, Water *water)
{
  double pressure_pa = trial->house->outside.pressure_pa;

  memset (trial->drying_kg_s, 0, sizeof trial->drying_kg_s);
  for (guint i = 0; i < trial->house->n_wets; i++)
    {
      const HcAirWet *wet = &trial->house->wets[i];
      double vapour_pa = hc_vapour_from_ratio_pa (trial->ratio[wet->space], pressure_pa);
      double drying = wet->kg_s_pa * (wet_pa[i] - vapour_pa);
      double kept = pressure_pa - vapour_pa;

      if (water->careful || (drying > 0 && drying < wet->most_kg_s))
        water->slope[wet->space][wet->space]
            += wet->kg_s_pa * kept * kept / (0.621945 * pressure_pa);
      drying = CLAMP (drying, 0, wet->most_kg_s);
      trial->drying_kg_s[wet->space] += drying;
      water->short_kg_s[wet->space] += drying;
    }
}

static void
add_surfaces (const HcAirTrial *trial, const double *face_ratio, Water *water)
{
  for (guint i = 0; i < trial->house->n_surfaces; i++)
    {
      const HcAirSurface *surface = &trial->house->surfaces[i];
      double k = surface->deposition_kg_m2_s * surface->area_m2;
      double beyond = trial->ratio[surface->space] - face_ratio[i];

      if (beyond > 0)
        water->slope[surface->space][surface->space] += k;
      water->short_kg_s[surface->space] -= k * MAX (beyond, 0);
    }
}

/* Air that is full stays full; what is beyond becomes fog and frost. */
static void
hold_full (HcAirTrial *trial, Water *water)
{
  guint n = trial->house->n_spaces;

  for (guint i = 0; i < n; i++)
    {
      trial->moisture_kg_s[i] = water->short_kg_s[i];
      trial->full[i] = trial->ratio[i] >= trial->full_ratio[i] - 2 * SETTLED
                       && water->short_kg_s[i] >= 0;
      if (!trial->full[i])
        continue;
      memset (water->slope[i], 0, n * sizeof (double));
      water->slope[i][i] = 1;
      water->short_kg_s[i] = 0;
    }
}

/* Returns how far it went. */
static double
take_step (HcAirTrial *trial, Water *water)
{
  guint n = trial->house->n_spaces;
  double longest = 0;

  hc_dense_solve (n, water->slope, water->short_kg_s);
  for (guint i = 0; i < n; i++)
    {
      double next = CLAMP (trial->ratio[i] + water->short_kg_s[i], 0, trial->full_ratio[i]);

      longest = MAX (longest, fabs (next - trial->ratio[i]));
      trial->ratio[i] = next;
    }
  return longest;
}

/**
 * hc_air_trial_settle_moisture: (skip)
 * @trial: its temperatures, flows and sources; its ratios are settled
 *
 * Water in is water out in every space: what comes with the air, what those who
 * live there give, what dries up, less what goes with the air and what freezes to
 * the surfaces. Each is linear but for corners, so that Newton's steps end.
 */
void
hc_air_trial_settle_moisture (HcAirTrial *trial)
{
  const HcAirHouse *house = trial->house;
  double *wet_pa = g_newa (double, house->n_wets + 1);
  double *face_ratio = g_newa (double, house->n_surfaces + 1);

  for (guint i = 0; i < house->n_wets; i++)
    wet_pa[i] = find_wet_pa (trial, &house->wets[i]);
  for (guint i = 0; i < house->n_surfaces; i++)
    face_ratio[i] = house->surfaces[i].deposition_kg_m2_s > 0
                        ? hc_moist_air_ratio (
                            hc_air_trial_get_surface_c (trial, &house->surfaces[i]), 1,
                            house->outside.pressure_pa)
                        : 0;
  for (guint i = 0; i < MOST_STEPS; i++)
    {
      Water water = { i >= N_BOLD_STEPS && i % BOLD_EVERY != 0 };

      add_air (trial, &water);
      add_wets (trial, wet_pa, &water);
      add_surfaces (trial, face_ratio, &water);
      hold_full (trial, &water);
      if (take_step (trial, &water) <= SETTLED)
        break;
    }
}
