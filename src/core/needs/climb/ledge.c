/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The floor, the bars, boards, nest boxes, sills and ramps of a room. */
#include "config.h"

#include "needs/climb/ledge.h"

#include "supply/doorway.h"
#include "supply/stand.h"

/* How thick a line is that birds step over. */
#define LINE_MM 1.0

static void
clear_ledge (gpointer ledge)
{
  g_clear_pointer (&((HcLedge *) ledge)->shape, hc_shape_unref);
}

static void
add_front (HcLedge *ledge, HcPoint middle, HcPoint out, double length_mm)
{
  HcPoint along = hc_point (-out.y_mm, out.x_mm);
  HcPoint from = hc_point_subtract (middle, hc_point_scale (along, length_mm / 2));

  ledge->fronts[ledge->n_fronts++] = (HcFront){ from, along, out, length_mm };
}

/* A front towards @own_out, on the edge of what @fitting covers. */
static void
add_front_of (HcLedge *ledge, const HcFitting *fitting, HcPoint own_out)
{
  const HcFittingValues *values = hc_fitting_get (fitting);
  HcPoint own_middle
      = hc_point (own_out.x_mm * values->width_mm / 2, own_out.y_mm * values->depth_mm / 2);

  add_front (ledge, hc_stand_to_plan (fitting, own_middle),
             hc_point_turn (own_out, values->turn_deg),
             own_out.x_mm == 0 ? values->width_mm : values->depth_mm);
}

static void
add_bars (GArray *ledges, const HcFitting *roost, guint thing)
{
  const HcFittingValues *values = hc_fitting_get (roost);

  for (int i = 0; i < values->bars; i++)
    {
      HcLedge ledge = { HC_LEDGE_BAR, hc_fitting_get_id (roost), thing };
      HcPoint middle, along, aside;
      HcBar bar;

      hc_stand_get_bar (roost, (guint) i, &bar);
      middle = hc_point_between (bar.from, bar.to, 0.5);
      along = hc_point_unit (hc_point_subtract (bar.to, bar.from));
      aside = hc_point (-along.y_mm, along.x_mm);
      ledge.height_mm = bar.height_mm;
      ledge.shape = hc_shape_new_rectangle (middle, values->width_mm, MAX (bar.width_mm, LINE_MM),
                                            values->turn_deg);
      for (int side = -1; side <= 1; side += 2)
        add_front (&ledge, hc_point_add (middle, hc_point_scale (aside, side * bar.width_mm / 2)),
                   hc_point_scale (aside, side), values->width_mm);
      g_array_append_val (ledges, ledge);
    }
}

static void
add_board (GArray *ledges, const HcRoom *room, const HcFitting *board, guint thing)
{
  HcLedge ledge = { HC_LEDGE_BOARD, hc_fitting_get_id (board), thing };
  double bottom_mm;

  hc_stand_get_heights (board, &bottom_mm, &ledge.height_mm);
  ledge.shape = hc_shape_ref (hc_room_get_footprint (room, thing));
  for (int side = -1; side <= 1; side += 2)
    {
      add_front_of (&ledge, board, hc_point (side, 0));
      add_front_of (&ledge, board, hc_point (0, side));
    }
  g_array_append_val (ledges, ledge);
}

static void
add_nests (GArray *ledges, const HcFitting *nests, guint thing)
{
  const HcFittingValues *values = hc_fitting_get (nests);

  for (int row = 0; row < values->rows; row++)
    {
      HcLedge ledge = { HC_LEDGE_NEST, hc_fitting_get_id (nests), thing };

      ledge.height_mm = hc_stand_get_nest_floor_mm (nests, (guint) row);
      ledge.shape = hc_shape_new_rectangle (
          hc_stand_to_plan (nests, hc_point (0, values->depth_mm / 2)), values->width_mm, LINE_MM,
          values->turn_deg);
      add_front_of (&ledge, nests, hc_point (0, 1));
      g_array_append_val (ledges, ledge);
    }
}

