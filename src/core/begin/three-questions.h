/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A plan from three answers: how large the building is, which birds, how cold it gets. */
#pragma once

#include "base/units.h"
#include "book/book.h"
#include "plan/plan.h"

G_BEGIN_DECLS

/**
 * HcWantedBirds:
 * @breed: id of a breed
 * @count: how many hens, ducks or geese of it
 */
typedef struct
{
  const char *breed;
  int count;
} HcWantedBirds;

/**
 * HcAnswers: (skip)
 * @width_mm: width of the building inside
 * @length_mm: length of the building inside
 * @birds: (array length=n_birds): which birds
 * @n_birds: how many breeds
 * @coldest_night_c: the coldest night to plan for
 * @birds_go_out: whether birds go out on ordinary days
 * @units: what the keeper measures in
 */
typedef struct
{
  double width_mm;
  double length_mm;
  const HcWantedBirds *birds;
  guint n_birds;
  double coldest_night_c;
  gboolean birds_go_out;
  HcUnits units;
} HcAnswers;

HcPlan *hc_plan_from_answers (HcBook *book, const HcAnswers *answers, const char *uid,
                              GError **error) G_GNUC_WARN_UNUSED_RESULT;

G_END_DECLS
