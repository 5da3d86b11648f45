/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Demands are stated for whole flocks; here each bird bears its share.
 *
 * Where a figure has a fixed part ('never under two nipples'), all birds that
 * it concerns share one: a bird asks what it would in a flock of its own kind
 * that is as large as all of them together. */
#include "config.h"

#include "needs/serve/asking.h"

#include "base/whole.h"

#include <string.h>

/* The floor under a roof, or the ground of a space that has none. */
double
hc_need_context_get_ground_floor_mm2 (const HcNeedContext *context)
{
  double roofed = 0;
  double all = 0;

  for (guint i = 0; i < hc_need_context_get_n_rooms (context); i++)
    {
      HcRoom *room = hc_need_context_get_room (context, i);
      double area = hc_shape_get_area_mm2 (hc_room_get_outline (room));

      all += area;
      if (hc_room_is_roofed (room))
        roofed += area;
    }
  return roofed > 0 ? roofed : all;
}

void
hc_asking_init (HcAsking *self, const HcNeedContext *context, const char *figure, HcLevel level)
{
  memset (self, 0, sizeof *self);
  self->level = level;
  self->times = 1;
  self->basis = (HcBasis) { .ground_floor_mm2 = hc_need_context_get_ground_floor_mm2 (context) };
  for (guint body = 0; body < hc_need_context_get_n_bodies (context); body++)
    {
      self->mass_kg[body] = hc_need_context_get_body (context, body)->mass_kg;
      self->of[body] = hc_need_context_find_demand (context, figure, body, level);
    }
}

/* What one bird of @body asks among @birds; negative when the figure says
 * nothing about it. */
double
hc_asking_get_each (const HcAsking *self, guint body, gint64 birds)
{
  HcBasis basis = self->basis;

  if (self->of[body] == NULL)
    return -1;
  if (self->basis_birds > 0)
    basis.required_floor_mm2 *= (double) birds / (double) self->basis_birds;
  return self->times
         * hc_demand_get_amount (self->of[body], self->level, (double) birds,
                                 (double) birds * self->mass_kg[body], &basis)
         / (double) MAX (birds, 1);
}

/* What all of them ask together; @figure is the one that asks most. */
double
hc_asking_get_total (const HcAsking *self, const gint64 *counts, HcBodies bodies,
                     const HcFigure **figure)
{
  gint64 birds = 0;
  double total = 0;
  double most = -1;
  const HcDemand *found = NULL;

  for (guint body = 0; body < HC_MOST_BODIES; body++)
    if (bodies >> body & 1)
      birds += counts[body];
  for (guint body = 0; body < HC_MOST_BODIES; body++)
    {
      double asked;

      if ((bodies >> body & 1) == 0 || self->of[body] == NULL || counts[body] == 0)
        continue;
      asked = hc_asking_get_each (self, body, birds) * (double) counts[body];
      total += asked;
      if (asked > most)
        {
          most = asked;
          found = self->of[body];
        }
    }
  if (figure != NULL)
    *figure = found != NULL ? &found->figure : NULL;
  if (found != NULL && hc_figure_unit_get_dimension (found->figure.unit) == HC_DIMENSION_COUNT)
    return (double) hc_whole_asked (total);
  return total;
}
