/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Where a bird can stand on its way up or down. */
#pragma once

#include "supply/room.h"

G_BEGIN_DECLS

/* Private to needs/. */
typedef enum
{
  HC_LEDGE_FLOOR,
  HC_LEDGE_BAR,
  HC_LEDGE_BOARD,
  HC_LEDGE_NEST,
  HC_LEDGE_SILL,
  HC_LEDGE_RAMP_FOOT,
  HC_LEDGE_RAMP_HEAD,
} HcLedgeKind;

/* A side birds come to a ledge from: a line along it, and the way out of it. */
typedef struct
{
  HcPoint from;
  HcPoint along;
  HcPoint out;
  double length_mm;
} HcFront;

#define HC_LEDGE_MOST_FRONTS 4

/* The floor in front of a ledge: how deep it is clear where it is clearest. Of
 * the fronts, the one with most room to the walls is where it should be clear:
 * how deep that is, how deep it is clear, and what ends it. */
typedef struct
{
  double clear_mm;
  guint front;
  double room_mm;
  double clear_before_mm;
  const char *blocker;
} HcLanding;

/* @thing: the fitting's index in its room. A nest box and a sill are entered
 * from one side only. */
typedef struct
{
  HcLedgeKind kind;
  const char *id;
  guint thing;
  double height_mm;
  HcShape *shape;
  HcFront fronts[HC_LEDGE_MOST_FRONTS];
  guint n_fronts;
  HcLanding landing;
} HcLedge;

GArray *hc_ledges_of_room (const HcRoom *room) G_GNUC_WARN_UNUSED_RESULT;
gboolean hc_ledge_is_before (const HcLedge *self, HcPoint from);

G_END_DECLS
