/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A bird: body, wings, tail, head, comb and bill, as much as can be seen. */
#include "config.h"

#include "bird.h"

#include "drawing/bird-outline.h"

/* Below this length on the output a bird is its outline alone. */
#define PLAIN_UNITS 16.0
#define FULL_UNITS 30.0

typedef struct
{
  const HcInk *ink;
  const HcBirdLook *look;
  const HcBirdOutline *outline;
  HcColour coat;
  double units;
} Bird;

static HcColour
shaded (HcColour colour, double by)
{
  return (HcColour){ colour.red * by, colour.green * by, colour.blue * by };
}

static HcColour
lighter (HcColour colour, double by)
{
  return (HcColour){ colour.red + (1 - colour.red) * by,
                     colour.green + (1 - colour.green) * by,
                     colour.blue + (1 - colour.blue) * by };
}

/* Strokes keep their weight though the space is stretched to the bird. */
static void
stroke (const Bird *bird, double weight, HcColour colour, double opacity)
{
  cairo_t *cr = bird->ink->cr;

  cairo_save (cr);
  cairo_scale (cr, 1 / bird->look->length_mm, 1 / bird->look->width_mm);
  hc_ink_set_colour (bird->ink, colour, opacity);
  cairo_set_line_width (cr, weight * hc_ink_line_mm (bird->ink, HC_LINE_FINE));
  cairo_stroke (cr);
  cairo_restore (cr);
}

static HcColour
ink_colour (const Bird *bird)
{
  return hc_palette_get_colour (bird->ink->palette, HC_PAINT_INK);
}

static void
draw_body (const Bird *bird)
{
  cairo_t *cr = bird->ink->cr;

  hc_bird_outline_trace_both (cr, &bird->outline->body);
  hc_ink_set_colour (bird->ink, bird->coat, 1);
  cairo_fill_preserve (cr);
  stroke (bird, 1, shaded (bird->coat, 0.42), 1);
}

static void
draw_wings (const Bird *bird)
{
  cairo_t *cr = bird->ink->cr;

  cairo_new_path (cr);
  hc_bird_outline_trace_side (cr, &bird->outline->wing, 1);
  hc_bird_outline_trace_side (cr, &bird->outline->wing, -1);
  hc_ink_set_colour (bird->ink, shaded (bird->coat, 0.8), 1);
  cairo_fill_preserve (cr);
  stroke (bird, 0.8, shaded (bird->coat, 0.42), 0.9);
}

/* Three pinions on each wing. */
static void
draw_pinions (const Bird *bird)
{
  cairo_t *cr = bird->ink->cr;
  const double *from = bird->outline->wing.xy[0];
  const double *to = bird->outline->wing.xy[3];

  cairo_new_path (cr);
  for (int i = 1; i <= 3; i++)
    for (int side = -1; side <= 1; side += 2)
      {
        double part = 0.2 + 0.15 * i;
        double x = from[0] + (to[0] - from[0]) * part;

        cairo_move_to (cr, x, side * (0.2 + 0.05 * (3 - i)));
        cairo_line_to (cr, x - 0.14, side * (0.3 - 0.055 * i));
      }
  stroke (bird, 0.6, shaded (bird->coat, 0.42), 0.8);
}

/* The sickle feathers of a cock arch over his tail, dark and glossy. */
static void
draw_sickles (const Bird *bird)
{
  cairo_t *cr = bird->ink->cr;
  HcColour gloss = shaded (bird->coat, 0.35);

  for (int side = -1; side <= 1; side += 2)
    {
      cairo_new_path (cr);
      cairo_move_to (cr, -0.26, side * 0.03);
      cairo_curve_to (cr, -0.38, side * 0.12, -0.46, side * 0.22, -0.49, side * 0.16);
      cairo_curve_to (cr, -0.48, side * 0.1, -0.38, side * 0.0, -0.26, side * 0.03);
      cairo_close_path (cr);
      hc_ink_set_colour (bird->ink, gloss, 1);
      cairo_fill (cr);
    }
}

