/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A sheet of pixels of one millimetre, its origin in the middle. */
#include "config.h"

#include "drawing-test.h"

/* Fainter than this is the rounding of an edge. */
#define INKED 16

cairo_surface_t *
test_paper_new (int reach_mm, double scale, HcInk *ink)
{
  cairo_surface_t *paper
      = cairo_image_surface_create (CAIRO_FORMAT_A8, 2 * reach_mm, 2 * reach_mm);

  cairo_surface_set_device_offset (paper, reach_mm, reach_mm);
  *ink = (HcInk){ cairo_create (paper), hc_palette_get (HC_PALETTE_LIGHT), scale, TRUE };
  return paper;
}

void
test_paper_free (cairo_surface_t *paper, HcInk *ink)
{
  g_assert_cmpint (cairo_status (ink->cr), ==, CAIRO_STATUS_SUCCESS);
  cairo_destroy (ink->cr);
  cairo_surface_destroy (paper);
}

TestExtents
test_paper_get_extents (cairo_surface_t *paper)
{
  TestExtents extents = { G_MAXINT, G_MAXINT, G_MININT, G_MININT };
  int size = cairo_image_surface_get_width (paper);
  int stride = cairo_image_surface_get_stride (paper);
  const guchar *pixels;

  cairo_surface_flush (paper);
  pixels = cairo_image_surface_get_data (paper);
  for (int y = 0; y < size; y++)
    for (int x = 0; x < size; x++)
      if (pixels[y * stride + x] >= INKED)
        {
          extents.left = MIN (extents.left, x - size / 2);
          extents.right = MAX (extents.right, x + 1 - size / 2);
          extents.top = MIN (extents.top, y - size / 2);
          extents.bottom = MAX (extents.bottom, y + 1 - size / 2);
        }
  return extents;
}

gboolean
test_extents_are_empty (const TestExtents *extents)
{
  return extents->right <= extents->left || extents->bottom <= extents->top;
}
