/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * How often loops wind round what lies on either side of each line. */
#pragma once

#include "base/linework.h"

G_BEGIN_DECLS

typedef struct
{
  int of_layer[HC_N_LAYERS];
} HcWinding;

/* A line seen from one of its ends. The sides that leave one place stand next to
 * each other, from n_here of them the first at @first, sorted round the place. */
typedef struct
{
  HcGridPoint from, to;
  guint line;
  guint back;
  guint first;
  guint n_here;
  HcWinding left;
  gboolean is_known;
} HcSide;

typedef struct
{
  const HcGridLine *lines;
  guint n_lines;
  HcSide *sides;
  guint n_sides;
} HcSides;

HcSides *hc_sides_new (const HcLinework *linework) G_GNUC_WARN_UNUSED_RESULT;
void hc_sides_free (HcSides *self);

gboolean hc_side_leads_right (const HcSide *side);
HcWinding hc_sides_get_right (const HcSides *self,
                              const HcSide *side);

G_DEFINE_AUTOPTR_CLEANUP_FUNC (HcSides, hc_sides_free)

G_END_DECLS
