/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Who comes for birds, feed and eggs, and how. */
#pragma once

#include "book/source.h"

#include <glib.h>

G_BEGIN_DECLS

/**
 * HcPredator:
 * @id: its id, interned
 * @name: English name; see hc_predator_get_name()
 * @passes_mm: it passes any hole wider than this
 * @overhead: whether it comes from above only
 * @takes_birds: whether it takes birds, else feed and eggs
 * @takes_to_week: the last week of life of birds it takes, 0 for grown ones too
 * @digs: whether it digs
 * @digs_mm: how deep
 * @climbs: whether it climbs
 * @jumps_mm: how high it jumps or stretches, 0 if it does not
 * @gnaws: whether it gnaws
 * @tears: whether it tears light netting and pulls staples
 * @hunts_by_day: whether it comes by day
 * @hunts_by_night: whether it comes by night
 * @opens_latches: whether it opens simple latches
 * @reach_mm: how far it reaches through a mesh, 0 if it does not
 * @reaches_through_mm: the mesh must be wider than this to be reached through
 * @evidence: what stands behind this
 * @source: (nullable): what was published about it
 * @note: (nullable): an English sentence; see hc_predator_get_note()
 */
typedef struct
{
  const char *id;
  const char *name;
  double passes_mm;
  gboolean overhead;
  gboolean takes_birds;
  int takes_to_week;
  gboolean digs;
  double digs_mm;
  gboolean climbs;
  double jumps_mm;
  gboolean gnaws;
  gboolean tears;
  gboolean hunts_by_day;
  gboolean hunts_by_night;
  gboolean opens_latches;
  double reach_mm;
  double reaches_through_mm;
  HcEvidence evidence;
  const HcSource *source;
  const char *note;
} HcPredator;

const char *hc_predator_get_name (const HcPredator *self);
const char *hc_predator_get_note (const HcPredator *self);

G_END_DECLS
