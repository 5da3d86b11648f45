/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The groups of birds and the day the plan is judged on. */
#include "config.h"

#include "app/flock/flock-page.h"

struct _HcFlockPage
{
  HcPanel parent_instance;
};

G_DEFINE_FINAL_TYPE (HcFlockPage, hc_flock_page, HC_TYPE_PANEL)

static void
hc_flock_page_class_init (HcFlockPageClass *klass)
{
}

static void
hc_flock_page_init (HcFlockPage *self)
{
}
