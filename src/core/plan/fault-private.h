/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * How faults are filled in while a plan is looked through. */
#pragma once

#include "plan/fault.h"
#include "plan/plan.h"

G_BEGIN_DECLS

gboolean hc_fault_set (HcFault *self,
                       HcFaultKind kind,
                       const char *member,
                       const char *id,
                       const char *other);
gboolean hc_fault_inside (HcFault *self,
                          const char *member);
gboolean hc_fault_inside_item (HcFault *self,
                               const char *member,
                               guint index);

gboolean hc_part_find_fault (const HcPart *part,
                             HcFault *fault);
gboolean hc_season_find_fault (const HcPlan *plan,
                               GHashTable *pens,
                               HcFault *fault);
gboolean hc_layout_find_fault (const HcLayout *layout,
                               GHashTable *buildings,
                               HcFault *fault);
gboolean hc_openings_find_fault (const HcLayoutValues *layout,
                                 GHashTable *parts,
                                 HcFault *fault);
gboolean hc_pen_find_ring_fault (const HcPen *pen,
                                 GHashTable *parts,
                                 HcFault *fault);

gpointer hc_named_part (GHashTable *parts,
                        const char *id,
                        const HcPartClass *klass);
gboolean hc_wall_get_ends (const HcWall *wall,
                           GHashTable *parts,
                           HcPoint *from,
                           HcPoint *to);

G_END_DECLS
