/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What is written can be read on every paper, and levels differ in shape. */
#include "config.h"

#include "drawing/level-mark.h"

#include "drawing-test.h"

#include <math.h>

/* Web Content Accessibility Guidelines 2.1 (W3C, 2018), success criterion
 * 1.4.3: text at least 4.5 to 1; 1.4.11: marks at least 3 to 1. */
#define TEXT_CONTRAST 4.5
#define MARK_CONTRAST 3.0

static double
linear (double channel)
{
  return channel <= 0.03928 ? channel / 12.92 : pow ((channel + 0.055) / 1.055, 2.4);
}

static double
luminance (HcColour c)
{
  return 0.2126 * linear (c.red) + 0.7152 * linear (c.green) + 0.0722 * linear (c.blue);
}

static double
contrast (const HcPalette *palette, HcPaint a, HcPaint b)
{
  double la = luminance (hc_palette_get_colour (palette, a));
  double lb = luminance (hc_palette_get_colour (palette, b));

  return (MAX (la, lb) + 0.05) / (MIN (la, lb) + 0.05);
}

static void
test_words_can_be_read (gconstpointer data)
{
  const HcPalette *palette = hc_palette_get ((HcPaletteKind) GPOINTER_TO_INT (data));

  g_assert_cmpfloat (contrast (palette, HC_PAINT_INK, HC_PAINT_PAPER), >=, TEXT_CONTRAST);
  g_assert_cmpfloat (contrast (palette, HC_PAINT_SOFT_INK, HC_PAINT_PAPER), >=, TEXT_CONTRAST);
  g_assert_cmpfloat (contrast (palette, HC_PAINT_INK, HC_PAINT_GRASS), >=, TEXT_CONTRAST);
  g_assert_cmpfloat (contrast (palette, HC_PAINT_INK, HC_PAINT_EARTH), >=, TEXT_CONTRAST);
}

static void
test_marks_can_be_seen (gconstpointer data)
{
  const HcPalette *palette = hc_palette_get ((HcPaletteKind) GPOINTER_TO_INT (data));

  for (int level = HC_LEVEL_SHORT; level <= HC_LEVEL_PLENTY; level++)
    g_assert_cmpfloat (
        contrast (palette, hc_paint_for_level ((HcLevel) level), HC_PAINT_PAPER), >=,
        MARK_CONTRAST);
}

static guint
count_light_pixels (HcLevel level)
{
  cairo_surface_t *paper = cairo_image_surface_create (CAIRO_FORMAT_ARGB32, 40, 40);
  HcInk ink = { cairo_create (paper), hc_palette_get (HC_PALETTE_PRINT), 1, TRUE };
  const guchar *pixels;
  int stride = cairo_image_surface_get_stride (paper);
  guint light = 0;

  hc_draw_level_mark (&ink, 20, 20, 40, level);
  cairo_surface_flush (paper);
  pixels = cairo_image_surface_get_data (paper);
  for (int y = 8; y < 32; y++)
    for (int x = 8; x < 32; x++)
      light += pixels[y * stride + 4 * x] > 200;
  test_paper_free (paper, &ink);
  return light;
}

static void
test_each_level_has_its_own_shape (void)
{
  for (int a = HC_LEVEL_SHORT; a <= HC_LEVEL_PLENTY; a++)
    for (int b = a + 1; b <= HC_LEVEL_PLENTY; b++)
      g_assert_cmpuint (count_light_pixels ((HcLevel) a), !=, count_light_pixels ((HcLevel) b));
}

static void
test_chance_is_always_the_same (void)
{
  for (guint i = 0; i < 1000; i++)
    {
      g_assert_cmpfloat (hc_chance (7, i), ==, hc_chance (7, i));
      g_assert_cmpfloat (hc_chance (7, i), >=, 0);
      g_assert_cmpfloat (hc_chance (7, i), <, 1);
    }
  g_assert_cmpfloat (hc_chance (7, 1), !=, hc_chance (7, 2));
  g_assert_cmpfloat (hc_chance (7, 1), !=, hc_chance (8, 1));
}

int
main (int argc, char **argv)
{
  static const char *const kinds[] = { "light", "dark", "print" };

  g_test_init (&argc, &argv, NULL);
  for (guint kind = 0; kind < G_N_ELEMENTS (kinds); kind++)
    {
      g_autofree char *words = g_strconcat ("/palette/words/", kinds[kind], NULL);
      g_autofree char *marks = g_strconcat ("/palette/marks/", kinds[kind], NULL);

      g_test_add_data_func (words, GUINT_TO_POINTER (kind), test_words_can_be_read);
      g_test_add_data_func (marks, GUINT_TO_POINTER (kind), test_marks_can_be_seen);
    }
  g_test_add_func ("/palette/each-level-has-its-own-shape", test_each_level_has_its_own_shape);
  g_test_add_func ("/palette/chance", test_chance_is_always_the_same);
  return g_test_run ();
}
