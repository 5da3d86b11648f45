/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * One name picked out of several, by mouse, by arrow keys or by typing a part of it. */
#include "config.h"

#include "app/fields/picker.h"

#include "app/fields/hand-on-focus.h"
#include "app/fields/picker-list.h"
#include "app/fields/value-button.h"

#include <glib/gi18n.h>

#define SHOWN_CHARS 5

typedef struct
{
  char *id;
  char *name;
  char *about;
} Offered;

struct _HcPicker
{
  GtkWidget parent_instance;

  GtkMenuButton *button;
  GtkLabel *shown;
  HcPickerList *list;
  GPtrArray *offered;
  guint picked;
  char *what;
  guint telling;
};

G_DEFINE_FINAL_TYPE (HcPicker, hc_picker, GTK_TYPE_WIDGET)

enum
{
  PROP_WHAT = 1,
  N_PROPS
};

enum
{
  PICKED,
  N_SIGNALS
};

static GParamSpec *props[N_PROPS];
static guint signals[N_SIGNALS];

static void
offered_free (gpointer data)
{
  Offered *self = data;

  g_free (self->id);
  g_free (self->name);
  g_free (self->about);
  g_free (self);
}

static const Offered *
offered_at (HcPicker *self, guint index)
{
  return index < self->offered->len ? self->offered->pdata[index] : NULL;
}

static void
show_picked (HcPicker *self)
{
  const Offered *picked = offered_at (self, self->picked);

  gtk_label_set_text (self->shown, picked != NULL ? picked->name : "");
  hc_name_value_button (GTK_WIDGET (self->button), self->what,
                        picked != NULL ? picked->name : NULL);
}

static gboolean
tell_picked (gpointer self)
{
  HC_PICKER (self)->telling = 0;
  g_signal_emit (self, signals[PICKED], 0);
  return G_SOURCE_REMOVE;
}

/* Told once the list has closed: what is picked may change what is offered. */
static void
chosen (HcPicker *self, guint index)
{
  gtk_menu_button_popdown (self->button);
  gtk_widget_grab_focus (GTK_WIDGET (self->button));
  if (index == self->picked)
    return;
  hc_picker_set_picked (self, index);
  if (self->telling == 0)
    self->telling = g_idle_add_full (G_PRIORITY_DEFAULT, tell_picked, self, NULL);
}

static void
fill_list (HcPicker *self)
{
  self->list = HC_PICKER_LIST (hc_picker_list_new (self->what));
  for (guint i = 0; i < self->offered->len; i++)
    hc_picker_list_add (self->list, offered_at (self, i)->name, offered_at (self, i)->about);
  g_signal_connect_swapped (self->list, "chosen", G_CALLBACK (chosen), self);
  g_signal_connect_swapped (self->list, "given-up", G_CALLBACK (gtk_menu_button_popdown),
                            self->button);
}

static void
open_list (GtkMenuButton *button, gpointer data)
{
  HcPicker *self = HC_PICKER (data);
  GtkPopover *popover = gtk_menu_button_get_popover (button);

  if (popover == NULL)
    {
      popover = GTK_POPOVER (gtk_popover_new ());
      gtk_widget_add_css_class (GTK_WIDGET (popover), "hc-picker");
      gtk_popover_set_has_arrow (popover, FALSE);
      gtk_menu_button_set_popover (button, GTK_WIDGET (popover));
    }
  if (self->list == NULL)
    {
      fill_list (self);
      gtk_popover_set_child (popover, GTK_WIDGET (self->list));
    }
  hc_picker_list_begin (self->list, self->picked);
}

/**
 * hc_picker_set_what: (skip)
 * @self: a picker
 * @what: (nullable): what is picked, such as "Breed", for a screen reader
 */
void
hc_picker_set_what (HcPicker *self, const char *what)
{
  if (what == NULL)
    return;
  g_free (self->what);
  self->what = g_strdup (what);
  gtk_accessible_update_property (GTK_ACCESSIBLE (self), GTK_ACCESSIBLE_PROPERTY_LABEL, what, -1);
  show_picked (self);
}

/* The list is built anew when it next opens. */
static void
forget_list (HcPicker *self)
{
  if (self->list == NULL)
    return;
  gtk_menu_button_popdown (self->button);
  gtk_popover_set_child (gtk_menu_button_get_popover (self->button), NULL);
  self->list = NULL;
}

/**
 * hc_picker_clear: (skip)
 * @self: a picker
 *
 * Offers nothing more; the first that is offered next is picked.
 */
void
hc_picker_clear (HcPicker *self)
{
  forget_list (self);
  g_ptr_array_set_size (self->offered, 0);
  hc_picker_set_picked (self, 0);
}

/**
 * hc_picker_offer: (skip)
 * @self: a picker
 * @id: what the name stands for
 * @name: what the keeper reads
 * @about: (nullable): a few words on what it is, below the name
 */
void
hc_picker_offer (HcPicker *self, const char *id, const char *name, const char *about)
{
  Offered *offered = g_new0 (Offered, 1);

  offered->id = g_strdup (id);
  offered->name = g_strdup (name);
  offered->about = g_strdup (about);
  forget_list (self);
  g_ptr_array_add (self->offered, offered);
  if (self->picked == self->offered->len - 1)
    show_picked (self);
}

