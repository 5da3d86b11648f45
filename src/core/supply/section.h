/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What is seen from a cut through the house: plain outlines, nothing drawn. */
#pragma once

#include "supply/house.h"

G_BEGIN_DECLS

/**
 * HcSectionKind:
 * @HC_SECTION_WALL: a wall
 * @HC_SECTION_ROOF: the underside of the roof along the cut
 * @HC_SECTION_OPENING: an opening in a wall
 * @HC_SECTION_FITTING: a thing that stands or hangs
 * @HC_SECTION_BAR: one bar of a roost
 */
typedef enum
{
  HC_SECTION_WALL,
  HC_SECTION_ROOF,
  HC_SECTION_OPENING,
  HC_SECTION_FITTING,
  HC_SECTION_BAR,
} HcSectionKind;

/**
 * HcSectionItem:
 * @kind: a #HcSectionKind
 * @id: id of the part it is of, interned
 * @cut: whether the cut goes through it, else it is beyond
 * @depth_mm: how far beyond the cut it begins, 0 for what is cut
 * @outline: (element-type HcPoint): its outline, x along the cut from its
 *   start, y up from the floor; of a roof a line, of all else a ring
 */
typedef struct
{
  HcSectionKind kind;
  const char *id;
  gboolean cut;
  double depth_mm;
  GArray *outline;
} HcSectionItem;

GArray *hc_section_look (const HcHouse *house, HcPoint from,
                         HcPoint to) G_GNUC_WARN_UNUSED_RESULT;

G_END_DECLS
