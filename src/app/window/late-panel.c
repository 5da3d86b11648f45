/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The place of a panel that is built when it is first looked at. */
#include "config.h"

#include "app/window/late-panel.h"

struct _HcLatePanel
{
  HcPanel parent_instance;

  GType panel_type;
  HcPanel *panel;
};

G_DEFINE_FINAL_TYPE (HcLatePanel, hc_late_panel, HC_TYPE_PANEL)

enum
{
  PROP_PANEL_TYPE = 1,
  N_PROPS
};

static GParamSpec *props[N_PROPS];

/**
 * hc_late_panel_get_panel: (skip)
 * @self: the place of a panel
 *
 * Returns: (transfer none): the panel, which is built now if it was never
 *   looked at
 */
HcPanel *
hc_late_panel_get_panel (HcLatePanel *self)
{
  if (self->panel == NULL)
    {
      self->panel = g_object_new (self->panel_type, NULL);
      adw_bin_set_child (ADW_BIN (self), GTK_WIDGET (self->panel));
      hc_panel_set_checker (self->panel, hc_panel_get_checker (HC_PANEL (self)));
    }
  return self->panel;
}

static void
build_in_sight (HcLatePanel *self)
{
  if (hc_panel_get_checker (HC_PANEL (self)) != NULL && gtk_widget_get_mapped (GTK_WIDGET (self)))
    hc_late_panel_get_panel (self);
}

static void
follow_checker (HcLatePanel *self)
{
  if (self->panel != NULL)
    hc_panel_set_checker (self->panel, hc_panel_get_checker (HC_PANEL (self)));
  else
    build_in_sight (self);
}

static void
hc_late_panel_map (GtkWidget *widget)
{
  GTK_WIDGET_CLASS (hc_late_panel_parent_class)->map (widget);
  build_in_sight (HC_LATE_PANEL (widget));
}

static void
hc_late_panel_get_property (GObject *object, guint id, GValue *value, GParamSpec *pspec)
{
  if (id == PROP_PANEL_TYPE)
    g_value_set_gtype (value, HC_LATE_PANEL (object)->panel_type);
  else
    G_OBJECT_WARN_INVALID_PROPERTY_ID (object, id, pspec);
}

static void
hc_late_panel_set_property (GObject *object, guint id, const GValue *value, GParamSpec *pspec)
{
  if (id == PROP_PANEL_TYPE)
    HC_LATE_PANEL (object)->panel_type = g_value_get_gtype (value);
  else
    G_OBJECT_WARN_INVALID_PROPERTY_ID (object, id, pspec);
}

static void
hc_late_panel_class_init (HcLatePanelClass *klass)
{
  GObjectClass *object_class = G_OBJECT_CLASS (klass);

  object_class->get_property = hc_late_panel_get_property;
  object_class->set_property = hc_late_panel_set_property;
  GTK_WIDGET_CLASS (klass)->map = hc_late_panel_map;

  props[PROP_PANEL_TYPE]
      = g_param_spec_gtype ("panel-type", NULL, NULL, HC_TYPE_PANEL,
                            G_PARAM_READWRITE | G_PARAM_CONSTRUCT_ONLY | G_PARAM_STATIC_STRINGS);
  g_object_class_install_properties (object_class, N_PROPS, props);
}

static void
hc_late_panel_init (HcLatePanel *self)
{
  g_signal_connect (self, "notify::checker", G_CALLBACK (follow_checker), NULL);
}
