/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The demo plan with eggs to hatch in it, and what is needed to look at it. */
#pragma once

#include "season/year.h"

/* 2026-03-01, a Sunday */
#define DEMO_FROM 739676

typedef struct
{
  HcBook *book;
  HcPlan *plan;
  HcCheckCache *cache;
  HcTallier *tallier;
} Demo;

void demo_set_up (Demo *demo, gconstpointer data);
void demo_tear_down (Demo *demo, gconstpointer data);
HcPlan *demo_with_clutch (HcPlan *plan, const char *kind, const char *pen, int eggs,
                          guint32 set_on);
const char *demo_some_kind (void);
const char *demo_some_pen (void);
