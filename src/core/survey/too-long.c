/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A measure longer than the way round by the others fits no shape at all. */
#include "config.h"

#include "survey/fit.h"

#include <math.h>

/* The shortest way between the ends of a measure along the others. */
static double
way_round_mm (const HcTapeMeasure *measures, guint n_measures, guint n_corners, guint except)
{
  double reached[HC_SURVEY_MOST_CORNERS];
  gboolean nearer = TRUE;

  for (guint i = 0; i < n_corners; i++)
    reached[i] = i == measures[except].from ? 0 : INFINITY;
  while (nearer)
    {
      nearer = FALSE;
      for (guint i = 0; i < n_measures; i++)
        {
          const HcTapeMeasure *measure = &measures[i];
          double *from = &reached[measure->from];
          double *to = &reached[measure->to];

          if (i == except
              || (*from + measure->length_mm >= *to && *to + measure->length_mm >= *from))
            continue;
          *to = MIN (*to, *from + measure->length_mm);
          *from = MIN (*from, *to + measure->length_mm);
          nearer = TRUE;
        }
    }
  return reached[measures[except].to];
}

/**
 * hc_tape_find_too_long: (skip)
 * @measures: (array length=n_measures): what was measured
 * @n_measures: how many
 * @n_corners: between how many corners
 * @too_long: (out): which of them is too long
 * @others_mm: (out): how long the way round is
 *
 * Returns: whether a measure is longer than the way between its ends along
 *   others, by more than a tape may be misread
 */
gboolean
hc_tape_find_too_long (const HcTapeMeasure *measures, guint n_measures, guint n_corners,
                       guint *too_long, double *others_mm)
{
  double most_mm = HC_TAPE_FORGIVEN_MM;
  gboolean found = FALSE;

  for (guint i = 0; i < n_measures; i++)
    {
      double way_mm = way_round_mm (measures, n_measures, n_corners, i);

      if (!(measures[i].length_mm - way_mm > most_mm))
        continue;
      most_mm = measures[i].length_mm - way_mm;
      *others_mm = way_mm;
      *too_long = i;
      found = TRUE;
    }
  return found;
}
