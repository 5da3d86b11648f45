/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What a figure of the rules measures, in words. */
#include "config.h"

#include "words/figure-words.h"

#include <glib/gi18n-lib.h>

/* By name: the need, then the measure. */
static const struct
{
  const char *name;
  const char *words;
} measures[] = {
  { "air.ammonia", N_("ammonia in the air") },
  { "air.carbon-dioxide", N_("carbon dioxide in the air") },
  { "air.humidity", N_("damp in the air") },
  { "air.summer-flow", N_("fresh air in summer") },
  { "air.summer-vents", N_("vents open in summer") },
  { "air.vent-above-birds", N_("vent above the backs of the birds") },
  { "air.winter-flow", N_("fresh air in winter") },
  { "air.winter-vents", N_("vents open in winter") },
  { "climb.drop-to-floor", N_("drop to the floor") },
  { "climb.farthest-gap", N_("widest gap to hop") },
  { "climb.landing-strip", N_("clear floor to land on") },
  { "climb.long-hop-drop", N_("height of a long hop") },
  { "climb.near-gap", N_("gap of a short hop") },
  { "climb.ramp-slope", N_("slope of a ramp") },
  { "climb.ramp-width", N_("width of a ramp") },
  { "climb.short-hop-rise", N_("height of a short hop") },
  { "climb.soft-bedding", N_("bedding that softens a landing") },
  { "company.females-per-male", N_("females to each male, for fertile eggs") },
  { "company.fewest", N_("birds that live together") },
  { "company.fewest-females-per-male", N_("females to each male, for their peace") },
  { "company.quarantine", N_("days apart for new and sick birds") },
  { "company.together-from", N_("age to live with grown birds") },
  { "feed.from-water", N_("feeder away from drinker") },
  { "feed.long-edge", N_("edge of a long feeder") },
  { "feed.round-edge", N_("edge of a round feeder") },
  { "feed.walk", N_("walk to the feed") },
  { "floor.area", N_("room on the floor") },
  { "floor.ground-area", N_("ground floor of a house with levels") },
  { "floor.headroom", N_("headroom above the floor") },
  { "floor.levels", N_("levels above one another") },
  { "floor.short-spell", N_("days shut in that are a short spell") },
  { "floor.shut-in-factor", N_("more floor when shut in for long") },
  { "floor.slope", N_("slope of the floor") },
  { "floor.width", N_("width of floor that counts") },
  { "light.brightness", N_("brightness") },
  { "light.dark-hours", N_("hours of darkness") },
  { "light.window-area", N_("area of windows") },
  { "litter.area", N_("bedded floor") },
  { "litter.depth", N_("depth of bedding") },
  { "nests.box-depth", N_("depth of a nest box") },
  { "nests.box-height", N_("height inside a nest box") },
  { "nests.box-width", N_("width of a nest box") },
  { "nests.boxes", N_("hens to a nest box") },
  { "nests.group-area", N_("room in a group nest") },
  { "nests.height", N_("nest above the floor") },
  { "predators.apron", N_("dig guard laid flat") },
  { "predators.dug", N_("dig guard dug in") },
  { "predators.fence-height", N_("height of the fence") },
  { "reach.barrow-way", N_("width of a way for the barrow") },
  { "reach.eggs", N_("arm's reach to the eggs") },
  { "reach.headroom", N_("headroom for the keeper") },
  { "reach.keeper-way", N_("width of a way for the keeper") },
  { "roost.bar-height", N_("height of the perch") },
  { "roost.bar-to-bar", N_("perch to perch") },
  { "roost.bar-to-wall", N_("perch to wall") },
  { "roost.bar-width", N_("width of the perch") },
  { "roost.bar-width-cold", N_("width of the perch where nights are cold") },
  { "roost.board-below", N_("droppings board below the perch") },
  { "roost.cold-night", N_("night that asks for a wide perch") },
  { "roost.headroom", N_("headroom above the perch") },
  { "roost.nest-below", N_("nests below the lowest perch") },
  { "roost.seat", N_("perch for each bird") },
  { "run.area", N_("room in the run") },
  { "run.farthest", N_("way to the end of the run") },
  { "warmth.cover", N_("room under a raised plate") },
  { "warmth.heated-share", N_("heated part of the pen") },
  { "warmth.lamp-circle", N_("circle a lamp warms") },
  { "warmth.lamp-clearance", N_("lamp away from what burns") },
  { "warmth.lamp-hangers", N_("hangers of a lamp") },
  { "warmth.mild-from", N_("age when mild nights are warm enough") },
  { "warmth.mild-night", N_("a mild night") },
  { "warmth.pad", N_("room on a floor heat pad") },
  { "warmth.temperature", N_("warmth at the warm end") },
  { "warmth.weeks", N_("age when heat ends") },
  { "water.depth", N_("depth of the water") },
  { "water.long-edge", N_("edge of a long drinker") },
  { "water.nipples", N_("birds to a nipple or cup") },
  { "water.round-edge", N_("edge of a round drinker") },
  { "water.walk", N_("walk to the water") },
  { "way-out.pop-hole-height", N_("height of a pop hole") },
  { "way-out.pop-hole-width", N_("width of a pop hole") },
  { "way-out.total-width", N_("width of all pop holes together") },
};

/**
 * hc_figure_words_measure: (skip)
 * @figure: a figure
 *
 * Returns: what it measures: "perch for each bird"; its own name when nobody
 *   has put it in words
 */
const char *
hc_figure_words_measure (const HcFigure *figure)
{
  for (guint i = 0; i < G_N_ELEMENTS (measures); i++)
    if (g_str_equal (measures[i].name, figure->name))
      return _(measures[i].words);
  return figure->name;
}
