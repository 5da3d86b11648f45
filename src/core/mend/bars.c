/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * More places to sleep: bars made longer, wider, lower, and more of them. */
#include "config.h"

#include "mend/mending.h"

#include "book/figure-names.h"
#include "book/make-fitting.h"

#define SEAT_MM 250.0
#define SHORTEST_MM 600.0

/* A thing may grow to either side, or to both. */
static const double sides[] = { 0.5, 0, 1, 0.25, 0.75 };

static double
get_lack_mm (const HcMending *self)
{
  return SEAT_MM * (double) MAX (1, self->finding->birds);
}

static HcFittingValues
lengthened (const HcFittingValues *before, double by_mm, double side)
{
  HcFittingValues values = *before;
  HcPoint along = hc_point_turn (hc_point (1, 0), values.turn_deg);
  double shift_mm = by_mm * (side - 0.5);

  values.width_mm += by_mm;
  values.x_mm += along.x_mm * shift_mm;
  values.y_mm += along.y_mm * shift_mm;
  return values;
}

static gboolean
try_length (HcMending *self, const HcPen *pen, const HcFitting *roost, double by_mm)
{
  for (guint i = 0; i < G_N_ELEMENTS (sides); i++)
    {
      HcFittingValues values = lengthened (hc_fitting_get (roost), by_mm, sides[i]);

      if (!hc_mending_has_room (self, pen, hc_fitting_get_id (roost), &values))
        continue;
      hc_mending_try_fitting (self, roost, &values, by_mm);
      return TRUE;
    }
  return FALSE;
}

/* By what is lacking, or as much as there is room for. */
static void
lengthen (HcMending *self)
{
  g_autoptr (GPtrArray) roosts = hc_mending_list_fittings (self, HC_FITTING_ROOST);

  for (guint i = 0; i < roosts->len; i++)
    {
      HcFitting *roost = roosts->pdata[i];
      HcPen *pen = NULL;
      double by_mm = get_lack_mm (self) / MAX (1, hc_fitting_get (roost)->bars);

      hc_layout_get_fitting (self->layout, hc_fitting_get_id (roost), &pen);
      while (pen != NULL && by_mm >= SEAT_MM / 2 && !try_length (self, pen, roost, by_mm))
        by_mm /= 2;
    }
}

/* The back bar stays; the others share what is in front of it. */
static void
add_bar (HcMending *self)
{
  g_autoptr (GPtrArray) roosts = hc_mending_list_fittings (self, HC_FITTING_ROOST);

  for (guint i = 0; i < roosts->len; i++)
    {
      HcFitting *roost = roosts->pdata[i];
      HcFittingValues values = *hc_fitting_get (roost);
      double apart_mm = hc_mending_get_figure (self, HC_FIGURE_ROOST_BAR_TO_BAR, 0);
      double by_mm = MAX (values.depth_mm / MAX (1, values.bars), apart_mm);
      HcPoint front = hc_point_turn (hc_point (0, 1), values.turn_deg);
      HcPen *pen = NULL;

      hc_layout_get_fitting (self->layout, hc_fitting_get_id (roost), &pen);
      values.bars++;
      values.x_mm += front.x_mm * by_mm / 2;
      values.y_mm += front.y_mm * by_mm / 2;
      values.depth_mm += by_mm;
      if (pen != NULL && hc_mending_has_room (self, pen, hc_fitting_get_id (roost), &values))
        hc_mending_try_fitting (self, roost, &values, 1);
    }
}

static HcFittingValues
new_roost (const HcMending *self)
{
  g_autoptr (GPtrArray) roosts = hc_mending_list_fittings (self, HC_FITTING_ROOST);
  const HcFittingType *type = hc_book_get_fitting_type (self->book, "roost", "long");
  g_autoptr (HcFitting) made
      = hc_fitting_type_make (type, NULL, "roost", (HcPoint){ 0, 0 });
  HcFittingValues values
      = *hc_fitting_get (roosts->len > 0 ? roosts->pdata[0] : (gpointer) made);
  double apart_mm = hc_mending_get_figure (self, HC_FIGURE_ROOST_BAR_TO_WALL, 250);

  values.name = NULL;
  values.locked = FALSE;
  values.bars = 1;
  values.depth_mm = 2 * apart_mm;
  values.width_mm = MAX (get_lack_mm (self), SHORTEST_MM);
  return values;
}

static void
add_roost (HcMending *self)
{
  HcFittingValues values = new_roost (self);

  while (self->best == NULL && values.width_mm >= SHORTEST_MM)
    {
      hc_mending_add_fitting (self, &values, values.width_mm);
      values.width_mm *= 0.7;
    }
}

static void
lower (HcMending *self)
{
  static const double parts[] = { 0.8, 0.6, 0.4 };
  HcFitting *roost = hc_mending_get_fitting (self, NULL);

  if (roost == NULL || hc_fitting_get (roost)->kind != HC_FITTING_ROOST)
    return;
  for (guint i = 0; i < G_N_ELEMENTS (parts); i++)
    {
      HcFittingValues values = *hc_fitting_get (roost);

      values.base_mm *= parts[i];
      if (hc_mending_try_fitting (self, roost, &values, values.base_mm))
        return;
    }
}

static void
widen (HcMending *self)
{
  HcFitting *roost = hc_mending_get_fitting (self, NULL);
  HcFittingValues values;

  if (roost == NULL || hc_fitting_get (roost)->kind != HC_FITTING_ROOST)
    return;
  values = *hc_fitting_get (roost);
  values.bar_width_mm = MAX (values.bar_width_mm, self->finding->required);
  hc_mending_try_fitting (self, roost, &values, values.bar_width_mm);
}

const HcRecipe hc_recipes_of_bars[] = {
  { "bar.lengthen", lengthen }, { "bar.add", add_bar }, { "bar.new", add_roost },
  { "bar.lower", lower },       { "bar.widen", widen }, { NULL },
};
