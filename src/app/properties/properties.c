/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The few properties of what is selected, in place. */
#include "config.h"

#include "app/properties/properties.h"

struct _HcProperties
{
  HcPanel parent_instance;
};

G_DEFINE_FINAL_TYPE (HcProperties, hc_properties, HC_TYPE_PANEL)

static void
hc_properties_class_init (HcPropertiesClass *klass)
{
}

static void
hc_properties_init (HcProperties *self)
{
}