static void
draw_tail (const Bird *bird)
{
  cairo_t *cr = bird->ink->cr;

  cairo_new_path (cr);
  for (int i = -1; i <= 1; i++)
    {
      cairo_move_to (cr, -0.34, 0.06 * i);
      cairo_line_to (cr, -0.47, 0.045 * i);
    }
  stroke (bird, 0.7, shaded (bird->coat, 0.42), 0.8);
}

static void
trace_bill (const Bird *bird)
{
  cairo_t *cr = bird->ink->cr;
  const HcBirdOutline *o = bird->outline;
  double root = o->head_x + o->head_length * 0.75;

  cairo_new_path (cr);
  cairo_move_to (cr, root, -o->bill_width);
  if (o->flat_bill)
    {
      cairo_curve_to (cr, 0.47, -1.2 * o->bill_width, 0.495, -o->bill_width, 0.495, 0);
      cairo_curve_to (cr, 0.495, o->bill_width, 0.47, 1.2 * o->bill_width, root,
                      o->bill_width);
    }
  else
    {
      cairo_line_to (cr, 0.495, 0);
      cairo_line_to (cr, root, o->bill_width);
    }
  cairo_close_path (cr);
}

static void
draw_bill (const Bird *bird)
{
  trace_bill (bird);
  hc_ink_set (bird->ink, HC_PAINT_BEAK, 1);
  cairo_fill_preserve (bird->ink->cr);
  stroke (bird, 0.6, ink_colour (bird), 0.8);
}

static void
draw_head (const Bird *bird)
{
  const HcBirdOutline *o = bird->outline;

  hc_ink_ellipse (bird->ink, o->head_x, 0, o->head_length, o->head_width);
  hc_ink_set_colour (bird->ink, lighter (bird->coat, 0.18), 1);
  cairo_fill_preserve (bird->ink->cr);
  stroke (bird, 0.9, shaded (bird->coat, 0.42), 1);
}

static void
draw_collar (const Bird *bird)
{
  hc_ink_ellipse (bird->ink, 0.22, 0, 0.09, 0.24);
  hc_ink_set_colour (bird->ink, lighter (bird->coat, 0.3), 0.9);
  cairo_fill (bird->ink->cr);
}

static void
draw_comb (const Bird *bird)
{
  const HcBirdOutline *o = bird->outline;
  double length = o->head_length * (0.5 + 0.7 * bird->look->comb);

  hc_ink_ellipse (bird->ink, o->head_x + o->head_length * 0.1, 0, length,
                  0.03 + 0.035 * bird->look->comb);
  hc_ink_set (bird->ink, HC_PAINT_COMB, 1);
  cairo_fill (bird->ink->cr);
}

static void
draw_details (const Bird *bird)
{
  gboolean chick = bird->look->form == HC_BIRD_CHICK;

  draw_wings (bird);
  if (bird->units >= FULL_UNITS && !chick)
    {
      draw_pinions (bird);
      draw_tail (bird);
    }
  if (bird->look->form == HC_BIRD_COCK)
    {
      draw_sickles (bird);
      draw_collar (bird);
    }
}

static HcColour
coat_of (const HcInk *ink, const HcBirdLook *look)
{
  if (look->form == HC_BIRD_CHICK)
    return hc_palette_get_colour (ink->palette, HC_PAINT_DOWN);
  return hc_palette_get_plumage (ink->palette, look->coat);
}

/**
 * hc_draw_bird:
 * @ink: the ink
 * @look: what the bird looks like
 *
 * Draws a bird at the origin, true to scale, facing along x: its beak at half
 * its length, its tail at minus half.
 */
void
hc_draw_bird (const HcInk *ink, const HcBirdLook *look)
{
  Bird bird = { ink, look, hc_bird_outline_get (look->form), coat_of (ink, look),
                look->length_mm * ink->scale };

  if (look->length_mm <= 0 || look->width_mm <= 0 || ink->scale <= 0)
    return;

  cairo_save (ink->cr);
  cairo_scale (ink->cr, look->length_mm, look->width_mm);
  draw_bill (&bird);
  draw_body (&bird);
  if (bird.units >= PLAIN_UNITS)
    draw_details (&bird);
  draw_head (&bird);
  if (look->comb > 0 && look->form != HC_BIRD_CHICK)
    draw_comb (&bird);
  cairo_restore (ink->cr);
}
