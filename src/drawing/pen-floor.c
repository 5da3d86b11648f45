/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Uppermost layer, bedding on it, netting above it. */
#include "config.h"

#include "pen-floor.h"

#include "drawing/ground.h"

static const char *
uppermost_layer (const HcPenValues *pen)
{
  guint n = pen->floor_layers ? g_strv_length (pen->floor_layers) : 0;

  return n > 0 ? pen->floor_layers[n - 1] : NULL;
}

/* Earth outside is grown over. */
static gboolean
is_grown_over (const HcPenValues *pen)
{
  const char *layer = uppermost_layer (pen);

  return pen->kind == HC_PEN_RUN && (layer == NULL || g_str_equal (layer, "earth"));
}

/**
 * hc_draw_pen_floor:
 * @ink: the ink
 * @pen: a pen
 * @ring: (array length=n_points): the inside faces of its walls, in the space
 *   that is drawn in
 * @n_points: how many
 *
 * Fills the inside of a pen with its floor, bedding and, over a run, netting.
 */
void
hc_draw_pen_floor (const HcInk *ink, const HcPenValues *pen, const HcPoint *ring, guint n_points)
{
  HcBox box;

  if (n_points < 3)
    return;
  box = hc_box_around (ring, n_points);
  cairo_save (ink->cr);
  hc_ink_ring (ink, ring, n_points);
  cairo_clip (ink->cr);
  if (is_grown_over (pen))
    hc_draw_grass (ink, box);
  else
    hc_draw_floor_layer (ink, uppermost_layer (pen), box);
  if (pen->bedding != NULL && *pen->bedding != '\0')
    hc_draw_bedding (ink, pen->bedding, box);
  if (pen->roof == HC_ROOF_NET || pen->roof == HC_ROOF_MESH)
    hc_draw_netting (ink, box);
  cairo_restore (ink->cr);
}
