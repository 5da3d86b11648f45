/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * One bird's measures at its age. */
#include "config.h"

#include "flock/body.h"

#include <math.h>

/**
 * hc_body_init:
 * @body: (out caller-allocates): the body
 * @kind: the kind of bird
 * @female: whether it is a female
 * @age_weeks: whole weeks since it hatched
 * @heat_weeks: weeks of life a chick needs a heater for
 *
 * Works out what a bird of that age is to a house.
 */
void
hc_body_init (HcBody *body, const HcKind *kind, gboolean female, int age_weeks, int heat_weeks)
{
  HcSex sex = female ? HC_SEX_FEMALE : HC_SEX_MALE;
  gboolean grown = age_weeks + 1 >= kind->grown_week;
  int week = age_weeks < HC_WEEK_GROWN ? age_weeks + 1 : HC_WEEK_GROWN;

  *body = (HcBody){
    .kind = kind,
    .female = female,
    .age_weeks = grown ? HC_WEEK_GROWN : age_weeks,
    .mass_kg = hc_kind_get_mass_kg (kind, sex, grown ? HC_WEEK_GROWN : age_weeks),
    .at_lay = female && kind->at_lay_week > 0 && week >= kind->at_lay_week,
    .under_heat = week <= heat_weeks,
    .roosts = kind->perching == HC_PERCHING_ALWAYS && week >= kind->roost_from_week,
  };
}

gboolean
hc_body_equal (const HcBody *a, const HcBody *b)
{
  return a->kind == b->kind && a->female == b->female && a->age_weeks == b->age_weeks
         && a->at_lay == b->at_lay && a->under_heat == b->under_heat && a->roosts == b->roosts;
}

/**
 * hc_body_get_week:
 * @body: a body
 *
 * Figures are stated by the week of life, the first being week 1.
 *
 * Returns: the week of life it is in, %HC_WEEK_GROWN for a grown bird
 */
int
hc_body_get_week (const HcBody *body)
{
  return body->age_weeks < HC_WEEK_GROWN ? body->age_weeks + 1 : HC_WEEK_GROWN;
}

/* A young bird is taken for a small copy of a grown one: its lengths go with
 * the cube root of its mass. */
static double
scaled (const HcBody *body, double grown_mm)
{
  double grown_kg = (body->kind->hen_kg + body->kind->cock_kg) / 2;

  if (body->age_weeks == HC_WEEK_GROWN || !(grown_kg > 0))
    return grown_mm;
  return grown_mm * cbrt (MIN (body->mass_kg / grown_kg, 1));
}

/**
 * hc_body_get_width_mm:
 * @body: a body
 *
 * Returns: its breadth at rest, in mm
 */
double
hc_body_get_width_mm (const HcBody *body)
{
  return scaled (body, body->kind->width_mm);
}

/**
 * hc_body_get_length_mm:
 * @body: a body
 *
 * Returns: its length from beak to tail as it stands, in mm
 */
double
hc_body_get_length_mm (const HcBody *body)
{
  return scaled (body, body->kind->length_mm);
}

/**
 * hc_body_get_back_mm:
 * @body: a body
 *
 * Returns: the height of its back above the ground, in mm
 */
double
hc_body_get_back_mm (const HcBody *body)
{
  return scaled (body, body->kind->back_mm);
}

/**
 * hc_body_get_head_mm:
 * @body: a body
 *
 * Returns: the height of its head above the ground, in mm
 */
double
hc_body_get_head_mm (const HcBody *body)
{
  return scaled (body, body->kind->head_mm);
}
