/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Lays the lines of a report out over pages and draws them. */
#include "config.h"

#include "report.h"

#include "drawing/level-mark.h"
#include "drawing/report-line.h"

#include <glib/gi18n-lib.h>

#define MARGIN 54.0
#define MARK_SIZE 11.0
#define ASIDE_WIDTH 150.0
#define BAR_WIDTH 90.0
#define BAR_HEIGHT 5.0
#define HEADING_KEEPS 40.0

struct _HcReport
{
  GArray *lines;
  double width;
  double height;
  guint n_pages;
};

static double
text_width (const HcReport *self, const HcReportLine *line)
{
  return self->width - 2 * MARGIN - line->indent
         - (line->aside != NULL ? ASIDE_WIDTH + BAR_WIDTH : 0);
}

/* A heading does not stand alone at the foot of a page. */
static double
room_wanted (const HcReportLine *line)
{
  return line->above + line->height + (line->hand == HC_HAND_HEADING ? HEADING_KEEPS : 0);
}

static void
lay_out (HcReport *self, const HcInk *ink)
{
  double y = MARGIN;
  guint page = 0;

  for (guint i = 0; i < self->lines->len; i++)
    {
      HcReportLine *line = &g_array_index (self->lines, HcReportLine, i);

      line->height
          = hc_text_measure (ink, line->hand, line->text, text_width (self, line)).height;
      if (y > MARGIN && y + room_wanted (line) > self->height - MARGIN)
        {
          page++;
          y = MARGIN;
        }
      line->page = page;
      line->y = y > MARGIN ? y + line->above : y;
      y = line->y + line->height;
    }
  self->n_pages = page + 1;
}

/**
 * hc_report_new: (skip)
 * @sheet: what goes on paper
 * @size: size of the sheet; pages stand upright
 * @ink: ink of a scale of 1, to measure words with
 *
 * Returns: the report
 */
HcReport *
hc_report_new (const HcSheet *sheet, const HcSheetSize *size, const HcInk *ink)
{
  HcReport *self = g_new0 (HcReport, 1);

  self->lines = hc_report_lines_write (sheet);
  self->width = MIN (size->width, size->height);
  self->height = MAX (size->width, size->height);
  lay_out (self, ink);
  return self;
}

void
hc_report_free (HcReport *self)
{
  g_array_unref (self->lines);
  g_free (self);
}

guint
hc_report_get_n_pages (const HcReport *self)
{
  return self->n_pages;
}

static void
draw_bar (const HcInk *ink, const HcReportLine *line, double x)
{
  double y = line->y + line->height / 2 - BAR_HEIGHT / 2;

  hc_ink_rounded (ink, x, y, BAR_WIDTH, BAR_HEIGHT, BAR_HEIGHT / 2);
  hc_ink_stroke (ink, HC_LINE_FINE, HC_PAINT_SOFT_INK);
  if (line->share <= 0)
    return;
  hc_ink_rounded (ink, x, y, BAR_WIDTH * line->share, BAR_HEIGHT, BAR_HEIGHT / 2);
  hc_ink_fill (ink, hc_paint_for_level ((HcLevel) line->level));
  cairo_new_path (ink->cr);
}

static void
draw_line (const HcReport *self, const HcInk *ink, const HcReportLine *line)
{
  double x = MARGIN + line->indent;
  double right = self->width - MARGIN;

  if (line->level != HC_REPORT_NO_LEVEL)
    hc_draw_level_mark (ink, MARGIN + MARK_SIZE / 2, line->y + MARK_SIZE / 2, MARK_SIZE,
                        (HcLevel) line->level);
  hc_draw_text_lines (ink, line->hand, line->text, x, line->y, text_width (self, line),
                      line->hand == HC_HAND_SMALL ? HC_PAINT_SOFT_INK : HC_PAINT_INK);
  if (line->aside != NULL)
    hc_draw_text (ink, HC_HAND_BODY, line->aside, right - BAR_WIDTH - 10, line->y, 1, 0, 0,
                  HC_PAINT_SOFT_INK);
  if (line->share >= 0)
    draw_bar (ink, line, right - BAR_WIDTH);
}

/**
 * hc_report_draw_page: (skip)
 * @self: a report
 * @ink: ink whose space is points of the page
 * @page: which page, from 0
 *
 * Draws a page and its number.
 */
void
hc_report_draw_page (const HcReport *self, const HcInk *ink, guint page)
{
  /* Translators: a page number, and how many pages there are. */
  g_autofree char *number = g_strdup_printf (_("Page %u of %u"), page + 2, self->n_pages + 1);

  for (guint i = 0; i < self->lines->len; i++)
    {
      const HcReportLine *line = &g_array_index (self->lines, HcReportLine, i);

      if (line->page == page)
        draw_line (self, ink, line);
    }
  hc_draw_text (ink, HC_HAND_SMALL, number, self->width - MARGIN, self->height - MARGIN / 2, 1,
                1, 0, HC_PAINT_SOFT_INK);
}
