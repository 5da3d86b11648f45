/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A choice among entries of the book or pens of the plan, by their names. */
#pragma once

#include "app/properties/property-table.h"

#include <gtk/gtk.h>

G_BEGIN_DECLS

#define HC_TYPE_CHOICE (hc_choice_get_type ())
/**
 * HcChoice:
 *
 * Names to choose from and the ids they stand for. Signal `entered` when the
 * keeper has chosen another.
 */
G_DECLARE_FINAL_TYPE (HcChoice, hc_choice, HC, CHOICE, GtkWidget)

GtkWidget *hc_choice_new (void);
void hc_choice_offer_words (HcChoice *self, const char *const *words);
void hc_choice_offer_book (HcChoice *self, HcBook *book, HcChoices choices);
void hc_choice_offer_plan (HcChoice *self, HcPlan *plan, HcChoices choices);
void hc_choice_set_told (HcChoice *self, const char *told);
void hc_choice_set_label (HcChoice *self, GtkWidget *label);
void hc_choice_set_selected (HcChoice *self, guint selected);
guint hc_choice_get_selected (HcChoice *self);
void hc_choice_set_id (HcChoice *self, const char *id);
const char *hc_choice_get_id (HcChoice *self);

G_END_DECLS
