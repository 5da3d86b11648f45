/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What the files of the window share. */
#pragma once

#include "app/flock/flock-page.h"
#include "app/needs/needs-panel.h"
#include "app/properties/properties.h"
#include "app/shelf/shelf.h"
#include "app/site/site-page.h"
#include "app/start/start-page.h"
#include "app/views/views.h"
#include "app/window/late-panel.h"
#include "app/window/strip.h"
#include "app/window/window.h"

G_BEGIN_DECLS

struct _HcWindow
{
  AdwApplicationWindow parent_instance;

  HcDocument *document;
  HcChecker *checker;
  GSettings *settings;
  gboolean has_ticked;
  gboolean has_painted;
  guint check_tick;
  guint draft_timer;
  gboolean closing;
  gboolean close_after_save;

  AdwToastOverlay *toasts;
  AdwWindowTitle *title;
  GtkWidget *undo;
  GtkWidget *redo;
  GtkStack *pages;
  GtkStack *tools;
  AdwFlap *tools_flap;
  AdwFlap *needs_flap;
  HcStartPage *start_page;
  HcPanel *shelf;
  HcPanel *flock_page;
  HcPanel *site_page;
  HcProperties *properties;
  HcPanel *needs_panel;
  HcViews *views;
  char *wall;
  HcStrip *strip;
};

char *hc_window_get_plan_title (HcWindow *self) G_GNUC_WARN_UNUSED_RESULT;
void hc_window_class_add_plan_actions (GtkWidgetClass *klass);
void hc_window_class_add_adding_actions (GtkWidgetClass *klass);
void hc_window_class_add_file_actions (GtkWidgetClass *klass);
void hc_window_add_plan_actions (HcWindow *self);
void hc_window_update_actions (HcWindow *self);

void hc_window_watch_drafts (HcWindow *self);
void hc_window_keep_draft (HcWindow *self);
void hc_window_ask_nothing (HcWindow *self, const char *heading, const char *body);
void hc_window_ask_before_closing (HcWindow *self);
void hc_window_look_at_disk (HcWindow *self);

G_END_DECLS
