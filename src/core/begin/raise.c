/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What to add for a need that is short. */
#include "config.h"

#include "begin/raise.h"

/* What leans on walls first, then what stands on the floor left over. */
static const HcRaise raises[] = {
  { HC_NEED_WAY_OUT, NULL, hc_raise_way_out },
  { HC_NEED_ROOST, NULL, hc_raise_roost },
  { HC_NEED_NESTS, NULL, hc_raise_nests },
  { HC_NEED_WATER, "water.walk", hc_raise_water },
  { HC_NEED_FEED, "feed.walk", hc_raise_feed },
  { HC_NEED_AIR, NULL, hc_raise_air },
  { HC_NEED_LIGHT, NULL, hc_raise_light },
};

guint
hc_raise_get_n (void)
{
  return G_N_ELEMENTS (raises);
}

const HcRaise *
hc_raise_get (guint index)
{
  return &raises[index];
}
