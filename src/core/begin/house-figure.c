/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The figures a new house is built by. */
#include "config.h"

#include "begin/house-figure.h"

#include "base/units.h"

static const HcKind *
kind_of (HcBook *book, const HcBatchValues *batch)
{
  const HcBreed *breed = hc_book_get_breed (book, batch->breed);

  return breed != NULL ? breed->kind : hc_book_get_kind (book, batch->kind);
}

/**
 * hc_house_figure: (skip)
 * @plan: a plan with its birds
 * @book: the book of the trade
 * @name: a limit, "roost.bar-to-wall"
 * @otherwise: what holds when no kind of bird there has it
 *
 * Returns: the good level of the limit: for one that asks for at least so much
 *   the largest among the birds', for one that allows at most so much the least
 */
double
hc_house_figure (const HcPlan *plan, HcBook *book, const char *name, double otherwise)
{
  HcStandard *standard = hc_book_get_standard (book, HC_BOOK_DEFAULT_STANDARD);
  HcParts *batches = hc_plan_get (plan)->batches;
  double figure = 0;
  gboolean found = FALSE;

  for (guint i = 0; i < batches->len; i++)
    {
      const HcKind *kind = kind_of (book, hc_batch_get (batches->pdata[i]));
      const HcLimit *limit
          = hc_standard_find_limit (standard, name, kind, HC_WEEK_GROWN, HC_CONDITION_DAY);
      double bound;

      if (limit == NULL || !hc_limit_get (limit, HC_LEVEL_GOOD, &bound))
        continue;
      if (!found)
        figure = bound;
      else if (limit->direction == HC_DIRECTION_AT_LEAST)
        figure = MAX (figure, bound);
      else
        figure = MIN (figure, bound);
      found = TRUE;
    }
  return found ? figure : otherwise;
}

/**
 * hc_house_measure: (skip)
 * @book: the book of the trade
 * @id: a measure of new houses, "wall_height_mm"
 *
 * Returns: what the book says, in the unit its id ends in
 */
double
hc_house_measure (HcBook *book, const char *id)
{
  return hc_book_get_house_measure (book, id)->value;
}

/**
 * hc_house_is_small: (skip)
 * @book: the book of the trade
 * @inside: the inside of a house
 *
 * Returns: whether it is too small to walk about in
 */
gboolean
hc_house_is_small (HcBook *book, HcBox inside)
{
  double area_m2 = inside.width_mm * inside.depth_mm / HC_MM2_PER_M2;

  return area_m2 < hc_house_measure (book, "small_floor_m2");
}

/**
 * hc_house_has: (skip)
 * @plan: a plan with its birds
 * @book: the book of the trade
 * @is: a question about a kind of bird
 *
 * Returns: whether some birds there are of a kind it is true of
 */
gboolean
hc_house_has (const HcPlan *plan, HcBook *book, gboolean (*is) (const HcKind *kind))
{
  HcParts *batches = hc_plan_get (plan)->batches;

  for (guint i = 0; i < batches->len; i++)
    {
      const HcKind *kind = kind_of (book, hc_batch_get (batches->pdata[i]));

      if (kind != NULL && is (kind))
        return TRUE;
    }
  return FALSE;
}
