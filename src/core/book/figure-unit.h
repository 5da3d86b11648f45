/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The units figures are stated in, and the ones they are used in. */
#pragma once

#include <glib.h>

G_BEGIN_DECLS

/**
 * HcFigureUnit:
 * @HC_FIGURE_MM: millimetres
 * @HC_FIGURE_CM: centimetres
 * @HC_FIGURE_M: metres
 * @HC_FIGURE_INCH: inches
 * @HC_FIGURE_CM2: square centimetres
 * @HC_FIGURE_M2: square metres
 * @HC_FIGURE_SQUARE_FOOT: square feet
 * @HC_FIGURE_KG: kilograms
 * @HC_FIGURE_DEGREES: degrees of slope
 * @HC_FIGURE_CELSIUS: degrees Celsius
 * @HC_FIGURE_PERCENT: per cent
 * @HC_FIGURE_TIMES: a plain ratio
 * @HC_FIGURE_COUNT: things counted whole: boxes, nipples, hangers
 * @HC_FIGURE_BIRDS: birds
 * @HC_FIGURE_DAYS: days
 * @HC_FIGURE_WEEKS: weeks of life
 * @HC_FIGURE_HOURS: hours
 * @HC_FIGURE_PPM: parts per million
 * @HC_FIGURE_WATTS: watts
 * @HC_FIGURE_M3_PER_H_KG: cubic metres of air an hour a kilogram of bird
 * @HC_FIGURE_LUX: lux
 *
 * The unit a figure is stated in. In use, lengths are mm, areas mm², per cents
 * ratios; the others stay as they are.
 */
typedef enum
{
  HC_FIGURE_MM,
  HC_FIGURE_CM,
  HC_FIGURE_M,
  HC_FIGURE_INCH,
  HC_FIGURE_CM2,
  HC_FIGURE_M2,
  HC_FIGURE_SQUARE_FOOT,
  HC_FIGURE_KG,
  HC_FIGURE_DEGREES,
  HC_FIGURE_CELSIUS,
  HC_FIGURE_PERCENT,
  HC_FIGURE_TIMES,
  HC_FIGURE_COUNT,
  HC_FIGURE_BIRDS,
  HC_FIGURE_DAYS,
  HC_FIGURE_WEEKS,
  HC_FIGURE_HOURS,
  HC_FIGURE_PPM,
  HC_FIGURE_WATTS,
  HC_FIGURE_M3_PER_H_KG,
  HC_FIGURE_LUX,
} HcFigureUnit;

/**
 * HcDimension:
 * @HC_DIMENSION_LENGTH: lengths, mm
 * @HC_DIMENSION_AREA: areas, mm²
 * @HC_DIMENSION_COUNT: things counted whole
 * @HC_DIMENSION_OTHER: anything else
 *
 * What a unit measures. Units of @HC_DIMENSION_OTHER compare only with
 * themselves.
 */
typedef enum
{
  HC_DIMENSION_LENGTH,
  HC_DIMENSION_AREA,
  HC_DIMENSION_COUNT,
  HC_DIMENSION_OTHER,
} HcDimension;

const char *hc_figure_unit_to_string (HcFigureUnit unit);
gboolean hc_figure_unit_from_string (const char *text, HcFigureUnit *unit);
HcDimension hc_figure_unit_get_dimension (HcFigureUnit unit);
double hc_figure_unit_to_used (HcFigureUnit unit, double stated);
double hc_figure_unit_to_stated (HcFigureUnit unit, double used);

G_END_DECLS
