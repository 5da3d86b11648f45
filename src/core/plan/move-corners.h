/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Private to core: corners moved together, walls and openings following. */
#pragma once

#include "plan/edit.h"

G_BEGIN_DECLS

typedef struct
{
  const char *corner;
  HcPoint to;
} HcCornerMove;

HcPlan *hc_edit_move_corners (HcPlan *plan, const HcCornerMove *moves, guint n_moves,
                              GError **error) G_GNUC_WARN_UNUSED_RESULT;

G_END_DECLS
