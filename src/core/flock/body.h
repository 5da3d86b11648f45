/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What one bird is to a house. */
#pragma once

#include <glib-object.h>

#include "book/kind.h"

G_BEGIN_DECLS

/**
 * HcBody:
 * @kind: (transfer none): the kind of bird, held by the book
 * @female: whether it is a hen, a duck or a goose
 * @age_weeks: whole weeks since it hatched, %HC_WEEK_GROWN for a grown bird
 * @mass_kg: its mass at that age
 * @at_lay: a female old enough to lay
 * @under_heat: a chick that still needs a heater where it lives
 * @roosts: old enough to sleep on a bar, of a kind that does
 *
 * Birds that are the same to a house are one body: about a dozen in a plan.
 * A bit mask over bodies (at most %HC_MOST_BODIES) says whom a place suits.
 */
typedef struct
{
  const HcKind *kind;
  gboolean female;
  int age_weeks;
  double mass_kg;
  gboolean at_lay;
  gboolean under_heat;
  gboolean roosts;
} HcBody;

#define HC_MOST_BODIES 64
typedef guint64 HcBodies;

void hc_body_init (HcBody *body, const HcKind *kind, gboolean female, int age_weeks,
                   int heat_weeks);
gboolean hc_body_equal (const HcBody *a, const HcBody *b);
int hc_body_get_week (const HcBody *body);
double hc_body_get_width_mm (const HcBody *body);
double hc_body_get_length_mm (const HcBody *body);
double hc_body_get_back_mm (const HcBody *body);
double hc_body_get_head_mm (const HcBody *body);

G_END_DECLS
