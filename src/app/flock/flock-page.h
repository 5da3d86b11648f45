/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The groups of birds and the day the plan is judged on. */
#pragma once

#include "app/window/panel.h"

G_BEGIN_DECLS

#define HC_TYPE_FLOCK_PAGE (hc_flock_page_get_type ())
G_DECLARE_FINAL_TYPE (HcFlockPage, hc_flock_page, HC, FLOCK_PAGE, HcPanel)

void hc_flock_page_show_group (HcFlockPage *self, const char *id);

G_END_DECLS
