/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * From what a bird is to a house to what it looks like. */
#include "config.h"

#include "bird-look.h"

#include <math.h>

/* Down gives way to feathers over the first weeks; half way through, a chick
 * looks like a small hen. */
static gboolean
is_in_down (const HcBody *body)
{
  return body->age_weeks * 2 < body->kind->feathered_week;
}

static HcBirdForm
form_of (const HcBody *body)
{
  if (is_in_down (body))
    return HC_BIRD_CHICK;
  if (body->kind->species == HC_SPECIES_DUCK)
    return HC_BIRD_DUCK;
  if (body->kind->species == HC_SPECIES_GOOSE)
    return HC_BIRD_GOOSE;
  return body->female ? HC_BIRD_HEN : HC_BIRD_COCK;
}

/* Birds grow in three directions, mass with all of them. */
static double
grown_part (const HcBody *body)
{
  double grown_kg = body->kind->hen_kg;

  if (body->mass_kg <= 0 || grown_kg <= 0)
    return 1;
  return CLAMP (cbrt (body->mass_kg / grown_kg), 0.15, 1.3);
}

static double
comb_of (const HcBody *body)
{
  static const double sizes[] = { 0, 0.4, 0.7, 1 };

  return sizes[body->kind->comb] * (body->female ? 0.65 : 1);
}

/**
 * hc_bird_look:
 * @body: a body
 * @coat: which colour of feathers; see hc_palette_get_plumage()
 *
 * A bird's size is its kind's, scaled by the cube root of its mass.
 *
 * Returns: what it looks like, true to scale
 */
HcBirdLook
hc_bird_look (const HcBody *body, guint coat)
{
  double part = grown_part (body);

  return (HcBirdLook){
    .form = form_of (body),
    .length_mm = body->kind->length_mm * part,
    .width_mm = body->kind->width_mm * part,
    .comb = comb_of (body),
    .coat = coat,
  };
}
