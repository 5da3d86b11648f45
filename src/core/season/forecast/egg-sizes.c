/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Masses of eggs are spread about their mean as a bell curve. */
#include "config.h"

#include "season/forecast/egg-sizes.h"

#include <math.h>

/* Where the next class of the same units begins. */
static double
get_end_g (const HcBook *book, const HcEggClass *class)
{
  double end_g = G_MAXDOUBLE;

  for (guint i = 0; i < hc_book_get_n_egg_classes (book); i++)
    {
      const HcEggClass *other = hc_book_get_egg_class_at (book, i);

      if (other->units == class->units && other->from_g > class->from_g)
        end_g = MIN (end_g, other->from_g);
    }
  return end_g;
}

static double
get_share_below (double g, double mean_g, double sigma_g)
{
  return 0.5 * erfc ((mean_g - g) / (sigma_g * G_SQRT2));
}

/**
 * hc_egg_class_get_share: (skip)
 * @book: the book
 * @class: a size
 * @mean_g: mean mass of eggs, g
 * @spread_percent: standard deviation of their mass, of the mean
 *
 * Returns: the share of them that are of that size; eggs lighter than the
 *   smallest are of the smallest
 */
double
hc_egg_class_get_share (const HcBook *book, const HcEggClass *class, double mean_g,
                        double spread_percent)
{
  double sigma_g = MAX (mean_g * spread_percent / 100, 1e-3);
  double end_g = get_end_g (book, class);
  double below = class->from_g > 0 ? get_share_below (class->from_g, mean_g, sigma_g) : 0;

  return (end_g < G_MAXDOUBLE ? get_share_below (end_g, mean_g, sigma_g) : 1) - below;
}

/**
 * hc_egg_class_of: (skip)
 * @book: the book
 * @units: the units of those who grade
 * @egg_g: mass of an egg, g
 *
 * Returns: (transfer none) (nullable): its size
 */
const HcEggClass *
hc_egg_class_of (const HcBook *book, HcUnits units, double egg_g)
{
  const HcEggClass *found = NULL;

  for (guint i = 0; i < hc_book_get_n_egg_classes (book); i++)
    {
      const HcEggClass *class = hc_book_get_egg_class_at (book, i);

      if (class->units == units && class->from_g <= egg_g
          && (found == NULL || class->from_g > found->from_g))
        found = class;
    }
  return found;
}
