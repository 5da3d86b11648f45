/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * One plan on one day in one condition, as all needs see it. */
#include "config.h"

#include "needs/context.h"

void
hc_case_init (HcCase *self, HcCheckCache *cache, HcPlan *plan, HcBook *book,
              HcCondition condition, HcFlock *flock)
{
  HcStandard *standard = hc_check_cache_get_standard (cache, plan, book);
  HcStandard *fallback = hc_standard_get_fallback (standard);

  self->cache = cache;
  self->plan = hc_plan_ref (plan);
  self->book = hc_book_ref (book);
  self->site = hc_plan_get_site (plan);
  self->layout = hc_layout_ref (hc_plan_get_layout (plan));
  self->house = hc_house_ref (hc_check_cache_get_house (cache, self->layout));
  self->flock = hc_flock_ref (flock);
  self->condition = condition;
  self->standard = hc_standard_ref (standard);
  if (hc_standard_is_minimum_only (standard) && fallback != NULL)
    standard = fallback;
  self->aim = hc_standard_ref (standard);
  self->table = hc_check_cache_get_table (cache, flock);
  self->night = NULL;
  self->follows = FALSE;
}

void
hc_case_clear (HcCase *self)
{
  hc_plan_unref (self->plan);
  hc_book_unref (self->book);
  hc_layout_unref (self->layout);
  hc_house_unref (self->house);
  hc_flock_unref (self->flock);
  hc_standard_unref (self->standard);
  hc_standard_unref (self->aim);
  g_clear_pointer (&self->night, hc_house_night_free);
}

/* The condition birds are in when a need of this scope is felt. */
HcCondition
hc_case_get_condition (const HcCase *self, HcNeedScope scope)
{
  if (scope == HC_SCOPE_NIGHT_ROOM || scope == HC_SCOPE_AIR_SPACE)
    return HC_CONDITION_NIGHT;
  return self->condition == HC_CONDITION_SHUT_IN ? HC_CONDITION_SHUT_IN : HC_CONDITION_DAY;
}

/* By night nobody eats, lays or goes out, and it is dark. */
gboolean
hc_case_judges (const HcCase *self, const HcNeed *need)
{
  if (self->condition == HC_CONDITION_NIGHT)
    return need->scope != HC_SCOPE_DAY_SPACE && need->id != HC_NEED_LIGHT;
  if (self->condition == HC_CONDITION_SHUT_IN)
    return need->id != HC_NEED_RUN && need->id != HC_NEED_WAY_OUT;
  return TRUE;
}

guint
hc_case_get_n_spaces (const HcCase *self, const HcNeed *need)
{
  if (need->scope == HC_SCOPE_LAYOUT)
    return 1;
  if (need->scope == HC_SCOPE_AIR_SPACE)
    return hc_house_get_n_air_spaces (self->house);
  return hc_house_get_n_spaces (self->house, hc_case_get_condition (self, need->scope));
}

HcStandard *
hc_case_get_standard (const HcCase *self, HcLevel level)
{
  return level > HC_LEVEL_TIGHT ? self->aim : self->standard;
}

/* The coldest night of the place, worked out when a need first asks for it. */
HcHouseNight *
hc_case_get_night (HcCase *self)
{
  if (self->night == NULL)
    self->night = hc_house_night_new (self->plan, self->house, self->flock, NULL);
  return self->night;
}
