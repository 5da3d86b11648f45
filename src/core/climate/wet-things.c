/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Birds of each space, their litter, and water that stands about. */
#include "config.h"

#include "climate/house-air.h"

#include "air/open-water.h"
#include "air/saturation.h"
#include "plan/fitting.h"

#include <math.h>

#define MM_M 1e-3
#define G_H (1 / 3.6e6)
#define G_DAY (1 / 8.64e7)

/* Air of 20 °C and 60 %, which litter's figures are stated for, is short of this, Pa. */
#define STATED_SHORT_PA (0.4 * 2338.8)

static double
find (const HcHouseAirAsk *ask, const char *id)
{
  return hc_book_get_air_figure (hc_flock_get_book (ask->flock), id)->value;
}

static gboolean
is_waterfowl (const HcKind *kind)
{
  return kind->species == HC_SPECIES_DUCK || kind->species == HC_SPECIES_GOOSE;
}

static void
add_wet (HcHouseAir *self, int space, double kg_s_pa, double most_kg_s)
{
  HcAirWet wet = { .space = space, .at_air = TRUE, .kg_s_pa = kg_s_pa, .most_kg_s = most_kg_s };

  if (kg_s_pa > 0 && most_kg_s > 0)
    g_array_append_val (self->wets, wet);
}

/* Droppings that are taken out leave their water outside. */
static double
find_litter_share (const HcHouseAirAsk *ask, const char *pen)
{
  guint room;

  return hc_house_find_room (ask->house, pen, &room)
                 && hc_room_get (hc_house_get_room (ask->house, room))->droppings_cleared
             ? find (ask, "cleared_share") : 1;
}

/* What is spilled lies in the litter and dries as it does, but no more than there is. */
static void
add_row (HcHouseAir *self, const HcHouseAirAsk *ask, const HcFlockRow *row, double *litter_kg,
         double *spilled)
{
  int space = hc_house_air_get_space (self, ask, row->pen);
  const HcBody *body = hc_flock_get_body (ask->flock, row->body);
  const HcKind *kind = body->kind;
  double share = is_waterfowl (kind) ? ask->guesses.at[HC_GUESS_SPLASHED]
                                     : find (ask, "spilled_share");

  if (space == HC_AIR_OUTSIDE)
    return;
  hc_space_flock_add (&self->flocks[space], hc_flock_get_book (ask->flock), body, row->count);
  litter_kg[space] += row->count * body->mass_kg * find_litter_share (ask, row->pen);
  spilled[space] += row->count * share * kind->water_ml * MIN (body->mass_kg / kind->hen_kg, 1)
                    * G_DAY;
}

static void
add_litter (HcHouseAir *self, const HcHouseAirAsk *ask, int space, double litter_kg,
            double spilled_kg_s)
{
  double litter_kg_s = litter_kg / 2 * ask->guesses.at[HC_GUESS_LITTER] * G_H;

  add_wet (self, space, litter_kg_s / STATED_SHORT_PA, G_MAXDOUBLE);
  add_wet (self, space, 2 * spilled_kg_s / STATED_SHORT_PA, spilled_kg_s);
}

void
hc_house_air_add_birds (HcHouseAir *self, const HcHouseAirAsk *ask)
{
  double litter_kg[HC_AIR_MOST_SPACES] = { 0 };
  double spilled[HC_AIR_MOST_SPACES] = { 0 };

  for (guint i = 0; i < self->air.n_spaces; i++)
    {
      hc_bird_air_init (&self->flocks[i].air, hc_flock_get_book (ask->flock));
      self->flocks[i].air.night_share = ask->guesses.at[HC_GUESS_NIGHT_HEAT];
      self->flocks[i].awake = ask->weather.sun;
      self->air.spaces[i].emit = hc_space_flock_emit;
      self->air.spaces[i].who = &self->flocks[i];
    }
  for (guint i = 0; i < hc_flock_get_n_rows (ask->flock); i++)
    add_row (self, ask, hc_flock_get_row (ask->flock, i), litter_kg, spilled);
  for (guint i = 0; i < self->air.n_spaces; i++)
    add_litter (self, ask, (int) i, litter_kg[i], spilled[i]);
}

static double
find_open_water_m2 (const HcFittingValues *values)
{
  double across_mm2 = values->width_mm * values->depth_mm;

  if (values->kind != HC_FITTING_DRINKER || values->form == HC_FORM_NIPPLES
      || values->form == HC_FORM_CUPS)
    return 0;
  return across_mm2 * MM_M * MM_M * (values->form == HC_FORM_ROUND ? G_PI / 4 : 1);
}

static void
add_drinker (HcHouseAir *self, const HcHouseAirAsk *ask, int space, const HcFittingValues *values)
{
  HcAirWet water = {
    .space = space,
    .at_air = !values->heated,
    .t_c = find (ask, "kept_warm_c"),
    .kg_s_pa = hc_open_water_kg_s_pa (find_open_water_m2 (values), find (ask, "drinker_activity")),
    .most_kg_s = G_MAXDOUBLE,
    .open_water = TRUE,
  };

  if (values->out_at_night && !ask->weather.sun)
    return;
  if (water.kg_s_pa > 0)
    g_array_append_val (self->wets, water);
}

static gboolean
gives_heat (const HcFittingValues *values)
{
  return values->kind == HC_FITTING_FLOOR_HEAT_PAD || values->kind == HC_FITTING_HEAT_PLATE
         || values->kind == HC_FITTING_HEAT_LAMP
         || (values->kind == HC_FITTING_DRINKER && values->heated);
}

void
hc_house_air_add_drinkers (HcHouseAir *self, const HcHouseAirAsk *ask, guint room)
{
  HcParts *fittings = hc_room_get (hc_house_get_room (ask->house, room))->fittings;
  int space = self->space_of_room[room];

  for (guint i = 0; fittings != NULL && i < fittings->len; i++)
    {
      const HcFittingValues *values = hc_fitting_get (fittings->pdata[i]);

      add_drinker (self, ask, space, values);
      if (gives_heat (values) && !ask->weather.sun)
        self->air.spaces[space].power_w += values->watts;
    }
}
