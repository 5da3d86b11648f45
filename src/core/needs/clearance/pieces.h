/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The solid pieces a fitting is made of, for what cannot be in one place. */
#pragma once

#include "base/shape.h"
#include "supply/room.h"

G_BEGIN_DECLS

/* Private to needs/. */
typedef struct
{
  HcShape *shape;
  double bottom_mm;
  double top_mm;
} HcPiece;

GArray *hc_pieces_of_fitting (const HcRoom *room, guint fitting) G_GNUC_WARN_UNUSED_RESULT;
gboolean hc_pieces_meet (const GArray *some, const GArray *others);

G_END_DECLS
