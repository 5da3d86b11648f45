/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The true shape of a house from what a tape says of it, and which measure to
 * take again. */
#include "config.h"

#include "survey/survey.h"

#include "base/ring.h"
#include "plan/edit.h"
#include "survey/fit.h"

#include <glib/gi18n-lib.h>
#include <math.h>

/* A misfit of more than this share of the longest measure is no slip of the
 * tape: such walls make no house. */
#define FITS_NO_SHAPE 0.05

/* Squares of misfits: what good measures leave for each to spare, and what a
 * misread one adds at least. */
#define AGREE_MM2 (HC_TAPE_FORGIVEN_MM * HC_TAPE_FORGIVEN_MM)
#define DIFFER_MM2 (4 * AGREE_MM2)

G_DEFINE_BOXED_TYPE (HcSurvey, hc_survey, hc_survey_copy, hc_survey_free)

/**
 * hc_survey_name_corner:
 * @corner: index of a corner
 *
 * Returns: (transfer full): the letter a survey form gives it: A, B, … Z, A2, …
 */
char *
hc_survey_name_corner (guint corner)
{
  if (corner < 26)
    return g_strdup_printf ("%c", 'A' + corner);
  return g_strdup_printf ("%c%u", 'A' + corner % 26, corner / 26 + 1);
}

static gpointer
refuse_measure (GError **error, const char *sentence, const HcTapeMeasure *measure,
                double length_mm, HcUnits units)
{
  g_autofree char *from = hc_survey_name_corner (measure->from);
  g_autofree char *to = hc_survey_name_corner (measure->to);
  g_autofree char *length = hc_length_format (length_mm, units);
  g_autofree char *text = NULL;

#pragma GCC diagnostic push
#pragma GCC diagnostic ignored "-Wformat-nonliteral"
  text = g_strdup_printf (sentence, from, to, length);
#pragma GCC diagnostic pop
  return hc_edit_refuse (error, "%s", text);
}

static gboolean
have_lengths (const HcTapeMeasure *measures, guint n_measures, HcUnits units, GError **error)
{
  for (guint i = 0; i < n_measures; i++)
    if (!(measures[i].length_mm >= 1 && measures[i].length_mm <= HC_SURVEY_LONGEST_MM))
      {
        /* Translators: two corners of a house, and the longest length there may be. */
        refuse_measure (error, _("From %s to %s needs a length of up to %s. Type what the tape "
                                 "says."),
                        &measures[i], HC_SURVEY_LONGEST_MM, units);
        return FALSE;
      }
  return TRUE;
}

static HcSurvey *
begin (const HcPoint *sketch, guint n_corners, guint n_measures)
{
  HcSurvey *self = g_new0 (HcSurvey, 1);

  self->corners = g_memdup2 (sketch, n_corners * sizeof (HcPoint));
  self->n_corners = n_corners;
  self->n_measures = n_measures;
  self->misfit_mm = g_new0 (double, n_measures);
  self->doubtful = -1;
  return self;
}

/* What is left when one measure is not asked, and what the rest say of it. */
static double
leave_out (const HcSurvey *self, const HcTapeMeasure *measures, guint left_out, double *by_mm)
{
  HcTape tape = { measures, self->n_measures, left_out };
  g_autofree HcPoint *corners
      = g_memdup2 (self->corners, self->n_corners * sizeof (HcPoint));
  double squares = hc_fit_corners (&tape, corners, self->n_corners);

  *by_mm = hc_tape_get_misfit_mm (&measures[left_out], corners);
  return squares == HC_TAPE_LEAVES_LOOSE ? INFINITY : squares;
}

/* One measure is doubtful when the others agree without it, and would not
 * without any other. With one to spare, each could be the one. */
static void
find_doubtful (HcSurvey *self, const HcTapeMeasure *measures, double all_mm2)
{
  double best = INFINITY, second = INFINITY;
  double best_by_mm = 0;
  guint doubtful = 0;

  if (self->spare < 2)
    return;
  for (guint i = 0; i < self->n_measures; i++)
    {
      double by_mm;
      double squares = leave_out (self, measures, i, &by_mm);

      if (squares >= best)
        {
          second = MIN (second, squares);
          continue;
        }
      second = best;
      best = squares;
      best_by_mm = by_mm;
      doubtful = i;
    }
  if (best > AGREE_MM2 * (self->spare - 1) || MIN (all_mm2, second) - best < DIFFER_MM2)
    return;
  self->doubtful = doubtful;
  self->doubtful_by_mm = best_by_mm;
}

static guint
find_worst (const HcSurvey *self)
{
  guint worst = 0;

  for (guint i = 1; i < self->n_measures; i++)
    if (fabs (self->misfit_mm[i]) > fabs (self->misfit_mm[worst]))
      worst = i;
  return worst;
}

static double
longest_mm (const HcTapeMeasure *measures, guint n_measures)
{
  double longest = 0;

  for (guint i = 0; i < n_measures; i++)
    longest = MAX (longest, measures[i].length_mm);
  return longest;
}

static gboolean
are_possible (const HcTapeMeasure *measures, guint n_measures, guint n_corners, HcUnits units,
              GError **error)
{
  double others_mm;
  guint too_long;

  if (!hc_tape_find_too_long (measures, n_measures, n_corners, &too_long, &others_mm))
    return TRUE;
  /* Translators: two corners of a house, and the length of walls between them. */
  refuse_measure (error, _("From %s to %s cannot be longer than the way round, which is %s. "
                           "Measure it again."),
                  &measures[too_long], others_mm, units);
  return FALSE;
}

