/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The measures of a fitting by the names the catalogue gives them. */
#pragma once

#include "plan/fitting.h"

G_BEGIN_DECLS

gboolean hc_fitting_get_measure (const HcFittingValues *values, const char *measure,
                                 double *amount);
gboolean hc_fitting_set_measure (HcFittingValues *values, const char *measure, double amount);
gboolean hc_fitting_measure_is_length (const char *measure);

G_END_DECLS
