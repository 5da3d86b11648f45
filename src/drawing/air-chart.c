/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A chart of nights: where nothing avoidable is wrong is outlined and hatched, what is
 * wrong elsewhere is named. */
#include "config.h"

#include "drawing/air-chart.h"

#include "drawing/text.h"

#include "climate/risk.h"

#include <glib/gi18n-lib.h>

#define LEFT 44.0
#define BELOW 40.0
#define ABOVE 22.0
#define RIGHT 10.0
#define HATCH 9.0
#define MARK 7.0

/* A fault that fills less of the chart than this is not named in it. */
#define WORTH_NAMING 0.02

typedef struct
{
  const HcInk *ink;
  const HcAirChart *chart;
  double width;
  double height;
} Frame;

static const HcNightPoint *
point_at (const Frame *frame, guint column, guint row)
{
  return &g_array_index (frame->chart->points, HcNightPoint,
                         row * frame->chart->side + column);
}

static gboolean
is_free (const Frame *frame, guint column, guint row)
{
  return (point_at (frame, column, row)->faults & HC_NIGHT_VENT_FAULTS) == 0;
}

static double
x_of (const Frame *frame, double outside_c)
{
  double from = point_at (frame, 0, 0)->outside_c;
  double to = point_at (frame, frame->chart->side - 1, 0)->outside_c;

  return LEFT + (CLAMP (outside_c, from, to) - from) / (to - from)
                    * (frame->width - LEFT - RIGHT);
}

static double
y_of (const Frame *frame, double open)
{
  return frame->height - BELOW - open * (frame->height - BELOW - ABOVE);
}

/* Each point stands for the cell about it. */
static HcPoint
cell_corner (const Frame *frame, double column, double row)
{
  double n = frame->chart->side;

  return hc_point (LEFT + column / n * (frame->width - LEFT - RIGHT), y_of (frame, row / n));
}

static void
add_cell (const Frame *frame, guint column, guint row)
{
  HcPoint low = cell_corner (frame, column, row);
  HcPoint high = cell_corner (frame, column + 1, row + 1);

  hc_ink_rectangle (frame->ink, low.x_mm, high.y_mm, high.x_mm - low.x_mm,
                    low.y_mm - high.y_mm);
}

static void
trace_free (const Frame *frame)
{
  cairo_new_path (frame->ink->cr);
  for (guint row = 0; row < frame->chart->side; row++)
    for (guint column = 0; column < frame->chart->side; column++)
      if (is_free (frame, column, row))
        add_cell (frame, column, row);
}

static void
hatch_free (const Frame *frame)
{
  cairo_save (frame->ink->cr);
  trace_free (frame);
  cairo_clip (frame->ink->cr);
  for (double x = LEFT - frame->height; x < frame->width; x += HATCH)
    {
      cairo_new_path (frame->ink->cr);
      hc_ink_line (frame->ink, x, frame->height, x + frame->height, 0);
      hc_ink_stroke (frame->ink, HC_LINE_HAIR, HC_PAINT_GOOD);
    }
  cairo_restore (frame->ink->cr);
}

static void
add_edge (const Frame *frame, guint column, guint row, int across, int up)
{
  HcPoint from = cell_corner (frame, column + across, row + up);
  HcPoint to = cell_corner (frame, column + 1, row + 1);

  hc_ink_line (frame->ink, from.x_mm, from.y_mm, to.x_mm, to.y_mm);
}

static void
outline_free (const Frame *frame)
{
  guint last = frame->chart->side - 1;

  cairo_new_path (frame->ink->cr);
  for (guint row = 0; row <= last; row++)
    for (guint column = 0; column <= last; column++)
      {
        gboolean here = is_free (frame, column, row);

        if (column < last && here != is_free (frame, column + 1, row))
          add_edge (frame, column, row, 1, 0);
        if (row < last && here != is_free (frame, column, row + 1))
          add_edge (frame, column, row, 0, 1);
      }
  hc_ink_stroke (frame->ink, HC_LINE_MEDIUM, HC_PAINT_GOOD);
}

typedef gboolean (*Holds) (const HcNightPoint *point, guint fault);

static gboolean
holds_none (const HcNightPoint *point, guint fault)
{
  return (point->faults & HC_NIGHT_VENT_FAULTS) == 0;
}

static gboolean
holds_fault (const HcNightPoint *point, guint fault)
{
  return (point->faults & fault) != 0;
}

/* Written in the middle of where it holds. */
static void
name_region (const Frame *frame, Holds holds, guint fault, const char *name, double down)
{
  double x = 0, y = 0;
  guint n = 0;

  for (guint row = 0; row < frame->chart->side; row++)
    for (guint column = 0; column < frame->chart->side; column++)
      if (holds (point_at (frame, column, row), fault))
        {
          HcPoint at = cell_corner (frame, column + 0.5, row + 0.5);

          x += at.x_mm;
          y += at.y_mm;
          n++;
        }
  if (n > WORTH_NAMING * frame->chart->side * frame->chart->side)
    hc_draw_text (frame->ink, HC_HAND_STRONG, name, x / n, y / n + down, 0.5, 0.5, 0,
                  HC_PAINT_INK);
}

