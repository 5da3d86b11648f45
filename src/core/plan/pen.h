/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A pen or a run: a ring of walls with what stands in it. */
#pragma once

#include "base/part.h"

G_BEGIN_DECLS

/**
 * HcPenKind:
 * @HC_PEN_INDOOR: under the roof of a building
 * @HC_PEN_RUN: outside
 */
typedef enum
{
  HC_PEN_INDOOR,
  HC_PEN_RUN,
} HcPenKind;

/**
 * HcPenRoof:
 * @HC_ROOF_SOLID: keeps rain, snow and birds of prey out
 * @HC_ROOF_NET: netting: stops birds of prey, sags under snow
 * @HC_ROOF_MESH: stiff mesh
 * @HC_ROOF_NONE: open sky
 */
typedef enum
{
  HC_ROOF_SOLID,
  HC_ROOF_NET,
  HC_ROOF_MESH,
  HC_ROOF_NONE,
} HcPenRoof;

/**
 * HcRoofShape:
 * @HC_ROOF_FLAT: as high everywhere
 * @HC_ROOF_LEAN_TO: rises from the eaves to one high wall
 * @HC_ROOF_GABLE: rises from the eaves on both sides to a ridge
 */
typedef enum
{
  HC_ROOF_FLAT,
  HC_ROOF_LEAN_TO,
  HC_ROOF_GABLE,
} HcRoofShape;

/**
 * HcRoofColour:
 * @HC_ROOF_COLOUR_LIGHT: white or bright metal
 * @HC_ROOF_COLOUR_MIDDLE: grey, weathered boards
 * @HC_ROOF_COLOUR_DARK: black felt, dark slates
 *
 * How much of the sun a roof takes up.
 */
typedef enum
{
  HC_ROOF_COLOUR_LIGHT,
  HC_ROOF_COLOUR_MIDDLE,
  HC_ROOF_COLOUR_DARK,
} HcRoofColour;

/**
 * HcPenValues:
 * @name: what the keeper calls it
 * @building: id of the building it is part of
 * @kind: a #HcPenKind
 * @walls: ids of its walls in ring order
 * @height_mm: its height; under a sloping roof at the eaves
 * @ridge_mm: height of the roof's highest line, 0 when flat
 * @roof_shape: a #HcRoofShape; one whose ridge is no higher than its eaves is flat
 * @roof_turn_deg: the way it is looked at, clockwise on screen from the plan's
 *   x: up a lean-to, across the ridge of a gable
 * @ridge_at: where a gable's ridge is on that way, 0 to 1
 * @overhang_mm: how far the roof reaches past the walls
 * @floor_layers: ids of what the floor is made of, lowest first
 * @bedding: id of the bedding, empty for none
 * @bedding_mm: its depth
 * @roof: a #HcPenRoof
 * @roof_construction: id of what the roof is built of
 * @roof_mesh: id of the netting or mesh over it
 * @roof_colour: a #HcRoofColour
 * @droppings_cleared: whether droppings are taken out every day
 * @apron_mm: width of the dig guard laid flat round it
 * @dug_mm: depth of the dig guard dug in round it
 * @fittings: (element-type HcFitting): what stands in it
 */
typedef struct
{
  char *name;
  char *building;
  int kind;
  char **walls;
  double height_mm;
  double ridge_mm;
  int roof_shape;
  double roof_turn_deg;
  double ridge_at;
  double overhang_mm;
  char **floor_layers;
  char *bedding;
  double bedding_mm;
  int roof;
  char *roof_construction;
  char *roof_mesh;
  int roof_colour;
  gboolean droppings_cleared;
  double apron_mm;
  double dug_mm;
  HcParts *fittings;
} HcPenValues;

HC_DECLARE_PART (HcPen, hc_pen)

G_END_DECLS
