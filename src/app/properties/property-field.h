/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The field of one property: as its member is, a length, a count, a switch or a choice. */
#pragma once

#include "app/properties/property-table.h"

#include "base/units.h"

#include <gtk/gtk.h>

G_BEGIN_DECLS

#define HC_TYPE_PROPERTY_FIELD (hc_property_field_get_type ())
/**
 * HcPropertyField:
 *
 * Signal `entered` when the keeper has set another value; then
 * hc_property_field_store() puts it into a part's values.
 */
G_DECLARE_FINAL_TYPE (HcPropertyField, hc_property_field, HC, PROPERTY_FIELD, GtkBox)

HcPropertyField *hc_property_field_new (const HcProperty *property, const HcMember *member,
                                        HcBook *book);
const HcProperty *hc_property_field_get_property_row (HcPropertyField *self);
void hc_property_field_offer_plan (HcPropertyField *self, HcPlan *plan);
void hc_property_field_show (HcPropertyField *self, gconstpointer values, HcUnits units);
void hc_property_field_store (HcPropertyField *self, gpointer values);

G_END_DECLS
