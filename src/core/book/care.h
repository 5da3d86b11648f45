/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Sizes of eggs, feeds, and figures of how birds are cared for. */
#pragma once

#include "base/units.h"
#include "book/life.h"

G_BEGIN_DECLS

/**
 * HcEggClass:
 * @id: its id, interned
 * @name: its English name
 * @units: the units of those who grade by it
 * @from_g: mass from which an egg is of this class, up to the next
 * @grounds: who says so
 *
 * A size of egg.
 */
typedef struct
{
  const char *id;
  const char *name;
  HcUnits units;
  double from_g;
  HcGrounds grounds;
} HcEggClass;

/**
 * HcFeed:
 * @id: its id, interned
 * @name: its English name
 * @species: a bit for each #HcSpecies that eats it
 * @meat: whether it is for kinds raised for meat
 * @from_week: completed weeks from which it is fed
 * @at_lay: whether it is for females at lay alone
 * @grounds: who says so
 *
 * A feed. Of those that fit a bird the last is its own.
 */
typedef struct
{
  const char *id;
  const char *name;
  guint species;
  gboolean meat;
  int from_week;
  gboolean at_lay;
  HcGrounds grounds;
} HcFeed;

/**
 * HcCare:
 * @id: its id, interned
 * @every_days: days until it is due again, 0 for what is no routine
 * @lead_days: days before what it prepares for
 * @low: the low end of a figure
 * @high: its high end
 * @grounds: who says so
 *
 * A figure of how birds are cared for: a routine, or a range.
 */
typedef struct
{
  const char *id;
  int every_days;
  int lead_days;
  double low;
  double high;
  HcGrounds grounds;
} HcCare;

const char *hc_care_get_name (const char *name);

G_END_DECLS
