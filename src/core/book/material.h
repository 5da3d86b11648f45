/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What floors, walls, bedding, mesh and latches are like. */
#pragma once

#include "book/source.h"

#include <glib.h>

G_BEGIN_DECLS

/**
 * HcFloorLayer:
 * @id: its id, interned
 * @name: English name; see hc_material_get_name()
 * @hard: whether birds land hard on it
 * @dug_through: whether a fox or a badger digs through it
 * @gnawed_through: whether a rat gnaws or digs through it
 * @raised: whether it stands clear of the ground
 * @holes_mm: the largest gap in it, 0 for none
 * @thickness_mm: its usual thickness
 * @conductivity_w_mk: heat it conducts, W/(m·K)
 * @evidence: what stands behind these facts
 * @source: (nullable): what was published about them
 *
 * A layer of the floor.
 */
typedef struct
{
  const char *id;
  const char *name;
  gboolean hard;
  gboolean dug_through;
  gboolean gnawed_through;
  gboolean raised;
  double holes_mm;
  double thickness_mm;
  double conductivity_w_mk;
  HcEvidence evidence;
  const HcSource *source;
} HcFloorLayer;

/**
 * HcBedding:
 * @id: its id, interned
 * @name: English name; see hc_material_get_name()
 * @for_nests: whether nests can be lined with it
 * @for_chicks: whether day-olds can stand on it
 * @loose_kg_m3: its density when spread
 * @bale_kg_m3: its density as bought
 * @bale_litres: what an ordinary bale or bag measures as bought
 * @depth_mm: the depth usually spread
 * @conductivity_w_mk: heat it conducts, W/(m·K)
 * @evidence: what stands behind these facts
 * @source: (nullable): what was published about them
 */
typedef struct
{
  const char *id;
  const char *name;
  gboolean for_nests;
  gboolean for_chicks;
  double loose_kg_m3;
  double bale_kg_m3;
  double bale_litres;
  double depth_mm;
  double conductivity_w_mk;
  HcEvidence evidence;
  const HcSource *source;
} HcBedding;

/**
 * HcMesh:
 * @id: its id, interned
 * @name: English name; see hc_material_get_name()
 * @hole_mm: the widest thing that passes
 * @wire_mm: thickness of the wire
 * @stops_diggers: whether it holds against digging and biting
 * @stops_gnawers: whether it holds against gnawing
 * @sags_under_snow: whether snow brings it down overhead
 * @free_area: open part of its face, 0 to 1
 * @clogged: what dust and frost leave of that in use, 0 to 1
 * @evidence: what stands behind these facts
 * @source: (nullable): what was published about them
 */
typedef struct
{
  const char *id;
  const char *name;
  double hole_mm;
  double wire_mm;
  gboolean stops_diggers;
  gboolean stops_gnawers;
  gboolean sags_under_snow;
  double free_area;
  double clogged;
  HcEvidence evidence;
  const HcSource *source;
} HcMesh;

/**
 * HcLatch:
 * @id: its id, interned
 * @name: English name; see hc_material_get_name()
 * @opened_by: (array zero-terminated=1): ids of the animals that open it, interned
 * @evidence: what stands behind these facts
 * @source: (nullable): what was published about them
 *
 * What holds a door shut.
 */
typedef struct
{
  const char *id;
  const char *name;
  const char *const *opened_by;
  HcEvidence evidence;
  const HcSource *source;
} HcLatch;

/**
 * HcConstruction:
 * @id: its id, interned
 * @name: English name; see hc_material_get_name()
 * @roof: whether it is a roof, else a wall
 * @u_w_m2k: heat it loses, W/(m²·K)
 * @thickness_mm: its usual thickness
 * @leak_cm2_m2: cracks that leak air, cm² for each m² of it
 * @gnawed_through: whether rats gnaw through it
 * @bears_snow: whether it bears snow
 * @glass: whether it lets in daylight
 * @evidence: what stands behind these facts
 * @source: (nullable): what was published about them
 */
typedef struct
{
  const char *id;
  const char *name;
  gboolean roof;
  double u_w_m2k;
  double thickness_mm;
  double leak_cm2_m2;
  gboolean gnawed_through;
  gboolean bears_snow;
  gboolean glass;
  HcEvidence evidence;
  const HcSource *source;
} HcConstruction;

const char *hc_material_get_name (const char *name);

G_END_DECLS
