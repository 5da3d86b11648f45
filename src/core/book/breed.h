/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Breeds and crosses by the names keepers know. */
#pragma once

#include "book/kind.h"

G_BEGIN_DECLS

/**
 * HcPurpose:
 * @HC_PURPOSE_EGGS: kept for eggs
 * @HC_PURPOSE_BOTH: eggs and table
 * @HC_PURPOSE_MEAT: raised for the table
 * @HC_PURPOSE_FANCY: kept for its looks or its company
 */
typedef enum
{
  HC_PURPOSE_EGGS,
  HC_PURPOSE_BOTH,
  HC_PURPOSE_MEAT,
  HC_PURPOSE_FANCY,
} HcPurpose;

/**
 * HcHardiness:
 * @HC_HARDINESS_TENDER: wants shelter from frost
 * @HC_HARDINESS_FAIR: stands an ordinary winter
 * @HC_HARDINESS_HARDY: stands hard frost in a dry house
 */
typedef enum
{
  HC_HARDINESS_TENDER,
  HC_HARDINESS_FAIR,
  HC_HARDINESS_HARDY,
} HcHardiness;

/**
 * HcTemper:
 * @HC_TEMPER_CALM: quiet, easily handled
 * @HC_TEMPER_LIVELY: active, a good forager
 * @HC_TEMPER_FLIGHTY: easily startled, flies high
 * @HC_TEMPER_BOLD: pushes others about
 */
typedef enum
{
  HC_TEMPER_CALM,
  HC_TEMPER_LIVELY,
  HC_TEMPER_FLIGHTY,
  HC_TEMPER_BOLD,
} HcTemper;

/**
 * HcBreed:
 * @id: the breed's id, interned
 * @name: its English name; see hc_breed_get_name()
 * @kind: the kind of bird it is to a house
 * @purpose: what it is kept for
 * @egg_colour: colour of the shell in English; see hc_breed_get_egg_colour()
 * @egg_g: mass of an egg, 0 if not kept for eggs
 * @eggs_per_year: eggs in the first year of lay
 * @hen_kg: mass of a grown female
 * @cock_kg: mass of a grown male
 * @comb: its comb
 * @hardiness: how it stands the winter
 * @temper: its temper
 * @evidence: what stands behind its masses; the rest is from memory
 * @source: (nullable): what was published about them
 *
 * A breed, or a cross sold under a common name. It lives as long as its book.
 */
typedef struct
{
  const char *id;
  const char *name;
  const HcKind *kind;
  HcPurpose purpose;
  const char *egg_colour;
  double egg_g;
  double eggs_per_year;
  double hen_kg;
  double cock_kg;
  HcComb comb;
  HcHardiness hardiness;
  HcTemper temper;
  HcEvidence evidence;
  const HcSource *source;
} HcBreed;

const char *hc_breed_get_name (const HcBreed *self);
const char *hc_breed_get_egg_colour (const HcBreed *self);

G_END_DECLS
