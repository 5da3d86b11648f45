/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Corners and the walls between them: what pens are ringed by. */
#pragma once

#include "base/part.h"

G_BEGIN_DECLS

/**
 * HcCornerValues:
 * @x_mm: how far along the plan's width
 * @y_mm: how far along the plan's depth
 */
typedef struct
{
  double x_mm;
  double y_mm;
} HcCornerValues;

HC_DECLARE_PART (HcCorner, hc_corner)

/**
 * HcWallKind:
 * @HC_WALL_SOLID: boards, stone, panels: keeps air and birds
 * @HC_WALL_MESH: mesh on posts: keeps birds, lets air and looks through
 * @HC_WALL_FENCE: an open fence of a run
 */
typedef enum
{
  HC_WALL_SOLID,
  HC_WALL_MESH,
  HC_WALL_FENCE,
} HcWallKind;

/**
 * HcFixing:
 * @HC_FIXING_SCREWS: screws and washers, or battens over its edge
 * @HC_FIXING_STAPLES: staples alone, which are pulled out
 *
 * How mesh is fixed.
 */
typedef enum
{
  HC_FIXING_SCREWS,
  HC_FIXING_STAPLES,
} HcFixing;

/**
 * HcWallValues:
 * @from: id of the corner it starts at
 * @to: id of the corner it ends at
 * @kind: a #HcWallKind
 * @thickness_mm: its thickness
 * @height_mm: its height, 0 for as high as the pens beside it
 * @construction: id of what it is built of, for warmth
 * @mesh: id of its mesh, when of mesh or a fence
 * @fixing: how that is fixed, a #HcFixing
 * @windbreak: whether wind is kept off by netting or boards on the mesh
 *
 * The line from corner to corner is the inside face of a wall with one pen
 * beside it, and the middle of a partition between two.
 */
typedef struct
{
  char *from;
  char *to;
  int kind;
  double thickness_mm;
  double height_mm;
  char *construction;
  char *mesh;
  int fixing;
  gboolean windbreak;
} HcWallValues;

HC_DECLARE_PART (HcWall, hc_wall)

G_END_DECLS
