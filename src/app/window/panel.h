/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A part of the window that shows the open plan and edits it. */
#pragma once

#include "document/checker.h"

#include <adwaita.h>

G_BEGIN_DECLS

#define HC_TYPE_PANEL (hc_panel_get_type ())
G_DECLARE_DERIVABLE_TYPE (HcPanel, hc_panel, HC, PANEL, AdwBin)

/**
 * HcPanelClass:
 * @plan_changed: there is another plan, or another preview of it
 * @checked: the checker has a newer answer
 * @counted: the checker has a newer headline
 * @selection_changed: other things are selected
 */
struct _HcPanelClass
{
  AdwBinClass parent_class;

  void (*plan_changed) (HcPanel *self);
  void (*checked) (HcPanel *self);
  void (*counted) (HcPanel *self);
  void (*selection_changed) (HcPanel *self);
};

void hc_panel_set_checker (HcPanel *self, HcChecker *checker);
HcChecker *hc_panel_get_checker (HcPanel *self);
HcDocument *hc_panel_get_document (HcPanel *self);
HcBook *hc_panel_get_book (HcPanel *self);
HcPlan *hc_panel_get_plan (HcPanel *self);
HcUnits hc_panel_get_units (HcPanel *self);
HcCheck *hc_panel_get_check (HcPanel *self);

gboolean hc_panel_apply (HcPanel *self, HcPlan *plan, GError *error, const char *label,
                         const char *merge);
const char *hc_say_read_only (void);
void hc_panel_say (HcPanel *self, const char *sentence);

G_END_DECLS
