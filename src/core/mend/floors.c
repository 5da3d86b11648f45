/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Bedding spread, and nets that bear snow. */
#include "config.h"

#include "mend/mending.h"

#include "book/figure-names.h"
#include "plan/edit-pen.h"

#define USUAL_BEDDING "shavings"
#define USUAL_DEPTH_MM 100

static HcPlan *
with_bedding (HcPlan *plan, const HcPen *pen, double depth_mm)
{
  HcPenValues values = *hc_pen_get (pen);

  if (values.roof != HC_ROOF_SOLID)
    return hc_plan_ref (plan);
  if (values.bedding == NULL || *values.bedding == '\0')
    values.bedding = (char *) USUAL_BEDDING;
  values.bedding_mm = MAX (values.bedding_mm, depth_mm);
  return hc_plan_set_pen (plan, hc_pen_get_id (pen), &values, NULL);
}

static void
spread (HcMending *self)
{
  double depth_mm = hc_mending_get_figure (self, HC_FIGURE_LITTER_DEPTH, USUAL_DEPTH_MM);
  g_autoptr (GPtrArray) pens = hc_mending_list_pens (self);
  HcPlan *plan = hc_plan_ref (self->plan);

  for (guint i = 0; plan != NULL && i < pens->len; i++)
    {
      g_autoptr (HcPlan) before = plan;

      plan = with_bedding (before, pens->pdata[i], depth_mm);
    }
  if (pens->len > 0)
    hc_mending_try (self, plan, hc_pen_get_id (pens->pdata[0]), depth_mm);
  else
    g_clear_pointer (&plan, hc_plan_unref);
}

/* Of the same holes, or finer. */
static void
bear_snow (HcMending *self)
{
  HcPen *pen = hc_layout_get_pen (self->layout, self->finding->ids[0]);
  const HcMesh *now = pen != NULL ? hc_book_get_mesh (self->book, hc_pen_get (pen)->roof_mesh)
                                  : NULL;

  for (guint i = 0; now != NULL && i < hc_book_get_n_meshes (self->book); i++)
    {
      const HcMesh *mesh = hc_book_get_mesh_at (self->book, i);
      HcPenValues values = *hc_pen_get (pen);

      if (mesh->sags_under_snow || mesh->hole_mm > now->hole_mm
          || mesh->hole_mm < now->hole_mm / 2)
        continue;
      values.roof_mesh = (char *) mesh->id;
      if (hc_mending_try (self,
                          hc_plan_set_pen (self->plan, hc_pen_get_id (pen), &values, NULL),
                          hc_pen_get_id (pen), mesh->hole_mm))
        return;
    }
}

const HcRecipe hc_recipes_of_floors[] = {
  { "floor.bed", spread },
  { "roof.bear-snow", bear_snow },
  { NULL },
};
