/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Plans nobody would build, and that a plan file may hold all the same. */
#pragma once

#include "house.h"

#define ABSURD_WEEKS_OF_30_YEARS 1565

/* A plan by name, made the same every time. */
typedef struct
{
  const char *name;
  void (*build) (House *house);
} AbsurdPlan;

extern const AbsurdPlan absurd_plans[];
extern const guint n_absurd_plans;

/* A heap: things of every kind, each over all the others. */
void absurd_build_heap (House *house, guint n_things);
void absurd_build_bars (House *house, guint n_bars);
void absurd_build_openings (House *house, guint n_openings);

/* Anything that members allow, from a seed. */
void absurd_build_anything (House *house, guint32 seed);
