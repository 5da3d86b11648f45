/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Things that take the same room. */
#include "config.h"

#include "needs/clearance/clearance.h"

#include "needs/clearance/pieces.h"

/* Others that one thing is told to clash with: by then it has to move anyway. */
#define MOST_OTHERS 4

/* A ramp leans on what it leads up to, and chicks run over a heat pad. */
static gboolean
may_touch_others (const HcFittingValues *values)
{
  return values->kind == HC_FITTING_RAMP || values->kind == HC_FITTING_FLOOR_HEAT_PAD;
}

static void
look_at_fitting (HcClearance *self, GPtrArray *pieces, guint fitting)
{
  HcBox box = hc_shape_get_bounds (hc_room_get_footprint (self->room, fitting));
  g_autoptr (GArray) near = hc_room_find_fittings (self->room, box);
  HcFinding *finding = NULL;
  guint n_others = 0;

  for (guint i = 0; i < near->len && n_others < MOST_OTHERS; i++)
    {
      guint other = g_array_index (near, guint, i);

      if (other <= fitting || may_touch_others (hc_clearance_get (self, other))
          || !hc_pieces_meet (pieces->pdata[fitting], pieces->pdata[other]))
        continue;
      if (finding == NULL)
        finding = hc_clearance_add (self, "clearance.overlap", HC_LEVEL_SHORT,
                                    hc_fitting_get_id (self->fittings->pdata[fitting]));
      hc_finding_add_id (finding, hc_fitting_get_id (self->fittings->pdata[other]));
      n_others++;
    }
}

void
hc_clearance_look_at_overlaps (HcClearance *self)
{
  g_autoptr (GPtrArray) pieces
      = g_ptr_array_new_with_free_func ((GDestroyNotify) g_array_unref);

  for (guint i = 0; i < self->fittings->len; i++)
    g_ptr_array_add (pieces, hc_pieces_of_fitting (self->room, i));
  for (guint i = 0; i < self->fittings->len; i++)
    if (!may_touch_others (hc_clearance_get (self, i)))
      look_at_fitting (self, pieces, i);
}
