/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What stands in the way of bedding that is raised through the winter. */
#pragma once

#include "supply/house.h"

G_BEGIN_DECLS

/**
 * HcBeddingLimitKind:
 * @HC_BEDDING_SPILLS: above it the bedding spills out of an opening
 * @HC_BEDDING_STOPS_DOOR: above it a door that opens inwards is held shut
 * @HC_BEDDING_INTO_NESTS: above it the bedding is level with the nests
 */
typedef enum
{
  HC_BEDDING_SPILLS,
  HC_BEDDING_STOPS_DOOR,
  HC_BEDDING_INTO_NESTS,
} HcBeddingLimitKind;

/**
 * HcBeddingLimit:
 * @kind: a #HcBeddingLimitKind
 * @height_mm: how deep the bedding may be for it
 * @id: (transfer none): id of the opening or the nests
 */
typedef struct
{
  HcBeddingLimitKind kind;
  double height_mm;
  const char *id;
} HcBeddingLimit;

GArray *hc_room_find_bedding_limits (const HcRoom *room) G_GNUC_WARN_UNUSED_RESULT;

G_END_DECLS
