/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Holes in walls made wider, higher, opened further, and more of them. */
#include "config.h"

#include "mend/mending.h"

#include "base/ids.h"
#include "book/make-opening.h"
#include "plan/edit-opening.h"
#include "plan/wall-places.h"

static gboolean
try_opening (HcMending *self, const HcOpening *opening, const HcOpeningValues *values)
{
  const char *id = hc_opening_get_id (opening);

  return hc_mending_try (self, hc_plan_set_opening (self->plan, id, values, NULL), id, 0);
}

/* Grows from its middle, or to either side where something is beside it. */
static void
try_width (HcMending *self, const HcOpening *opening, double width_mm)
{
  static const double sides[] = { 0, 0.5, -0.5 };

  for (guint i = 0; i < G_N_ELEMENTS (sides); i++)
    {
      HcOpeningValues values = *hc_opening_get (opening);

      values.along_mm += sides[i] * (width_mm - values.width_mm);
      values.width_mm = width_mm;
      if (try_opening (self, opening, &values))
        return;
    }
}

static void
widen_each (HcMending *self, HcOpeningKind kind)
{
  static const double factors[] = { 1.25, 1.5, 2 };
  g_autoptr (GPtrArray) openings = hc_mending_list_openings (self, kind);

  for (guint factor = 0; factor < G_N_ELEMENTS (factors); factor++)
    for (guint i = 0; i < openings->len && !hc_mending_is_done (self); i++)
      try_width (self, openings->pdata[i],
                 factors[factor] * hc_opening_get (openings->pdata[i])->width_mm);
}

static void
widen_pop_hole (HcMending *self)
{
  g_autoptr (GPtrArray) holes = hc_mending_list_openings (self, HC_OPENING_POP_HOLE);

  for (guint i = 0; i < holes->len && !hc_mending_is_done (self); i++)
    {
      HcOpeningValues values = *hc_opening_get (holes->pdata[i]);

      values.width_mm = MAX (values.width_mm, 450);
      values.height_mm = MAX (values.height_mm, 450);
      try_opening (self, holes->pdata[i], &values);
    }
  widen_each (self, HC_OPENING_POP_HOLE);
}

static void
widen_door (HcMending *self)
{
  widen_each (self, HC_OPENING_KEEPER_DOOR);
}

static void
widen_window (HcMending *self)
{
  widen_each (self, HC_OPENING_WINDOW);
}

static void
widen_vent (HcMending *self)
{
  widen_each (self, HC_OPENING_VENT);
}

static void
raise_door (HcMending *self)
{
  HcOpening *door = hc_mending_get_opening (self);
  HcOpeningValues values;

  if (door == NULL || !g_str_equal (self->finding->unit, "mm"))
    return;
  values = *hc_opening_get (door);
  values.height_mm = MAX (values.height_mm, self->finding->required);
  try_opening (self, door, &values);
}

/* All vents and windows of its pens together. */
static void
open_all (HcMending *self, gboolean in_winter)
{
  HcParts *openings = hc_layout_get (self->layout)->openings;
  g_autoptr (GPtrArray) vents = hc_mending_list_openings (self, HC_OPENING_VENT);
  g_autoptr (GPtrArray) windows = hc_mending_list_openings (self, HC_OPENING_WINDOW);
  HcPlan *plan = hc_plan_ref (self->plan);

  for (guint i = 0; plan != NULL && i < openings->len; i++)
    {
      HcOpeningValues values = *hc_opening_get (openings->pdata[i]);
      g_autoptr (HcPlan) before = plan;
      gboolean is_vent = g_ptr_array_find (vents, openings->pdata[i], NULL);

      if (in_winter && is_vent)
        values.open_winter = 1;
      else if (!in_winter && (is_vent || g_ptr_array_find (windows, openings->pdata[i], NULL)))
        values.open_summer = 1;
      plan = hc_plan_set_opening (before, hc_opening_get_id (openings->pdata[i]), &values, NULL);
    }
  if (vents->len + windows->len > 0)
    hc_mending_try (self, plan,
                    hc_opening_get_id ((vents->len > 0 ? vents : windows)->pdata[0]), 1);
  else
    g_clear_pointer (&plan, hc_plan_unref);
}

