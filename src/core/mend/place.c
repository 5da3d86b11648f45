/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Free places for a thing: with its back along the walls, then on the floor.
 * The real check is the judge of those where it fits. */
#include "config.h"

#include "mend/mending.h"

#include "base/ids.h"
#include "base/ring.h"
#include "base/shape-relate.h"
#include "plan/edit-fitting.h"
#include "supply/stand.h"

#include <math.h>

#define STEP_MM 150.0
#define FLOOR_STEP_MM 350.0
#define OFF_WALL_MM 5.0
#define MOST_PLACES 400

/* Places spread over the pen are tried before those beside them. */
#define SPREAD 5

gboolean
hc_mending_has_room (const HcMending *self, const HcPen *pen, const char *id,
                     const HcFittingValues *values)
{
  HcHouse *house = hc_check_get_house (self->check);
  g_autoptr (HcFitting) thing = hc_fitting_new (id, values);
  g_autoptr (HcShape) footprint = hc_stand_get_footprint (thing);
  g_autoptr (GArray) near = NULL;
  HcRoom *here;
  guint room;

  if (!hc_house_find_room (house, hc_pen_get_id (pen), &room))
    return FALSE;
  here = hc_house_get_room (house, room);
  if (!hc_shape_contains (hc_room_get_outline (here), footprint))
    return FALSE;
  near = hc_room_find_fittings (here, hc_shape_get_bounds (footprint));
  for (guint i = 0; i < near->len; i++)
    {
      guint other = g_array_index (near, guint, i);

      if (!g_str_equal (hc_fitting_get_id (hc_room_get (here)->fittings->pdata[other]), id)
          && hc_shape_intersects (hc_room_get_footprint (here, other), footprint))
        return FALSE;
    }
  return TRUE;
}

static void
keep_if_free (const HcMending *self, const HcPen *pen, const char *id,
              const HcFittingValues *values, GArray *places)
{
  if (places->len < MOST_PLACES && hc_mending_has_room (self, pen, id, values))
    g_array_append_vals (places, values, 1);
}

/* Turned so that its back is to the edge. */
static void
look_along_edge (const HcMending *self, const HcPen *pen, const char *id, HcFittingValues values,
                 const GArray *ring, guint edge, GArray *places)
{
  const HcPoint *corners = (const HcPoint *) ring->data;
  HcPoint in = hc_ring_edge_normal (corners, ring->len, edge);
  HcPoint from = corners[edge];
  HcPoint to = corners[(edge + 1) % ring->len];
  double length_mm = hc_point_distance (from, to);
  HcPoint along = hc_point_unit (hc_point_subtract (to, from));
  HcPoint off = hc_point_scale (in, values.depth_mm / 2 + OFF_WALL_MM);
  double turn_deg = atan2 (-in.x_mm, in.y_mm) * 180 / G_PI;

  values.turn_deg = turn_deg < 0 ? turn_deg + 360 : turn_deg;
  for (double at = values.width_mm / 2 + OFF_WALL_MM;
       at <= length_mm - values.width_mm / 2 - OFF_WALL_MM; at += STEP_MM)
    {
      HcPoint middle
          = hc_point_add (hc_point_add (from, hc_point_scale (along, at)), off);

      values.x_mm = middle.x_mm;
      values.y_mm = middle.y_mm;
      keep_if_free (self, pen, id, &values, places);
    }
}

static void
look_over_floor (const HcMending *self, const HcPen *pen, const char *id, HcFittingValues values,
                 const GArray *ring, GArray *places)
{
  HcBox box = hc_box_around ((const HcPoint *) ring->data, ring->len);
  double step_mm = MAX (FLOOR_STEP_MM, sqrt (box.width_mm * box.depth_mm) / 15);

  for (double y_mm = box.y_mm + step_mm / 2; y_mm < box.y_mm + box.depth_mm; y_mm += step_mm)
    for (double x_mm = box.x_mm + step_mm / 2; x_mm < box.x_mm + box.width_mm; x_mm += step_mm)
      {
        values.x_mm = x_mm;
        values.y_mm = y_mm;
        keep_if_free (self, pen, id, &values, places);
      }
}

static GArray *
find_places (const HcMending *self, const HcPen *pen, const char *id,
             const HcFittingValues *values)
{
  g_autoptr (GArray) ring = hc_layout_get_pen_ring (self->layout, pen);
  GArray *places = g_array_new (FALSE, FALSE, sizeof (HcFittingValues));

  for (guint edge = 0; edge < ring->len; edge++)
    look_along_edge (self, pen, id, *values, ring, edge, places);
  if (ring->len > 2)
    look_over_floor (self, pen, id, *values, ring, places);
  return places;
}

