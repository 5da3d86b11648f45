/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Warmth for chicks: another heater in its place, or one more. */
#include "config.h"

#include "mend/mending.h"

#include "book/figure-names.h"
#include "book/make-fitting.h"

/* Lamps last: they are the least safe choice. */
static const char *const heaters[] = { "floor_heat_pad", "heat_plate", "heat_lamp" };

static gboolean
is_heater (const HcFitting *fitting)
{
  const char *kind = hc_fitting_kind_get_word (hc_fitting_get (fitting)->kind);

  for (guint i = 0; i < G_N_ELEMENTS (heaters); i++)
    if (g_str_equal (heaters[i], kind))
      return TRUE;
  return FALSE;
}

/* As far above what burns as the rules ask. */
static void
hang_up (const HcMending *self, const HcFitting *heater, HcFittingValues *lamp)
{
  HcPen *pen = NULL;

  hc_layout_get_fitting (self->layout, hc_fitting_get_id (heater), &pen);
  lamp->base_mm
      = MAX (lamp->base_mm,
             hc_mending_get_figure (self, HC_FIGURE_WARMTH_LAMP_CLEARANCE, lamp->base_mm)
                 + (pen != NULL ? hc_pen_get (pen)->bedding_mm : 0));
}

static void
try_in_place (HcMending *self, const HcFitting *heater, const HcFittingType *type,
              const HcDevice *device)
{
  const HcFittingValues *now = hc_fitting_get (heater);
  g_autoptr (HcFitting) made
      = hc_fitting_type_make (type, device, "heater", hc_point (now->x_mm, now->y_mm));
  HcFittingValues values = *hc_fitting_get (made);

  if (values.kind == HC_FITTING_HEAT_LAMP)
    hang_up (self, heater, &values);
  hc_mending_try_fitting (self, heater, &values, 0);
}

static void
try_type (HcMending *self, const HcFitting *heater, const HcFittingType *type,
          void (*attempt) (HcMending *, const HcFitting *, const HcFittingType *,
                           const HcDevice *))
{
  for (guint i = 0; i < type->n_devices && !hc_mending_is_done (self); i++)
    attempt (self, heater, type, &type->devices[i]);
  if (type->stretches && !hc_mending_is_done (self))
    attempt (self, heater, type, NULL);
}

static void
swap (HcMending *self)
{
  HcFitting *heater = hc_mending_get_fitting (self, NULL);

  if (heater == NULL || !is_heater (heater))
    return;
  for (guint i = 0; i < G_N_ELEMENTS (heaters); i++)
    {
      try_type (self, heater, hc_book_get_fitting_type (self->book, heaters[i], NULL),
                try_in_place);
      if (hc_mending_is_mended (self))
        return;
      self->tries = 0;
    }
}

static void
add_one (HcMending *self, const HcFitting *heater, const HcFittingType *type,
         const HcDevice *device)
{
  g_autoptr (HcFitting) made = hc_fitting_type_make (type, device, "heater", (HcPoint){ 0, 0 });

  hc_mending_add_fitting (self, hc_fitting_get (made), 0);
}

static void
add (HcMending *self)
{
  for (guint i = 0; self->best == NULL && i < G_N_ELEMENTS (heaters); i++)
    try_type (self, NULL, hc_book_get_fitting_type (self->book, heaters[i], NULL), add_one);
}

const HcRecipe hc_recipes_of_heaters[] = {
  { "heater.swap", swap },
  { "heater.add", add },
  { NULL },
};
