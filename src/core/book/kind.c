/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A kind of bird: its names and its growth. */
#include "config.h"

#include "book/kind.h"

#include "book/translate.h"

/**
 * hc_kind_get_name:
 * @self: a kind of bird
 * @count: how many birds
 *
 * Returns: its name in the keeper's language, for one or several
 */
const char *
hc_kind_get_name (const HcKind *self, gulong count)
{
  g_return_val_if_fail (self != NULL, NULL);
  return hc_translate_count (self->name, self->plural, count);
}

static double
grown_kg (const HcKind *self, HcSex sex)
{
  switch (sex)
    {
    case HC_SEX_FEMALE:
      return self->hen_kg;
    case HC_SEX_MALE:
      return self->cock_kg;
    default:
      return (self->hen_kg + self->cock_kg) / 2;
    }
}

/* Mass of a bird of either sex, from the curve. */
static double
mean_kg (const HcKind *self, double weeks)
{
  const HcGrowthPoint *at = self->growth;
  guint i = 1;

  if (weeks <= at[0].week)
    return at[0].kg;
  while (i < self->n_growth && at[i].week < weeks)
    i++;
  if (i == self->n_growth)
    return at[i - 1].kg;
  return at[i - 1].kg
         + (at[i].kg - at[i - 1].kg) * (weeks - at[i - 1].week) / (at[i].week - at[i - 1].week);
}

/**
 * hc_kind_get_mass_kg:
 * @self: a kind of bird
 * @sex: its sex
 * @weeks: its age in weeks, with fractions
 *
 * Follows the growth curve of the kind, straight between its points. Day-olds
 * of both sexes weigh the same; the sexes part as they grow, by the ratio of
 * their grown masses at the end of the curve.
 *
 * Returns: live mass in kg
 */
double
hc_kind_get_mass_kg (const HcKind *self, HcSex sex, double weeks)
{
  const HcGrowthPoint *last;
  double parted;

  g_return_val_if_fail (self != NULL && self->n_growth >= 2, 0);
  last = &self->growth[self->n_growth - 1];
  if (weeks >= last->week)
    return grown_kg (self, sex);
  parted = CLAMP (weeks / last->week, 0, 1);
  return mean_kg (self, weeks)
         * (1 - parted + parted * grown_kg (self, sex) / grown_kg (self, HC_SEX_UNKNOWN));
}
