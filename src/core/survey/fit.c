/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Corners moved until the distances between them are those measured, as nearly as
 * can be: least squares by the GNU Scientific Library. */
#include "config.h"

#include "survey/fit.h"

#include <gsl/gsl_errno.h>
#include <gsl/gsl_linalg.h>
#include <gsl/gsl_multifit_nlinear.h>
#include <math.h>

#define MOST_STEPS 200
#define AS_NEAR_AS 1e-12

/* A shape that gives way more than so many times as easily as it holds is loose. */
#define LOOSE 1e-3

/* The first corner stays, and the first wall keeps its way: a shape does not say
 * where it stands. */
typedef struct
{
  const HcTape *tape;
  HcPoint first;
  HcPoint way;
  guint n_corners;
  guint n_asked;
} Fit;

guint
hc_fit_count_unknowns (guint n_corners)
{
  return 2 * n_corners - 3;
}

static HcPoint
corner_at (const Fit *fit, const gsl_vector *unknowns, guint corner)
{
  if (corner == 0)
    return fit->first;
  if (corner == 1)
    return hc_point_add (fit->first, hc_point_scale (fit->way, gsl_vector_get (unknowns, 0)));
  return hc_point (gsl_vector_get (unknowns, 2 * corner - 3),
                   gsl_vector_get (unknowns, 2 * corner - 2));
}

static const HcTapeMeasure *
asked (const Fit *fit, guint row)
{
  gboolean after = fit->tape->left_out >= 0 && row >= (guint) fit->tape->left_out;

  return &fit->tape->measures[row + after];
}

static int
find_misfits (const gsl_vector *unknowns, void *data, gsl_vector *misfits)
{
  const Fit *fit = data;

  for (guint row = 0; row < fit->n_asked; row++)
    {
      const HcTapeMeasure *measure = asked (fit, row);
      double distance = hc_point_distance (corner_at (fit, unknowns, measure->from),
                                           corner_at (fit, unknowns, measure->to));

      gsl_vector_set (misfits, row, distance - measure->length_mm);
    }
  return GSL_SUCCESS;
}

static void
set_slope (const Fit *fit, guint row, guint corner, HcPoint slope, gsl_matrix *slopes)
{
  if (corner == 1)
    gsl_matrix_set (slopes, row, 0, hc_point_dot (slope, fit->way));
  if (corner < 2)
    return;
  gsl_matrix_set (slopes, row, 2 * corner - 3, slope.x_mm);
  gsl_matrix_set (slopes, row, 2 * corner - 2, slope.y_mm);
}

static int
find_slopes (const gsl_vector *unknowns, void *data, gsl_matrix *slopes)
{
  const Fit *fit = data;

  gsl_matrix_set_zero (slopes);
  for (guint row = 0; row < fit->n_asked; row++)
    {
      const HcTapeMeasure *measure = asked (fit, row);
      HcPoint way = hc_point_unit (
          hc_point_subtract (corner_at (fit, unknowns, measure->to),
                             corner_at (fit, unknowns, measure->from)));

      set_slope (fit, row, measure->to, way, slopes);
      set_slope (fit, row, measure->from, hc_point_scale (way, -1), slopes);
    }
  return GSL_SUCCESS;
}

/* A drawing of another size is as good a start. */
static double
scale_of_sketch (const HcTape *tape, const HcPoint *corners)
{
  double measured = 0, drawn = 0;

  for (guint i = 0; i < tape->n_measures; i++)
    {
      measured += tape->measures[i].length_mm;
      drawn += hc_point_distance (corners[tape->measures[i].from],
                                  corners[tape->measures[i].to]);
    }
  return drawn > 0 ? measured / drawn : 1;
}

