/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Closed lines round an area, which may still lie across each other. */
#pragma once

#include "base/shape.h"

G_BEGIN_DECLS

/* An edge leaves its corner along @way, of length 1. An edge too short to tell
 * where it leads still knows its way: it is that of the wall it came from. */
typedef struct
{
  HcPoint corner;
  HcPoint way;
} HcLoopEdge;

/* The inside lies to the left when y points up. Loop i ends before edge ends[i]. */
typedef struct
{
  GArray *edges;
  GArray *ends;
} HcLoops;

HcLoops *hc_loops_new (void) G_GNUC_WARN_UNUSED_RESULT;
void hc_loops_free (HcLoops *self);
void hc_loops_add_edge (HcLoops *self,
                        HcPoint corner,
                        HcPoint way);
void hc_loops_end_loop (HcLoops *self);
const HcLoopEdge *hc_loops_get (const HcLoops *self,
                                guint loop,
                                guint *n_edges);
void hc_loops_add_shape (HcLoops *self,
                         const HcShape *shape,
                         gboolean inside_out);
HcShape *hc_loops_to_shape (const HcLoops *self) G_GNUC_WARN_UNUSED_RESULT;

G_DEFINE_AUTOPTR_CLEANUP_FUNC (HcLoops, hc_loops_free)

G_END_DECLS