static void
add_ramp_end (GArray *ledges, HcLedge *ledge, const HcFitting *fitting, HcPoint middle,
              const HcRamp *ramp)
{
  ledge->shape = hc_shape_new_rectangle (middle, ramp->across_mm, LINE_MM,
                                         hc_fitting_get (fitting)->turn_deg + ramp->turn_deg);
  g_array_append_vals (ledges, ledge, 1);
}

/* The foot stands next to its head. */
static void
add_ramp (GArray *ledges, const HcFitting *fitting, guint thing)
{
  HcLedge foot = { HC_LEDGE_RAMP_FOOT, hc_fitting_get_id (fitting), thing };
  HcLedge head = { HC_LEDGE_RAMP_HEAD, hc_fitting_get_id (fitting), thing };
  HcRamp ramp;

  hc_stand_get_ramp (fitting, &ramp);
  hc_stand_get_heights (fitting, &foot.height_mm, &head.height_mm);
  add_front (&foot, ramp.foot, hc_point_unit (hc_point_subtract (ramp.foot, ramp.head)),
             ramp.across_mm);
  add_ramp_end (ledges, &foot, fitting, ramp.foot, &ramp);
  add_ramp_end (ledges, &head, fitting, ramp.head, &ramp);
}

static void
add_sill (GArray *ledges, const HcRoom *room, const HcOpening *opening)
{
  HcLedge ledge = { HC_LEDGE_SILL, hc_opening_get_id (opening), G_MAXUINT };
  HcDoorway doorway;

  if (!hc_opening_lets_birds_through (opening) || !hc_doorway_find (room, opening, &doorway))
    return;
  ledge.height_mm = hc_opening_get (opening)->sill_mm;
  ledge.shape = hc_doorway_get_strip (&doorway, 0, LINE_MM, 0);
  ledge.fronts[ledge.n_fronts++]
      = (HcFront){ doorway.first, doorway.along, doorway.in, doorway.width_mm };
  g_array_append_val (ledges, ledge);
}

static void
add_fitting (GArray *ledges, const HcRoom *room, guint thing)
{
  const HcFitting *fitting = hc_room_get (room)->fittings->pdata[thing];

  switch (hc_fitting_get (fitting)->kind)
    {
    case HC_FITTING_ROOST:
      add_bars (ledges, fitting, thing);
      break;
    case HC_FITTING_DROPPINGS_BOARD:
    case HC_FITTING_PLATFORM:
      add_board (ledges, room, fitting, thing);
      break;
    case HC_FITTING_NEST_BOXES:
      add_nests (ledges, fitting, thing);
      break;
    case HC_FITTING_RAMP:
      add_ramp (ledges, fitting, thing);
      break;
    default:
      break;
    }
}

/* The floor comes first; where it is clear is not looked at yet. */
GArray *
hc_ledges_of_room (const HcRoom *room)
{
  GArray *ledges = g_array_new (FALSE, FALSE, sizeof (HcLedge));
  HcParts *openings = hc_room_get_openings (room);
  HcLedge floor = { .kind = HC_LEDGE_FLOOR, .thing = G_MAXUINT };

  g_array_set_clear_func (ledges, clear_ledge);
  g_array_append_val (ledges, floor);
  for (guint i = 0; i < hc_room_get (room)->fittings->len; i++)
    add_fitting (ledges, room, i);
  for (guint i = 0; i < openings->len; i++)
    add_sill (ledges, room, openings->pdata[i]);
  return ledges;
}

/* Whether a bird at @from can get to it: nobody enters a nest from behind. */
gboolean
hc_ledge_is_before (const HcLedge *self, HcPoint from)
{
  const HcFront *front = &self->fronts[0];

  if (self->kind != HC_LEDGE_NEST && self->kind != HC_LEDGE_SILL)
    return TRUE;
  return hc_point_dot (hc_point_subtract (from, front->from), front->out) >= -LINE_MM;
}
