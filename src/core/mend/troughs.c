/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * More room to eat and drink: longer troughs, others, and water that stays
 * liquid and deep. */
#include "config.h"

#include "mend/mending.h"

#include "book/make-fitting.h"

static HcFittingKind
get_kind (const HcMending *self)
{
  return g_str_has_prefix (self->finding->code, "feed.") ? HC_FITTING_FEEDER
                                                         : HC_FITTING_DRINKER;
}

static gboolean
is_bought (const HcFittingValues *values)
{
  return values->device != NULL && *values->device != '\0';
}

static void
lengthen (HcMending *self)
{
  static const double factors[] = { 1.25, 1.5, 2 };
  g_autoptr (GPtrArray) troughs = hc_mending_list_fittings (self, get_kind (self));

  for (guint i = 0; i < troughs->len; i++)
    for (guint factor = 0; factor < G_N_ELEMENTS (factors); factor++)
      {
        HcFittingValues values = *hc_fitting_get (troughs->pdata[i]);
        HcPen *pen = NULL;

        hc_layout_get_fitting (self->layout, hc_fitting_get_id (troughs->pdata[i]), &pen);
        values.width_mm *= factors[factor];
        if (values.form == HC_FORM_LONG && !is_bought (&values) && pen != NULL
            && hc_mending_has_room (self, pen, hc_fitting_get_id (troughs->pdata[i]), &values))
          hc_mending_try_fitting (self, troughs->pdata[i], &values, values.width_mm);
      }
}

/* One like those there are. */
static void
add_like (HcMending *self)
{
  g_autoptr (GPtrArray) troughs = hc_mending_list_fittings (self, get_kind (self));
  HcFittingValues values;

  if (troughs->len == 0)
    return;
  values = *hc_fitting_get (troughs->pdata[0]);
  values.name = NULL;
  values.locked = FALSE;
  hc_mending_add_fitting (self, &values, 0);
}

static gboolean
may_do (const HcMending *self, const HcFittingType *type, const HcDevice *device)
{
  if (g_str_has_prefix (self->finding->code, "water.not-head-deep"))
    return device != NULL && device->water_mm >= self->finding->required;
  if (g_str_equal (self->finding->code, "water.freezes"))
    return device != NULL && device->heated;
  return TRUE;
}

static void
add_made (HcMending *self, const HcFittingType *type, const HcDevice *device)
{
  g_autoptr (HcFitting) made = NULL;

  if (!may_do (self, type, device))
    return;
  made = hc_fitting_type_make (type, device, "trough", (HcPoint){ 0, 0 });
  hc_mending_add_fitting (self, hc_fitting_get (made), 0);
}

/* Of any sort in the book. */
static void
add_any (HcMending *self)
{
  const char *kind = hc_fitting_kind_get_word (get_kind (self));

  for (guint i = 0; i < hc_book_get_n_fitting_types (self->book); i++)
    {
      const HcFittingType *type = hc_book_get_fitting_type_at (self->book, i);

      if (!g_str_equal (type->kind, kind))
        continue;
      for (guint device = type->n_devices; device > 0; device--)
        {
          self->tries = 0;
          add_made (self, type, &type->devices[device - 1]);
          if (self->best != NULL)
            return;
        }
      self->tries = 0;
      add_made (self, type, NULL);
    }
}

static void
try_device (HcMending *self, const HcFitting *drinker, const HcFittingType *type,
            const HcDevice *device)
{
  const HcFittingValues *now = hc_fitting_get (drinker);
  g_autoptr (HcFitting) made
      = hc_fitting_type_make (type, device, "drinker", hc_point (now->x_mm, now->y_mm));
  HcFittingValues values = *hc_fitting_get (made);

  values.name = now->name;
  values.turn_deg = now->turn_deg;
  hc_mending_try_fitting (self, drinker, &values, 0);
}

/* A heated one in its place, or a heater under what the keeper built. */
static void
keep_liquid (HcMending *self)
{
  HcFitting *drinker = hc_mending_get_fitting (self, NULL);
  const HcFittingType *type;
  HcFittingValues values;

  if (drinker == NULL || hc_fitting_get (drinker)->kind != HC_FITTING_DRINKER)
    return;
  values = *hc_fitting_get (drinker);
  if (!is_bought (&values))
    {
      values.heated = TRUE;
      hc_mending_try_fitting (self, drinker, &values, 0);
      return;
    }
  type = hc_book_get_fitting_type (self->book, "drinker",
                                   hc_fitting_form_get_word ((HcFittingForm) values.form));
  for (guint i = 0; type != NULL && i < type->n_devices; i++)
    if (type->devices[i].heated)
      try_device (self, drinker, type, &type->devices[i]);
}

const HcRecipe hc_recipes_of_troughs[] = {
  { "trough.lengthen", lengthen }, { "trough.add", add_like },     { "trough.add-other", add_any },
  { "water.heat", keep_liquid },   { NULL },
};
