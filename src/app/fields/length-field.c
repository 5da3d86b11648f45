/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A field for a length, typed as keepers write it. */
#include "config.h"

#include "app/fields/length-field.h"

#include "app/fields/hand-on-focus.h"

#include "base/error.h"

#include <glib/gi18n.h>
#include <math.h>

struct _HcLengthField
{
  GtkWidget parent_instance;

  GtkWidget *label;
  GtkWidget *entry;
  GtkWidget *fault;
  double mm;
  double least_mm;
  double most_mm;
  HcUnits units;
  gboolean is_signed;
};

G_DEFINE_FINAL_TYPE (HcLengthField, hc_length_field, GTK_TYPE_WIDGET)

enum
{
  PROP_LABEL = 1,
  N_PROPS
};

enum
{
  ENTERED,
  N_SIGNALS
};

static GParamSpec *props[N_PROPS];
static guint signals[N_SIGNALS];

static void
show_length (HcLengthField *self)
{
  g_autofree char *text = hc_length_format (self->mm, self->units);

  gtk_editable_set_text (GTK_EDITABLE (self->entry), text);
}

static void
show_fault (HcLengthField *self, const char *sentence)
{
  gtk_label_set_text (GTK_LABEL (self->fault), sentence != NULL ? sentence : "");
  gtk_widget_set_visible (self->fault, sentence != NULL);
  gtk_accessible_update_state (GTK_ACCESSIBLE (self->entry), GTK_ACCESSIBLE_STATE_INVALID,
                               sentence != NULL ? GTK_ACCESSIBLE_INVALID_TRUE
                                                : GTK_ACCESSIBLE_INVALID_FALSE,
                               -1);
  if (sentence != NULL)
    gtk_widget_add_css_class (self->entry, "error");
  else
    gtk_widget_remove_css_class (self->entry, "error");
}

static gboolean
in_range (HcLengthField *self, double mm, GError **error)
{
  g_autofree char *least = NULL;
  g_autofree char *most = NULL;

  if (mm >= self->least_mm && mm <= self->most_mm)
    return TRUE;
  least = hc_length_format (self->least_mm, self->units);
  most = hc_length_format (self->most_mm, self->units);
  g_set_error (error, HC_ERROR, HC_ERROR_TYPED,
               /* Translators: two lengths */
               _("Type a length from %s to %s."), least, most);
  return FALSE;
}

static gboolean
read_typed (HcLengthField *self, double *mm, GError **error)
{
  const char *text = gtk_editable_get_text (GTK_EDITABLE (self->entry));
  gboolean understood = self->is_signed ? hc_position_parse (text, self->units, mm, error)
                                        : hc_length_parse (text, self->units, mm, error);

  return understood && in_range (self, *mm, error);
}

static void
take_typed (HcLengthField *self)
{
  g_autoptr (GError) error = NULL;
  g_autofree char *shown = hc_length_format (self->mm, self->units);
  double mm;

  if (g_str_equal (gtk_editable_get_text (GTK_EDITABLE (self->entry)), shown))
    {
      show_fault (self, NULL);
      return;
    }
  if (!read_typed (self, &mm, &error))
    {
      show_fault (self, error->message);
      return;
    }
  show_fault (self, NULL);
  self->mm = mm;
  show_length (self);
  g_signal_emit (self, signals[ENTERED], 0, mm);
}

static void
focus_left (GtkEventControllerFocus *controller, HcLengthField *self)
{
  take_typed (self);
}

static gboolean
escape_pressed (GtkEventControllerKey *controller, guint key, guint code, GdkModifierType state,
                HcLengthField *self)
{
  if (key != GDK_KEY_Escape || !gtk_widget_has_css_class (self->entry, "error"))
    return GDK_EVENT_PROPAGATE;
  show_length (self);
  show_fault (self, NULL);
  return GDK_EVENT_STOP;
}

void
hc_length_field_set_length (HcLengthField *self, double mm)
{
  if (self->mm == mm)
    return;
  self->mm = mm;
  show_length (self);
  show_fault (self, NULL);
}

