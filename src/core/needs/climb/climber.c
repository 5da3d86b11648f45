/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Grades hops by the limits of a bird's kind and age. */
#include "config.h"

#include "needs/climb/climber.h"

#include "book/figure-names.h"

void
hc_climber_init (HcClimber *self, const HcStandard *standard, const HcBody *body,
                 gboolean lands_hard)
{
  static const char *const names[HC_CLIMBER_N_LIMITS] = {
    [HC_CLIMBER_RISE_FROM_FLOOR] = HC_FIGURE_CLIMB_RISE_FROM_FLOOR,
    [HC_CLIMBER_DROP_TO_FLOOR] = HC_FIGURE_CLIMB_DROP_TO_FLOOR,
    [HC_CLIMBER_NEAR_GAP] = HC_FIGURE_CLIMB_NEAR_GAP,
    [HC_CLIMBER_SHORT_HOP] = HC_FIGURE_CLIMB_SHORT_HOP,
    [HC_CLIMBER_LONG_HOP] = HC_FIGURE_CLIMB_LONG_HOP,
    [HC_CLIMBER_LANDING] = HC_FIGURE_CLIMB_LANDING,
    [HC_CLIMBER_STEP] = HC_FIGURE_CLIMB_STEP,
    [HC_CLIMBER_SLOPE] = HC_FIGURE_CLIMB_RAMP_SLOPE,
    [HC_CLIMBER_RAMP_WIDTH] = HC_FIGURE_CLIMB_RAMP_WIDTH,
  };

  self->lands_hard = lands_hard;
  for (guint i = 0; i < HC_CLIMBER_N_LIMITS; i++)
    self->limits[i] = hc_standard_find_limit (standard, names[i], body->kind,
                                              hc_body_get_week (body), HC_CONDITION_DAY);
}

/* Makes @grade no better than @measured is. */
static void
lower (HcHopGrade *grade, const HcLimit *limit, double measured, HcHopCause cause)
{
  HcLevel level = limit != NULL ? hc_limit_grade (limit, measured) : HC_LEVEL_PLENTY;

  if (level < grade->level)
    *grade = (HcHopGrade){ level, cause, limit, measured };
}

static gboolean
hops (const HcClimber *self)
{
  return self->limits[HC_CLIMBER_SHORT_HOP] != NULL;
}

static void
grade_drop (const HcClimber *self, const HcHop *hop, const HcLedge *ledge, HcHopGrade *grade)
{
  const HcLimit *limit = self->limits[HC_CLIMBER_DROP_TO_FLOOR];
  HcLevel level;

  lower (grade, limit, hop->rise_mm, HC_HOP_DROPS);
  level = limit != NULL ? hc_limit_grade (limit, hop->rise_mm) : HC_LEVEL_PLENTY;
  if (self->lands_hard && level > HC_LEVEL_SHORT && level - 1 < grade->level)
    *grade = (HcHopGrade){ level - 1, HC_HOP_DROPS_HARD, limit, hop->rise_mm };
  lower (grade, self->limits[HC_CLIMBER_LANDING], ledge->landing.clear_mm / hop->rise_mm,
         HC_HOP_HAS_NO_LANDING);
}

static void
grade_floor_hop (const HcClimber *self, const HcClimb *climb, const HcHop *hop, gboolean up,
                 HcHopGrade *grade)
{
  if (hop->rise_mm <= 0)
    return;
  if (!hops (self))
    lower (grade, self->limits[HC_CLIMBER_STEP], hop->rise_mm, HC_HOP_IS_HIGH);
  else if (up)
    lower (grade, self->limits[HC_CLIMBER_RISE_FROM_FLOOR], hop->rise_mm, HC_HOP_IS_HIGH);
  else
    grade_drop (self, hop, hc_climb_get_ledge (climb, hop->high), grade);
}

static void
grade_hop_across (const HcClimber *self, const HcHop *hop, HcHopGrade *grade)
{
  const HcLimit *near = self->limits[HC_CLIMBER_NEAR_GAP];

  if (!hops (self))
    {
      lower (grade, self->limits[HC_CLIMBER_STEP], hop->rise_mm, HC_HOP_IS_HIGH);
      lower (grade, self->limits[HC_CLIMBER_STEP], hop->gap_mm, HC_HOP_IS_WIDE);
    }
  else if (near == NULL || hc_limit_is_met (near, HC_LEVEL_TIGHT, hop->gap_mm))
    lower (grade, self->limits[HC_CLIMBER_SHORT_HOP], hop->rise_mm, HC_HOP_IS_HIGH);
  else
    lower (grade, self->limits[HC_CLIMBER_LONG_HOP], hop->rise_mm, HC_HOP_IS_HIGH);
}

/* From the lower ledge to the higher for @up, else the other way. */
HcHopGrade
hc_climber_grade (const HcClimber *self, const HcClimb *climb, const HcHop *hop, gboolean up)
{
  HcHopGrade grade = { HC_LEVEL_PLENTY, HC_HOP_IS_FINE, NULL, 0 };

  switch (hop->kind)
    {
    case HC_HOP_FLOOR:
      grade_floor_hop (self, climb, hop, up, &grade);
      break;
    case HC_HOP_ACROSS:
      grade_hop_across (self, hop, &grade);
      break;
    case HC_HOP_RAMP:
      lower (&grade, self->limits[HC_CLIMBER_SLOPE], hop->slope_deg, HC_HOP_IS_STEEP);
      lower (&grade, self->limits[HC_CLIMBER_RAMP_WIDTH], hop->across_mm, HC_HOP_IS_NARROW);
      break;
    default:
      g_return_val_if_reached (grade);
    }
  return grade;
}
