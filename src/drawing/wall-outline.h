/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Where the two faces of a wall are, and how walls meet in a corner. */
#pragma once

#include "base/shape.h"
#include "plan/layout.h"

#include <cairo.h>

G_BEGIN_DECLS

/**
 * HcWallFaces:
 * @from: where its line starts
 * @to: where its line ends
 * @inward: direction of length 1 square off the line, to the inside of the pen
 *   the wall belongs to
 * @inner_mm: from the line to the inner face
 * @outer_mm: from the line to the outer face
 * @owner: (nullable) (transfer none): the pen it belongs to; %NULL for a
 *   partition between two of a kind, whose line is its middle
 */
typedef struct
{
  HcPoint from;
  HcPoint to;
  HcPoint inward;
  double inner_mm;
  double outer_mm;
  HcPen *owner;
} HcWallFaces;

gboolean hc_wall_faces (const HcLayout *layout, const HcWall *wall, HcWallFaces *faces);
gboolean hc_wall_outline (const HcLayout *layout, const HcWall *wall, HcPoint outline[4]);
void hc_wall_faces_get_frame (const HcWallFaces *faces, cairo_matrix_t *frame);
gboolean hc_wall_faces_mirror (const HcWallFaces *faces);
HcPoint hc_wall_faces_at (const HcWallFaces *faces, double along_mm, double inward_mm);

G_END_DECLS