static gboolean
fits_no_shape (const HcSurvey *self, const HcTapeMeasure *measures)
{
  return fabs (self->misfit_mm[find_worst (self)])
         > FITS_NO_SHAPE * longest_mm (measures, self->n_measures);
}

static gboolean
refuse_misfit (const HcSurvey *self, const HcTapeMeasure *measures, HcUnits units, GError **error)
{
  guint worst = self->doubtful >= 0 ? (guint) self->doubtful : find_worst (self);

  if (self->doubtful >= 0
      || are_possible (measures, self->n_measures, self->n_corners, units, error))
    /* Translators: two corners of a house, and the length typed between them. */
    refuse_measure (error, _("These measures fit no shape; from %s to %s, typed as %s, fits "
                             "worst. Measure it again."),
                    &measures[worst], measures[worst].length_mm, units);
  return FALSE;
}

static gboolean
fits (const HcSurvey *self, const HcTapeMeasure *measures, HcUnits units, GError **error)
{
  if (fits_no_shape (self, measures))
    return refuse_misfit (self, measures, units, error);
  if (hc_ring_find_fault (self->corners, self->n_corners, NULL, NULL) == HC_RING_SOUND)
    return TRUE;
  hc_edit_refuse (error, _("With these measures walls would cross each other. Sketch the corners "
                           "nearer to where they are, or measure again."));
  return FALSE;
}

static gboolean
is_held (const HcPoint *sketch, guint n_corners, guint n_measures, GError **error)
{
  guint missing = hc_fit_count_unknowns (n_corners);

  if (hc_point_equal (sketch[0], sketch[1]))
    hc_edit_refuse (error, _("Two corners of the sketch are in one place. Move one of them."));
  else if (n_measures < missing)
    hc_edit_refuse (error, ngettext ("These measures leave the shape loose. Measure %u more "
                                     "diagonal.",
                                     "These measures leave the shape loose. Measure %u more "
                                     "diagonals.", missing - n_measures),
                    missing - n_measures);
  else
    return TRUE;
  return FALSE;
}

static HcSurvey *
solved (const HcPoint *sketch, guint n_corners, const HcTapeMeasure *measures, guint n_measures,
        HcUnits units, GError **error)
{
  g_autoptr (HcSurvey) self = begin (sketch, n_corners, n_measures);
  HcTape tape = { measures, n_measures, -1 };
  double squares_mm2 = hc_fit_corners (&tape, self->corners, n_corners);

  if (squares_mm2 == HC_TAPE_LEAVES_LOOSE)
    return are_possible (measures, n_measures, n_corners, units, error)
               ? hc_edit_refuse (error, _("These measures leave the shape loose. Measure a "
                                          "diagonal between two other corners."))
               : NULL;
  self->spare = n_measures - hc_fit_count_unknowns (n_corners);
  for (guint i = 0; i < n_measures; i++)
    self->misfit_mm[i] = hc_tape_get_misfit_mm (&measures[i], self->corners);
  find_doubtful (self, measures, squares_mm2);
  for (guint i = 0; i < n_corners; i++)
    self->corners[i] = hc_point_rounded (self->corners[i]);
  return fits (self, measures, units, error) ? g_steal_pointer (&self) : NULL;
}

/**
 * hc_survey_solve:
 * @sketch: (array length=n_corners): the corners roughly as they are, in ring order
 * @n_corners: how many, from 3 to %HC_SURVEY_MOST_CORNERS
 * @measures: (array length=n_measures): what was measured between them
 * @n_measures: how many
 * @units: what the keeper measures in, for sentences
 * @error: says which measure cannot be, or what is missing
 *
 * The first corner stays where it is sketched, and the first wall keeps its
 * way.
 *
 * Returns: (transfer full) (nullable): the shape, or %NULL and a %HC_ERROR_EDIT
 */
HcSurvey *
hc_survey_solve (const HcPoint *sketch, guint n_corners, const HcTapeMeasure *measures,
                 guint n_measures, HcUnits units, GError **error)
{
  g_return_val_if_fail (n_corners >= 3 && n_corners <= HC_SURVEY_MOST_CORNERS, NULL);
  for (guint i = 0; i < n_measures; i++)
    g_return_val_if_fail (measures[i].from < n_corners && measures[i].to < n_corners
                              && measures[i].from != measures[i].to,
                          NULL);
  if (!have_lengths (measures, n_measures, units, error)
      || !is_held (sketch, n_corners, n_measures, error))
    return NULL;
  return solved (sketch, n_corners, measures, n_measures, units, error);
}

/**
 * hc_survey_copy:
 * @self: a survey
 *
 * Returns: (transfer full): a copy
 */
HcSurvey *
hc_survey_copy (const HcSurvey *self)
{
  HcSurvey *copy = g_memdup2 (self, sizeof *self);

  copy->corners = g_memdup2 (self->corners, self->n_corners * sizeof (HcPoint));
  copy->misfit_mm = g_memdup2 (self->misfit_mm, self->n_measures * sizeof (double));
  return copy;
}

/**
 * hc_survey_free:
 * @self: (transfer full): a survey
 *
 * Frees it.
 */
void
hc_survey_free (HcSurvey *self)
{
  g_free (self->corners);
  g_free (self->misfit_mm);
  g_free (self);
}
