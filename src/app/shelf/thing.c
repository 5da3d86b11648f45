/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * One thing to add: its picture, its name, the sizes it comes in. */
#include "config.h"

#include "app/shelf/thing.h"

#include "app/shelf/thing-picture.h"
#include "app/window/window.h"

#include "book/make-fitting.h"
#include "book/make-opening.h"

#include <glib/gi18n.h>

struct _HcThing
{
  GtkBox parent_instance;

  GtkWidget *button;
  HcThingPicture *picture;
  GtkLabel *name;
  GtkLabel *size;
  GtkMenuButton *sizes;
  GtkWidget *by_size;

  const HcFittingType *fitting_type;
  const HcOpeningType *opening_type;
  HcPenKind pen;
  const char *why;
  char *device;
};

G_DEFINE_FINAL_TYPE (HcThing, hc_thing, GTK_TYPE_BOX)

enum
{
  PROP_DEVICE = 1,
  N_PROPS
};

static GParamSpec *props[N_PROPS];

/* What is dropped gets its own id from the floor. */
static HcFitting *
make_fitting (HcThing *self)
{
  const HcDevice *device = hc_fitting_type_find_device (self->fitting_type, self->device);

  return hc_fitting_type_make (self->fitting_type, device, "new", hc_point (0, 0));
}

static void
show_device (HcThing *self)
{
  const HcDevice *device = hc_fitting_type_find_device (self->fitting_type, self->device);
  g_autoptr (HcFitting) fitting = make_fitting (self);

  hc_thing_picture_set_fitting (self->picture, fitting);
  gtk_label_set_text (self->size, device != NULL ? hc_device_get_name (device) : "");
  gtk_widget_set_visible (GTK_WIDGET (self->size), device != NULL);
}

static void
set_device (HcThing *self, const char *device)
{
  if (g_strcmp0 (self->device, device) == 0)
    return;
  g_free (self->device);
  self->device = g_strdup (device);
  show_device (self);
  g_object_notify_by_pspec (G_OBJECT (self), props[PROP_DEVICE]);
}

static const char *
word_of (HcPenKind kind)
{
  return kind == HC_PEN_RUN ? "run" : "pen";
}

static void
add (GtkWidget *widget, const char *name, GVariant *parameter)
{
  HcThing *self = HC_THING (widget);

  if (self->fitting_type != NULL)
    {
      g_autofree char *word
          = g_strjoin ("/", self->fitting_type->kind, self->fitting_type->form, self->device, NULL);

      gtk_widget_activate_action (widget, "win.add-fitting", "s", word);
    }
  else if (self->opening_type != NULL)
    gtk_widget_activate_action (widget, "win.add-opening", "s", self->opening_type->kind);
  else
    gtk_widget_activate_action (widget, "win.tool", "s", word_of (self->pen));
}

static void
add_by_size (GtkWidget *widget, const char *name, GVariant *parameter)
{
  gtk_widget_activate_action (widget, "win.add-pen", "s", word_of (HC_THING (widget)->pen));
}

static GdkContentProvider *
prepare_drag (GtkDragSource *source, double x, double y, HcThing *self)
{
  if (self->fitting_type != NULL)
    {
      g_autoptr (HcFitting) fitting = make_fitting (self);

      return gdk_content_provider_new_typed (hc_fitting_get_type (), fitting);
    }
  if (self->opening_type != NULL)
    {
      g_autoptr (HcOpening) opening = hc_opening_type_make (self->opening_type, "new");

      return gdk_content_provider_new_typed (hc_opening_get_type (), opening);
    }
  return NULL;
}

/* Carried at the size it will have on the floor. */
static void
begin_drag (GtkDragSource *source, GdkDrag *drag, HcThing *self)
{
  g_autoptr (GdkPaintable) icon = NULL;
  GtkRoot *root = gtk_widget_get_root (GTK_WIDGET (self));

  if (self->fitting_type != NULL && HC_IS_WINDOW (root))
    {
      g_autoptr (HcFitting) fitting = make_fitting (self);

      icon = hc_fitting_paintable_new (fitting, hc_window_get_scale (HC_WINDOW (root)));
    }
  else
    icon = gtk_widget_paintable_new (GTK_WIDGET (self->picture));
  gtk_drag_source_set_icon (source, icon, gdk_paintable_get_intrinsic_width (icon) / 2,
                            gdk_paintable_get_intrinsic_height (icon) / 2);
}

static void
add_drag (HcThing *self)
{
  GtkDragSource *source = gtk_drag_source_new ();

  gtk_drag_source_set_actions (source, GDK_ACTION_COPY);
  gtk_event_controller_set_propagation_phase (GTK_EVENT_CONTROLLER (source), GTK_PHASE_CAPTURE);
  g_signal_connect (source, "prepare", G_CALLBACK (prepare_drag), self);
  g_signal_connect (source, "drag-begin", G_CALLBACK (begin_drag), self);
  gtk_widget_add_controller (self->button, GTK_EVENT_CONTROLLER (source));
}

static void
name_thing (HcThing *self, const char *name, const char *why)
{
  self->why = why;
  gtk_label_set_text (self->name, name);
  gtk_widget_set_tooltip_text (self->button, why);
  gtk_accessible_update_property (GTK_ACCESSIBLE (self->button),
                                  GTK_ACCESSIBLE_PROPERTY_DESCRIPTION, why, -1);
}