static gsl_vector *
begin (const Fit *fit, const HcPoint *corners)
{
  gsl_vector *unknowns = gsl_vector_alloc (hc_fit_count_unknowns (fit->n_corners));
  double scale = scale_of_sketch (fit->tape, corners);

  gsl_vector_set (unknowns, 0, scale * hc_point_distance (corners[0], corners[1]));
  for (guint i = 2; i < fit->n_corners; i++)
    {
      HcPoint at = hc_point_add (
          corners[0], hc_point_scale (hc_point_subtract (corners[i], corners[0]), scale));

      gsl_vector_set (unknowns, 2 * i - 3, at.x_mm);
      gsl_vector_set (unknowns, 2 * i - 2, at.y_mm);
    }
  return unknowns;
}

static gboolean
is_loose (const gsl_matrix *slopes)
{
  gsl_matrix *copy = gsl_matrix_alloc (slopes->size1, slopes->size2);
  gsl_matrix *ways = gsl_matrix_alloc (slopes->size2, slopes->size2);
  gsl_vector *hold = gsl_vector_alloc (slopes->size2);
  gsl_vector *work = gsl_vector_alloc (slopes->size2);
  gboolean loose;

  gsl_matrix_memcpy (copy, slopes);
  loose = gsl_linalg_SV_decomp (copy, ways, hold, work) != GSL_SUCCESS
          || gsl_vector_get (hold, hold->size - 1) < LOOSE * gsl_vector_get (hold, 0);
  gsl_vector_free (work);
  gsl_vector_free (hold);
  gsl_matrix_free (ways);
  gsl_matrix_free (copy);
  return loose;
}

static double
solve (Fit *fit, HcPoint *corners)
{
  gsl_multifit_nlinear_parameters settings = gsl_multifit_nlinear_default_parameters ();
  guint n_unknowns = hc_fit_count_unknowns (fit->n_corners);
  gsl_multifit_nlinear_fdf system = { .f = find_misfits, .df = find_slopes,
                                      .n = fit->n_asked, .p = n_unknowns, .params = fit };
  gsl_multifit_nlinear_workspace *work = gsl_multifit_nlinear_alloc (
      gsl_multifit_nlinear_trust, &settings, fit->n_asked, n_unknowns);
  gsl_vector *start = begin (fit, corners);
  double squares = HC_TAPE_LEAVES_LOOSE;
  int why;

  gsl_multifit_nlinear_init (start, &system, work);
  gsl_multifit_nlinear_driver (MOST_STEPS, AS_NEAR_AS, AS_NEAR_AS, 0, NULL, NULL, &why, work);
  if (!is_loose (gsl_multifit_nlinear_jac (work)))
    squares = pow (gsl_blas_dnrm2 (gsl_multifit_nlinear_residual (work)), 2);
  for (guint i = 0; i < fit->n_corners; i++)
    corners[i] = corner_at (fit, gsl_multifit_nlinear_position (work), i);
  gsl_vector_free (start);
  gsl_multifit_nlinear_free (work);
  return squares;
}

/**
 * hc_fit_corners: (skip)
 * @tape: what was measured
 * @corners: (inout) (array length=n_corners): a sketch of the shape, its corners
 *   moved to where they fit best
 * @n_corners: how many, three at least
 *
 * Returns: the sum of the squares of the misfits, mm²; %HC_TAPE_LEAVES_LOOSE
 *   when the measures do not hold the shape
 */
double
hc_fit_corners (const HcTape *tape, HcPoint *corners, guint n_corners)
{
  Fit fit = { tape, corners[0], hc_point_unit (hc_point_subtract (corners[1], corners[0])),
              n_corners, tape->n_measures - (tape->left_out >= 0) };

  if (fit.n_asked < hc_fit_count_unknowns (n_corners))
    return HC_TAPE_LEAVES_LOOSE;
  gsl_set_error_handler_off ();
  return solve (&fit, corners);
}

double
hc_tape_get_misfit_mm (const HcTapeMeasure *measure, const HcPoint *corners)
{
  return measure->length_mm - hc_point_distance (corners[measure->from], corners[measure->to]);
}
