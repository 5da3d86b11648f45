/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Which ways of mending are tried for which need: the first to try first, and
 * fewer birds last. */
#include "config.h"

#include "mend/mending.h"

#define MOST_REMEDIES 12

static const char *const lists[HC_N_NEEDS][MOST_REMEDIES] = {
  [HC_NEED_FLOOR]
  = { "birds.another-pen", "birds.fewer" },
  [HC_NEED_RUN]
  = { "birds.another-pen", "birds.fewer" },
  [HC_NEED_ROOST]
  = { "bar.lower", "bar.widen", "bar.lengthen", "bar.add", "bar.new", "thing.move",
      "thing.turn", "birds.another-pen", "birds.fewer" },
  [HC_NEED_NESTS]
  = { "nests.line", "nests.add", "nests.new", "nests.lower", "thing.move",
      "birds.another-pen", "birds.fewer" },
  [HC_NEED_FEED]
  = { "thing.move", "thing.turn", "trough.lengthen", "trough.add", "trough.add-other",
      "birds.another-pen", "birds.fewer" },
  [HC_NEED_WATER]
  = { "water.heat", "thing.move", "thing.turn", "trough.lengthen", "trough.add",
      "trough.add-other", "birds.another-pen", "birds.fewer" },
  [HC_NEED_WARMTH]
  = { "heater.swap", "heater.add", "thing.move", "birds.another-pen", "birds.fewer" },
  [HC_NEED_WAY_OUT]
  = { "pop-hole.widen", "pop-hole.add", "thing.move", "birds.another-pen", "birds.fewer" },
  [HC_NEED_LITTER]
  = { "floor.bed" },
  [HC_NEED_LIGHT]
  = { "window.widen", "window.add" },
  [HC_NEED_AIR]
  = { "air.night", "vent.open-winter", "vent.open-summer", "vent.widen", "vent.add", "window.add" },
  [HC_NEED_REACH]
  = { "door.raise", "door.add", "door.widen", "thing.turn", "thing.move" },
  [HC_NEED_CLEARANCE]
  = { "nests.lower", "thing.move", "thing.move-in", "opening.slide", "thing.hang",
      "thing.turn", "trough.add", "thing.take-away" },
  [HC_NEED_PREDATORS]
  = { "guard.shut-at-dusk", "guard.latch", "guard.close-gap", "guard.mesh", "guard.apron",
      "guard.mesh-floor", "guard.raise-walls", "guard.roof", "roof.bear-snow",
      "thing.move" },
  [HC_NEED_COMPANY]
  = { "birds.another-pen", "birds.fewer-males", "birds.fewer" },
};

/* Ends with %NULL. */
const char *const *
hc_mending_list_remedies (HcNeedId need)
{
  return lists[need];
}
