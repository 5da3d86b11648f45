/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Setting a figure of one's own, with a reason. */
#include "config.h"

#include "app/rules/own-figure-editor.h"

#include "app/fields/hand-on-focus.h"
#include "app/fields/plain-names.h"
#include "app/needs/set-text.h"

#include <glib/gi18n.h>

struct _HcOwnFigureEditor
{
  GtkBox parent_instance;

  GtkEntry *value;
  GtkLabel *unit;
  GtkEntry *reason;
  GtkWidget *take_back;
};

G_DEFINE_FINAL_TYPE (HcOwnFigureEditor, hc_own_figure_editor, GTK_TYPE_BOX)

enum
{
  SET,
  UNSET,
  N_SIGNALS
};

static guint signals[N_SIGNALS];

/* A comma or a point, as the keeper is used to. */
static gboolean
read_value (const char *text, double *value)
{
  g_autofree char *plain = g_strdelimit (g_strstrip (g_strdup (text)), ",", '.');
  char *end;

  *value = g_ascii_strtod (plain, &end);
  return end != plain && *end == '\0' && *value >= 0 && *value < 1e9;
}

static void
set_own (HcOwnFigureEditor *self)
{
  double value;

  if (!read_value (gtk_editable_get_text (GTK_EDITABLE (self->value)), &value))
    {
      gtk_widget_add_css_class (GTK_WIDGET (self->value), "error");
      gtk_widget_set_tooltip_text (GTK_WIDGET (self->value), _("Type a number, for example 0.3"));
      gtk_widget_grab_focus (GTK_WIDGET (self->value));
      return;
    }
  gtk_widget_remove_css_class (GTK_WIDGET (self->value), "error");
  gtk_widget_set_tooltip_text (GTK_WIDGET (self->value), NULL);
  g_signal_emit (self, signals[SET], 0, value,
                 gtk_editable_get_text (GTK_EDITABLE (self->reason)));
}

static void
set_own_action (GtkWidget *widget, const char *name, GVariant *parameter)
{
  set_own (HC_OWN_FIGURE_EDITOR (widget));
}

static void
unset_own (GtkWidget *widget, const char *name, GVariant *parameter)
{
  g_signal_emit (widget, signals[UNSET], 0);
}

/**
 * hc_own_figure_editor_show: (skip)
 * @self: the editor
 * @own: (nullable): the keeper's own figure as it is
 */
void
hc_own_figure_editor_show (HcOwnFigureEditor *self, HcOwnFigure *own)
{
  g_autofree char *value = NULL;

  gtk_widget_set_visible (self->take_back, own != NULL);
  if (own == NULL)
    return;
  value = g_strdup_printf ("%.10g", hc_own_figure_get (own)->value);
  gtk_editable_set_text (GTK_EDITABLE (self->value), value);
  gtk_editable_set_text (GTK_EDITABLE (self->reason), hc_own_figure_get (own)->reason);
}

static gboolean
hc_own_figure_editor_grab_focus (GtkWidget *widget)
{
  return hc_hand_on_focus (widget, GTK_WIDGET (HC_OWN_FIGURE_EDITOR (widget)->value));
}

static void
hc_own_figure_editor_class_init (HcOwnFigureEditorClass *klass)
{
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (klass);

  widget_class->grab_focus = hc_own_figure_editor_grab_focus;
  signals[SET] = g_signal_new ("set", G_TYPE_FROM_CLASS (klass), G_SIGNAL_RUN_LAST, 0, NULL, NULL,
                               NULL, G_TYPE_NONE, 2, G_TYPE_DOUBLE, G_TYPE_STRING);
  signals[UNSET] = g_signal_new ("unset", G_TYPE_FROM_CLASS (klass), G_SIGNAL_RUN_LAST, 0, NULL,
                                 NULL, NULL, G_TYPE_NONE, 0);
  gtk_widget_class_install_action (widget_class, "own.set", NULL, set_own_action);
  gtk_widget_class_install_action (widget_class, "own.unset", NULL, unset_own);
  gtk_widget_class_set_template_from_resource (widget_class,
                                               "/org/hencote/Hencote/own-figure-editor.ui");
  gtk_widget_class_bind_template_child (widget_class, HcOwnFigureEditor, value);
  gtk_widget_class_bind_template_child (widget_class, HcOwnFigureEditor, unit);
  gtk_widget_class_bind_template_child (widget_class, HcOwnFigureEditor, reason);
  gtk_widget_class_bind_template_child (widget_class, HcOwnFigureEditor, take_back);
  gtk_widget_class_bind_template_callback (widget_class, set_own);
}

static void
hc_own_figure_editor_init (HcOwnFigureEditor *self)
{
  gtk_widget_init_template (GTK_WIDGET (self));
  hc_name_plainly (GTK_WIDGET (self));
}

/**
 * hc_own_figure_editor_new: (skip)
 * @unit: what the figure is stated in
 *
 * Returns: an editor with no figure set
 */
GtkWidget *
hc_own_figure_editor_new (const char *unit)
{
  HcOwnFigureEditor *self = g_object_new (HC_TYPE_OWN_FIGURE_EDITOR, NULL);

  hc_set_text (self->unit, unit);
  return GTK_WIDGET (self);
}
