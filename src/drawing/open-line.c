/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A row of teeth with the mark of its level: no other line has teeth. */
#include "config.h"

#include "open-line.h"

#include "drawing/level-mark.h"

#include <math.h>

#define TOOTH_UNITS 9.0
#define BITE_UNITS 4.0
#define MARK_UNITS 13.0

static void
trace_teeth (const HcInk *ink, const HcFindingLine *line)
{
  double length_mm = hc_point_distance (line->from, line->to);
  guint n = MAX (2, (guint) floor (length_mm * ink->scale / TOOTH_UNITS));
  HcPoint along = hc_point_unit (hc_point_subtract (line->to, line->from));
  HcPoint square = hc_point (-along.y_mm, along.x_mm);
  double bite_mm = BITE_UNITS / ink->scale;

  cairo_new_path (ink->cr);
  cairo_move_to (ink->cr, line->from.x_mm, line->from.y_mm);
  for (guint i = 1; i < 2 * n; i++)
    {
      HcPoint at = hc_point_between (line->from, line->to, i / (2.0 * n));

      at = hc_point_add (at, hc_point_scale (square, i % 2 == 1 ? bite_mm : -bite_mm));
      cairo_line_to (ink->cr, at.x_mm, at.y_mm);
    }
  cairo_line_to (ink->cr, line->to.x_mm, line->to.y_mm);
}

/**
 * hc_draw_open_line:
 * @ink: the ink, in the plan's space
 * @line: a stretch of wall
 * @level: how bad it is
 *
 * Draws a row of teeth along it, with the mark of @level in its middle.
 */
void
hc_draw_open_line (const HcInk *ink, const HcFindingLine *line, HcLevel level)
{
  HcPoint middle = hc_point_between (line->from, line->to, 0.5);

  trace_teeth (ink, line);
  hc_ink_stroke (ink, HC_LINE_HEAVY, HC_PAINT_PAPER);
  trace_teeth (ink, line);
  hc_ink_stroke (ink, HC_LINE_MEDIUM, hc_paint_for_level (level));
  hc_draw_level_mark (ink, middle.x_mm, middle.y_mm, MARK_UNITS / ink->scale, level);
}

/**
 * hc_draw_open_lines:
 * @ink: the ink, in the plan's space
 * @check: the plan judged
 *
 * Draws every stretch of wall that a finding of it is about, the worst on top.
 */
void
hc_draw_open_lines (const HcInk *ink, const HcCheck *check)
{
  for (guint i = hc_check_get_n_findings (check, HC_NEED_PREDATORS); i > 0; i--)
    {
      const HcFinding *finding = hc_check_get_finding (check, HC_NEED_PREDATORS, i - 1);

      for (guint line = 0; line < finding->n_lines; line++)
        hc_draw_open_line (ink, &finding->lines[line], finding->level);
    }
}
