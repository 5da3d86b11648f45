/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A sheet to hang in the barn: the floor to scale, a frame, a title block. */
#include "config.h"

#include "sheet.h"

#include "drawing/dimension.h"
#include "drawing/floor-drawing.h"
#include "drawing/title-block.h"

#include "base/error.h"

#include <glib/gi18n-lib.h>
#include <math.h>

#define ROOM_ROUND 14.0

static const int usual_scales[] = { 10, 20, 25, 50, 100, 200, 500, 1000 };

static const struct
{
  const char *word;
  double narrow, wide;
} papers[HC_N_PAPERS] = {
  [HC_PAPER_A4] = { "a4", 210 * HC_POINTS_PER_MM, 297 * HC_POINTS_PER_MM },
  [HC_PAPER_A3] = { "a3", 297 * HC_POINTS_PER_MM, 420 * HC_POINTS_PER_MM },
  [HC_PAPER_LETTER] = { "letter", 8.5 * 72, 11 * 72 },
};

/**
 * hc_scale_to_units:
 * @scale: 20 for 1:20
 *
 * Returns: points of paper for one mm of the house
 */
double
hc_scale_to_units (int scale)
{
  return HC_POINTS_PER_MM / scale;
}

/**
 * hc_paper_from_string:
 * @word: "a4", "a3" or "letter"
 * @paper: (out): the paper
 *
 * Returns: whether the word is known
 */
gboolean
hc_paper_from_string (const char *word, HcPaper *paper)
{
  for (int i = 0; i < HC_N_PAPERS; i++)
    if (g_ascii_strcasecmp (papers[i].word, word) == 0)
      {
        *paper = (HcPaper) i;
        return TRUE;
      }
  return FALSE;
}

static HcLayout *
layout_of (const HcSheet *sheet)
{
  return hc_plan_get_layout (hc_check_get_plan (sheet->check));
}

static HcBox
bounds_of (const HcSheet *sheet)
{
  HcBox bounds = hc_floor_get_bounds (layout_of (sheet));

  return hc_box_is_empty (bounds) ? (HcBox){ 0, 0, 1000, 1000 } : bounds;
}

/* The room the floor may take, margins, frame and title block taken off. */
static HcTextBox
room_on (const HcSheetSize *size)
{
  double round = 2 * (HC_SHEET_MARGIN + HC_DIMENSION_ROOM_UNITS + ROOM_ROUND);

  return (HcTextBox){ size->width - round,
                      size->height - round - HC_TITLE_BLOCK_HEIGHT };
}

static gboolean
fits (HcBox bounds, const HcSheetSize *size, int scale)
{
  double units = hc_scale_to_units (scale);
  HcTextBox room = room_on (size);

  return bounds.width_mm * units <= room.width && bounds.depth_mm * units <= room.height;
}

static int
largest_scale_that_fits (HcBox bounds, const HcSheetSize *size)
{
  for (guint i = 0; i < G_N_ELEMENTS (usual_scales); i++)
    if (fits (bounds, size, usual_scales[i]))
      return usual_scales[i];
  return 0;
}

static gboolean
say_too_large (const HcSheet *sheet, int largest, GError **error)
{
  if (sheet->scale == 0 || largest == 0)
    g_set_error_literal (error, HC_ERROR, HC_ERROR_SAVE,
                         _("The plan is too large for this paper at any usual scale. "
                           "Choose larger paper."));
  else
    g_set_error (error, HC_ERROR, HC_ERROR_SAVE,
                 _("The plan does not fit this paper at 1:%d. Choose 1:%d, or larger paper."),
                 sheet->scale, largest);
  return FALSE;
}

/**
 * hc_sheet_fit:
 * @sheet: what goes on paper
 * @size: (out): size of the sheet, turned the way the floor lies, and the scale
 * @error: return location for an error
 *
 * Returns: whether the floor fits; else @error says which scale would
 */
gboolean
hc_sheet_fit (const HcSheet *sheet, HcSheetSize *size, GError **error)
{
  HcBox bounds = bounds_of (sheet);
  gboolean wide = bounds.width_mm >= bounds.depth_mm;
  double narrow_side = papers[sheet->paper].narrow, wide_side = papers[sheet->paper].wide;
  int largest;

  size->width = wide ? wide_side : narrow_side;
  size->height = wide ? narrow_side : wide_side;
  largest = largest_scale_that_fits (bounds, size);
  size->scale = sheet->scale > 0 ? sheet->scale : largest;
  if (size->scale == 0 || !fits (bounds, size, size->scale))
    return say_too_large (sheet, largest, error);
  return TRUE;
}

static void
draw_frame (const HcInk *ink, const HcSheetSize *size)
{
  double m = HC_SHEET_MARGIN;

  hc_ink_rectangle (ink, m, m, size->width - 2 * m, size->height - 2 * m);
  hc_ink_stroke (ink, HC_LINE_HEAVY, HC_PAINT_INK);
  hc_ink_rectangle (ink, m + 3, m + 3, size->width - 2 * m - 6, size->height - 2 * m - 6);
  hc_ink_stroke (ink, HC_LINE_HAIR, HC_PAINT_INK);
}

/**
 * hc_sheet_draw_floor:
 * @sheet: what goes on paper
 * @size: as hc_sheet_fit() gave it
 * @ink: ink whose space is points of the sheet (a scale of 1)
 *
 * Draws the first page: the floor in the middle, the title block below.
 */
void
hc_sheet_draw_floor (const HcSheet *sheet, const HcSheetSize *size, const HcInk *ink)
{
  HcBox bounds = bounds_of (sheet);
  HcInk house = *ink;
  double room = size->height - HC_TITLE_BLOCK_HEIGHT;

  house.scale = hc_scale_to_units (size->scale);
  cairo_save (ink->cr);
  cairo_translate (ink->cr, (size->width - bounds.width_mm * house.scale) / 2,
                   (room - bounds.depth_mm * house.scale) / 2);
  cairo_scale (ink->cr, house.scale, house.scale);
  cairo_translate (ink->cr, -bounds.x_mm, -bounds.y_mm);
  hc_draw_floor (&house, hc_check_get_plan (sheet->check), sheet->check, HC_FLOOR_ALL);
  cairo_restore (ink->cr);
  draw_frame (ink, size);
  hc_draw_title_block (sheet, size, ink);
}