double
hc_length_field_get_length (HcLengthField *self)
{
  return self->mm;
}

void
hc_length_field_set_units (HcLengthField *self, HcUnits units)
{
  if (self->units == units)
    return;
  self->units = units;
  show_length (self);
  show_fault (self, NULL);
}

void
hc_length_field_set_signed (HcLengthField *self, gboolean is_signed)
{
  self->is_signed = is_signed;
}

void
hc_length_field_set_range (HcLengthField *self, double least_mm, double most_mm)
{
  self->least_mm = least_mm;
  self->most_mm = most_mm;
}

static void
hc_length_field_get_property (GObject *object, guint id, GValue *value, GParamSpec *pspec)
{
  HcLengthField *self = HC_LENGTH_FIELD (object);

  if (id == PROP_LABEL)
    g_value_set_string (value, gtk_label_get_text (GTK_LABEL (self->label)));
  else
    G_OBJECT_WARN_INVALID_PROPERTY_ID (object, id, pspec);
}

static void
hc_length_field_set_property (GObject *object, guint id, const GValue *value, GParamSpec *pspec)
{
  HcLengthField *self = HC_LENGTH_FIELD (object);

  if (id == PROP_LABEL)
    gtk_label_set_text (GTK_LABEL (self->label), g_value_get_string (value));
  else
    G_OBJECT_WARN_INVALID_PROPERTY_ID (object, id, pspec);
}

static gboolean
hc_length_field_grab_focus (GtkWidget *widget)
{
  return hc_hand_on_focus (widget, HC_LENGTH_FIELD (widget)->entry);
}

static void
hc_length_field_dispose (GObject *object)
{
  GtkWidget *child;

  while ((child = gtk_widget_get_first_child (GTK_WIDGET (object))) != NULL)
    gtk_widget_unparent (child);
  G_OBJECT_CLASS (hc_length_field_parent_class)->dispose (object);
}

static void
hc_length_field_class_init (HcLengthFieldClass *klass)
{
  GObjectClass *object_class = G_OBJECT_CLASS (klass);
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (klass);

  object_class->get_property = hc_length_field_get_property;
  object_class->set_property = hc_length_field_set_property;
  object_class->dispose = hc_length_field_dispose;
  widget_class->grab_focus = hc_length_field_grab_focus;

  props[PROP_LABEL] = g_param_spec_string ("label", NULL, NULL, "",
                                           G_PARAM_READWRITE | G_PARAM_STATIC_STRINGS);
  g_object_class_install_properties (object_class, N_PROPS, props);
  signals[ENTERED] = g_signal_new ("entered", G_TYPE_FROM_CLASS (klass), G_SIGNAL_RUN_LAST, 0,
                                   NULL, NULL, NULL, G_TYPE_NONE, 1, G_TYPE_DOUBLE);

  gtk_widget_class_set_layout_manager_type (widget_class, GTK_TYPE_BOX_LAYOUT);
  gtk_widget_class_set_template_from_resource (widget_class,
                                               "/org/hencote/Hencote/length-field.ui");
  gtk_widget_class_bind_template_child (widget_class, HcLengthField, label);
  gtk_widget_class_bind_template_child (widget_class, HcLengthField, entry);
  gtk_widget_class_bind_template_child (widget_class, HcLengthField, fault);
  gtk_widget_class_bind_template_callback (widget_class, take_typed);
  gtk_widget_class_bind_template_callback (widget_class, focus_left);
  gtk_widget_class_bind_template_callback (widget_class, escape_pressed);
}

static void
hc_length_field_init (HcLengthField *self)
{
  self->mm = NAN;
  self->least_mm = 0;
  self->most_mm = G_MAXDOUBLE;
  gtk_widget_init_template (GTK_WIDGET (self));
  gtk_orientable_set_orientation (
      GTK_ORIENTABLE (gtk_widget_get_layout_manager (GTK_WIDGET (self))),
      GTK_ORIENTATION_VERTICAL);
}

GtkWidget *
hc_length_field_new (const char *label)
{
  return g_object_new (HC_TYPE_LENGTH_FIELD, "label", label, NULL);
}
