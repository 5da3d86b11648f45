/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The window's actions on the plan: undo, conditions, units, panels. */
#include "config.h"

#include "app/rules/rules-window.h"
#include "app/window/window-private.h"

#include "plan/edit-site.h"

#include <glib/gi18n.h>

static void
undo (GtkWidget *widget, const char *name, GVariant *parameter)
{
  hc_document_undo (HC_WINDOW (widget)->document);
}

static void
redo (GtkWidget *widget, const char *name, GVariant *parameter)
{
  hc_document_redo (HC_WINDOW (widget)->document);
}

static void
close_window (GtkWidget *widget, const char *name, GVariant *parameter)
{
  gtk_window_close (GTK_WINDOW (widget));
}

static void
show_rules (GtkWidget *widget, const char *name, GVariant *parameter)
{
  HcWindow *self = HC_WINDOW (widget);

  hc_rules_window_present (GTK_WINDOW (self), self->checker,
                           parameter != NULL ? g_variant_get_string (parameter, NULL) : NULL);
}

static void
change_condition (GSimpleAction *action, GVariant *state, gpointer data)
{
  HcWindow *self = data;
  HcCondition condition;

  if (!hc_condition_from_string (g_variant_get_string (state, NULL), &condition))
    return;
  hc_checker_set_condition (self->checker, condition);
  g_simple_action_set_state (action, state);
}

static void
change_units (GSimpleAction *action, GVariant *state, gpointer data)
{
  HcWindow *self = data;
  HcPlan *plan = hc_document_get_settled_plan (self->document);
  HcSiteValues site = *hc_plan_get_site (plan);
  g_autoptr (GError) error = NULL;
  g_autoptr (HcPlan) changed = NULL;

  site.units = g_variant_get_boolean (state) ? HC_UNITS_FEET : HC_UNITS_METRIC;
  changed = hc_plan_set_site (plan, &site, &error);
  if (changed == NULL)
    hc_window_say (self, error->message);
  else
    hc_document_apply (self->document, changed,
                       site.units == HC_UNITS_FEET ? _("Use Feet and Inches")
                                                   : _("Use Metric Measures"),
                       NULL);
}

static void
describe_selected (GtkWidget *widget, const char *name, GVariant *parameter)
{
  HcWindow *self = HC_WINDOW (widget);

  adw_flap_set_reveal_flap (self->tools_flap, TRUE);
  gtk_widget_grab_focus (GTK_WIDGET (self->properties));
}

/* Made when it is asked for: most windows are closed without it. */
static void
show_keys (GtkWidget *widget, const char *name, GVariant *parameter)
{
  GtkApplicationWindow *window = GTK_APPLICATION_WINDOW (widget);

  if (gtk_application_window_get_help_overlay (window) == NULL)
    {
      g_autoptr (GtkBuilder) builder
          = gtk_builder_new_from_resource ("/org/hencote/Hencote/help-overlay.ui");

      gtk_application_window_set_help_overlay (
          window, GTK_SHORTCUTS_WINDOW (gtk_builder_get_object (builder, "help_overlay")));
    }
  gtk_window_present (GTK_WINDOW (gtk_application_window_get_help_overlay (window)));
}

/* Keys for the view's own actions that work wherever the focus is. */
static void
act_on_view (GtkWidget *widget, const char *name, GVariant *parameter)
{
  HcWindow *self = HC_WINDOW (widget);
  g_autofree char *action = g_strconcat ("view.", name + strlen ("win."), NULL);

  if (self->document != NULL)
    hc_views_activate (self->views, action, parameter);
}

static const GActionEntry stateful[] = {
  { "condition", NULL, "s", "'day'", change_condition },
  { "feet", NULL, NULL, "false", change_units },
};

static void
follow_units (HcWindow *self)
{
  GAction *feet = g_action_map_lookup_action (G_ACTION_MAP (self), "feet");
  gboolean on = hc_plan_get_site (hc_document_get_plan (self->document))->units == HC_UNITS_FEET;

  g_simple_action_set_state (G_SIMPLE_ACTION (feet), g_variant_new_boolean (on));
}

static void
enable (HcWindow *self, const char *name, gboolean on)
{
  GAction *action = g_action_map_lookup_action (G_ACTION_MAP (self), name);

  if (G_IS_SIMPLE_ACTION (action))
    g_simple_action_set_enabled (G_SIMPLE_ACTION (action), on);
  else
    gtk_widget_action_set_enabled (GTK_WIDGET (self), name, on);
}

