/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Beginning a plan. */
#include "config.h"

#include "app/start/start-page.h"

struct _HcStartPage
{
  AdwBin parent_instance;
};

G_DEFINE_FINAL_TYPE (HcStartPage, hc_start_page, ADW_TYPE_BIN)

enum
{
  BEGIN,
  OPEN,
  N_SIGNALS
};

static guint signals[N_SIGNALS];

static void
hc_start_page_class_init (HcStartPageClass *klass)
{
  signals[BEGIN] = g_signal_new ("begin", G_TYPE_FROM_CLASS (klass), G_SIGNAL_RUN_LAST, 0, NULL,
                                 NULL, NULL, G_TYPE_NONE, 1, hc_plan_get_type ());
  signals[OPEN] = g_signal_new ("open", G_TYPE_FROM_CLASS (klass), G_SIGNAL_RUN_LAST, 0, NULL,
                                NULL, NULL, G_TYPE_NONE, 1, G_TYPE_FILE);
}

static void
hc_start_page_init (HcStartPage *self)
{
}
