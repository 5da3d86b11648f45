/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The views of the open plan: built when first shown, idle while out of sight. */
#include "config.h"

#include "app/views/views.h"

#include "app/fields/hand-on-focus.h"
#include "app/views/view-table.h"
#include "app/window/late-panel.h"

#include <glib/gi18n.h>

struct _HcViews
{
  HcPanel parent_instance;

  GtkStack *stack;
};

G_DEFINE_FINAL_TYPE (HcViews, hc_views, HC_TYPE_PANEL)

static HcLatePanel *
place_in_sight (HcViews *self)
{
  return HC_LATE_PANEL (gtk_stack_get_visible_child (self->stack));
}

/**
 * hc_views_get: (skip)
 * @self: the views
 * @id: which of them
 *
 * Returns: (transfer none): the view, whether in sight or not
 */
HcPanel *
hc_views_get (HcViews *self, const char *id)
{
  return hc_late_panel_get_panel (
      HC_LATE_PANEL (gtk_stack_get_child_by_name (self->stack, id)));
}

/**
 * hc_views_get_shown: (skip)
 * @self: the views
 *
 * Returns: (transfer none): the view in sight
 */
HcPanel *
hc_views_get_shown (HcViews *self)
{
  return hc_late_panel_get_panel (place_in_sight (self));
}

/**
 * hc_views_show: (skip)
 * @self: the views
 * @id: which of them
 *
 * Returns: (transfer none): the view, which is in sight now
 */
HcPanel *
hc_views_show (HcViews *self, const char *id)
{
  gtk_stack_set_visible_child_name (self->stack, id);
  return hc_views_get_shown (self);
}

/**
 * hc_views_new_action: (skip)
 * @self: the views
 *
 * Returns: (transfer full): the action `view`, whose state is the view in sight
 */
GAction *
hc_views_new_action (HcViews *self)
{
  return G_ACTION (g_property_action_new ("view", self->stack, "visible-child-name"));
}

/**
 * hc_views_activate: (skip)
 * @self: the views
 * @action: an action of views, such as `view.zoom-in`
 * @parameter: (nullable): its parameter
 *
 * Returns: whether the view in sight has that action
 */
gboolean
hc_views_activate (HcViews *self, const char *action, GVariant *parameter)
{
  return gtk_widget_activate_action_variant (GTK_WIDGET (hc_views_get_shown (self)), action,
                                             parameter);
}

/* A view out of sight does not follow the plan; it catches up when it is shown. */
static void
hand_out_checker (HcViews *self)
{
  GtkWidget *in_sight = gtk_stack_get_visible_child (self->stack);
  GtkWidget *place = gtk_widget_get_first_child (GTK_WIDGET (self->stack));

  for (; place != NULL; place = gtk_widget_get_next_sibling (place))
    hc_panel_set_checker (HC_PANEL (place),
                          place == in_sight ? hc_panel_get_checker (HC_PANEL (self)) : NULL);
}

/* The keys go where the eyes go, unless they are on the tabs. */
static void
take_keys_along (HcViews *self)
{
  GtkRoot *root = gtk_widget_get_root (GTK_WIDGET (self));
  GtkWidget *focus = root != NULL ? gtk_root_get_focus (root) : NULL;

  if (focus == NULL || gtk_widget_is_ancestor (focus, GTK_WIDGET (self->stack)))
    gtk_widget_grab_focus (GTK_WIDGET (hc_views_get_shown (self)));
}

static void
follow_shown (HcViews *self)
{
  hand_out_checker (self);
  if (hc_panel_get_checker (HC_PANEL (self)) != NULL)
    take_keys_along (self);
}

static gboolean
hc_views_grab_focus (GtkWidget *widget)
{
  return hc_hand_on_focus (widget, GTK_WIDGET (hc_views_get_shown (HC_VIEWS (widget))));
}

static void
add_view (HcViews *self, const HcViewKind *kind)
{
  GtkWidget *place = g_object_new (HC_TYPE_LATE_PANEL, "panel-type", kind->get_type (), NULL);

  gtk_stack_add_titled (self->stack, place, kind->id, _(kind->title));
}

static void
hc_views_class_init (HcViewsClass *klass)
{
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (klass);

  widget_class->grab_focus = hc_views_grab_focus;
  gtk_widget_class_set_template_from_resource (widget_class, "/org/hencote/Hencote/views.ui");
  gtk_widget_class_bind_template_child (widget_class, HcViews, stack);
  gtk_widget_class_bind_template_callback (widget_class, follow_shown);
}

static void
hc_views_init (HcViews *self)
{
  guint n_kinds;
  const HcViewKind *kinds = hc_view_kinds_list (&n_kinds);

  gtk_widget_init_template (GTK_WIDGET (self));
  for (guint i = 0; i < n_kinds; i++)
    add_view (self, &kinds[i]);
  g_signal_connect (self, "notify::checker", G_CALLBACK (hand_out_checker), NULL);
}
