/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What helps on the hot day: shade, vents, water. */
#include "config.h"

#include "climate/hot-help.h"

/* Vents are added in steps of a hand's breadth by half a metre. */
#define STEP_M2 0.05
#define MOST_STEPS 60

/* A low vent and a high one, m. */
#define LOW_M 0.3
#define HIGH_M 1.7
#define TALL_M 0.2

static double
find (const HcHouseAirAsk *ask, const char *id)
{
  return hc_book_get_air_figure (hc_flock_get_book (ask->flock), id)->value;
}

static void
settle_with (const HcHouseAirAsk *ask, double extra_m2, gboolean shaded, HcHotDay *day)
{
  g_autoptr (HcHouseAir) house = hc_house_air_new (ask);

  for (guint i = 0; shaded && i < house->surfaces->len; i++)
    g_array_index (house->surfaces, HcAirSurface, i).warmer_k = 0;
  for (guint i = 0; extra_m2 > 0 && i < house->air.n_spaces; i++)
    {
      hc_house_air_add_vent (house, (int) i, extra_m2 / 2, LOW_M, TALL_M);
      hc_house_air_add_vent (house, (int) i, extra_m2 / 2, HIGH_M, TALL_M);
    }
  hc_hot_day_settle (house, ask, day);
}

static void
find_vents (const HcHouseAirAsk *ask, HcHotHelp *help)
{
  double most_k = find (ask, "hot_above_k");
  HcHotDay day = help->day;

  for (guint step = 1; day.above_outside_k > most_k && step <= MOST_STEPS; step++)
    {
      help->vents_m2 = step * STEP_M2;
      settle_with (ask, help->vents_m2, FALSE, &day);
    }
  help->are_enough = day.above_outside_k <= most_k;
}

/* Birds drink so much more for each kelvin above 21 °C. */
static double
find_water_l (const HcHouseAirAsk *ask, double t_c)
{
  double times = CLAMP (1 + find (ask, "water_per_k") * (t_c - 21), 1, find (ask, "water_most"));
  double ml = 0;

  for (guint i = 0; i < hc_flock_get_n_rows (ask->flock); i++)
    {
      const HcFlockRow *row = hc_flock_get_row (ask->flock, i);
      const HcBody *body = hc_flock_get_body (ask->flock, row->body);

      ml += row->count * body->kind->water_ml * MIN (body->mass_kg / body->kind->hen_kg, 1);
    }
  return ml * times / 1000;
}

/**
 * hc_hot_help_work_out: (skip)
 * @ask: the house and its birds
 * @help: (out caller-allocates): the hottest day of the place, and what helps
 */
void
hc_hot_help_work_out (const HcHouseAirAsk *ask, HcHotHelp *help)
{
  HcHouseAirAsk hot = *ask;
  HcHouseAirAsk calm;
  HcHotDay other;

  *help = (HcHotHelp){ 0 };
  hc_hot_day_work_out (ask, &help->day);
  help->water_l = find_water_l (ask, MAX (help->day.t_c, ask->site->hottest_day_c));
  if (help->day.n_spaces == 0)
    return;
  hc_hot_day_init_weather (&hot, ask->site->hottest_day_c);
  settle_with (&hot, 0, TRUE, &other);
  help->shaded_k = help->day.t_c - other.t_c;
  calm = hot;
  calm.weather.wind_m_s = 0;
  settle_with (&calm, 0, FALSE, &other);
  help->calm_m3_h = other.fresh_m3_h;
  find_vents (&hot, help);
}
