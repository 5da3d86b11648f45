/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * How far a fitting is from what stands around it. */
#include "config.h"

#include "plan/distances.h"

/* A straight look from one side of a fitting. */
typedef struct
{
  HcPoint from;
  HcPoint way;
  double met_mm;
  const char *id;
} Look;

static void
look_at_edge (Look *look, HcPoint a, HcPoint b, const char *id)
{
  HcPoint edge = hc_point_subtract (b, a);
  HcPoint to_edge = hc_point_subtract (a, look->from);
  double slant = hc_point_cross (look->way, edge);
  double ahead_mm, along;

  if (ABS (slant) < 1e-9)
    return;
  ahead_mm = hc_point_cross (to_edge, edge) / slant;
  along = hc_point_cross (to_edge, look->way) / slant;
  if (along < 0 || along > 1 || ahead_mm < -0.001 || ahead_mm >= look->met_mm)
    return;
  look->met_mm = MAX (ahead_mm, 0);
  look->id = id;
}

static void
look_at_ring (Look *look, const HcPoint *ring, guint n, const char *id)
{
  for (guint i = 0; i < n; i++)
    look_at_edge (look, ring[i], ring[(i + 1) % n], id);
}

static void
look_at_fitting (Look *look, HcFitting *fitting)
{
  const HcFittingValues *values = hc_fitting_get (fitting);
  double x = values->width_mm / 2, y = values->depth_mm / 2;
  HcPoint ring[4] = { { -x, -y }, { x, -y }, { x, y }, { -x, y } };

  for (guint i = 0; i < G_N_ELEMENTS (ring); i++)
    ring[i] = hc_point_add (hc_point_turn (ring[i], values->turn_deg),
                            (HcPoint){ values->x_mm, values->y_mm });
  look_at_ring (look, ring, G_N_ELEMENTS (ring), hc_fitting_get_id (fitting));
}

static void
look_around_pen (Look *look, const HcLayout *layout, HcPen *pen, const char *not_this)
{
  HcParts *fittings = hc_pen_get (pen)->fittings;
  g_autoptr (GArray) ring = hc_layout_get_pen_ring (layout, pen);

  look_at_ring (look, (const HcPoint *) ring->data, ring->len, NULL);
  for (guint i = 0; i < fittings->len; i++)
    if (!g_str_equal (hc_part_get_id (fittings->pdata[i]), not_this))
      look_at_fitting (look, fittings->pdata[i]);
}

/**
 * hc_layout_measure_around:
 * @layout: a layout
 * @fitting: id of a fitting in a pen
 * @distances: (out caller-allocates): room for four
 *
 * Looks straight out from the middle of each side to the first wall or
 * fitting of the pen.
 *
 * Returns: how many sides have something to measure to
 */
guint
hc_layout_measure_around (const HcLayout *layout, const char *fitting, HcDistance distances[4])
{
  static const HcPoint sides[4] = { { -1, 0 }, { 1, 0 }, { 0, -1 }, { 0, 1 } };
  HcPen *pen;
  HcFitting *found = hc_layout_get_fitting (layout, fitting, &pen);
  guint n = 0;

  if (found == NULL || pen == NULL)
    return 0;
  for (guint i = 0; i < G_N_ELEMENTS (sides); i++)
    {
      const HcFittingValues *values = hc_fitting_get (found);
      HcPoint out = { sides[i].x_mm * values->width_mm / 2, sides[i].y_mm * values->depth_mm / 2 };
      Look look = { hc_point_add ((HcPoint){ values->x_mm, values->y_mm },
                                  hc_point_turn (out, values->turn_deg)),
                    hc_point_turn (sides[i], values->turn_deg), G_MAXDOUBLE, NULL };

      look_around_pen (&look, layout, pen, fitting);
      if (look.met_mm < G_MAXDOUBLE)
        distances[n++] = (HcDistance){
          look.from, hc_point_add (look.from, hc_point_scale (look.way, look.met_mm)), look.met_mm,
          look.id
        };
    }
  return n;
}
