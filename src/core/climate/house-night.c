/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A plan's house with its birds on one night, and all that is known of its air. */
#include "config.h"

#include "climate/house-night.h"

/**
 * hc_house_night_new: (skip)
 * @plan: a plan
 * @house: (nullable): its house, where it is known
 * @flock: its birds
 * @weather: (nullable): the weather; else the coldest night of the place
 *
 * Returns: (transfer full): the night
 */
HcHouseNight *
hc_house_night_new (HcPlan *plan, HcHouse *house, HcFlock *flock, const HcWeather *weather)
{
  HcHouseNight *self = g_new0 (HcHouseNight, 1);

  self->plan = hc_plan_ref (plan);
  hc_house_air_ask_init (&self->ask,
                         house != NULL ? hc_house_ref (house)
                                       : hc_house_new (hc_plan_get_layout (plan), NULL),
                         hc_flock_ref (flock), hc_plan_get_site (plan));
  if (weather != NULL)
    self->ask.weather = *weather;
  self->air = hc_house_air_new (&self->ask);
  hc_house_night_settle_again (self);
  return self;
}

void
hc_house_night_free (HcHouseNight *self)
{
  g_clear_pointer (&self->air, hc_house_air_free);
  hc_house_unref (self->ask.house);
  hc_flock_unref (self->ask.flock);
  hc_plan_unref (self->plan);
  g_free (self);
}

/**
 * hc_house_night_settle_again: (skip)
 * @self: a night whose vents or weather were changed
 */
void
hc_house_night_settle_again (HcHouseNight *self)
{
  self->night = (HcNight){ 0 };
  if (self->air != NULL)
    hc_night_settle (self->air, &self->ask, NULL, &self->night);
}

/**
 * hc_house_night_find_space: (skip)
 * @self: a night
 * @pen: id of a pen
 * @space: (out): which space of the night it is part of
 *
 * Returns: whether it is under a roof
 */
gboolean
hc_house_night_find_space (const HcHouseNight *self, const char *pen, guint *space)
{
  int found = self->air != NULL ? hc_house_air_get_space (self->air, &self->ask, pen)
                                : HC_AIR_OUTSIDE;

  *space = (guint) MAX (found, 0);
  return found != HC_AIR_OUTSIDE;
}

/**
 * hc_house_night_is_jet: (skip)
 * @self: a night
 * @way: index of a way for air
 *
 * Returns: whether it opens at the height of sleeping birds
 */
gboolean
hc_house_night_is_jet (const HcHouseNight *self, guint way)
{
  for (guint i = 0; i < self->air->jets->len; i++)
    if (g_array_index (self->air->jets, HcRoostJet, i).path == way)
      return TRUE;
  return FALSE;
}
