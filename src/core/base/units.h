/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Lengths, areas, masses and temperatures as a keeper types and reads them. */
#pragma once

#include <glib.h>

G_BEGIN_DECLS

/**
 * HcUnits:
 * @HC_UNITS_METRIC: metres, kilograms, degrees Celsius
 * @HC_UNITS_FEET: feet and inches, pounds, degrees Fahrenheit
 *
 * Which units a keeper measures in.
 */
typedef enum
{
  HC_UNITS_METRIC,
  HC_UNITS_FEET,
} HcUnits;

#define HC_MM_PER_INCH 25.4
#define HC_MM_PER_FOOT 304.8
#define HC_MM2_PER_M2 1e6
#define HC_MM2_PER_FT2 (HC_MM_PER_FOOT * HC_MM_PER_FOOT)
#define HC_KG_PER_LB 0.45359237

gboolean hc_length_parse (const char *text,
                          HcUnits assumed,
                          double *mm,
                          GError **error);
gboolean hc_position_parse (const char *text,
                            HcUnits assumed,
                            double *mm,
                            GError **error);
gboolean hc_area_parse (const char *text,
                        HcUnits assumed,
                        double *mm2,
                        GError **error);
gboolean hc_mass_parse (const char *text,
                        HcUnits assumed,
                        double *kg,
                        GError **error);
gboolean hc_temperature_parse (const char *text,
                               HcUnits assumed,
                               double *celsius,
                               GError **error);

char *hc_length_format (double mm,
                        HcUnits units) G_GNUC_WARN_UNUSED_RESULT;
char *hc_area_format (double mm2,
                      HcUnits units) G_GNUC_WARN_UNUSED_RESULT;
char *hc_mass_format (double kg,
                      HcUnits units) G_GNUC_WARN_UNUSED_RESULT;
char *hc_temperature_format (double celsius,
                             HcUnits units) G_GNUC_WARN_UNUSED_RESULT;

G_END_DECLS
