/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Mesh partitions and fences: lines between posts. */
#pragma once

#include "drawing/ink.h"

#include "plan/layout.h"

G_BEGIN_DECLS

void hc_draw_mesh_wall (const HcInk *ink, const HcLayout *layout, const HcWall *wall);

G_END_DECLS
