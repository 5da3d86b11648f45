/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The simplex method on a dense table, for a dozen bounds or so. */
#include "config.h"

#include "needs/allot/simplex.h"

#define ZERO 1e-11

/* After so many steps for each row and column the first column that gains is
 * taken instead of the one that gains most: slower, but it cannot go round in
 * circles (Bland 1977). */
#define STEPS_BEFORE_CARE 4

struct _HcSimplex
{
  guint n_rows, n_columns;
  double *cells;
  guint *in_row;
  guint *in_column;
};

/* The last row is the gain of each column, the last column the bounds. */
static inline double *
cell (HcSimplex *self, guint row, guint column)
{
  return &self->cells[row * (self->n_columns + 1) + column];
}

HcSimplex *
hc_simplex_new (guint n_rows, guint n_columns)
{
  HcSimplex *self = g_new0 (HcSimplex, 1);

  self->n_rows = n_rows;
  self->n_columns = n_columns;
  self->cells = g_new0 (double, (n_rows + 1) * (n_columns + 1));
  self->in_row = g_new (guint, n_rows);
  self->in_column = g_new (guint, n_columns);
  for (guint row = 0; row < n_rows; row++)
    self->in_row[row] = n_columns + row;
  for (guint column = 0; column < n_columns; column++)
    {
      self->in_column[column] = column;
      *cell (self, n_rows, column) = 1;
    }
  return self;
}

void
hc_simplex_free (HcSimplex *self)
{
  g_free (self->cells);
  g_free (self->in_row);
  g_free (self->in_column);
  g_free (self);
}

void
hc_simplex_set (HcSimplex *self, guint row, guint column, double factor)
{
  *cell (self, row, column) = factor;
}

void
hc_simplex_set_bound (HcSimplex *self, guint row, double bound)
{
  *cell (self, row, self->n_columns) = MAX (bound, 0);
}

static gboolean
choose_column (HcSimplex *self, gboolean careful, guint *column)
{
  double most = ZERO;

  *column = G_MAXUINT;
  for (guint at = 0; at < self->n_columns; at++)
    {
      double gain = *cell (self, self->n_rows, at);

      if (gain <= most)
        continue;
      if (careful && *column != G_MAXUINT && self->in_column[at] > self->in_column[*column])
        continue;
      *column = at;
      most = careful ? ZERO : gain;
    }
  return *column != G_MAXUINT;
}

static gboolean
choose_row (HcSimplex *self, guint column, guint *row)
{
  double least = 0;

  *row = G_MAXUINT;
  for (guint at = 0; at < self->n_rows; at++)
    {
      double factor = *cell (self, at, column);
      double ratio;

      if (factor <= ZERO)
        continue;
      ratio = *cell (self, at, self->n_columns) / factor;
      if (*row == G_MAXUINT || ratio < least
          || (ratio == least && self->in_row[at] < self->in_row[*row]))
        {
          *row = at;
          least = ratio;
        }
    }
  return *row != G_MAXUINT;
}

static void
exchange (HcSimplex *self, guint row, guint column)
{
  double pivot = *cell (self, row, column);
  guint name = self->in_row[row];

  for (guint at = 0; at <= self->n_columns; at++)
    *cell (self, row, at) /= pivot;
  *cell (self, row, column) = 1 / pivot;
  for (guint other = 0; other <= self->n_rows; other++)
    {
      double factor = *cell (self, other, column);

      if (other == row || factor == 0)
        continue;
      for (guint at = 0; at <= self->n_columns; at++)
        if (at != column)
          *cell (self, other, at) -= factor * *cell (self, row, at);
      *cell (self, other, column) = -factor / pivot;
    }
  self->in_row[row] = self->in_column[column];
  self->in_column[column] = name;
}

/* Makes the sum of the amounts as large as the bounds allow, and returns it. */
double
hc_simplex_solve (HcSimplex *self, double *amounts)
{
  guint careful_after = STEPS_BEFORE_CARE * (self->n_rows + self->n_columns);
  guint row, column;

  for (guint step = 0; choose_column (self, step > careful_after, &column); step++)
    if (choose_row (self, column, &row))
      exchange (self, row, column);
    else
      break;

  for (guint at = 0; amounts != NULL && at < self->n_columns; at++)
    amounts[at] = 0;
  for (guint at = 0; amounts != NULL && at < self->n_rows; at++)
    if (self->in_row[at] < self->n_columns)
      amounts[self->in_row[at]] = MAX (*cell (self, at, self->n_columns), 0);
  return -*cell (self, self->n_rows, self->n_columns);
}
