/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What lies inside of loops that may lie across each other. */
#pragma once

#include "base/loops.h"

G_BEGIN_DECLS

HcLoops *hc_winding_inside (const HcLoops *loops) G_GNUC_WARN_UNUSED_RESULT;
HcLoops *hc_winding_inside_both (const HcLoops *one,
                                 const HcLoops *other) G_GNUC_WARN_UNUSED_RESULT;

G_END_DECLS
