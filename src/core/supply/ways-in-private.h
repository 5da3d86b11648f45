/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * One room looked over for ways in. */
#pragma once

#include "supply/ways-in.h"

G_BEGIN_DECLS

/* Private to supply/. */
typedef struct
{
  const HcHouse *house;
  const HcIntruder *intruder;
  guint room;
  HcRoom *here;
  GArray *ways;
} HcProwl;

guint hc_prowl_get_beyond (const HcProwl *prowl, const HcRoomWall *wall);
HcWayIn *hc_prowl_add (HcProwl *prowl, HcWayInCause cause, const HcRoomWall *wall,
                       const char *part);
double hc_prowl_get_wall_mm (const HcProwl *prowl, const HcRoomWall *wall);
gboolean hc_prowl_gets_up (const HcProwl *prowl, double height_mm);
gboolean hc_prowl_passes_mesh (const HcProwl *prowl, const char *mesh, int fixing,
                               HcWayInCause *cause, double *have_mm);

void hc_prowl_round_walls (HcProwl *prowl);
void hc_prowl_round_openings (HcProwl *prowl);
void hc_prowl_below (HcProwl *prowl);
void hc_prowl_above (HcProwl *prowl);

G_END_DECLS
