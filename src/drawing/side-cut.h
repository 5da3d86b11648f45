/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Where a house is cut to be seen from the side. */
#pragma once

#include "supply/section.h"

G_BEGIN_DECLS

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

gboolean hc_side_cut_find (const HcHouse *house, const char *wall, HcSideCut *cut);
GArray *hc_side_cut_look (const HcSideCut *cut, const HcHouse *house) G_GNUC_WARN_UNUSED_RESULT;
HcPoint hc_side_cut_project (const HcSideCut *cut, HcPoint at);

G_END_DECLS
