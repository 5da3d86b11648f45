/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A small house with ten hens, as the tests of the balance vary it. */
#include "config.h"

#include "small-house.h"

#include "air/moist-air.h"
#include "air/open-water.h"
#include "air/surface.h"

#include <math.h>

#define G_H (1 / 3.6e6)

/* Model C: the birds' breath alone; litter and drinker are wet things. Model A: bird
 * and litter together, their water taken out of their heat. */
static void
emit (gconstpointer who, double t_c, HcAirSource *source)
{
  const SmallFlock *flock = who;
  double heat_w = flock->heat_w * hc_bird_heat_share (&flock->air, t_c);
  double breath_w = flock->birds * 2 * flock->air.night_share
                    * hc_bird_breath_g_h_kg (&flock->air, t_c) * G_H * HC_LATENT_J_KG;
  double latent_w = MIN (breath_w, heat_w);

  if (flock->with_litter)
    latent_w = heat_w
               - flock->heat_w * hc_bird_heat_warming_share (&flock->air, flock->law, t_c);
  source->heat_w = heat_w - latent_w;
  source->vapour_kg_s = latent_w / HC_LATENT_J_KG;
  source->co2_m3_s = flock->air.co2_m3_h_kw * heat_w / 1000 / 3600;
  source->ammonia_kg_s = flock->birds * 0.15e-3 / 86400;
}

static HcAirPath
make_vent (double area_m2, double z_m)
{
  HcAirPath vent
      = { .beyond = HC_AIR_OUTSIDE, .effective_m2 = HC_DISCHARGE_SHARP * area_m2, .bottom_m = z_m };

  return vent;
}

void
small_house_set_vents (SmallHouse *self, double area_m2)
{
  self->paths[0] = make_vent (area_m2, 0.3);
  self->paths[1] = make_vent (area_m2, 1.7);
}

void
small_house_take_litter_with_birds (SmallHouse *self)
{
  self->flock.with_litter = TRUE;
  self->house.n_wets = 0;
}

static HcAirSurface
make_surface (double area_m2, double u_w_m2k, double film_m2k_w)
{
  HcAirSurface surface = { .beyond = HC_AIR_OUTSIDE,
                           .area_m2 = area_m2,
                           .u_w_m2k = u_w_m2k,
                           .film_m2k_w = film_m2k_w };

  return surface;
}

/* 2.4 by 1.8 by 1.8 m; vents of 5 dm² at 0.3 and 1.7 m; 80 % outside, over ice. */
void
small_house_init (SmallHouse *self, HcBook *book, double outside_c, gboolean insulated)
{
  SmallFlock flock = { .law = hc_book_get_heat_law (book, "hen_floor"), .birds = 10 };
  HcAirWet litter = { .at_air = TRUE,
                      .kg_s_pa = 10 * 2.0 * G_H / (0.4 * hc_saturation_pa (20)),
                      .most_kg_s = G_MAXDOUBLE };

  hc_bird_air_init (&flock.air, book);
  flock.heat_w = 10 * flock.air.night_share * hc_bird_heat_at_20_w (flock.law, 2, 0.05);
  self->flock = flock;
  self->surfaces[0] = make_surface (15.12, insulated ? 0.517 : 3.757, HC_FILM_WALL);
  self->surfaces[1] = make_surface (4.32, insulated ? 0.40 : 4.235, HC_FILM_ROOF);
  self->wets[0] = litter;
  self->house = (HcAirHouse){
    .outside = { outside_c, 0.8, HC_STANDARD_PRESSURE_PA, 0, 420 },
    .n_spaces = 1,
    .spaces = { { emit, &self->flock, 0, hc_floor_edge_w_k (8.4, 1.263) } },
    .n_paths = 2,
    .paths = self->paths,
    .n_surfaces = 2,
    .surfaces = self->surfaces,
    .n_wets = 1,
    .wets = self->wets,
  };
  small_house_set_vents (self, 0.05);
}
