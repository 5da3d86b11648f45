/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Whose rules: every figure with its source, and the keeper's own figures. */
#include "config.h"

#include "app/rules/rules-window.h"

struct _HcRulesWindow
{
  AdwWindow parent_instance;
};

G_DEFINE_FINAL_TYPE (HcRulesWindow, hc_rules_window, ADW_TYPE_WINDOW)

static void
hc_rules_window_class_init (HcRulesWindowClass *klass)
{
}

static void
hc_rules_window_init (HcRulesWindow *self)
{
}

/**
 * hc_rules_window_present:
 * @parent: the plan's window
 * @checker: the plan's checker
 * @figure: (nullable): id of the figure to show
 */
void
hc_rules_window_present (GtkWindow *parent, HcChecker *checker, const char *figure)
{
  gtk_window_present (
      g_object_new (HC_TYPE_RULES_WINDOW, "transient-for", parent, "modal", TRUE, NULL));
}
