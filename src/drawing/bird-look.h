/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What a bird looks like from above. */
#pragma once

#include "flock/body.h"

G_BEGIN_DECLS

/**
 * HcBirdForm:
 * @HC_BIRD_HEN: a hen or a pullet
 * @HC_BIRD_COCK: a cock: a larger comb, a collar, a sickle tail
 * @HC_BIRD_DUCK: a duck or a drake
 * @HC_BIRD_GOOSE: a goose or a gander
 * @HC_BIRD_CHICK: any bird in its down
 */
typedef enum
{
  HC_BIRD_HEN,
  HC_BIRD_COCK,
  HC_BIRD_DUCK,
  HC_BIRD_GOOSE,
  HC_BIRD_CHICK,
  HC_N_BIRD_FORMS
} HcBirdForm;

/**
 * HcBirdLook:
 * @form: its form
 * @length_mm: beak to tail
 * @width_mm: across the folded wings
 * @comb: size of the comb, 0 for none, 1 for a large one
 * @coat: which colour of feathers
 */
typedef struct
{
  HcBirdForm form;
  double length_mm;
  double width_mm;
  double comb;
  guint coat;
} HcBirdLook;

HcBirdLook hc_bird_look (const HcBody *body, guint coat);

G_END_DECLS
