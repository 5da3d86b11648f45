/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The picture from the side, and what is drawn over it of what is chosen. */
#include "config.h"

#include "app/side/side-private.h"

#include "drawing/bird-places.h"
#include "drawing/dimension.h"
#include "drawing/level-mark.h"
#include "drawing/scale-bar.h"
#include "drawing/side-drawing.h"
#include "drawing/text.h"
#include "supply/bedding-limits.h"
#include "supply/upright.h"
#include "words/caught.h"
#include "words/height-words.h"

#define SCALE_BAR_PX 160.0
#define SCALE_BAR_IN_PX 18.0
#define MARK_PX 18.0
#define DASH_PX 6.0
#define WORDS_OFF_PX 4.0
#define WORDS_HIGH_PX 16.0

static void
draw_scale_bar (const HcInk *ink, HcSide *self)
{
  const HcSight *sight = &self->canvas.sight;
  HcPoint corner = hc_sight_to_mm (sight, SCALE_BAR_IN_PX,
                                   gtk_widget_get_height (GTK_WIDGET (self)) - SCALE_BAR_IN_PX);

  hc_draw_scale_bar (ink, corner.x_mm, corner.y_mm, SCALE_BAR_PX / ink->scale, self->units);
}

void
hc_side_draw_picture (const HcInk *ink, gpointer side)
{
  HcSide *self = side;
  g_autoptr (GArray) none = g_array_new (FALSE, FALSE, sizeof (HcBirdPlace));
  gboolean birds = g_settings_get_boolean (self->settings, "show-birds");

  if (self->scene == NULL)
    return;
  hc_draw_side_house (ink, self->scene, birds && self->places != NULL ? self->places : none);
  hc_draw_side_measures (ink, self->scene, self->units);
  draw_scale_bar (ink, self);
}

/* The picture shows the thing itself; only what findings and the keeper do to
 * it is drawn here. */
void
hc_side_draw_thing (const HcInk *ink, HcCanvasItem *item, gpointer side)
{
  const HcItemFrame *frame = hc_canvas_item_get_frame (item);

  if (hc_canvas_item_get_level (item) < HC_LEVEL_GOOD)
    hc_draw_level_mark (ink, frame->width_mm / 2, -frame->depth_mm / 2, MARK_PX / ink->scale,
                        hc_canvas_item_get_level (item));
  hc_canvas_draw_outline (ink, item, side);
}

void
hc_side_draw_handle (const HcInk *ink, HcCanvasItem *item, gpointer side)
{
  hc_canvas_draw_handle (ink, item, FALSE, side);
}

static void
draw_gap (const HcInk *ink, HcSide *self, double x_mm, double from_mm, double to_mm)
{
  if (to_mm - from_mm > 1)
    hc_draw_dimension (ink, hc_point (x_mm, -from_mm), hc_point (x_mm, -to_mm), 0, self->units);
}

/* Headroom over a thing, and the drop under it. */
static void
draw_room_of (const HcInk *ink, HcSide *self, HcCanvasItem *item)
{
  double x_mm = hc_canvas_item_get_frame (item)->centre.x_mm;
  HcUpright upright;

  if (!hc_house_measure_upright (self->scene->house, hc_canvas_item_get_id (item), &upright))
    return;
  draw_gap (ink, self, x_mm, upright.under_mm, upright.bottom_mm);
  if (upright.over_mm < G_MAXDOUBLE)
    draw_gap (ink, self, x_mm, upright.top_mm, upright.over_mm);
}

static void
draw_height_of (const HcInk *ink, HcSide *self, HcCanvasItem *item)
{
  const HcOpeningValues *values = hc_opening_get (hc_canvas_item_get_part (item));
  double x_mm = hc_canvas_item_get_frame (item)->centre.x_mm;

  draw_gap (ink, self, x_mm, 0, values->sill_mm);
  draw_gap (ink, self, x_mm, values->sill_mm, values->sill_mm + values->height_mm);
}

