/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Words keep their size on the output, whatever the scale of the house. */
#include "config.h"

#include "text.h"

/* Advance and height of an average letter, for words drawn as boxes. */
#define LETTER_WIDE 0.55
#define LINE_HIGH 1.3

static const struct
{
  const char *font;
  double size;
} hands[] = {
  [HC_HAND_TITLE] = { "Serif Bold", 17 },  [HC_HAND_HEADING] = { "Serif Italic", 10.5 },
  [HC_HAND_BODY] = { "Sans", 8.5 },        [HC_HAND_STRONG] = { "Sans Bold", 8.5 },
  [HC_HAND_SMALL] = { "Sans", 7 },
};

/* Letters are laid out without hinting, so that a sheet breaks its lines on
 * paper as it does on a screen. */
static PangoLayout *
layout_text (const HcInk *ink, HcHand hand, const char *text, double width)
{
  PangoLayout *layout = pango_cairo_create_layout (ink->cr);
  PangoFontDescription *font = pango_font_description_from_string (hands[hand].font);
  cairo_font_options_t *options = cairo_font_options_create ();

  cairo_font_options_set_hint_style (options, CAIRO_HINT_STYLE_NONE);
  cairo_font_options_set_hint_metrics (options, CAIRO_HINT_METRICS_OFF);
  pango_cairo_context_set_font_options (pango_layout_get_context (layout), options);
  cairo_font_options_destroy (options);
  pango_font_description_set_absolute_size (font, hands[hand].size * PANGO_SCALE);
  pango_layout_set_font_description (layout, font);
  pango_font_description_free (font);
  pango_layout_set_text (layout, text, -1);
  if (width > 0)
    pango_layout_set_width (layout, (int) (width * PANGO_SCALE));
  return layout;
}

static HcTextBox
measure_as_box (HcHand hand, const char *text, double width)
{
  double size = hands[hand].size;
  double long_line = (double) g_utf8_strlen (text, -1) * size * LETTER_WIDE;
  int lines = width > 0 ? (int) (long_line / width) + 1 : 1;

  return (HcTextBox){ lines > 1 ? width : long_line, lines * size * LINE_HIGH };
}

static HcTextBox
measure_layout (PangoLayout *layout)
{
  int width, height;

  pango_layout_get_size (layout, &width, &height);
  return (HcTextBox){ (double) width / PANGO_SCALE, (double) height / PANGO_SCALE };
}

/**
 * hc_text_measure:
 * @ink: the ink
 * @hand: how it is written
 * @text: the words
 * @width: widest line in output units, 0 for as wide as it comes
 *
 * Returns: how much room the words take
 */
HcTextBox
hc_text_measure (const HcInk *ink, HcHand hand, const char *text, double width)
{
  g_autoptr (PangoLayout) layout = NULL;

  if (ink->text_as_boxes)
    return measure_as_box (hand, text, width);
  layout = layout_text (ink, hand, text, width);
  return measure_layout (layout);
}

static HcTextBox
write_at_origin (const HcInk *ink, HcHand hand, const char *text, double width, double across,
                 double down)
{
  g_autoptr (PangoLayout) layout = NULL;
  HcTextBox box;

  if (ink->text_as_boxes)
    {
      box = measure_as_box (hand, text, width);
      cairo_rectangle (ink->cr, -across * box.width, -down * box.height, box.width, box.height);
      cairo_fill (ink->cr);
      return box;
    }
  layout = layout_text (ink, hand, text, width);
  box = measure_layout (layout);
  cairo_move_to (ink->cr, -across * box.width, -down * box.height);
  pango_cairo_show_layout (ink->cr, layout);
  return box;
}

static HcTextBox
write_text (const HcInk *ink, HcHand hand, const char *text, HcPoint at, double width,
            HcPoint anchor, double turn, HcPaint paint)
{
  HcTextBox box;

  cairo_save (ink->cr);
  cairo_new_path (ink->cr);
  cairo_translate (ink->cr, at.x_mm, at.y_mm);
  cairo_rotate (ink->cr, turn);
  cairo_scale (ink->cr, 1 / ink->scale, 1 / ink->scale);
  hc_ink_set (ink, paint, 1);
  box = write_at_origin (ink, hand, text, width, anchor.x_mm, anchor.y_mm);
  cairo_restore (ink->cr);
  return box;
}

/**
 * hc_draw_text:
 * @ink: the ink
 * @hand: how it is written
 * @text: one line of words
 * @x_mm: where
 * @y_mm: where
 * @across: which part of its width lies left of that place: 0, 0.5 or 1
 * @down: which part of its height lies above it
 * @turn: turned by, in radians
 * @paint: the paint
 *
 * Writes one line.
 */
void
hc_draw_text (const HcInk *ink, HcHand hand, const char *text, double x_mm, double y_mm,
              double across, double down, double turn, HcPaint paint)
{
  write_text (ink, hand, text, hc_point (x_mm, y_mm), 0, hc_point (across, down), turn, paint);
}

/**
 * hc_draw_text_lines:
 * @ink: the ink
 * @hand: how it is written
 * @text: the words
 * @x_mm: left edge
 * @y_mm: upper edge
 * @width: widest line, in output units
 * @paint: the paint
 *
 * Writes words in as many lines as they take.
 *
 * Returns: their height in output units
 */
double
hc_draw_text_lines (const HcInk *ink, HcHand hand, const char *text, double x_mm, double y_mm,
                    double width, HcPaint paint)
{
  return write_text (ink, hand, text, hc_point (x_mm, y_mm), width, hc_point (0, 0), 0, paint)
      .height;
}
