/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * One thing to add: its picture, its name, the sizes it comes in. */
#pragma once

#include "book/book.h"
#include "plan/pen.h"

#include <gtk/gtk.h>

G_BEGIN_DECLS

#define HC_TYPE_THING (hc_thing_get_type ())
G_DECLARE_FINAL_TYPE (HcThing, hc_thing, HC, THING, GtkBox)

GtkWidget *hc_thing_new_fitting (const HcFittingType *type);
GtkWidget *hc_thing_new_opening (const HcOpeningType *type);
GtkWidget *hc_thing_new_pen (HcPenKind kind, const char *name, const char *why);
const char *hc_thing_get_name (HcThing *self);
gboolean hc_thing_matches (HcThing *self, const char *text);

G_END_DECLS
