/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The needs, how many birds the plan holds, and what is wrong. */
#include "config.h"

#include "app/needs/needs-panel.h"

struct _HcNeedsPanel
{
  HcPanel parent_instance;
};

G_DEFINE_FINAL_TYPE (HcNeedsPanel, hc_needs_panel, HC_TYPE_PANEL)

static void
hc_needs_panel_class_init (HcNeedsPanelClass *klass)
{
}

static void
hc_needs_panel_init (HcNeedsPanel *self)
{
}
