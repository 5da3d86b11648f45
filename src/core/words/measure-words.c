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
  { "air.ammonia", N_("Ammonia in the air") },
  { "air.carbon-dioxide", N_("Carbon dioxide in the air") },
  { "air.humidity", N_("Damp in the air") },
  { "air.summer-flow", N_("Fresh air in summer") },
  { "air.summer-vents", N_("Vents open in summer") },
  { "air.vent-above-birds", N_("Vent above the backs of the birds") },
  { "air.winter-flow", N_("Fresh air in winter") },
  { "air.winter-vents", N_("Vents open in winter") },
  { "climb.drop-to-floor", N_("Drop to the floor") },
  { "climb.farthest-gap", N_("Widest gap to hop") },
  { "climb.landing-strip", N_("Clear floor to land on") },
  { "climb.long-hop-drop", N_("Height of a long hop") },
  { "climb.near-gap", N_("Gap of a short hop") },
  { "climb.ramp-slope", N_("Slope of a ramp") },
  { "climb.ramp-width", N_("Width of a ramp") },
  { "climb.rise-from-floor", N_("Step up from the floor") },
  { "climb.short-hop-rise", N_("Height of a short hop") },
  { "climb.soft-bedding", N_("Bedding that softens a landing") },
  { "climb.step", N_("Step of a bird that walks") },
  { "company.females-per-male", N_("Females to each male, for fertile eggs") },
  { "company.fewest", N_("Birds that live together") },
  { "company.fewest-females-per-male", N_("Females to each male, for their peace") },
  { "company.quarantine", N_("Days apart for new and sick birds") },
  { "company.together-from", N_("Age to live with grown birds") },
  { "feed.from-water", N_("Feeder away from drinker") },
  { "feed.long-edge", N_("Edge of a long feeder") },
  { "feed.round-edge", N_("Edge of a round feeder") },
  { "feed.walk", N_("Walk to the feed") },
  { "floor.area", N_("Room on the floor") },
  { "floor.ground-area", N_("Ground floor of a house with levels") },
  { "floor.headroom", N_("Headroom above the floor") },
  { "floor.levels", N_("Levels above one another") },
  { "floor.short-spell", N_("Days shut in that are a short spell") },
  { "floor.shut-in-factor", N_("More floor when shut in for long") },
  { "floor.slope", N_("Slope of the floor") },
  { "floor.width", N_("Width of floor that counts") },
  { "light.brightness", N_("Brightness") },
  { "light.dark-hours", N_("Hours of darkness") },
  { "light.window-area", N_("Area of windows") },
  { "litter.area", N_("Bedded floor") },
  { "litter.depth", N_("Depth of bedding") },
  { "nests.box-depth", N_("Depth of a nest box") },
  { "nests.box-height", N_("Height inside a nest box") },
  { "nests.box-width", N_("Width of a nest box") },
  { "nests.boxes", N_("Hens to a nest box") },
  { "nests.group-area", N_("Room in a group nest") },
  { "nests.height", N_("Nest above the floor") },
  { "predators.apron", N_("Dig guard laid flat") },
  { "predators.dug", N_("Dig guard dug in") },
  { "predators.fence-height", N_("Height of the fence") },
  { "reach.barrow-way", N_("Width of a way for the barrow") },
  { "reach.eggs", N_("Arm's reach to the eggs") },
  { "reach.headroom", N_("Headroom for the keeper") },
  { "reach.step-over", N_("What the keeper steps over") },
  { "reach.keeper-way", N_("Width of a way for the keeper") },
  { "roost.bar-height", N_("Height of the perch") },
  { "roost.bar-to-bar", N_("Perch to perch") },
  { "roost.bar-to-wall", N_("Perch to wall") },
  { "roost.bar-width", N_("Width of the perch") },
  { "roost.bar-width-cold", N_("Width of the perch where nights are cold") },
  { "roost.board-below", N_("Droppings board below the perch") },
  { "roost.cold-night", N_("Night that asks for a wide perch") },
  { "roost.headroom", N_("Headroom above the perch") },
  { "roost.nest-below", N_("Nests below the lowest perch") },
  { "roost.seat", N_("Perch for each bird") },
  { "run.area", N_("Room in the run") },
  { "run.farthest", N_("Way to the end of the run") },
  { "warmth.cover", N_("Room under a raised plate") },
  { "warmth.heated-share", N_("Heated part of the pen") },
  { "warmth.lamp-circle", N_("Circle a lamp warms") },
  { "warmth.lamp-clearance", N_("Lamp away from what burns") },
  { "warmth.lamp-hangers", N_("Hangers of a lamp") },
  { "warmth.mild-from", N_("Age when mild nights are warm enough") },
  { "warmth.mild-night", N_("A mild night") },
  { "warmth.pad", N_("Room on a floor heat pad") },
  { "warmth.temperature", N_("Warmth at the warm end") },
  { "warmth.weeks", N_("Age when heat ends") },
  { "water.depth", N_("Depth of the water") },
  { "water.long-edge", N_("Edge of a long drinker") },
  { "water.nipples", N_("Birds to a nipple or cup") },
  { "water.round-edge", N_("Edge of a round drinker") },
  { "water.walk", N_("Walk to the water") },
  { "way-out.pop-hole-height", N_("Height of a pop hole") },
  { "way-out.pop-hole-width", N_("Width of a pop hole") },
  { "way-out.total-width", N_("Width of all pop holes together") },
};

/**
 * hc_figure_words_measure: (skip)
 * @figure: a figure
 *
 * Returns: what it measures: "Perch for each bird"; its own name when nobody
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
