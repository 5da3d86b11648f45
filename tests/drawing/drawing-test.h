/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Paper that remembers where it was inked. */
#pragma once

#include "drawing/ink.h"

G_BEGIN_DECLS

/**
 * TestExtents:
 * @left: smallest x inked
 * @top: smallest y inked
 * @right: largest x inked
 * @bottom: largest y inked
 */
typedef struct
{
  double left, top, right, bottom;
} TestExtents;

cairo_surface_t *test_paper_new (int reach_mm, double scale, HcInk *ink);
void test_paper_free (cairo_surface_t *paper, HcInk *ink);
TestExtents test_paper_get_extents (cairo_surface_t *paper);
gboolean test_extents_are_empty (const TestExtents *extents);

G_END_DECLS