static void
open_in_winter (HcMending *self)
{
  open_all (self, TRUE);
}

static void
open_in_summer (HcMending *self)
{
  open_all (self, FALSE);
}

/* In the wall @wall, as high as fits under its eaves. */
static void
try_new (HcMending *self, const HcPen *pen, const char *wall, HcOpeningValues values)
{
  g_autofree char *id = hc_id_new ();
  g_autoptr (HcOpening) opening = NULL;

  values.wall = (char *) wall;
  values.sill_mm
      = MAX (0, MIN (values.sill_mm, hc_pen_get (pen)->height_mm - values.height_mm - 60));
  values.along_mm = hc_layout_get_wall_length (self->layout, wall) / 2;
  if (!hc_layout_find_place_in_wall (self->layout, NULL, &values, &values.along_mm))
    return;
  opening = hc_opening_new (id, &values);
  hc_mending_try (self, hc_plan_add_opening (self->plan, opening, NULL), id, 0);
}

/* What is meshed elsewhere in the house is meshed here. */
static void
take_mesh (const HcMending *self, HcOpeningValues *values)
{
  HcParts *openings = hc_layout_get (self->layout)->openings;

  for (guint i = 0; i < openings->len; i++)
    {
      const HcOpeningValues *other = hc_opening_get (openings->pdata[i]);

      if (other->kind == values->kind && other->mesh != NULL && *other->mesh != '\0')
        values->mesh = other->mesh;
    }
}

static void
add_opening (HcMending *self, const char *kind)
{
  g_autoptr (GPtrArray) pens = hc_mending_list_pens (self);
  g_autoptr (HcOpening) made
      = hc_opening_type_make (hc_book_get_opening_type (self->book, kind), "new");
  HcOpeningValues values = *hc_opening_get (made);

  if (values.kind == HC_OPENING_WINDOW || values.kind == HC_OPENING_VENT)
    values.mesh = (char *) "cloth_12";
  take_mesh (self, &values);
  for (guint i = 0; i < pens->len; i++)
    {
      char **walls = hc_pen_get (pens->pdata[i])->walls;

      for (char **wall = walls; *wall != NULL && !hc_mending_is_done (self); wall++)
        try_new (self, pens->pdata[i], *wall, values);
    }
}

static void
add_pop_hole (HcMending *self)
{
  add_opening (self, "pop_hole");
}

static void
add_door (HcMending *self)
{
  add_opening (self, "keeper_door");
}

static void
add_window (HcMending *self)
{
  add_opening (self, "window");
}

static void
add_vent (HcMending *self)
{
  add_opening (self, "vent");
}

/* Along its wall, away from what is in its way. */
static void
slide (HcMending *self)
{
  HcOpening *opening = hc_mending_get_opening (self);
  const HcOpeningValues *values;
  double length_mm;

  if (opening == NULL)
    return;
  values = hc_opening_get (opening);
  length_mm = hc_layout_get_wall_length (self->layout, values->wall);
  for (guint i = 1; i < 6; i++)
    hc_mending_try (self,
                    hc_plan_slide_opening (self->plan, hc_opening_get_id (opening), values->wall,
                                           length_mm * i / 6, NULL),
                    hc_opening_get_id (opening), 0);
}

const HcRecipe hc_recipes_of_openings[] = {
  { "pop-hole.widen", widen_pop_hole },
  { "pop-hole.add", add_pop_hole },
  { "door.widen", widen_door },
  { "door.raise", raise_door },
  { "door.add", add_door },
  { "window.widen", widen_window },
  { "window.add", add_window },
  { "vent.open-winter", open_in_winter },
  { "vent.open-summer", open_in_summer },
  { "vent.widen", widen_vent },
  { "vent.add", add_vent },
  { "opening.slide", slide },
  { NULL },
};
