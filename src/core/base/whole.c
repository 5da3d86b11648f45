/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The one place where measures become whole birds, and lengths become equal. */
#include "config.h"

#include "base/whole.h"

#include <math.h>

static gint64
clamp_to_birds (double birds)
{
  if (birds >= (double) HC_WHOLE_MANY)
    return HC_WHOLE_MANY;
  return birds > 0 ? (gint64) birds : 0;
}

/**
 * hc_whole_fit:
 * @offered: what there is: a length, an area, an edge
 * @each: what one bird takes of it, in the same unit
 *
 * Counts the whole birds that fit, rounding down but for
 * [const@HC_WHOLE_TOLERANCE] of a bird, so that 2.4 m at 15 cm is 16.
 *
 * Returns: the number of birds; 0 when nothing is offered or a figure is not a
 *   number, [const@HC_WHOLE_MANY] when a bird takes nothing
 */
gint64
hc_whole_fit (double offered,
              double each)
{
  if (isnan (offered) || isnan (each) || offered < 0)
    return 0;
  if (each <= 0)
    return HC_WHOLE_MANY;
  if (isinf (each))
    return 0;
  return clamp_to_birds (floor (offered / each + HC_WHOLE_TOLERANCE));
}

/**
 * hc_whole_asked:
 * @asked: how many birds or things are asked for, perhaps with a fraction
 *
 * Rounds what is asked up to whole ones, forgiving the same
 * [const@HC_WHOLE_TOLERANCE] that [func@whole_fit] forgives.
 *
 * Returns: the whole number; 0 for nothing, less than nothing, or not a number
 */
gint64
hc_whole_asked (double asked)
{
  if (isnan (asked))
    return 0;
  return clamp_to_birds (ceil (asked - HC_WHOLE_TOLERANCE));
}

/**
 * hc_mm:
 * @length_mm: a length or a coordinate in mm
 *
 * Rounds to 0.001 mm, so that lengths reached by different ways compare equal.
 *
 * Returns: the rounded length, never minus zero; 0 for what is not finite
 */
double
hc_mm (double length_mm)
{
  if (!isfinite (length_mm))
    return 0;
  return round (length_mm * 1000) / 1000 + 0.0;
}

/**
 * hc_fine:
 * @figure: a figure of the rules
 *
 * Rounds to 0.000001: four square feet of floor rounded to 0.001 m² would take
 * the last of 64 birds off a floor that holds them.
 *
 * Returns: the rounded figure, never minus zero; 0 for what is not finite
 */
double
hc_fine (double figure)
{
  if (!isfinite (figure))
    return 0;
  return round (figure * 1e6) / 1e6 + 0.0;
}
