/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Stated units and the units of use. */
#include "config.h"

#include "book/figure-unit.h"

#include "book/words.h"

typedef struct
{
  HcDimension dimension;
  double used;
} Unit;

static const Unit units[] = {
  [HC_FIGURE_MM] = { HC_DIMENSION_LENGTH, 1 },
  [HC_FIGURE_CM] = { HC_DIMENSION_LENGTH, 10 },
  [HC_FIGURE_M] = { HC_DIMENSION_LENGTH, 1000 },
  [HC_FIGURE_INCH] = { HC_DIMENSION_LENGTH, 25.4 },
  [HC_FIGURE_CM2] = { HC_DIMENSION_AREA, 100 },
  [HC_FIGURE_M2] = { HC_DIMENSION_AREA, 1e6 },
  [HC_FIGURE_SQUARE_FOOT] = { HC_DIMENSION_AREA, 92903.04 },
  [HC_FIGURE_KG] = { HC_DIMENSION_OTHER, 1 },
  [HC_FIGURE_DEGREES] = { HC_DIMENSION_OTHER, 1 },
  [HC_FIGURE_CELSIUS] = { HC_DIMENSION_OTHER, 1 },
  [HC_FIGURE_PERCENT] = { HC_DIMENSION_OTHER, 0.01 },
  [HC_FIGURE_TIMES] = { HC_DIMENSION_OTHER, 1 },
  [HC_FIGURE_COUNT] = { HC_DIMENSION_COUNT, 1 },
  [HC_FIGURE_BIRDS] = { HC_DIMENSION_OTHER, 1 },
  [HC_FIGURE_DAYS] = { HC_DIMENSION_OTHER, 1 },
  [HC_FIGURE_WEEKS] = { HC_DIMENSION_OTHER, 1 },
  [HC_FIGURE_HOURS] = { HC_DIMENSION_OTHER, 1 },
  [HC_FIGURE_PPM] = { HC_DIMENSION_OTHER, 1 },
  [HC_FIGURE_WATTS] = { HC_DIMENSION_OTHER, 1 },
  [HC_FIGURE_M3_PER_H_KG] = { HC_DIMENSION_OTHER, 1 },
  [HC_FIGURE_LUX] = { HC_DIMENSION_OTHER, 1 },
};

/**
 * hc_figure_unit_to_string:
 * @unit: a unit
 *
 * Returns: its word in data: "cm", "m2", "percent"
 */
const char *
hc_figure_unit_to_string (HcFigureUnit unit)
{
  g_return_val_if_fail (unit < G_N_ELEMENTS (units), NULL);
  return hc_figure_unit_words[unit];
}

/**
 * hc_figure_unit_from_string:
 * @text: a word
 * @unit: (out): the unit it stands for
 *
 * Returns: whether @text is the word of a unit
 */
gboolean
hc_figure_unit_from_string (const char *text, HcFigureUnit *unit)
{
  int index;

  if (!hc_words_find (hc_figure_unit_words, text, &index))
    return FALSE;
  *unit = (HcFigureUnit) index;
  return TRUE;
}

/**
 * hc_figure_unit_get_dimension:
 * @unit: a unit
 *
 * Returns: what it measures
 */
HcDimension
hc_figure_unit_get_dimension (HcFigureUnit unit)
{
  g_return_val_if_fail (unit < G_N_ELEMENTS (units), HC_DIMENSION_OTHER);
  return units[unit].dimension;
}

/**
 * hc_figure_unit_to_used:
 * @unit: a unit
 * @stated: a value in that unit
 *
 * Returns: the value in the unit of use: mm, mm², a ratio, or @unit itself
 */
double
hc_figure_unit_to_used (HcFigureUnit unit, double stated)
{
  g_return_val_if_fail (unit < G_N_ELEMENTS (units), stated);
  return stated * units[unit].used;
}

/**
 * hc_figure_unit_to_stated:
 * @unit: a unit
 * @used: a value in the unit of use
 *
 * Returns: the value in @unit
 */
double
hc_figure_unit_to_stated (HcFigureUnit unit, double used)
{
  g_return_val_if_fail (unit < G_N_ELEMENTS (units), used);
  return used / units[unit].used;
}
