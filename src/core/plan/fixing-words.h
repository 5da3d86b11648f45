/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * How mesh is fixed, in the words of plan files. */
#pragma once

#include "plan/wall.h"

G_BEGIN_DECLS

/* Private to plan/. One for each HcFixing. */
extern const char *const hc_fixing_words[];

G_END_DECLS
