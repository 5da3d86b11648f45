/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Pens as a table of their members. */
#include "config.h"

#include "plan/pen.h"

#include "plan/bounds.h"
#include "plan/fitting.h"

static const char *const kinds[] = { "indoor", "run", NULL };
static const char *const roofs[] = { "solid", "net", "mesh", "none", NULL };

static const char *const roof_shapes[] = { "flat", "lean_to", "gable", NULL };

/* Up the page: a lean-to is high at the back, a ridge runs along the plan's x. */
#define USUAL_ROOF_TURN_DEG 270

static const char *const roof_colours[] = { "light", "middle", "dark", NULL };

static const HcMember members[] = {
  HC_TEXT (HcPenValues, name, "name"),
  HC_TEXT (HcPenValues, building, "building"),
  HC_WORD_REQUIRED (HcPenValues, kind, "kind", kinds),
  HC_IDS (HcPenValues, walls, "walls"),
  HC_LENGTH (HcPenValues, height_mm, "height_mm", 100, HC_TALLEST_MM, 2200),
  HC_LENGTH (HcPenValues, ridge_mm, "ridge_mm", 0, HC_TALLEST_MM, 0),
  HC_WORD (HcPenValues, roof_shape, "roof_shape", roof_shapes, HC_ROOF_GABLE),
  HC_NUMBER (HcPenValues, roof_turn_deg, "roof_turn_deg", 0, 360, USUAL_ROOF_TURN_DEG),
  HC_NUMBER (HcPenValues, ridge_at, "ridge_at", 0, 1, 0.5),
  HC_LENGTH (HcPenValues, overhang_mm, "overhang_mm", 0, 2000, 0),
  HC_IDS (HcPenValues, floor_layers, "floor_layers"),
  HC_TEXT (HcPenValues, bedding, "bedding"),
  HC_LENGTH (HcPenValues, bedding_mm, "bedding_mm", 0, 2000, 0),
  HC_WORD (HcPenValues, roof, "roof", roofs, HC_ROOF_SOLID),
  HC_TEXT (HcPenValues, roof_construction, "roof_construction"),
  HC_TEXT (HcPenValues, roof_mesh, "roof_mesh"),
  HC_WORD (HcPenValues, roof_colour, "roof_colour", roof_colours, HC_ROOF_COLOUR_MIDDLE),
  HC_FLAG (HcPenValues, droppings_cleared, "droppings_cleared", FALSE),
  HC_LENGTH (HcPenValues, apron_mm, "apron_mm", 0, 5000, 0),
  HC_LENGTH (HcPenValues, dug_mm, "dug_mm", 0, 5000, 0),
  HC_PARTS (HcPenValues, fittings, "fittings", &hc_fitting_class),
};

HC_DEFINE_PART (HcPen, hc_pen, TRUE, members)
