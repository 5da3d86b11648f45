/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Against predators: shut, latch, close, mesh over, fix, guard and roof. */
#include "config.h"

#include "mend/mending.h"

#include "book/figure-names.h"
#include "plan/edit-opening.h"
#include "plan/edit-pen.h"
#include "plan/edit-wall.h"

#include <string.h>

static void
try_opening (HcMending *self, const HcOpening *opening, const HcOpeningValues *values)
{
  const char *id = hc_opening_get_id (opening);

  hc_mending_try (self, hc_plan_set_opening (self->plan, id, values, NULL), id, 0);
}

static void
try_pen (HcMending *self, const HcPen *pen, const HcPenValues *values, double amount)
{
  const char *id = hc_pen_get_id (pen);

  hc_mending_try (self, hc_plan_set_pen (self->plan, id, values, NULL), id, amount);
}

static void
shut_at_dusk (HcMending *self)
{
  HcOpening *opening = hc_mending_get_opening (self);
  HcOpeningValues values;

  if (opening == NULL)
    return;
  values = *hc_opening_get (opening);
  values.shut_at_dusk = TRUE;
  try_opening (self, opening, &values);
}

static gboolean
holds (const HcLatch *latch, const HcFinding *finding)
{
  for (guint i = 0; finding->animals[i] != NULL; i++)
    if (g_strv_contains (latch->opened_by, finding->animals[i]))
      return FALSE;
  return TRUE;
}

static void
latch (HcMending *self)
{
  HcOpening *opening = hc_mending_get_opening (self);

  for (guint i = 0; opening != NULL && i < hc_book_get_n_latches (self->book); i++)
    {
      const HcLatch *found = hc_book_get_latch_at (self->book, i);
      HcOpeningValues values = *hc_opening_get (opening);

      if (!holds (found, self->finding))
        continue;
      values.latch = (char *) found->id;
      try_opening (self, opening, &values);
      return;
    }
}

static void
close_gap (HcMending *self)
{
  HcOpening *opening = hc_mending_get_opening (self);
  HcOpeningValues values;

  if (opening == NULL)
    return;
  values = *hc_opening_get (opening);
  values.gap_mm = MIN (values.gap_mm, self->finding->required);
  try_opening (self, opening, &values);
}

static gboolean
keeps_out (const HcMesh *mesh, const HcPredator *animal, gboolean from_an_arm)
{
  if (from_an_arm)
    return mesh->hole_mm <= animal->reaches_through_mm;
  return mesh->hole_mm <= animal->passes_mm && (!animal->tears || mesh->stops_diggers)
         && (!animal->gnaws || mesh->stops_gnawers);
}

/* The widest mesh that keeps out all that are about, of those it could keep out;
 * rats and mice get in by the same holes as weasels. */
static const HcMesh *
find_mesh (const HcMending *self, char **animals)
{
  gboolean from_an_arm = g_str_equal (self->finding->code, "predators.reached");
  const HcMesh *widest = NULL;

  for (guint i = 0; i < hc_book_get_n_meshes (self->book); i++)
    {
      const HcMesh *mesh = hc_book_get_mesh_at (self->book, i);
      gboolean holds_all = mesh->stops_diggers && !mesh->sags_under_snow;

      for (char **id = animals; holds_all && id != NULL && *id != NULL; id++)
        {
          const HcPredator *animal = hc_book_get_predator (self->book, *id);

          holds_all = animal == NULL || keeps_out (mesh, animal, from_an_arm);
        }
      if (holds_all && (widest == NULL || mesh->hole_mm > widest->hole_mm))
        widest = mesh;
    }
  return widest;
}

static HcPlan *
with_wall_mesh (HcPlan *plan, const char *id, const HcMesh *mesh)
{
  HcWall *wall = hc_layout_get_wall (hc_plan_get_layout (plan), id);
  HcWallValues values;

  if (wall == NULL || hc_wall_get (wall)->kind == HC_WALL_SOLID)
    return hc_plan_ref (plan);
  values = *hc_wall_get (wall);
  values.mesh = (char *) mesh->id;
  values.fixing = HC_FIXING_SCREWS;
  return hc_plan_set_wall (plan, id, &values, NULL);
}

static HcPlan *
with_opening_mesh (HcPlan *plan, const char *id, const HcMesh *mesh)
{
  HcOpening *opening = hc_layout_get_opening (hc_plan_get_layout (plan), id);
  HcOpeningValues values;

  if (opening == NULL)
    return with_wall_mesh (plan, id, mesh);
  values = *hc_opening_get (opening);
  values.mesh = (char *) mesh->id;
  values.fixing = HC_FIXING_SCREWS;
  return hc_plan_set_opening (plan, id, &values, NULL);
}

