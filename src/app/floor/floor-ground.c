/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What lies still on the floor: pens, walls, their names and lengths; and the birds. */
#include "config.h"

#include "app/floor/floor-private.h"

#include "drawing/bird-places.h"
#include "drawing/dimension.h"
#include "drawing/floor-drawing.h"
#include "drawing/floor-labels.h"
#include "drawing/open-line.h"
#include "drawing/opening-drawing.h"
#include "drawing/pen-floor.h"
#include "drawing/scale-bar.h"
#include "drawing/wall-drawing.h"
#include "drawing/wall-outline.h"
#include "plan/distances.h"

#define SCALE_BAR_PX 160.0
#define SCALE_BAR_IN_PX 18.0

static void
draw_pen_floors (const HcInk *ink, HcLayout *layout)
{
  HcParts *pens = hc_layout_get (layout)->pens;

  for (guint i = 0; i < pens->len; i++)
    {
      g_autoptr (GArray) ring = hc_layout_get_pen_ring (layout, pens->pdata[i]);

      if (ring->len > 2)
        hc_draw_pen_floor (ink, hc_pen_get (pens->pdata[i]), (const HcPoint *) ring->data,
                           ring->len);
    }
}

void
hc_floor_draw_ground (const HcInk *ink, gpointer floor)
{
  HcFloor *self = floor;

  if (self->canvas.layout == NULL)
    return;
  draw_pen_floors (ink, self->canvas.layout);
  hc_draw_walls (ink, self->canvas.layout);
  hc_draw_dimensions (ink, self->canvas.layout, hc_panel_get_units (HC_PANEL (self)));
}

static gboolean
birds_are_shown (HcFloor *self)
{
  return g_settings_get_boolean (self->settings, "show-birds");
}

void
hc_floor_draw_birds (const HcInk *ink, gpointer floor)
{
  HcFloor *self = floor;
  HcCheck *check = hc_panel_get_check (HC_PANEL (self));
  g_autoptr (GArray) places = NULL;

  if (check == NULL || !birds_are_shown (self))
    return;
  places = hc_bird_places (check);
  hc_draw_bird_places (ink, places);
}

/* An item is turned as its wall lies; what is inwards of it may be on either side. */
static gboolean
is_mirrored (const HcLayout *layout, const HcOpeningValues *values)
{
  HcWall *wall = hc_layout_get_wall (layout, values->wall);
  HcWallFaces faces;

  return wall != NULL && hc_wall_faces (layout, wall, &faces) && hc_wall_faces_mirror (&faces);
}

void
hc_floor_draw_opening (const HcInk *ink, HcCanvasItem *item, gpointer floor)
{
  const HcItemFrame *frame = hc_canvas_item_get_frame (item);
  const HcOpeningValues *values = hc_opening_get (hc_canvas_item_get_part (item));

  cairo_save (ink->cr);
  if (is_mirrored (((HcFloor *) floor)->canvas.layout, values))
    cairo_scale (ink->cr, 1, -1);
  hc_draw_opening (ink, values, frame->depth_mm);
  cairo_restore (ink->cr);
  if (hc_canvas_item_get_level (item) < HC_LEVEL_GOOD)
    hc_draw_opening_mark (ink, hc_canvas_item_get_level (item));
  hc_canvas_draw_outline (ink, item, floor);
}

/* While one fitting is selected: how far it is from what stands around it. */
void
hc_floor_draw_distances (const HcInk *ink, HcFloor *self)
{
  const char *const *ids
      = hc_document_get_selection (hc_panel_get_document (HC_PANEL (self)));
  HcDistance distances[4];
  guint n;

  if (ids[0] == NULL || ids[1] != NULL)
    return;
  n = hc_layout_measure_around (self->canvas.layout, ids[0], distances);
  for (guint i = 0; i < n; i++)
    if (distances[i].mm > 1)
      hc_draw_dimension (ink, distances[i].from, distances[i].to, 0,
                         hc_panel_get_units (HC_PANEL (self)));
}

static void
draw_scale_bar (const HcInk *ink, HcFloor *self)
{
  HcPoint corner = hc_sight_to_mm (&self->canvas.sight, SCALE_BAR_IN_PX,
                                  gtk_widget_get_height (GTK_WIDGET (self)) - SCALE_BAR_IN_PX);

  hc_draw_scale_bar (ink, corner.x_mm, corner.y_mm, SCALE_BAR_PX / ink->scale,
                     hc_panel_get_units (HC_PANEL (self)));
}

/* What is to be read: names of pens, marks on them, and the scale bar. */
void
hc_floor_draw_words (const HcInk *ink, gpointer floor)
{
  HcFloor *self = floor;
  HcCheck *check;

  if (self->canvas.layout == NULL)
    return;
  check = hc_panel_get_check (HC_PANEL (self));
  hc_draw_pen_names (ink, self->canvas.layout, hc_panel_get_units (HC_PANEL (self)), NULL);
  if (check != NULL)
    {
      hc_draw_open_lines (ink, check);
      hc_draw_pen_marks (ink, self->canvas.layout, check);
    }
  draw_scale_bar (ink, self);
}
