/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The place the house stands in, and what the plan is called. */
#include "config.h"

#include "app/site/site-page.h"

struct _HcSitePage
{
  HcPanel parent_instance;
};

G_DEFINE_FINAL_TYPE (HcSitePage, hc_site_page, HC_TYPE_PANEL)

static void
hc_site_page_class_init (HcSitePageClass *klass)
{
}

static void
hc_site_page_init (HcSitePage *self)
{
}
