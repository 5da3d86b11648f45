/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Chicks by night: the air about their heater, week by week, and what it costs. */
#include "config.h"

#include "climate/chicks.h"

#include "air/steady.h"
#include "climate/season-curve.h"
#include "flock/heat.h"
#include "plan/fitting.h"

#define MM_M 1e-3
#define DAYS_A_WEEK 7

/* What no maker says. */
#define NO_LOWEST_C (-273.0)

typedef struct
{
  HcPlan *plan;
  HcHouse *house;
  HcFlock *flock;
  guint32 day;
} Asked;

static double
find (const Asked *asked, const char *id)
{
  return hc_book_get_air_figure (hc_flock_get_book (asked->flock), id)->value;
}

static gboolean
is_heater (int kind)
{
  return kind == HC_FITTING_FLOOR_HEAT_PAD || kind == HC_FITTING_HEAT_PLATE
         || kind == HC_FITTING_HEAT_LAMP;
}

static double
find_lowest_room_c (const Asked *asked, const HcFittingValues *values)
{
  const HcFittingType *type
      = hc_book_get_fitting_type (hc_flock_get_book (asked->flock),
                                  hc_fitting_kind_get_word (values->kind), "");
  const HcDevice *device
      = type != NULL ? hc_fitting_type_find_device (type, values->device) : NULL;

  return device != NULL ? device->lowest_room_c : NO_LOWEST_C;
}

/* How much warmer than the room it is at the heaters of a pen, K: their watts over their
 * face, and what leaves it. */
static double
look_at_heaters (const Asked *asked, const HcPenValues *pen, HcChickNights *nights)
{
  double face_m2 = 0;

  for (guint i = 0; pen->fittings != NULL && i < pen->fittings->len; i++)
    {
      const HcFittingValues *values = hc_fitting_get (pen->fittings->pdata[i]);

      if (!is_heater (values->kind))
        continue;
      nights->watts += values->watts;
      face_m2 += values->width_mm * values->depth_mm * MM_M * MM_M;
      nights->lowest_room_c
          = MAX (nights->lowest_room_c, find_lowest_room_c (asked, values));
    }
  return face_m2 > 0 ? nights->watts / face_m2 / find (asked, "heater_w_m2k") : 0;
}

static double
find_wanted_c (const Asked *asked, int week)
{
  return MAX (find (asked, "brood_first_c") - find (asked, "brood_step_k") * (week - 1),
              find (asked, "brood_last_c"));
}

/* The room on the cold night of a season, as the air of the whole house makes it. */
static double
find_room_c (const Asked *asked, const char *pen, guint32 day)
{
  const HcSiteValues *site = hc_plan_get_site (asked->plan);
  HcSeasonDay season
      = hc_season_day (hc_flock_get_book (asked->flock), site,
                       hc_plan_get_keeping (asked->plan)->latitude_deg, day);
  g_autoptr (HcHouseAir) house = NULL;
  HcHouseAirAsk ask;
  HcAirStates states;
  int space;

  hc_house_air_ask_init (&ask, asked->house, asked->flock, site);
  ask.weather.t_c = season.night_c;
  house = hc_house_air_new (&ask);
  space = house != NULL ? hc_house_air_get_space (house, &ask, pen) : HC_AIR_OUTSIDE;
  if (space == HC_AIR_OUTSIDE)
    return season.night_c;
  hc_air_settle (&house->air, &states);
  return states.states[states.worst].spaces[space].t_c;
}

static void
tell_weeks (const Asked *asked, double warmer_k, int from_week, int last_week,
            HcChickNights *nights)
{
  for (int week = from_week; week <= last_week && nights->n_weeks < HC_CHICKS_MOST_WEEKS; week++)
    {
      HcChickWeek *told = &nights->weeks[nights->n_weeks++];

      told->week = week;
      told->day = asked->day + (guint32) (DAYS_A_WEEK * (week - from_week));
      told->wanted_c = find_wanted_c (asked, week);
      told->room_c = find_room_c (asked, nights->pen, told->day);
      told->heater_c = told->room_c + warmer_k;
      told->is_enough = told->heater_c >= told->wanted_c;
      nights->is_room_too_cold |= told->room_c < nights->lowest_room_c;
    }
}

/* The youngest chicks of a pen want most, the slowest want it longest. */
static gboolean
find_chicks (const Asked *asked, const char *pen, int *from_week, int *last_week,
             gint64 *chicks)
{
  HcStandard *standard = hc_book_get_standard (hc_flock_get_book (asked->flock),
                                               hc_plan_get_rules (asked->plan)->standard);

  *chicks = 0;
  for (guint i = 0; i < hc_flock_get_n_rows (asked->flock); i++)
    {
      const HcFlockRow *row = hc_flock_get_row (asked->flock, i);
      const HcBody *body = hc_flock_get_body (asked->flock, row->body);
      int last = standard != NULL ? hc_heat_get_weeks (standard, body->kind,
                                                       hc_plan_get_site (asked->plan))
                                  : body->kind->feathered_week;

      if (!body->under_heat || row->count == 0 || g_strcmp0 (row->pen, pen) != 0)
        continue;
      *from_week = *chicks > 0 ? MIN (*from_week, body->age_weeks + 1) : body->age_weeks + 1;
      *last_week = *chicks > 0 ? MAX (*last_week, last) : last;
      *chicks += row->count;
    }
  return *chicks > 0;
}

/**
 * hc_chick_nights: (skip)
 * @plan: a plan
 * @house: its house
 * @flock: its birds on @day
 * @day: the Julian day
 *
 * Indicative: the air at a heater is taken to be warmer than the room by its watts over
 * its face; chicks that pile up make it warmer still, and the thermometer under it is
 * right where this is not.
 *
 * Returns: (transfer full) (element-type HcChickNights): pens with chicks under heat
 */
GArray *
hc_chick_nights (HcPlan *plan, HcHouse *house, HcFlock *flock, guint32 day)
{
  const Asked asked = { plan, house, flock, day };
  GArray *all = g_array_new (FALSE, FALSE, sizeof (HcChickNights));

  for (guint i = 0; i < hc_house_get_n_rooms (house); i++)
    {
      const HcPenValues *pen = hc_room_get (hc_house_get_room (house, i));
      HcChickNights nights
          = { .pen = g_intern_string (
                  hc_pen_get_id (hc_room_get_pen (hc_house_get_room (house, i)))),
              .lowest_room_c = NO_LOWEST_C };
      int from_week = 0, last_week = 0;
      double warmer_k;

      if (!find_chicks (&asked, nights.pen, &from_week, &last_week, &nights.chicks))
        continue;
      warmer_k = look_at_heaters (&asked, pen, &nights);
      tell_weeks (&asked, warmer_k, from_week, last_week, &nights);
      nights.kwh_a_day = nights.watts * 24 / 1000;
      nights.kwh = nights.kwh_a_day * DAYS_A_WEEK * nights.n_weeks;
      g_array_append_val (all, nights);
    }
  return all;
}
