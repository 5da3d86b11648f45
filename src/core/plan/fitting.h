/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Things that stand or hang in a pen. */
#pragma once

#include "base/part.h"

G_BEGIN_DECLS

/**
 * HcFittingKind:
 * @HC_FITTING_ROOST: bars to sleep on
 * @HC_FITTING_DROPPINGS_BOARD: a board under the bars
 * @HC_FITTING_NEST_BOXES: boxes to lay in
 * @HC_FITTING_FEEDER: a trough or a round feeder
 * @HC_FITTING_DRINKER: water, from an edge, nipples or cups
 * @HC_FITTING_FLOOR_HEAT_PAD: a warm pad chicks lie on
 * @HC_FITTING_HEAT_PLATE: a raised plate chicks creep under
 * @HC_FITTING_HEAT_LAMP: a lamp hung over chicks
 * @HC_FITTING_HOPPER: grit and shell
 * @HC_FITTING_DUST_BATH: a dry box to bathe in
 * @HC_FITTING_RAMP: a way up and down
 * @HC_FITTING_PLATFORM: a raised floor
 * @HC_FITTING_STORE_BIN: a bin for feed
 * @HC_FITTING_POST: a post of the building
 * @HC_N_FITTING_KINDS: how many kinds there are
 */
typedef enum
{
  HC_FITTING_ROOST,
  HC_FITTING_DROPPINGS_BOARD,
  HC_FITTING_NEST_BOXES,
  HC_FITTING_FEEDER,
  HC_FITTING_DRINKER,
  HC_FITTING_FLOOR_HEAT_PAD,
  HC_FITTING_HEAT_PLATE,
  HC_FITTING_HEAT_LAMP,
  HC_FITTING_HOPPER,
  HC_FITTING_DUST_BATH,
  HC_FITTING_RAMP,
  HC_FITTING_PLATFORM,
  HC_FITTING_STORE_BIN,
  HC_FITTING_POST,
  HC_N_FITTING_KINDS
} HcFittingKind;

/**
 * HcFittingForm:
 * @HC_FORM_LONG: a trough, or anything square-edged
 * @HC_FORM_ROUND: round, its width being its diameter
 * @HC_FORM_NIPPLES: a line of nipples
 * @HC_FORM_CUPS: a line of cups
 * @HC_FORM_GROUP: nest boxes without walls between: a group nest
 * @HC_FORM_GRID: a ramp of grid
 * @HC_FORM_RUNGS: a ramp with rungs
 */
typedef enum
{
  HC_FORM_LONG,
  HC_FORM_ROUND,
  HC_FORM_NIPPLES,
  HC_FORM_CUPS,
  HC_FORM_GROUP,
  HC_FORM_GRID,
  HC_FORM_RUNGS,
} HcFittingForm;

/**
 * HcFittingValues:
 * @kind: a #HcFittingKind
 * @form: a #HcFittingForm
 * @device: id of the bought device it is, which keeps the maker's size
 * @name: what the keeper calls it
 * @x_mm: middle, in the plan
 * @y_mm: middle, in the plan
 * @turn_deg: turned clockwise on screen (y runs down), 0 to 360
 * @width_mm: size along its own x: the length of a bar or a trough
 * @depth_mm: size along its own y: across the bars, out from the wall
 * @height_mm: its own height
 * @base_mm: its underside above the floor; for a roost the top of its lowest
 *   bar, for nest boxes the floor of the lowest row
 * @bars: bars of a roost; they share @depth_mm evenly, the first at its back
 *   (own -y)
 * @bar_width_mm: width of each bar's top
 * @rise_mm: how much higher each bar is than the one in front of it; the back
 *   bar is highest
 * @columns: nest boxes side by side
 * @rows: rows of nest boxes, one above another
 * @places: nipples or cups
 * @water_mm: depth of water a head can dip into
 * @watts: what it draws
 * @lined: nest boxes with bedding, a ramp with grip
 * @heated: a drinker kept from freezing
 * @out_at_night: a drinker taken outside at dusk
 * @locked: kept from moving
 */
typedef struct
{
  int kind;
  int form;
  char *device;
  char *name;
  double x_mm, y_mm, turn_deg;
  double width_mm, depth_mm, height_mm, base_mm;
  int bars;
  double bar_width_mm, rise_mm;
  int columns, rows;
  int places;
  double water_mm;
  double watts;
  gboolean lined, heated, out_at_night, locked;
} HcFittingValues;

HC_DECLARE_PART (HcFitting, hc_fitting)

const char *hc_fitting_kind_get_word (HcFittingKind kind);
gboolean hc_fitting_kind_from_word (const char *word, HcFittingKind *kind);
const char *hc_fitting_form_get_word (HcFittingForm form);
gboolean hc_fitting_form_from_word (const char *word, HcFittingForm *form);
gboolean hc_fitting_is_heater (const HcFitting *fitting);

G_END_DECLS
