/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The few properties of what is selected, in place. */
#pragma once

#include "app/window/panel.h"

G_BEGIN_DECLS

#define HC_TYPE_PROPERTIES (hc_properties_get_type ())
G_DECLARE_FINAL_TYPE (HcProperties, hc_properties, HC, PROPERTIES, HcPanel)

G_END_DECLS