static void
try_place (HcMending *self, const char *id, const HcFittingValues *values, gboolean is_new)
{
  g_autoptr (HcFitting) thing = NULL;

  if (!is_new)
    {
      hc_mending_try (self, hc_plan_set_fitting (self->plan, id, values, NULL), id, 0);
      return;
    }
  thing = hc_fitting_new (id, values);
  hc_mending_try (self, hc_plan_add_fitting (self->plan, thing, NULL), id, 0);
}

/* Tries places until one mends all, or the recipe has tried enough. */
void
hc_mending_try_places (HcMending *self, const HcPen *pen, const char *id,
                       const HcFittingValues *values, gboolean is_new)
{
  g_autoptr (GArray) places = find_places (self, pen, id, values);
  guint stride = MAX (1, places->len / SPREAD);

  for (guint first = 0; first < stride && !hc_mending_is_done (self); first++)
    for (guint i = first; i < places->len && !hc_mending_is_done (self); i += stride)
      try_place (self, id, &g_array_index (places, HcFittingValues, i), is_new);
}

/* One more thing, in the first of its pens that has a place for it. */
void
hc_mending_add_fitting (HcMending *self, const HcFittingValues *values, double amount)
{
  g_autoptr (GPtrArray) pens = hc_mending_list_pens (self);
  g_autofree char *id = hc_id_new ();

  for (guint i = 0; i < pens->len && !hc_mending_is_done (self); i++)
    hc_mending_try_places (self, pens->pdata[i], id, values, TRUE);
  if (self->best != NULL)
    g_array_index (self->best->amounts, double, 0) = amount;
}

/* To another place in its pen. */
static void
move_thing (HcMending *self)
{
  for (char **id = self->finding->ids; *id != NULL && !hc_mending_is_done (self); id++)
    {
      HcPen *pen = NULL;
      HcFitting *thing = hc_layout_get_fitting (self->layout, *id, &pen);

      if (thing != NULL && pen != NULL && !hc_fitting_get (thing)->locked)
        hc_mending_try_places (self, pen, *id, hc_fitting_get (thing), FALSE);
    }
}

static void
turn_thing (HcMending *self)
{
  static const double turns_deg[] = { 90, 180, 270 };
  HcFitting *thing = hc_mending_get_fitting (self, NULL);

  for (guint i = 0; thing != NULL && i < G_N_ELEMENTS (turns_deg); i++)
    {
      HcFittingValues values = *hc_fitting_get (thing);

      values.turn_deg = fmod (values.turn_deg + turns_deg[i], 360);
      if (hc_mending_try_fitting (self, thing, &values, turns_deg[i]))
        return;
    }
}

/* Things that stand in no pen are moved into one. */
static void
move_in (HcMending *self)
{
  HcFitting *thing = hc_mending_get_fitting (self, NULL);
  HcParts *pens = hc_layout_get (self->layout)->pens;

  if (thing == NULL || !g_str_equal (self->finding->code, "clearance.in-no-pen"))
    return;
  for (guint i = 0; i < pens->len && !hc_mending_is_done (self); i++)
    hc_mending_try_places (self, pens->pdata[i], hc_fitting_get_id (thing),
                           hc_fitting_get (thing), FALSE);
}

static void
take_away (HcMending *self)
{
  const char *ids[] = { self->finding->ids[0], NULL };

  if (hc_mending_get_fitting (self, NULL) != NULL)
    hc_mending_try (self, hc_plan_remove_fittings (self->plan, ids, NULL), ids[0], 0);
}

/* Higher or lower by what is lacking. */
static void
hang_otherwise (HcMending *self)
{
  HcFitting *thing = hc_mending_get_fitting (self, NULL);
  double by_mm = self->finding->required - self->finding->measured;
  HcFittingValues values;

  if (thing == NULL || !g_str_equal (self->finding->unit, "mm"))
    return;
  values = *hc_fitting_get (thing);
  values.base_mm = MAX (0, values.base_mm + by_mm);
  hc_mending_try_fitting (self, thing, &values, by_mm);
}

const HcRecipe hc_recipes_of_places[] = {
  { "thing.move", move_thing }, { "thing.turn", turn_thing },       { "thing.move-in", move_in },
  { "thing.hang", hang_otherwise }, { "thing.take-away", take_away }, { NULL },
};