static void
list_sizes (GtkMenuButton *button, gpointer data)
{
  const HcFittingType *type = data;
  g_autoptr (GMenu) menu = g_menu_new ();

  for (guint i = 0; i < type->n_devices; i++)
    {
      g_autoptr (GMenuItem) item = g_menu_item_new (hc_device_get_name (&type->devices[i]), NULL);

      g_menu_item_set_action_and_target (item, "thing.device", "s", type->devices[i].id);
      g_menu_append_item (menu, item);
    }
  if (type->stretches)
    g_menu_append (menu, _("Made to measure"), "thing.device::");
  gtk_menu_button_set_menu_model (button, G_MENU_MODEL (menu));
}

/**
 * hc_thing_new_fitting: (skip)
 * @type: a thing to add
 *
 * Returns: a row that adds it
 */
GtkWidget *
hc_thing_new_fitting (const HcFittingType *type)
{
  HcThing *self = g_object_new (HC_TYPE_THING, NULL);

  self->fitting_type = type;
  name_thing (self, hc_fitting_type_get_name (type, 1), hc_fitting_type_get_why (type));
  self->device = g_strdup (type->stretches || type->n_devices == 0 ? "" : type->devices[0].id);
  if (type->n_devices > 0)
    gtk_menu_button_set_create_popup_func (self->sizes, list_sizes, (gpointer) type, NULL);
  gtk_widget_set_visible (GTK_WIDGET (self->sizes), type->n_devices > 0);
  show_device (self);
  add_drag (self);
  return GTK_WIDGET (self);
}

/**
 * hc_thing_new_opening: (skip)
 * @type: an opening to add
 *
 * Returns: a row that adds it
 */
GtkWidget *
hc_thing_new_opening (const HcOpeningType *type)
{
  HcThing *self = g_object_new (HC_TYPE_THING, NULL);
  g_autoptr (HcOpening) opening = hc_opening_type_make (type, "new");

  self->opening_type = type;
  name_thing (self, hc_opening_type_get_name (type, 1), hc_opening_type_get_why (type));
  hc_thing_picture_set_opening (self->picture, opening);
  add_drag (self);
  return GTK_WIDGET (self);
}

/**
 * hc_thing_new_pen: (skip)
 * @kind: a pen under a roof, or a run
 * @name: what it is called
 * @why: what it is for
 *
 * Returns: a row that draws one
 */
GtkWidget *
hc_thing_new_pen (HcPenKind kind, const char *name, const char *why)
{
  HcThing *self = g_object_new (HC_TYPE_THING, NULL);

  self->pen = kind;
  name_thing (self, name, why);
  hc_thing_picture_set_pen (self->picture, kind);
  gtk_widget_set_visible (self->by_size, TRUE);
  return GTK_WIDGET (self);
}

const char *
hc_thing_get_name (HcThing *self)
{
  return gtk_label_get_text (self->name);
}

/**
 * hc_thing_matches: (skip)
 * @self: a thing
 * @text: what the keeper looks for
 *
 * Returns: whether its name, its purpose or a size it comes in holds every word
 *   of it
 */
gboolean
hc_thing_matches (HcThing *self, const char *text)
{
  for (guint i = 0; self->fitting_type != NULL && i < self->fitting_type->n_devices; i++)
    if (g_str_match_string (text, hc_device_get_name (&self->fitting_type->devices[i]), TRUE))
      return TRUE;
  return g_str_match_string (text, gtk_label_get_text (self->name), TRUE)
         || g_str_match_string (text, self->why, TRUE);
}

static void
hc_thing_get_property (GObject *object, guint id, GValue *value, GParamSpec *pspec)
{
  if (id == PROP_DEVICE)
    g_value_set_string (value, HC_THING (object)->device);
  else
    G_OBJECT_WARN_INVALID_PROPERTY_ID (object, id, pspec);
}

static void
hc_thing_set_property (GObject *object, guint id, const GValue *value, GParamSpec *pspec)
{
  if (id == PROP_DEVICE)
    set_device (HC_THING (object), g_value_get_string (value));
  else
    G_OBJECT_WARN_INVALID_PROPERTY_ID (object, id, pspec);
}

static void
hc_thing_finalize (GObject *object)
{
  g_free (HC_THING (object)->device);
  G_OBJECT_CLASS (hc_thing_parent_class)->finalize (object);
}

static void
hc_thing_class_init (HcThingClass *klass)
{
  GObjectClass *object_class = G_OBJECT_CLASS (klass);
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (klass);

  object_class->get_property = hc_thing_get_property;
  object_class->set_property = hc_thing_set_property;
  object_class->finalize = hc_thing_finalize;
  props[PROP_DEVICE]
      = g_param_spec_string ("device", NULL, NULL, NULL,
                             G_PARAM_READWRITE | G_PARAM_EXPLICIT_NOTIFY
                                 | G_PARAM_STATIC_STRINGS);
  g_object_class_install_properties (object_class, N_PROPS, props);

  g_type_ensure (HC_TYPE_THING_PICTURE);
  gtk_widget_class_install_action (widget_class, "thing.add", NULL, add);
  gtk_widget_class_install_action (widget_class, "thing.add-by-size", NULL, add_by_size);
  gtk_widget_class_install_property_action (widget_class, "thing.device", "device");
  gtk_widget_class_set_template_from_resource (widget_class, "/org/hencote/Hencote/thing.ui");
  gtk_widget_class_bind_template_child (widget_class, HcThing, button);
  gtk_widget_class_bind_template_child (widget_class, HcThing, picture);
  gtk_widget_class_bind_template_child (widget_class, HcThing, name);
  gtk_widget_class_bind_template_child (widget_class, HcThing, size);
  gtk_widget_class_bind_template_child (widget_class, HcThing, sizes);
  gtk_widget_class_bind_template_child (widget_class, HcThing, by_size);
}

static void
hc_thing_init (HcThing *self)
{
  gtk_widget_init_template (GTK_WIDGET (self));
}
