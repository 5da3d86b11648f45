/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The openings a keeper can put in a wall, and the sizes they start with. */
#pragma once

#include "book/fitting-type.h"

G_BEGIN_DECLS

/**
 * HcOpeningType:
 * @kind: what the plan calls it, "pop_hole", interned
 * @name: English name of one; see hc_opening_type_get_name()
 * @plural: English name of several
 * @why: what it is for, an English sentence; see hc_opening_type_get_why()
 * @group: what birds do with it
 * @width_mm: clear width to start with
 * @height_mm: clear height to start with
 * @sill_mm: height of its lower edge to start with
 * @open_winter: share left open in the cold, 0 to 1
 * @open_summer: share that can be opened in the heat, 0 to 1
 * @shut_at_dusk: whether it is shut every dusk
 * @open_by_day: whether birds pass it by day
 * @evidence: what stands behind the sizes
 * @source: (nullable): what was published about them
 *
 * An opening to add. It lives as long as its book.
 */
typedef struct
{
  const char *kind;
  const char *name;
  const char *plural;
  const char *why;
  HcFittingGroup group;
  double width_mm;
  double height_mm;
  double sill_mm;
  double open_winter;
  double open_summer;
  gboolean shut_at_dusk;
  gboolean open_by_day;
  HcEvidence evidence;
  const HcSource *source;
} HcOpeningType;

const char *hc_opening_type_get_name (const HcOpeningType *self, gulong count);
const char *hc_opening_type_get_why (const HcOpeningType *self);

G_END_DECLS
