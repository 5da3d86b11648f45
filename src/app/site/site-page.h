/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The place the house stands in, and what the plan is called. */
#pragma once

#include "app/window/panel.h"

G_BEGIN_DECLS

#define HC_TYPE_SITE_PAGE (hc_site_page_get_type ())
G_DECLARE_FINAL_TYPE (HcSitePage, hc_site_page, HC, SITE_PAGE, HcPanel)

G_END_DECLS
