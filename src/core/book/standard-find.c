/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Finding the figure that speaks for a bird, a week and a condition. */
#include "config.h"

#include "book/standard.h"

#include "book/standard-private.h"

#include <string.h>

/* Limits and demands begin with their figure, which orders them. */
G_STATIC_ASSERT (G_STRUCT_OFFSET (HcLimit, figure) == 0);
G_STATIC_ASSERT (G_STRUCT_OFFSET (HcDemand, figure) == 0);

static int
compare_names (gconstpointer a, gconstpointer b, gpointer user_data)
{
  return strcmp (((const HcFigure *) a)->name, ((const HcFigure *) b)->name);
}

/* g_qsort_with_data() keeps the order of equals. */
void
hc_standard_sort (HcStandard *self)
{
  g_qsort_with_data (self->limits, (int) self->n_limits, sizeof (HcLimit), compare_names, NULL);
  g_qsort_with_data (self->demands, (int) self->n_demands, sizeof (HcDemand), compare_names,
                     NULL);
}

static const HcFigure *
figure_at (gconstpointer table, gsize size, guint index)
{
  return (const HcFigure *) ((const char *) table + size * index);
}

static guint
first_of_name (gconstpointer table, gsize size, guint n, const char *name)
{
  guint low = 0;
  guint high = n;

  while (low < high)
    {
      guint middle = low + (high - low) / 2;

      if (strcmp (figure_at (table, size, middle)->name, name) < 0)
        low = middle + 1;
      else
        high = middle;
    }
  return low;
}

static const HcFigure *
find_in_table (gconstpointer table, gsize size, guint n, const char *name, const HcKind *kind,
               int week, HcCondition condition)
{
  for (guint i = first_of_name (table, size, n, name); i < n; i++)
    {
      const HcFigure *figure = figure_at (table, size, i);

      if (strcmp (figure->name, name) != 0)
        return NULL;
      if (hc_figure_applies (figure, kind, week, condition))
        return figure;
    }
  return NULL;
}

/**
 * hc_standard_find_limit:
 * @self: a standard
 * @name: need and measure, "roost.bar-to-bar"
 * @kind: (nullable): the kind of bird, or %NULL for limits that know no birds
 * @week: the birds' week of life, 1 for the week they hatch in,
 *   %HC_WEEK_GROWN for any grown bird
 * @condition: when
 *
 * The first limit of that name in the standard that is meant for these birds
 * then; where the standard has none, its fallback's, whose figure names the
 * fallback as its standard.
 *
 * Returns: (nullable) (transfer none): the limit
 */
const HcLimit *
hc_standard_find_limit (const HcStandard *self, const char *name, const HcKind *kind, int week,
                        HcCondition condition)
{
  const HcFigure *figure;

  g_return_val_if_fail (self != NULL && name != NULL, NULL);
  figure = find_in_table (self->limits, sizeof (HcLimit), self->n_limits, name, kind, week,
                          condition);
  if (figure == NULL && self->fallback != NULL)
    return hc_standard_find_limit (self->fallback, name, kind, week, condition);
  return (const HcLimit *) figure;
}

/**
 * hc_standard_find_demand:
 * @self: a standard
 * @name: need and measure, "floor.area"
 * @kind: (nullable): the kind of bird, or %NULL for demands that know no birds
 * @week: the birds' week of life, 1 for the week they hatch in,
 *   %HC_WEEK_GROWN for any grown bird
 * @condition: when
 *
 * The first demand of that name in the standard that is meant for these birds
 * then; where the standard has none, its fallback's, whose figure names the
 * fallback as its standard.
 *
 * Returns: (nullable) (transfer none): the demand
 */
const HcDemand *
hc_standard_find_demand (const HcStandard *self, const char *name, const HcKind *kind, int week,
                         HcCondition condition)
{
  const HcFigure *figure;

  g_return_val_if_fail (self != NULL && name != NULL, NULL);
  figure = find_in_table (self->demands, sizeof (HcDemand), self->n_demands, name, kind, week,
                          condition);
  if (figure == NULL && self->fallback != NULL)
    return hc_standard_find_demand (self->fallback, name, kind, week, condition);
  return (const HcDemand *) figure;
}

HcLimit *
hc_standard_find_limit_by_id (const HcStandard *self, const char *id)
{
  for (guint i = 0; i < self->n_limits; i++)
    if (g_str_equal (self->limits[i].figure.id, id))
      return &self->limits[i];
  return NULL;
}

HcDemand *
hc_standard_find_demand_by_id (const HcStandard *self, const char *id)
{
  for (guint i = 0; i < self->n_demands; i++)
    if (g_str_equal (self->demands[i].figure.id, id))
      return &self->demands[i];
  return NULL;
}

/**
 * hc_standard_find_figure:
 * @self: a standard
 * @id: a figure's id
 *
 * Returns: (nullable) (transfer none): the figure, of this standard or else of
 *   its fallback
 */
const HcFigure *
hc_standard_find_figure (const HcStandard *self, const char *id)
{
  const HcLimit *limit;
  const HcDemand *demand;

  g_return_val_if_fail (self != NULL && id != NULL, NULL);
  limit = hc_standard_find_limit_by_id (self, id);
  if (limit != NULL)
    return &limit->figure;
  demand = hc_standard_find_demand_by_id (self, id);
  if (demand != NULL)
    return &demand->figure;
  return self->fallback != NULL ? hc_standard_find_figure (self->fallback, id) : NULL;
}