static void
draw_line_with_words (const HcInk *ink, double from_x, double to_x, double height_mm,
                      const char *words, HcPaint paint)
{
  hc_draw_text (ink, HC_HAND_SMALL, words, to_x, -height_mm - WORDS_OFF_PX / ink->scale, 1, 1, 0,
                paint);
  cairo_new_path (ink->cr);
  hc_ink_line (ink, from_x, -height_mm, to_x, -height_mm);
}

/* What the bedding comes up to, lowest first, as far as there is room to say it; what it has risen above is told by a mark too. */
static void
draw_limits_of (const HcInk *ink, HcSide *self, HcCanvasItem *item)
{
  const HcItemFrame *frame = hc_canvas_item_get_frame (item);
  double from_x = frame->centre.x_mm - frame->width_mm / 2, to_x = from_x + frame->width_mm;
  double dash_mm = DASH_PX / ink->scale;
  HcPen *pen = hc_canvas_item_get_part (item);
  double room_mm = WORDS_HIGH_PX / ink->scale, said_mm = -room_mm;
  g_autoptr (GArray) limits = NULL;
  guint room;

  if (!hc_house_find_room (self->scene->house, hc_pen_get_id (pen), &room))
    return;
  limits = hc_room_find_bedding_limits (hc_house_get_room (self->scene->house, room));
  for (guint i = 0; i < limits->len; i++)
    {
      const HcBeddingLimit *limit = &g_array_index (limits, HcBeddingLimit, i);
      gboolean risen = hc_pen_get (pen)->bedding_mm > limit->height_mm;
      g_autofree char *words = hc_words_bedding_limit (limit, self->units);

      if (limit->height_mm - said_mm < room_mm)
        continue;
      said_mm = limit->height_mm;
      draw_line_with_words (ink, from_x, to_x, limit->height_mm, words, HC_PAINT_INK);
      cairo_set_dash (ink->cr, &dash_mm, risen ? 0 : 1, 0);
      hc_ink_stroke (ink, risen ? HC_LINE_HEAVY : HC_LINE_MEDIUM,
                     risen ? HC_PAINT_SHORT : HC_PAINT_SOFT_INK);
      cairo_set_dash (ink->cr, NULL, 0, 0);
      if (risen)
        hc_draw_level_mark (ink, from_x, -limit->height_mm, MARK_PX / ink->scale,
                            HC_LEVEL_TIGHT);
    }
}

static void
draw_caught (const HcInk *ink, HcSide *self)
{
  const HcSideCut *cut = &self->scene->cut;
  double dash_mm = DASH_PX / ink->scale;

  draw_line_with_words (ink, 0, hc_point_distance (cut->from, cut->to), self->caught.line_mm,
                        hc_words_height_caught (self->caught.kind), HC_PAINT_INK);
  cairo_save (ink->cr);
  hc_canvas_set_accent (ink, self, 0.9);
  cairo_set_line_width (ink->cr, 1.5 / ink->scale);
  cairo_set_dash (ink->cr, &dash_mm, 1, 0);
  cairo_stroke (ink->cr);
  cairo_restore (ink->cr);
}

static void
draw_measures_of (const HcInk *ink, HcSide *self, HcCanvasItem *item)
{
  switch (hc_canvas_item_get_kind (item))
    {
    case HC_ITEM_FITTING:
      draw_room_of (ink, self, item);
      break;
    case HC_ITEM_OPENING:
      draw_height_of (ink, self, item);
      break;
    case HC_ITEM_BEDDING:
      draw_limits_of (ink, self, item);
      break;
    default:
      break;
    }
}

void
hc_side_draw_marks (const HcInk *ink, gpointer side)
{
  HcSide *self = side;
  HcCanvas *canvas = side;
  HcCanvasItem *item;

  if (self->scene == NULL)
    return;
  item = canvas->handled != NULL ? hc_canvas_get_item (canvas, canvas->handled) : NULL;
  if (item != NULL)
    draw_measures_of (ink, self, item);
  if (canvas->drag == NULL || !canvas->drag->claimed)
    return;
  if (canvas->drag->kind == HC_DRAG_BAND)
    hc_canvas_draw_band (ink, canvas);
  else if (self->is_caught)
    draw_caught (ink, self);
}
