/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A thing to add, as the catalogue describes it, made a fitting. */
#include "config.h"

#include "book/make-fitting.h"

#include "plan/fitting-measure.h"

static void
take_makers_size (HcFittingValues *values, const HcDevice *device)
{
  values->device = (char *) device->id;
  values->width_mm = device->width_mm;
  values->depth_mm = device->depth_mm;
  values->height_mm = device->height_mm;
  values->places = device->places;
  values->watts = device->watts;
  values->heated = device->heated;
}

/**
 * hc_fitting_type_make: (skip)
 * @self: a thing to add
 * @device: (nullable): the bought device it is to be, with its maker's size
 * @id: an id no other part of the plan has
 * @at: where its middle is to be
 *
 * Returns: (transfer full): a fitting of the size things of this type start with
 */
HcFitting *
hc_fitting_type_make (const HcFittingType *self, const HcDevice *device, const char *id,
                      HcPoint at)
{
  HcFittingValues values;
  HcFittingKind kind = HC_FITTING_POST;
  HcFittingForm form = HC_FORM_LONG;

  hc_fitting_values_init (&values);
  hc_fitting_kind_from_word (self->kind, &kind);
  hc_fitting_form_from_word (self->form, &form);
  values.kind = kind;
  values.form = form;
  values.x_mm = at.x_mm;
  values.y_mm = at.y_mm;
  for (guint i = 0; i < self->n_ranges; i++)
    hc_fitting_set_measure (&values, self->ranges[i].name, self->ranges[i].start);
  if (device != NULL)
    take_makers_size (&values, device);
  return hc_fitting_new (id, &values);
}
