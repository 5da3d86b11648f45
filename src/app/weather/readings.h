/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The figures of a night, a card each. */
#pragma once

#include "base/units.h"
#include "climate/night.h"

#include <gtk/gtk.h>

G_BEGIN_DECLS

void hc_readings_show (GtkFlowBox *box, const HcNightSpace *space, HcUnits units);
void hc_readings_show_ranges (GtkFlowBox *box, const HcNightSpace *space, HcUnits units);

G_END_DECLS
