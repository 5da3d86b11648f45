/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * More boxes to lay in, and lower ones. */
#include "config.h"

#include "mend/mending.h"

#include "book/make-fitting.h"

#include <math.h>

static int
get_lack (const HcMending *self)
{
  double lack = self->finding->required - self->finding->measured;

  return g_str_equal (self->finding->unit, "boxes") ? MAX (1, (int) ceil (lack - 1e-6)) : 1;
}

static HcFittingValues
with_columns (const HcFittingValues *before, int more, double side)
{
  HcFittingValues values = *before;
  double by_mm = more * values.width_mm / MAX (1, values.columns);
  HcPoint along = hc_point_turn (hc_point (1, 0), values.turn_deg);

  values.columns += more;
  values.width_mm += by_mm;
  values.x_mm += along.x_mm * by_mm * (side - 0.5);
  values.y_mm += along.y_mm * by_mm * (side - 0.5);
  return values;
}

static void
try_columns (HcMending *self, const HcFitting *nests, int more)
{
  static const double sides[] = { 0.5, 0, 1 };
  HcPen *pen = NULL;

  hc_layout_get_fitting (self->layout, hc_fitting_get_id (nests), &pen);
  for (guint i = 0; pen != NULL && i < G_N_ELEMENTS (sides); i++)
    {
      HcFittingValues values = with_columns (hc_fitting_get (nests), more, sides[i]);

      if (hc_mending_has_room (self, pen, hc_fitting_get_id (nests), &values))
        hc_mending_try_fitting (self, nests, &values, more);
    }
}

/* A row of boxes goes on, as far as it must or can. */
static void
add_boxes (HcMending *self)
{
  g_autoptr (GPtrArray) nests = hc_mending_list_fittings (self, HC_FITTING_NEST_BOXES);

  for (guint i = 0; i < nests->len; i++)
    for (int more = get_lack (self); more > 0 && !hc_mending_is_done (self); more--)
      if (hc_fitting_get (nests->pdata[i])->form != HC_FORM_GROUP)
        try_columns (self, nests->pdata[i], more);
}

static HcFittingValues
new_boxes (const HcMending *self)
{
  g_autoptr (GPtrArray) nests = hc_mending_list_fittings (self, HC_FITTING_NEST_BOXES);
  const HcFittingType *type = hc_book_get_fitting_type (self->book, "nest_boxes", "long");
  g_autoptr (HcFitting) made = hc_fitting_type_make (type, NULL, "nests", (HcPoint){ 0, 0 });
  HcFittingValues values
      = *hc_fitting_get (nests->len > 0 ? nests->pdata[0] : (gpointer) made);
  double box_mm = values.width_mm / MAX (1, values.columns);

  values.name = NULL;
  values.locked = FALSE;
  values.lined = TRUE;
  values.rows = 1;
  values.columns = get_lack (self);
  values.width_mm = box_mm * values.columns;
  return values;
}

static void
add_nests (HcMending *self)
{
  HcFittingValues values = new_boxes (self);

  hc_mending_add_fitting (self, &values, values.columns);
}

static void
lower (HcMending *self)
{
  HcFitting *nests = hc_mending_get_fitting (self, NULL);
  HcFittingValues values;

  if (nests == NULL || hc_fitting_get (nests)->kind != HC_FITTING_NEST_BOXES
      || !g_str_equal (self->finding->unit, "mm"))
    return;
  values = *hc_fitting_get (nests);
  values.base_mm
      = MAX (0, values.base_mm - ABS (self->finding->measured - self->finding->required));
  hc_mending_try_fitting (self, nests, &values, values.base_mm);
}

static void
line (HcMending *self)
{
  HcFitting *nests = hc_mending_get_fitting (self, NULL);
  HcFittingValues values;

  if (nests == NULL || hc_fitting_get (nests)->kind != HC_FITTING_NEST_BOXES)
    return;
  values = *hc_fitting_get (nests);
  values.lined = TRUE;
  hc_mending_try_fitting (self, nests, &values, 0);
}

const HcRecipe hc_recipes_of_nests[] = {
  { "nests.add", add_boxes }, { "nests.new", add_nests },
  { "nests.lower", lower },   { "nests.line", line },
  { NULL },
};
