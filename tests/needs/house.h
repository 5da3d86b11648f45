/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Houses to put to the needs: one pen, or two with a run. */
#pragma once

#include "needs/check.h"
#include "needs/ladder.h"

/* The day the plans of tests are of. */
#define HOUSE_TODAY 739000

/* What a test builds a plan from. Pens stand side by side along x. */
typedef struct
{
  HcBook *book;
  HcSiteValues site;
  HcRulesValues rules;
  HcParts *corners, *walls, *openings, *pens, *loose, *batches;
  GPtrArray *fittings;
  double next_x_mm;
} House;

void house_init (House *house);
void house_clear (House *house);
void house_add_pen (House *house, const char *id, HcPenKind kind, double width_mm,
                    double depth_mm);
HcFittingValues *house_add (House *house, const char *pen, HcFittingKind kind, double x_mm,
                            double y_mm, double width_mm, double depth_mm);
HcFittingValues *house_add_roost (House *house, const char *pen, double x_mm, double y_mm,
                                  double length_mm, double depth_mm, int bars);
HcFittingValues *house_add_nests (House *house, const char *pen, double x_mm, double y_mm,
                                  int columns);
void house_add_opening (House *house, HcOpeningKind kind, const char *wall, double along_mm,
                        double width_mm, double height_mm);
void house_add_birds (House *house, const char *kind, const char *pen, int females, int males,
                      int weeks);
HcPlan *house_make_plan (const House *house) G_GNUC_WARN_UNUSED_RESULT;
HcCheck *house_check (const House *house, HcCondition condition) G_GNUC_WARN_UNUSED_RESULT;
HcLadder *house_climb (const House *house, HcLadderQuestion question, const char *kind,
                       HcCondition condition, HcLevel aim) G_GNUC_WARN_UNUSED_RESULT;
const HcFinding *house_find (const HcCheck *check, const char *code);
gint64 house_rung (const HcLadder *ladder, HcNeedId need);
