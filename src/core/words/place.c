/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Where a fitting stands or an opening is, for those who cannot see the plan. */
#include "config.h"

#include "words/words.h"

#include "base/ring.h"
#include "plan/wall-places.h"

#include <glib/gi18n-lib.h>
#include <math.h>

/* Nearer than this a fitting is at the wall. */
#define AT_WALL_MM 20

/* By the way out through the wall; up on the plan is north. */
static const char *
from_wall (HcPoint out)
{
  if (fabs (out.x_mm) > fabs (out.y_mm))
    return out.x_mm > 0 ? _("%s from the east wall") : _("%s from the west wall");
  return out.y_mm > 0 ? _("%s from the south wall") : _("%s from the north wall");
}

static const char *
at_wall (HcPoint out)
{
  if (fabs (out.x_mm) > fabs (out.y_mm))
    return out.x_mm > 0 ? _("at the east wall") : _("at the west wall");
  return out.y_mm > 0 ? _("at the south wall") : _("at the north wall");
}

/* Half of what a fitting measures in the direction @way. */
static double
half_extent_mm (const HcFittingValues *values, HcPoint way)
{
  HcPoint own = hc_point_turn (way, -values->turn_deg);

  if (values->form == HC_FORM_ROUND)
    return values->width_mm / 2;
  return (fabs (own.x_mm) * values->width_mm + fabs (own.y_mm) * values->depth_mm) / 2;
}

static char *
say_wall (const GArray *ring, const HcFittingValues *values, HcUnits units)
{
  const HcPoint *corners = (const HcPoint *) ring->data;
  HcPoint middle = hc_point (values->x_mm, values->y_mm);
  double distance_mm;
  guint edge = hc_ring_nearest_edge (corners, ring->len, middle, &distance_mm);
  HcPoint in = hc_ring_edge_normal (corners, ring->len, edge);
  HcPoint out = hc_point_scale (in, -1);
  g_autofree char *length = NULL;

  distance_mm -= half_extent_mm (values, out);
  if (distance_mm <= AT_WALL_MM)
    return g_strdup (at_wall (out));
  length = hc_length_format (distance_mm, units);
  return g_strdup_printf (from_wall (out), length);
}

/**
 * hc_words_fitting_place: (skip)
 * @layout: its layout
 * @fitting: a fitting
 * @units: what the keeper measures in
 *
 * Returns: (transfer full): where it stands: "0.3 m from the north wall of
 *   Hens"
 */
char *
hc_words_fitting_place (const HcLayout *layout, const HcFitting *fitting, HcUnits units)
{
  HcPen *pen = NULL;
  g_autoptr (GArray) ring = NULL;
  g_autofree char *wall = NULL;
  g_autofree char *name = NULL;

  if (hc_layout_get_fitting (layout, hc_fitting_get_id (fitting), &pen) == NULL || pen == NULL)
    return g_strdup (_("in no pen"));
  name = hc_words_part (layout, hc_pen_get_id (pen));
  ring = hc_layout_get_pen_ring (layout, pen);
  if (ring->len < 3)
    return g_strdup_printf (_("in %s"), name);
  wall = say_wall (ring, hc_fitting_get (fitting), units);
  /* Translators: where in the pen, then the name of the pen. */
  return g_strdup_printf (_("%s of %s"), wall, name);
}

static const char *
in_wall (HcPoint out)
{
  if (fabs (out.x_mm) > fabs (out.y_mm))
    return out.x_mm > 0 ? _("in the east wall") : _("in the west wall");
  return out.y_mm > 0 ? _("in the south wall") : _("in the north wall");
}

/* The way out of @pen through the wall nearest to @at. */
static HcPoint
find_way_out (const HcLayout *layout, const HcPen *pen, HcPoint at)
{
  g_autoptr (GArray) ring = hc_layout_get_pen_ring (layout, pen);
  const HcPoint *corners = (const HcPoint *) (gpointer) ring->data;
  double distance_mm;

  if (ring->len < 3)
    return hc_point (0, -1);
  return hc_point_scale (
      hc_ring_edge_normal (corners, ring->len,
                           hc_ring_nearest_edge (corners, ring->len, at, &distance_mm)),
      -1);
}

/**
 * hc_words_opening_place: (skip)
 * @layout: its layout
 * @id: id of an opening
 * @units: what the keeper measures in
 *
 * Returns: (transfer full): what it is and where: "the vent 1.8 m up in the north wall
 *   of Hens"
 */
char *
hc_words_opening_place (const HcLayout *layout, const char *id, HcUnits units)
{
  HcOpening *opening = hc_layout_get_opening (layout, id);
  g_autofree char *name = hc_words_part (layout, id);
  g_autofree char *pen = NULL;
  g_autofree char *height = NULL;
  HcPen *beside[2];
  HcPoint at;

  if (opening == NULL
      || hc_layout_get_pens_beside (layout, hc_opening_get (opening)->wall, beside) == 0)
    return g_steal_pointer (&name);
  at = hc_layout_get_place_in_wall (layout, hc_opening_get (opening)->wall,
                                    hc_opening_get (opening)->along_mm);
  pen = hc_words_part (layout, hc_pen_get_id (beside[0]));
  height = hc_length_format (hc_opening_get (opening)->sill_mm, units);
  /* Translators: a vent or window, how high up it is, in which wall, of which pen: "the
   * vent 1.8 m up in the north wall of Hens". */
  return g_strdup_printf (_("%s %s up %s of %s"), name, height,
                          in_wall (find_way_out (layout, beside[0], at)), pen);
}
