/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The fields of one part: those that suit it, showing its values. */
#pragma once

#include "app/properties/property-field.h"
#include "app/window/panel.h"

G_BEGIN_DECLS

#define HC_TYPE_PROPERTY_LIST (hc_property_list_get_type ())
/**
 * HcPropertyList:
 *
 * Signal `entered` with the #HcPropertyField in which the keeper has set
 * another value.
 */
G_DECLARE_FINAL_TYPE (HcPropertyList, hc_property_list, HC, PROPERTY_LIST, GtkBox)

void hc_property_list_set_class (HcPropertyList *self, const HcPartClass *klass, HcPanel *panel);
void hc_property_list_show (HcPropertyList *self, gconstpointer values);
gpointer hc_property_list_store (HcPropertyList *self, HcPropertyField *field,
                                 gconstpointer part) G_GNUC_WARN_UNUSED_RESULT;
char *hc_property_list_get_step (HcPropertyField *field) G_GNUC_WARN_UNUSED_RESULT;

G_END_DECLS
