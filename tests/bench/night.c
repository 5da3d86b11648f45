/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * One night of one air space, and charts of nights. */
#include "config.h"

#include "air/moist-air.h"
#include "air/steady.h"
#include "air/surface.h"
#include "bench.h"
#include "yardstick.h"

#define N_NIGHTS 2000
#define CHART_SIDE 50

typedef struct
{
  HcAirPath paths[24];
  HcAirSurface surfaces[18];
  HcAirWet wets[6];
  HcAirHouse house;
} BenchHouse;

static void
emit (gconstpointer who, double t_c, HcAirSource *source)
{
  double watts = 100 * CLAMP (1 + 0.02 * (20 - t_c), 0, 2);

  source->vapour_kg_s = 8e-6;
  source->heat_w = watts - source->vapour_kg_s * HC_LATENT_J_KG;
  source->co2_m3_s = 5e-8 * watts;
  source->ammonia_kg_s = 2e-8;
}

static void
add_space (BenchHouse *bench, int space)
{
  HcAirHouse *house = &bench->house;

  house->spaces[space] = (HcAirSpace){ emit, NULL, 0, 10 };
  for (guint i = 0; i < 8; i++)
    bench->paths[house->n_paths++] = (HcAirPath){ .space = space,
                                                  .beyond = HC_AIR_OUTSIDE,
                                                  .effective_m2 = 0.006 * (1 + i % 3),
                                                  .bottom_m = 0.2 + 0.25 * i,
                                                  .height_m = 0.15,
                                                  .pressure_coefficient = i % 2 ? 0.5 : -0.4,
                                                  .stir_m3_s = 0.0005 };
  if (space > 0)
    bench->paths[house->n_paths - 1].beyond = space - 1;
  for (guint i = 0; i < 6; i++)
    bench->surfaces[house->n_surfaces++]
        = (HcAirSurface){ .space = space,
                          .beyond = HC_AIR_OUTSIDE,
                          .area_m2 = 4,
                          .u_w_m2k = 1.5,
                          .film_m2k_w = HC_FILM_WALL,
                          .deposition_kg_m2_s = HC_DEPOSITION_KG_M2_S };
  bench->wets[house->n_wets++] = (HcAirWet){ space, TRUE, 0, 6e-9, G_MAXDOUBLE };
  bench->wets[house->n_wets++] = (HcAirWet){ space, FALSE, 5, 1e-9, G_MAXDOUBLE };
}

static void
make_house (BenchHouse *bench, guint n_spaces)
{
  bench->house = (HcAirHouse){
    .outside = { -10, 0.9, HC_STANDARD_PRESSURE_PA, 2, 420 },
    .n_spaces = n_spaces,
    .paths = bench->paths,
    .surfaces = bench->surfaces,
    .wets = bench->wets,
  };
  for (guint i = 0; i < n_spaces; i++)
    add_space (bench, (int) i);
}

static double
time_night_us (void)
{
  BenchHouse bench;
  HcAirStates states;
  double start_ms;

  make_house (&bench, 1);
  start_ms = hc_processor_ms ();
  for (guint i = 0; i < N_NIGHTS; i++)
    {
      bench.house.outside.t_c = -20 + 30.0 * i / N_NIGHTS;
      hc_air_settle (&bench.house, &states);
    }
  return (hc_processor_ms () - start_ms) / N_NIGHTS * 1000;
}

static double
time_chart_ms (guint n_spaces)
{
  BenchHouse bench;
  double start_ms = hc_processor_ms ();

  for (guint row = 0; row < CHART_SIDE; row++)
    {
      HcAirStates states = { 0 };

      make_house (&bench, n_spaces);
      for (guint path = 0; path < bench.house.n_paths; path++)
        bench.paths[path].effective_m2 *= 0.05 + 2.0 * row / CHART_SIDE;
      for (guint column = 0; column < CHART_SIDE; column++)
        {
          HcAirState near = states.states[states.worst];

          bench.house.outside.t_c = -25 + 35.0 * column / CHART_SIDE;
          if (column == 0)
            hc_air_settle (&bench.house, &states);
          else
            hc_air_settle_near (&bench.house, &near, &states);
        }
    }
  return hc_processor_ms () - start_ms;
}

int
main (void)
{
  bench_report ("one night of one air space", time_night_us (), 80, "µs");
  bench_report ("a chart of 50 by 50, one air space", time_chart_ms (1), 100, "ms");
  bench_report ("a chart of 50 by 50, three air spaces", time_chart_ms (3), 300, "ms");
  return 0;
}
