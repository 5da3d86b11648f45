/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The yardstick Y that other figures are given in, whatever the machine. */
#pragma once

#include <glib.h>

G_BEGIN_DECLS

double hc_processor_ms (void);
double hc_yardstick_ms (void);

G_END_DECLS
