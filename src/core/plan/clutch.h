/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Eggs to hatch, once or again and again. */
#pragma once

#include "base/part.h"
#include "plan/step.h"

G_BEGIN_DECLS

/**
 * HcClutchPlace:
 * @HC_CLUTCH_INCUBATOR: an incubator
 * @HC_CLUTCH_HEN: a broody hen
 */
typedef enum
{
  HC_CLUTCH_INCUBATOR,
  HC_CLUTCH_HEN,
} HcClutchPlace;

/**
 * HcClutchWho:
 * @HC_CLUTCH_ALL: every bird
 * @HC_CLUTCH_FEMALES: hens, ducks, geese
 * @HC_CLUTCH_MALES: cocks, drakes, ganders
 */
typedef enum
{
  HC_CLUTCH_ALL,
  HC_CLUTCH_FEMALES,
  HC_CLUTCH_MALES,
} HcClutchWho;

/**
 * HcClutchValues:
 * @name: what the keeper calls them
 * @breed: id of the breed, empty when only the kind is known
 * @kind: id of the kind of bird, empty when the breed tells
 * @set_on: the day the eggs are set, 0 while that is open
 * @eggs: eggs set
 * @place: a #HcClutchPlace
 * @fertile_low_percent: of ten settings, one has fewer fertile eggs
 * @fertile_high_percent: of ten settings, one has more fertile eggs
 * @hatch_low_percent: of ten settings, one hatches fewer of the fertile eggs
 * @hatch_high_percent: of ten settings, one hatches more of the fertile eggs
 * @pen: id of the pen the chicks are raised in
 * @every_weeks: weeks until as many eggs are set again, 0 for once
 * @settings: how often eggs are set at most
 * @wanted: birds after which no more eggs are set, 0 when @settings tells
 * @wanted_who: a #HcClutchWho: which birds are wanted
 * @harvest_on: one day on which those raised for meat are slaughtered, 0 when @steps tell
 * @steps: (element-type HcStep): what is planned for the chicks
 *
 * Percentages of 0 stand for those of the book, narrowed by what really
 * hatched here.
 */
typedef struct
{
  char *name;
  char *breed;
  char *kind;
  guint32 set_on;
  int eggs;
  int place;
  double fertile_low_percent;
  double fertile_high_percent;
  double hatch_low_percent;
  double hatch_high_percent;
  char *pen;
  int every_weeks;
  int settings;
  int wanted;
  int wanted_who;
  guint32 harvest_on;
  HcParts *steps;
} HcClutchValues;

HC_DECLARE_PART (HcClutch, hc_clutch)

G_END_DECLS
