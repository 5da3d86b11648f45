/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Where a house is cut to be seen from the side. */
#pragma once

#include "supply/section.h"

G_BEGIN_DECLS

/* A cut starts and ends this far outside of the house. */
#define HC_SIDE_OUTSIDE_MM 1900.0

/**
 * HcSideCut: (skip)
 * @from: where the cut starts, outside of the house
 * @to: where it ends
 * @along: its way, of length 1
 * @into: the way it is looked, of length 1
 */
typedef struct
{
  HcPoint from;
  HcPoint to;
  HcPoint along;
  HcPoint into;
} HcSideCut;

const HcRoomWall *hc_side_cut_find_wall (const HcHouse *house, const char *id, HcRoom **of);
gboolean hc_side_cut_find (const HcHouse *house, const char *wall, HcSideCut *cut);
gboolean hc_side_cut_measure (const HcHouse *house, const char *wall, const HcSideCut *cut,
                              double *distance_mm);
void hc_side_cut_move (HcSideCut *cut, double by_mm);
GArray *hc_side_cut_look (const HcSideCut *cut, const HcHouse *house) G_GNUC_WARN_UNUSED_RESULT;
HcPoint hc_side_cut_project (const HcSideCut *cut, HcPoint at);

G_END_DECLS
