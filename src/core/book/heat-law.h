/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * How much heat birds give off. */
#pragma once

#include "book/source.h"

#include <glib.h>

G_BEGIN_DECLS

/**
 * HcHeatLaw:
 * @id: its id, interned
 * @kinds: kinds of bird it is for, a bit for each by its place among the kinds
 * @w_kg: heat of a bird of 1 kg at 20 °C, W
 * @power: the power of its mass the heat grows with
 * @egg_w_kg: heat for each kg of eggs a day, W
 * @sensible_share: share of it that warms the air, in a house with litter
 * @warm_loss: W less of that for each kW of heat and °C squared
 * @evidence: what stands behind it
 * @source: (nullable): what was published about it
 * @note: where it comes from, in English
 *
 * How much heat birds of some kinds give off.
 */
typedef struct
{
  const char *id;
  guint kinds;
  double w_kg;
  double power;
  double egg_w_kg;
  double sensible_share;
  double warm_loss;
  HcEvidence evidence;
  const HcSource *source;
  const char *note;
} HcHeatLaw;

G_END_DECLS
