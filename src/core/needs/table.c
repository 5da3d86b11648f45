/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The needs there are, in the order keepers read them. */
#include "config.h"

#include "needs/judges/judges.h"

static const HcNeed *const needs[HC_N_NEEDS] = {
  [HC_NEED_FLOOR] = &hc_need_floor,
  [HC_NEED_RUN] = &hc_need_run,
  [HC_NEED_ROOST] = &hc_need_roost,
  [HC_NEED_NESTS] = &hc_need_nests,
  [HC_NEED_FEED] = &hc_need_feed,
  [HC_NEED_WATER] = &hc_need_water,
  [HC_NEED_WARMTH] = &hc_need_warmth,
  [HC_NEED_WAY_OUT] = &hc_need_way_out,
  [HC_NEED_LITTER] = &hc_need_litter,
  [HC_NEED_LIGHT] = &hc_need_light,
  [HC_NEED_AIR] = &hc_need_air,
  [HC_NEED_REACH] = &hc_need_reach,
  [HC_NEED_CLIMB] = &hc_need_climb,
  [HC_NEED_CLEARANCE] = &hc_need_clearance,
  [HC_NEED_PREDATORS] = &hc_need_predators,
  [HC_NEED_COMPANY] = &hc_need_company,
  [HC_NEED_SITE_RULES] = &hc_need_site_rules,
};

/**
 * hc_need_get: (skip)
 * @id: which need
 *
 * Returns: (transfer none): the need
 */
const HcNeed *
hc_need_get (HcNeedId id)
{
  g_return_val_if_fail (id < HC_N_NEEDS, NULL);
  return needs[id];
}

/**
 * hc_need_find: (skip)
 * @word: its word, "way-out"
 *
 * Returns: (transfer none) (nullable): the need
 */
const HcNeed *
hc_need_find (const char *word)
{
  for (guint i = 0; i < HC_N_NEEDS; i++)
    if (g_strcmp0 (needs[i]->word, word) == 0)
      return needs[i];
  return NULL;
}
