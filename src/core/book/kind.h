/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The kinds of bird that differ in what they ask of a house. */
#pragma once

#include "book/source.h"

#include <glib.h>

G_BEGIN_DECLS

/**
 * HC_WEEK_GROWN:
 *
 * A week of life that stands for any grown bird.
 */
#define HC_WEEK_GROWN 10000

/**
 * HC_WEEK_OF_LIFE:
 * @age_weeks: whole weeks since the hatch
 *
 * The week of life a bird is in: the first one before it is a week old.
 */
#define HC_WEEK_OF_LIFE(age_weeks) ((age_weeks) + 1)

/**
 * HC_KIND_GROWTH_POINTS:
 *
 * The most points a growth curve has.
 */
#define HC_KIND_GROWTH_POINTS 16

/**
 * HcSpecies:
 * @HC_SPECIES_CHICKEN: chickens
 * @HC_SPECIES_DUCK: ducks
 * @HC_SPECIES_GOOSE: geese
 */
typedef enum
{
  HC_SPECIES_CHICKEN,
  HC_SPECIES_DUCK,
  HC_SPECIES_GOOSE,
} HcSpecies;

/**
 * HcComb:
 * @HC_COMB_NONE: no comb (waterfowl)
 * @HC_COMB_SMALL: pea, rose, walnut or other comb that lies close to the head
 * @HC_COMB_SINGLE: single comb of ordinary size
 * @HC_COMB_LARGE: large single or upright comb, the first to freeze
 */
typedef enum
{
  HC_COMB_NONE,
  HC_COMB_SMALL,
  HC_COMB_SINGLE,
  HC_COMB_LARGE,
} HcComb;

/**
 * HcPerching:
 * @HC_PERCHING_NEVER: sleeps on the floor
 * @HC_PERCHING_OPTIONAL: uses a low bar if there is one
 * @HC_PERCHING_ALWAYS: wants a seat on a bar for the night
 */
typedef enum
{
  HC_PERCHING_NEVER,
  HC_PERCHING_OPTIONAL,
  HC_PERCHING_ALWAYS,
} HcPerching;

/**
 * HcSex:
 * @HC_SEX_FEMALE: pullets, hens, ducks, geese
 * @HC_SEX_MALE: cockerels, cocks, drakes, ganders
 * @HC_SEX_UNKNOWN: chicks not yet told apart: the mean of both
 */
typedef enum
{
  HC_SEX_FEMALE,
  HC_SEX_MALE,
  HC_SEX_UNKNOWN,
} HcSex;

/**
 * HcGrowthPoint:
 * @week: completed weeks since the hatch
 * @kg: live mass of a mean bird then
 */
typedef struct
{
  double week;
  double kg;
} HcGrowthPoint;

/**
 * HcKind:
 * @id: the kind's id, interned
 * @name: its English name, one bird; see hc_kind_get_name()
 * @plural: its English name, several birds
 * @species: the species
 * @order: its place among the kinds, from 0
 * @hen_kg: mass of a grown female
 * @cock_kg: mass of a grown male
 * @width_mm: breadth of a grown bird at rest
 * @length_mm: length of a grown bird, beak to tail, as it stands
 * @back_mm: height of its back above the ground
 * @head_mm: height of its head above the ground
 * @comb: the usual comb
 * @perching: whether it sleeps on bars
 * @roost_from_week: the first week of life it roosts in
 * @feathered_week: the last week of life before it is feathered
 * @grown_week: the first week of life with the figures of a grown bird
 * @at_lay_week: the week of life it begins to lay in, 0 if not kept for eggs
 * @parting_week: the last week of life of birds raised for meat, 0 if none
 * @raised_for_meat: whether it is raised for the table and never kept on
 * @nests_on_floor: whether it wants its nest on the ground
 * @head_deep_water: whether it must be able to dip its head
 * @nipples_alone: whether nipples or cups alone water it
 * @flies_up: whether it can fly or hop up to a bar, else it wants a ramp
 * @feed_g: feed of a grown bird, g a day
 * @water_ml: water a grown bird drinks, ml a day in mild weather
 * @eggs_per_year: eggs in the first year of lay
 * @egg_g: mass of an egg
 * @hatch_days: days from setting to hatching
 * @growth: the growth curve, by rising week
 * @n_growth: how many points of it
 * @evidence: what stands behind these facts
 * @source: (nullable): what was published about them
 * @note: where they come from, in English
 *
 * A kind of bird. Lengths in mm, masses in kg. It lives as long as its book.
 */
typedef struct
{
  const char *id;
  const char *name;
  const char *plural;
  HcSpecies species;
  guint order;
  double hen_kg;
  double cock_kg;
  double width_mm;
  double length_mm;
  double back_mm;
  double head_mm;
  HcComb comb;
  HcPerching perching;
  int roost_from_week;
  int feathered_week;
  int grown_week;
  int at_lay_week;
  int parting_week;
  gboolean raised_for_meat;
  gboolean nests_on_floor;
  gboolean head_deep_water;
  gboolean nipples_alone;
  gboolean flies_up;
  double feed_g;
  double water_ml;
  double eggs_per_year;
  double egg_g;
  int hatch_days;
  HcGrowthPoint growth[HC_KIND_GROWTH_POINTS];
  guint n_growth;
  HcEvidence evidence;
  const HcSource *source;
  const char *note;
} HcKind;

const char *hc_kind_get_name (const HcKind *self, gulong count);
double hc_kind_get_mass_kg (const HcKind *self, HcSex sex, double weeks);

G_END_DECLS
