/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Title, day, rules and scale, and a bar to check the printer by. */
#include "config.h"

#include "title-block.h"

#include "drawing/scale-bar.h"
#include "words/words.h"
#include "words/year-words.h"

#include <glib/gi18n-lib.h>

#define PAD 9.0
#define CHECK_BAR_MM 100.0
#define RIGHT_PART (CHECK_BAR_MM * HC_POINTS_PER_MM + 3 * PAD)

typedef struct
{
  double left, top, right, bottom;
} Strip;

static void
rule_off (const HcInk *ink, const Strip *strip)
{
  cairo_new_path (ink->cr);
  hc_ink_line (ink, strip->left, strip->top, strip->right, strip->top);
  hc_ink_line (ink, strip->right - RIGHT_PART, strip->top, strip->right - RIGHT_PART,
               strip->bottom);
  hc_ink_stroke (ink, HC_LINE_MEDIUM, HC_PAINT_INK);
}

/* The place is told where the title has not told it. */
static char *
say_when (const char *place, const char *title, const char *day, const char *rules)
{
  if (place == NULL || *place == '\0' || g_strcmp0 (place, title) == 0)
    return g_strjoin (" · ", day, rules, NULL);
  return g_strjoin (" · ", place, day, rules, NULL);
}

static void
write_title (const HcSheet *sheet, const HcInk *ink, const Strip *strip)
{
  HcPlan *plan = hc_check_get_plan (sheet->check);
  HcUnits units = (HcUnits) hc_plan_get_site (plan)->units;
  const char *title = hc_plan_get (plan)->title;
  const char *place = hc_plan_get_site (plan)->place;
  g_autofree char *day = hc_words_day (hc_plan_get_day (plan));
  g_autofree char *headline
      = sheet->headline ? hc_words_headline (sheet->headline, units) : g_strdup ("");
  g_autofree char *below = say_when (place, title, day, sheet->rules);
  double x = strip->left + PAD, width = strip->right - RIGHT_PART - strip->left - 2 * PAD;

  hc_draw_text (ink, HC_HAND_TITLE, title ? title : "", x, strip->top + 6, 0, 0, 0, HC_PAINT_INK);
  hc_draw_text (ink, HC_HAND_SMALL, below, x, strip->top + 31, 0, 0, 0, HC_PAINT_SOFT_INK);
  hc_draw_text_lines (ink, HC_HAND_BODY, headline, x, strip->top + 45, width, HC_PAINT_INK);
}

/* A print is true when this bar measures what it says. */
static void
draw_check_bar (const HcInk *ink, double x, double y)
{
  double length = CHECK_BAR_MM * HC_POINTS_PER_MM;

  cairo_new_path (ink->cr);
  hc_ink_line (ink, x, y, x + length, y);
  for (int i = 0; i <= 10; i++)
    {
      double tall = i % 5 == 0 ? 6 : 3;

      hc_ink_line (ink, x + length * i / 10, y - tall / 2, x + length * i / 10, y + tall / 2);
    }
  hc_ink_stroke (ink, HC_LINE_FINE, HC_PAINT_INK);
  hc_draw_text (ink, HC_HAND_SMALL, _("This line is 100 mm long on a true print."), x, y + 5, 0,
                0, 0, HC_PAINT_SOFT_INK);
}

static void
draw_scale (const HcSheet *sheet, const HcSheetSize *size, const HcInk *ink, const Strip *strip)
{
  HcUnits units = (HcUnits) hc_plan_get_site (hc_check_get_plan (sheet->check))->units;
  g_autofree char *scale = g_strdup_printf ("1:%d", size->scale);
  double x = strip->right - RIGHT_PART + PAD;
  HcInk house = *ink;

  hc_draw_text (ink, HC_HAND_TITLE, scale, x, strip->top + 8, 0, 0, 0, HC_PAINT_INK);
  house.scale = hc_scale_to_units (size->scale);
  cairo_save (ink->cr);
  cairo_translate (ink->cr, x + 75, strip->top + 13);
  cairo_scale (ink->cr, house.scale, house.scale);
  hc_draw_scale_bar (&house, 0, 0, (RIGHT_PART - 120) / house.scale, units);
  cairo_restore (ink->cr);
  draw_check_bar (ink, x, strip->bottom - 22);
}

/**
 * hc_draw_title_block:
 * @sheet: what goes on paper
 * @size: the size of the sheet and the scale
 * @ink: ink whose space is points of the sheet
 *
 * Draws the strip along the foot, inside the frame.
 */
void
hc_draw_title_block (const HcSheet *sheet, const HcSheetSize *size, const HcInk *ink)
{
  Strip strip = { HC_SHEET_MARGIN + 3, size->height - HC_SHEET_MARGIN - HC_TITLE_BLOCK_HEIGHT,
                  size->width - HC_SHEET_MARGIN - 3, size->height - HC_SHEET_MARGIN - 3 };

  rule_off (ink, &strip);
  write_title (sheet, ink, &strip);
  draw_scale (sheet, size, ink, &strip);
}
