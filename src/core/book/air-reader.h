/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Reading the heat of birds, and figures of air and damp. */
#pragma once

#include "book/record.h"

G_BEGIN_DECLS

/* Private to book/. HcReadItem for an HcHeatLaw and an HcAirFigure, with an
 * HcDataContext. */
void hc_heat_law_read (HcRecord *record, gpointer item, gpointer user_data);
void hc_air_figure_read (HcRecord *record, gpointer item, gpointer user_data);

G_END_DECLS
