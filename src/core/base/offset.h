/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Edges moved square to themselves, as loops that may lie across each other. */
#pragma once

#include "base/loops.h"

G_BEGIN_DECLS

HcLoops *hc_loops_move_in (const HcLoops *loops,
                           double by_mm,
                           double most_reach) G_GNUC_WARN_UNUSED_RESULT;

G_END_DECLS
