/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A field for a length, typed as keepers write it. */
#pragma once

#include "base/units.h"

#include <gtk/gtk.h>

G_BEGIN_DECLS

#define HC_TYPE_LENGTH_FIELD (hc_length_field_get_type ())
/**
 * HcLengthField:
 *
 * Understands `2' 3 1/2"`, `27.5 in`, `70 cm`, `0.7m`. What it does not
 * understand is said under the field and changes nothing. Signal `entered`
 * with the length in millimetres when the keeper has typed another one.
 */
G_DECLARE_FINAL_TYPE (HcLengthField, hc_length_field, HC, LENGTH_FIELD, GtkWidget)

GtkWidget *hc_length_field_new (const char *label);
void hc_length_field_set_length (HcLengthField *self, double mm);
double hc_length_field_get_length (HcLengthField *self);
void hc_length_field_set_units (HcLengthField *self, HcUnits units);
void hc_length_field_set_signed (HcLengthField *self, gboolean is_signed);
void hc_length_field_set_range (HcLengthField *self, double least_mm, double most_mm);

G_END_DECLS