/**
 * hc_picker_offer_words: (skip)
 * @self: a picker
 * @words: what the keeper reads for each, marked for translation
 *
 * Offers these in place of what was offered.
 */
void
hc_picker_offer_words (HcPicker *self, const char *const *words)
{
  hc_picker_clear (self);
  for (guint i = 0; words[i] != NULL; i++)
    hc_picker_offer (self, words[i], _(words[i]), NULL);
}

guint
hc_picker_get_n_offered (HcPicker *self)
{
  return self->offered->len;
}

/**
 * hc_picker_set_picked: (skip)
 * @self: a picker
 * @index: the place of a name among those offered
 *
 * Shows a choice, without that being the keeper's.
 */
void
hc_picker_set_picked (HcPicker *self, guint index)
{
  self->picked = index;
  show_picked (self);
}

guint
hc_picker_get_picked (HcPicker *self)
{
  return self->picked;
}

/**
 * hc_picker_set_id: (skip)
 * @self: a picker
 * @id: (nullable): what a name stands for; the first is picked if none stands for it
 */
void
hc_picker_set_id (HcPicker *self, const char *id)
{
  guint found = 0;

  for (guint i = 0; i < self->offered->len; i++)
    if (g_strcmp0 (offered_at (self, i)->id, id != NULL ? id : "") == 0)
      found = i;
  hc_picker_set_picked (self, found);
}

/**
 * hc_picker_get_id: (skip)
 * @self: a picker
 *
 * Returns: what the name picked stands for, "" if there is none
 */
const char *
hc_picker_get_id (HcPicker *self)
{
  const Offered *picked = offered_at (self, self->picked);

  return picked != NULL ? picked->id : "";
}

static gboolean
hc_picker_grab_focus (GtkWidget *widget)
{
  return hc_hand_on_focus (widget, GTK_WIDGET (HC_PICKER (widget)->button));
}

static void
hc_picker_set_property (GObject *object, guint id, const GValue *value, GParamSpec *pspec)
{
  if (id == PROP_WHAT)
    hc_picker_set_what (HC_PICKER (object), g_value_get_string (value));
  else
    G_OBJECT_WARN_INVALID_PROPERTY_ID (object, id, pspec);
}

static void
hc_picker_dispose (GObject *object)
{
  HcPicker *self = HC_PICKER (object);

  g_clear_handle_id (&self->telling, g_source_remove);
  self->list = NULL;
  if (self->button != NULL)
    gtk_widget_unparent (GTK_WIDGET (self->button));
  self->button = NULL;
  g_clear_pointer (&self->offered, g_ptr_array_unref);
  g_clear_pointer (&self->what, g_free);
  G_OBJECT_CLASS (hc_picker_parent_class)->dispose (object);
}

static void
hc_picker_class_init (HcPickerClass *klass)
{
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (klass);

  G_OBJECT_CLASS (klass)->dispose = hc_picker_dispose;
  G_OBJECT_CLASS (klass)->set_property = hc_picker_set_property;
  widget_class->grab_focus = hc_picker_grab_focus;
  props[PROP_WHAT] = g_param_spec_string ("what", NULL, NULL, NULL,
                                          G_PARAM_WRITABLE | G_PARAM_STATIC_STRINGS);
  g_object_class_install_properties (G_OBJECT_CLASS (klass), N_PROPS, props);
  signals[PICKED] = g_signal_new ("picked", G_TYPE_FROM_CLASS (klass), G_SIGNAL_RUN_LAST, 0, NULL,
                                  NULL, NULL, G_TYPE_NONE, 0);
  gtk_widget_class_set_accessible_role (widget_class, GTK_ACCESSIBLE_ROLE_COMBO_BOX);
  gtk_widget_class_set_layout_manager_type (widget_class, GTK_TYPE_BIN_LAYOUT);
}

/* The name shown is cut short, those to pick from are not. */
static GtkWidget *
new_shown (HcPicker *self)
{
  GtkWidget *content = gtk_box_new (GTK_ORIENTATION_HORIZONTAL, 4);

  self->shown = GTK_LABEL (gtk_label_new (NULL));
  gtk_label_set_xalign (self->shown, 0);
  gtk_label_set_ellipsize (self->shown, PANGO_ELLIPSIZE_END);
  gtk_label_set_width_chars (self->shown, SHOWN_CHARS);
  gtk_widget_set_hexpand (GTK_WIDGET (self->shown), TRUE);
  gtk_box_append (GTK_BOX (content), GTK_WIDGET (self->shown));
  gtk_box_append (GTK_BOX (content), gtk_image_new_from_icon_name ("pan-down-symbolic"));
  return content;
}

static void
hc_picker_init (HcPicker *self)
{
  self->offered = g_ptr_array_new_with_free_func (offered_free);
  self->button = g_object_new (GTK_TYPE_MENU_BUTTON, "accessible-role", GTK_ACCESSIBLE_ROLE_GROUP,
                               NULL);
  gtk_menu_button_set_child (self->button, new_shown (self));
  gtk_menu_button_set_create_popup_func (self->button, open_list, self, NULL);
  gtk_widget_set_parent (GTK_WIDGET (self->button), GTK_WIDGET (self));
}

/**
 * hc_picker_new: (skip)
 * @what: (nullable): what is picked, such as "Breed", for a screen reader
 */
GtkWidget *
hc_picker_new (const char *what)
{
  return g_object_new (HC_TYPE_PICKER, "what", what, NULL);
}
