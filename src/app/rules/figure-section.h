/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The figures of one need, under a heading that opens them. */
#pragma once

#include "app/rules/figure-row.h"

#include "plan/plan.h"

G_BEGIN_DECLS

#define HC_TYPE_FIGURE_SECTION (hc_figure_section_get_type ())
G_DECLARE_FINAL_TYPE (HcFigureSection, hc_figure_section, HC, FIGURE_SECTION, GtkBox)

GtkWidget *hc_figure_section_new (const char *heading, gboolean read_only);
const char *hc_figure_section_get_heading (HcFigureSection *self);
void hc_figure_section_add (HcFigureSection *self, const HcFigureEntry *entry);
void hc_figure_section_show_own (HcFigureSection *self, HcPlan *plan);
guint hc_figure_section_look_for (HcFigureSection *self, const char *text);
gboolean hc_figure_section_is_open (HcFigureSection *self);
void hc_figure_section_set_open (HcFigureSection *self, gboolean open);
HcFigureRow *hc_figure_section_find_row (HcFigureSection *self, const char *figure);

G_END_DECLS
