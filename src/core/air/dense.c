/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A few linear equations, solved by elimination with pivots. */
#include "config.h"

#include "air/dense.h"

#include <math.h>

/* A pivot this small is an unknown nothing is known of. */
#define LEAST_PIVOT 1e-300

static void
swap_rows (guint n, HcDense matrix, double *right, guint a, guint b)
{
  double kept = right[a];

  right[a] = right[b];
  right[b] = kept;
  for (guint column = 0; column < n; column++)
    {
      kept = matrix[a][column];
      matrix[a][column] = matrix[b][column];
      matrix[b][column] = kept;
    }
}

static void
eliminate (guint n, HcDense matrix, double *right, guint pivot)
{
  guint best = pivot;

  for (guint row = pivot + 1; row < n; row++)
    if (fabs (matrix[row][pivot]) > fabs (matrix[best][pivot]))
      best = row;
  if (best != pivot)
    swap_rows (n, matrix, right, pivot, best);
  if (fabs (matrix[pivot][pivot]) < LEAST_PIVOT)
    return;
  for (guint row = pivot + 1; row < n; row++)
    {
      double share = matrix[row][pivot] / matrix[pivot][pivot];

      for (guint column = pivot; column < n; column++)
        matrix[row][column] -= share * matrix[pivot][column];
      right[row] -= share * right[pivot];
    }
}

/**
 * hc_dense_solve: (skip)
 * @n: how many equations, at most %HC_DENSE_MOST
 * @matrix: their coefficients, row by row; used up
 * @right: their right sides; replaced by the unknowns
 *
 * An unknown that no equation holds comes out as 0.
 */
void
hc_dense_solve (guint n, HcDense matrix, double *right)
{
  for (guint pivot = 0; pivot < n; pivot++)
    eliminate (n, matrix, right, pivot);
  for (guint row = n; row-- > 0;)
    {
      for (guint column = row + 1; column < n; column++)
        right[row] -= matrix[row][column] * right[column];
      right[row] = fabs (matrix[row][row]) < LEAST_PIVOT ? 0 : right[row] / matrix[row][row];
    }
}
