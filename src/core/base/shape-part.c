/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * One part of a shape, on its own. */
#include "config.h"

#include "base/shape-private.h"

/**
 * hc_shape_get_part:
 * @self: a shape
 * @part: index of one of its parts
 *
 * Returns: (transfer full): that part alone, with its holes
 */
HcShape *
hc_shape_get_part (const HcShape *self,
                   guint part)
{
  HcShapeBuilder builder;

  g_return_val_if_fail (self != NULL && part < hc_shape_get_n_parts (self), NULL);

  hc_shape_builder_init (&builder);
  hc_shape_builder_begin_part (&builder);
  for (guint ring = 0; ring < hc_shape_get_n_rings (self, part); ring++)
    {
      guint n_points;
      const HcPoint *points = hc_shape_get_ring (self, part, ring, &n_points);

      hc_shape_builder_add_ring (&builder, points, n_points);
    }
  return hc_shape_builder_end (&builder);
}