/* The buttons say which step they take back or do again. */
static void
name_steps (HcWindow *self)
{
  g_autofree char *undone = NULL;
  g_autofree char *redone = NULL;
  g_autofree char *undo_text = NULL;
  g_autofree char *redo_text = NULL;

  g_object_get (self->document, "undo-label", &undone, "redo-label", &redone, NULL);
  /* Translators: %s is a step, such as "Move" */
  undo_text = undone != NULL ? g_strdup_printf (_("Undo “%s”"), undone) : g_strdup (_("Undo"));
  redo_text = redone != NULL ? g_strdup_printf (_("Redo “%s”"), redone) : g_strdup (_("Redo"));
  gtk_widget_set_tooltip_text (self->undo, undo_text);
  gtk_widget_set_tooltip_text (self->redo, redo_text);
}

/**
 * hc_window_update_actions: (skip)
 * @self: a window
 *
 * Lets each action be used only while it would do something.
 */
void
hc_window_update_actions (HcWindow *self)
{
  static const char *const on_plan[]
      = { "condition", "show-birds", "tools", "needs", "win.rules", "win.save-as",
          "win.export", "win.find-thing" };
  static const char *const on_own_plan[] = { "feet", "win.save" };
  gboolean can_undo = FALSE, can_redo = FALSE;
  gboolean has_plan = self->document != NULL;

  if (has_plan)
    {
      g_object_get (self->document, "can-undo", &can_undo, "can-redo", &can_redo, NULL);
      follow_units (self);
      name_steps (self);
    }
  for (guint i = 0; i < G_N_ELEMENTS (on_plan); i++)
    enable (self, on_plan[i], has_plan);
  enable (self, "win.undo", can_undo);
  enable (self, "win.redo", can_redo);
  for (guint i = 0; i < G_N_ELEMENTS (on_own_plan); i++)
    enable (self, on_own_plan[i], has_plan && !hc_document_is_read_only (self->document));
}

static void
add_property_action (HcWindow *self, const char *name, gpointer object, const char *property)
{
  g_autoptr (GPropertyAction) action = g_property_action_new (name, object, property);

  g_action_map_add_action (G_ACTION_MAP (self), G_ACTION (action));
}

/**
 * hc_window_class_add_plan_actions: (skip)
 * @klass: the class of windows
 */
void
hc_window_class_add_plan_actions (GtkWidgetClass *klass)
{
  gtk_widget_class_install_action (klass, "win.undo", NULL, undo);
  gtk_widget_class_install_action (klass, "win.redo", NULL, redo);
  gtk_widget_class_install_action (klass, "win.close", NULL, close_window);
  gtk_widget_class_install_action (klass, "win.describe", NULL, describe_selected);
  gtk_widget_class_install_action (klass, "win.duplicate", NULL, act_on_view);
  gtk_widget_class_install_action (klass, "win.remove", NULL, act_on_view);
  gtk_widget_class_install_action (klass, "win.zoom-in", NULL, act_on_view);
  gtk_widget_class_install_action (klass, "win.zoom-out", NULL, act_on_view);
  gtk_widget_class_install_action (klass, "win.zoom-fit", NULL, act_on_view);
  gtk_widget_class_install_action (klass, "win.keys", NULL, show_keys);
  gtk_widget_class_install_action (klass, "win.rules", NULL, show_rules);
  gtk_widget_class_install_action (klass, "win.rules-figure", "s", show_rules);
}

/**
 * hc_window_add_plan_actions: (skip)
 * @self: a window
 */
void
hc_window_add_plan_actions (HcWindow *self)
{
  g_autoptr (GAction) birds = g_settings_create_action (self->settings, "show-birds");
  g_autoptr (GAction) view = hc_views_new_action (self->views);

  g_action_map_add_action_entries (G_ACTION_MAP (self), stateful, G_N_ELEMENTS (stateful), self);
  g_action_map_add_action (G_ACTION_MAP (self), birds);
  g_action_map_add_action (G_ACTION_MAP (self), view);
  add_property_action (self, "tools", self->tools_flap, "reveal-flap");
  add_property_action (self, "needs", self->needs_flap, "reveal-flap");
  hc_window_update_actions (self);
}