static HcPlan *
with_mesh (const HcMending *self, const HcMesh *mesh)
{
  HcPlan *plan = hc_plan_ref (self->plan);

  for (char **id = self->finding->ids; plan != NULL && *id != NULL; id++)
    {
      g_autoptr (HcPlan) before = plan;

      /* A wall is named only where it is the wall's own mesh, not an opening's. */
      plan = id != self->finding->ids && hc_mending_get_opening (self) != NULL
                 ? hc_plan_ref (before)
                 : with_opening_mesh (before, *id, mesh);
    }
  return plan;
}

/* Against all that are about, or else against those it was found for. */
static void
swap_mesh (HcMending *self)
{
  const HcMesh *mesh = find_mesh (self, hc_plan_get_site (self->plan)->predators);

  if (mesh != NULL)
    hc_mending_try (self, with_mesh (self, mesh), self->finding->ids[0], mesh->hole_mm);
  mesh = find_mesh (self, (char **) self->finding->animals);
  if (mesh != NULL)
    hc_mending_try (self, with_mesh (self, mesh), self->finding->ids[0], mesh->hole_mm);
}

static void
roof_over (HcMending *self)
{
  const HcMesh *mesh = find_mesh (self, hc_plan_get_site (self->plan)->predators);
  HcPen *pen = hc_layout_get_pen (self->layout, self->finding->ids[0]);
  HcPenValues values;

  if (mesh == NULL)
    mesh = find_mesh (self, (char **) self->finding->animals);
  if (pen == NULL || mesh == NULL)
    return;
  values = *hc_pen_get (pen);
  values.roof = HC_ROOF_MESH;
  values.roof_mesh = (char *) mesh->id;
  try_pen (self, pen, &values, mesh->hole_mm);
}

static void
lay_guard (HcMending *self)
{
  HcPen *pen = hc_layout_get_pen (self->layout, self->finding->ids[0]);
  HcPenValues values;

  if (pen == NULL)
    return;
  values = *hc_pen_get (pen);
  values.apron_mm
      = hc_mending_get_figure (self, HC_FIGURE_PREDATORS_APRON, self->finding->required);
  try_pen (self, pen, &values, values.apron_mm);
}

/* Below what the birds stand on. */
static void
lay_mesh (HcMending *self)
{
  HcPen *pen = hc_layout_get_pen (self->layout, self->finding->ids[0]);
  g_autoptr (GStrvBuilder) builder = g_strv_builder_new ();
  g_auto (GStrv) layers = NULL;
  HcPenValues values;
  guint n;

  if (pen == NULL || hc_pen_get (pen)->kind != HC_PEN_INDOOR)
    return;
  values = *hc_pen_get (pen);
  n = values.floor_layers != NULL ? g_strv_length (values.floor_layers) : 0;
  for (guint i = 0; i + 1 < n; i++)
    g_strv_builder_add (builder, values.floor_layers[i]);
  g_strv_builder_add (builder, "mesh");
  if (n > 0)
    g_strv_builder_add (builder, values.floor_layers[n - 1]);
  layers = g_strv_builder_end (builder);
  values.floor_layers = layers;
  try_pen (self, pen, &values, 0);
}

static HcPlan *
with_wall_height (HcPlan *plan, const char *id, double height_mm)
{
  HcWall *wall = hc_layout_get_wall (hc_plan_get_layout (plan), id);
  HcWallValues values;

  if (wall == NULL)
    return hc_plan_ref (plan);
  values = *hc_wall_get (wall);
  values.height_mm = MAX (values.height_mm, height_mm);
  return hc_plan_set_wall (plan, id, &values, NULL);
}

/* As high as the rules ask, and up to the eaves of what has a roof. */
static void
raise_walls (HcMending *self)
{
  HcPen *pen = hc_layout_get_pen (self->layout, self->finding->ids[0]);
  HcPlan *plan = hc_plan_ref (self->plan);
  double height_mm = self->finding->required;

  if (pen != NULL && hc_pen_get (pen)->roof != HC_ROOF_NONE)
    height_mm = MAX (height_mm, hc_pen_get (pen)->height_mm);
  for (char **id = self->finding->ids; plan != NULL && *id != NULL; id++)
    {
      g_autoptr (HcPlan) before = plan;

      plan = with_wall_height (before, *id, height_mm);
    }
  hc_mending_try (self, plan, self->finding->ids[0], height_mm);
}

const HcRecipe hc_recipes_of_guards[] = {
  { "guard.shut-at-dusk", shut_at_dusk },
  { "guard.latch", latch },
  { "guard.close-gap", close_gap },
  { "guard.mesh", swap_mesh },
  { "guard.apron", lay_guard },
  { "guard.mesh-floor", lay_mesh },
  { "guard.raise-walls", raise_walls },
  { "guard.roof", roof_over },
  { NULL },
};
