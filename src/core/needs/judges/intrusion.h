/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * One animal on its way to the birds, by night or by day. */
#pragma once

#include "needs/answer.h"
#include "needs/context.h"
#include "supply/ways-in.h"

G_BEGIN_DECLS

/* Private to needs/judges. @reached says of each room whether it gets there;
 * @found are the findings so far, by what and where. */
typedef struct
{
  const HcNeedContext *context;
  HcIntruder intruder;
  GArray *ways;
  gboolean *reached;
  GHashTable *found;
} HcIntrusion;

/* Private to needs/judges. Birds of one space and the rooms they are in, one
 * flag a room of the house. */
typedef struct
{
  HcNeedContext here;
  gboolean *rooms;
} HcPrey;

void hc_intrusion_begin (HcIntrusion *self, const HcNeedContext *context,
                         const HcPredator *animal, gboolean by_night, GHashTable *found);
void hc_intrusion_end (HcIntrusion *self);
gboolean hc_intrusion_comes_from (const HcIntrusion *self, const HcPrey *prey, guint beyond);
void hc_intrusion_tell (HcIntrusion *self, const HcPrey *prey);
void hc_intrusion_reach_in (HcIntrusion *self, const HcPrey *prey);
HcFinding *hc_intrusion_find (HcIntrusion *self, const HcPrey *prey, const char *code,
                              const char *part);
double hc_intrusion_get_figure (const HcNeedContext *context, const char *figure, HcLevel level,
                                double otherwise_mm);

G_END_DECLS
