/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The views of the open plan, one of them in sight. */
#pragma once

#include "app/window/panel.h"

G_BEGIN_DECLS

#define HC_TYPE_VIEWS (hc_views_get_type ())
G_DECLARE_FINAL_TYPE (HcViews, hc_views, HC, VIEWS, HcPanel)

HcPanel *hc_views_get (HcViews *self, const char *id);
HcPanel *hc_views_show (HcViews *self, const char *id);
HcPanel *hc_views_get_shown (HcViews *self);
GAction *hc_views_new_action (HcViews *self) G_GNUC_WARN_UNUSED_RESULT;
gboolean hc_views_activate (HcViews *self, const char *action, GVariant *parameter);

G_END_DECLS
