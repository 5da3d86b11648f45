/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The memory a program takes. */
#pragma once

#include <glib.h>

G_BEGIN_DECLS

/* The proportional set size, kB: pages others use too are shared out. */
long bench_proportional_kb (void);

G_END_DECLS
