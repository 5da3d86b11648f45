/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * All the ways up and down in one room, whoever takes them. */
#pragma once

#include "book/standard.h"
#include "needs/climb/ledge.h"

G_BEGIN_DECLS

/* Private to needs/. */
typedef enum
{
  HC_HOP_FLOOR,
  HC_HOP_ACROSS,
  HC_HOP_RAMP,
} HcHopKind;

/* From a ledge to one that is no lower, and back. A ramp has a slope, and a
 * width birds walk on. */
typedef struct
{
  HcHopKind kind;
  guint low;
  guint high;
  double rise_mm;
  double gap_mm;
  double slope_deg;
  double across_mm;
} HcHop;

/* The first ledge is the floor. */
typedef struct
{
  GArray *ledges;
  GArray *hops;
} HcClimb;

HcClimb *hc_climb_new (const HcRoom *room, const HcStandard *standard) G_GNUC_WARN_UNUSED_RESULT;
void hc_climb_free (HcClimb *self);
const HcLedge *hc_climb_get_ledge (const HcClimb *self, guint ledge);
const HcHop *hc_climb_get_hop (const HcClimb *self, guint hop);

G_DEFINE_AUTOPTR_CLEANUP_FUNC (HcClimb, hc_climb_free)

G_END_DECLS