static void
name_regions (const Frame *frame)
{
  name_region (frame, holds_none, 0, _("dry and still"), 0);
  name_region (frame, holds_fault, HC_NIGHT_DAMP_AIR, _("damp"), -8);
  name_region (frame, holds_fault, HC_NIGHT_SWEATING, _("walls sweat"), 8);
  name_region (frame, holds_fault, HC_NIGHT_DRAUGHT, _("draught"), 0);
  name_region (frame, holds_fault, HC_NIGHT_STALE, _("stale"), 24);
}

static void
draw_axes (const Frame *frame)
{
  double from = point_at (frame, 0, 0)->outside_c;
  double to = point_at (frame, frame->chart->side - 1, 0)->outside_c;
  double bottom = y_of (frame, 0);

  cairo_new_path (frame->ink->cr);
  hc_ink_rectangle (frame->ink, LEFT, y_of (frame, 1), frame->width - LEFT - RIGHT,
                    bottom - y_of (frame, 1));
  hc_ink_stroke (frame->ink, HC_LINE_FINE, HC_PAINT_INK);
  for (guint i = 0; i <= 4; i++)
    {
      g_autofree char *open = g_strdup_printf ("%u %%", i * 25);
      g_autofree char *outside = g_strdup_printf ("%.0f °C", from + (to - from) * i / 4);

      hc_draw_text (frame->ink, HC_HAND_SMALL, open, LEFT - 5, y_of (frame, i * 0.25), 1, 0.5,
                    0, HC_PAINT_SOFT_INK);
      hc_draw_text (frame->ink, HC_HAND_SMALL, outside, x_of (frame, from + (to - from) * i / 4),
                    bottom + 4, i == 4 ? 1 : 0.5, 0, 0, HC_PAINT_SOFT_INK);
    }
  hc_draw_text (frame->ink, HC_HAND_SMALL, _("vents open"), 2, 2, 0, 0, 0, HC_PAINT_SOFT_INK);
  hc_draw_text (frame->ink, HC_HAND_SMALL, _("outside"), frame->width / 2, frame->height - 2,
                0.5, 1, 0, HC_PAINT_SOFT_INK);
}

static void
draw_night (const Frame *frame, double outside_c, const char *name)
{
  static const double dashes[] = { 5, 4 };
  double x = x_of (frame, outside_c);

  cairo_save (frame->ink->cr);
  cairo_set_dash (frame->ink->cr, dashes, G_N_ELEMENTS (dashes), 0);
  cairo_new_path (frame->ink->cr);
  hc_ink_line (frame->ink, x, y_of (frame, 0), x, y_of (frame, 1));
  hc_ink_stroke (frame->ink, HC_LINE_FINE, HC_PAINT_SOFT_INK);
  cairo_restore (frame->ink->cr);
  hc_draw_text (frame->ink, HC_HAND_SMALL, name, x, ABOVE - 2, x < frame->width / 2 ? 0 : 1, 1,
                0, HC_PAINT_SOFT_INK);
}

/* A ring with a cross in it. */
static void
draw_now (const Frame *frame)
{
  double x = x_of (frame, frame->chart->now_c), y = y_of (frame, frame->chart->now_open);

  cairo_new_path (frame->ink->cr);
  hc_ink_circle (frame->ink, x, y, MARK);
  hc_ink_fill (frame->ink, HC_PAINT_PAPER);
  cairo_new_path (frame->ink->cr);
  hc_ink_circle (frame->ink, x, y, MARK);
  hc_ink_line (frame->ink, x - MARK, y, x + MARK, y);
  hc_ink_line (frame->ink, x, y - MARK, x, y + MARK);
  hc_ink_stroke (frame->ink, HC_LINE_MEDIUM, HC_PAINT_INK);
  hc_draw_text (frame->ink, HC_HAND_STRONG, _("now"), x + MARK + 3, y - MARK, 0, 1, 0,
                HC_PAINT_INK);
}

/**
 * hc_draw_air_chart: (skip)
 * @ink: the ink; its user space is output units, the origin at the chart's corner
 * @chart: what it shows
 * @width: how wide it is
 * @height: how high
 */
void
hc_draw_air_chart (const HcInk *ink, const HcAirChart *chart, double width, double height)
{
  const Frame frame = { ink, chart, width, height };

  if (chart->points->len < chart->side * chart->side || chart->side < 2)
    return;
  trace_free (&frame);
  hc_ink_wash (ink, HC_PAINT_GOOD, 0.18);
  hatch_free (&frame);
  outline_free (&frame);
  draw_axes (&frame);
  draw_night (&frame, chart->coldest_c, _("coldest night"));
  draw_night (&frame, chart->mildest_c, _("summer night"));
  name_regions (&frame);
  draw_now (&frame);
}
