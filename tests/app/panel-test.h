/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What tests of the window's parts share: the demo plan, judged, and a search
 * for widgets. */
#pragma once

#include "app/window/panel.h"

typedef struct
{
  HcBook *book;
  HcDocument *document;
  HcChecker *checker;
  GtkWidget *window;
  GtkWidget *panel;
} PanelFixture;

void panel_set_up (PanelFixture *fixture, gconstpointer type);
void panel_tear_down (PanelFixture *fixture, gconstpointer type);
GtkWidget *find_widget (GtkWidget *root, GType type, guint which);
guint count_shown (GtkWidget *root, GType type);
gboolean says (GtkWidget *root, const char *text);
void open_picker (GtkWidget *picker);
void pick (GtkWidget *picker, guint row);
