/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The field of one property. */
#include "config.h"

#include "app/properties/property-field.h"

#include "app/fields/date-field.h"
#include "app/fields/length-field.h"
#include "app/properties/choices.h"

#include <glib/gi18n.h>

struct _HcPropertyField
{
  GtkBox parent_instance;

  const HcProperty *property;
  const HcMember *member;
  GtkWidget *editor;
  char *chosen[2];
  gboolean showing;
};

G_DEFINE_FINAL_TYPE (HcPropertyField, hc_property_field, GTK_TYPE_BOX)

enum
{
  ENTERED,
  N_SIGNALS
};

static guint signals[N_SIGNALS];

static void
entered (HcPropertyField *self)
{
  if (!self->showing)
    g_signal_emit (self, signals[ENTERED], 0);
}

static void
label_editor (GtkWidget *editor, GtkWidget *label)
{
  if (HC_IS_PICKER (editor))
    hc_picker_set_what (HC_PICKER (editor), gtk_label_get_text (GTK_LABEL (label)));
  else if (HC_IS_DATE_FIELD (editor))
    hc_date_field_set_what (HC_DATE_FIELD (editor), gtk_label_get_text (GTK_LABEL (label)));
  else
    {
      gtk_label_set_mnemonic_widget (GTK_LABEL (label), editor);
      gtk_accessible_update_relation (GTK_ACCESSIBLE (editor),
                                      GTK_ACCESSIBLE_RELATION_LABELLED_BY, label, NULL, -1);
    }
}

static void
add_labelled (HcPropertyField *self, GtkWidget *editor)
{
  GtkWidget *label = gtk_label_new (_(self->property->label));

  gtk_label_set_xalign (GTK_LABEL (label), 0);
  gtk_label_set_wrap (GTK_LABEL (label), TRUE);
  gtk_widget_set_hexpand (label, TRUE);
  gtk_widget_set_valign (editor, GTK_ALIGN_CENTER);
  label_editor (editor, label);
  gtk_box_append (GTK_BOX (self), label);
  gtk_box_append (GTK_BOX (self), editor);
}

static GtkWidget *
new_length (HcPropertyField *self)
{
  GtkWidget *editor = hc_length_field_new (_(self->property->label));

  hc_length_field_set_range (HC_LENGTH_FIELD (editor), self->member->least, self->member->most);
  hc_length_field_set_signed (HC_LENGTH_FIELD (editor), self->member->least < 0);
  gtk_widget_set_hexpand (editor, TRUE);
  g_signal_connect_swapped (editor, "entered", G_CALLBACK (entered), self);
  gtk_box_append (GTK_BOX (self), editor);
  return editor;
}

static GtkWidget *
new_number (HcPropertyField *self)
{
  gboolean share = self->member->most == 1;
  double step = share ? 0.05 : 1;
  GtkWidget *editor
      = gtk_spin_button_new_with_range (self->member->least, self->member->most, step);

  gtk_spin_button_set_digits (GTK_SPIN_BUTTON (editor), share ? 2 : 0);
  g_signal_connect_swapped (editor, "value-changed", G_CALLBACK (entered), self);
  add_labelled (self, editor);
  return editor;
}

static GtkWidget *
new_switch (HcPropertyField *self)
{
  GtkWidget *editor = gtk_switch_new ();

  g_signal_connect_swapped (editor, "notify::active", G_CALLBACK (entered), self);
  add_labelled (self, editor);
  return editor;
}

static GtkWidget *
new_text (HcPropertyField *self)
{
  GtkWidget *editor = gtk_entry_new ();
  GtkEventController *focus = gtk_event_controller_focus_new ();

  gtk_editable_set_width_chars (GTK_EDITABLE (editor), 14);
  gtk_widget_add_controller (editor, focus);
  g_signal_connect_swapped (editor, "activate", G_CALLBACK (entered), self);
  g_signal_connect_swapped (focus, "leave", G_CALLBACK (entered), self);
  add_labelled (self, editor);
  return editor;
}

static GtkWidget *
new_choice (HcPropertyField *self, HcBook *book)
{
  GtkWidget *editor = hc_picker_new (NULL);

  if (self->property->choices == HC_CHOICES_NONE)
    hc_picker_offer_words (HC_PICKER (editor), self->property->words);
  else
    {
      hc_picker_offer (HC_PICKER (editor), "",
                       self->property->choices == HC_CHOICES_LATCH ? _("Not told") : _("None"),
                       NULL);
      hc_choices_offer_book (HC_PICKER (editor), book, self->property->choices);
    }
  g_signal_connect_swapped (editor, "picked", G_CALLBACK (entered), self);
  add_labelled (self, editor);
  return editor;
}

/**
 * hc_property_field_offer_plan: (skip)
 * @self: the field of a pen's or a building's id
 * @plan: the plan whose pens or buildings there are to choose from
 */
void
hc_property_field_offer_plan (HcPropertyField *self, HcPlan *plan)
{
  hc_choices_offer_plan (HC_PICKER (self->editor), plan, self->property->choices);
}

static GtkWidget *
new_day (HcPropertyField *self)
{
  GtkWidget *editor = hc_date_field_new (_("grown"));

  g_signal_connect_swapped (editor, "entered", G_CALLBACK (entered), self);
  add_labelled (self, editor);
  return editor;
}

static GtkWidget *
new_editor (HcPropertyField *self, HcBook *book)
{
  if (self->property->choices != HC_CHOICES_NONE)
    return new_choice (self, book);
  switch (self->member->kind)
    {
    case HC_MEMBER_LENGTH:
      return new_length (self);
    case HC_MEMBER_FLAG:
      return new_switch (self);
    case HC_MEMBER_WORD:
      return new_choice (self, book);
    case HC_MEMBER_TEXT:
      return new_text (self);
    case HC_MEMBER_DATE:
      return new_day (self);
    default:
      return new_number (self);
    }
}

const HcProperty *
hc_property_field_get_property_row (HcPropertyField *self)
{
  return self->property;
}

/* What is on top counts: the last layer. */
static const char *
top_layer (char **layers)
{
  guint n = layers != NULL ? g_strv_length (layers) : 0;

  return n > 0 ? layers[n - 1] : "";
}

static void
show_text (HcPropertyField *self, const char *text)
{
  if (self->property->choices != HC_CHOICES_NONE)
    hc_picker_set_id (HC_PICKER (self->editor), text);
  else if (!gtk_widget_has_focus (self->editor)
           || g_strcmp0 (gtk_editable_get_text (GTK_EDITABLE (self->editor)), text) != 0)
    gtk_editable_set_text (GTK_EDITABLE (self->editor), text != NULL ? text : "");
}

/**
 * hc_property_field_show: (skip)
 * @self: a field
 * @values: a part's values
 * @units: the keeper's units
 */
void
hc_property_field_show (HcPropertyField *self, gconstpointer values, HcUnits units)
{
  gconstpointer at = (const char *) values + self->member->offset;

  self->showing = TRUE;
  switch (self->member->kind)
    {
    case HC_MEMBER_LENGTH:
      hc_length_field_set_units (HC_LENGTH_FIELD (self->editor), units);
      hc_length_field_set_length (HC_LENGTH_FIELD (self->editor), *(const double *) at);
      break;
    case HC_MEMBER_NUMBER:
      gtk_spin_button_set_value (GTK_SPIN_BUTTON (self->editor), *(const double *) at);
      break;
    case HC_MEMBER_COUNT:
      gtk_spin_button_set_value (GTK_SPIN_BUTTON (self->editor), *(const int *) at);
      break;
    case HC_MEMBER_FLAG:
      gtk_switch_set_active (GTK_SWITCH (self->editor), *(const gboolean *) at);
      break;
    case HC_MEMBER_WORD:
      hc_picker_set_picked (HC_PICKER (self->editor), (guint) *(const int *) at);
      break;
    case HC_MEMBER_DATE:
      hc_date_field_set_day (HC_DATE_FIELD (self->editor), *(const guint32 *) at);
      break;
    case HC_MEMBER_IDS:
      show_text (self, top_layer (*(char **const *) at));
      break;
    default:
      show_text (self, *(char *const *) at);
      break;
    }
  self->showing = FALSE;
}

static const char *
entered_text (HcPropertyField *self)
{
  if (self->property->choices != HC_CHOICES_NONE)
    return hc_picker_get_id (HC_PICKER (self->editor));
  return gtk_editable_get_text (GTK_EDITABLE (self->editor));
}

/**
 * hc_property_field_store: (skip)
 * @self: a field
 * @values: a part's values
 *
 * Puts what was entered into @values, which borrow it from the field.
 */
void
hc_property_field_store (HcPropertyField *self, gpointer values)
{
  gpointer at = (char *) values + self->member->offset;

  switch (self->member->kind)
    {
    case HC_MEMBER_LENGTH:
      *(double *) at = hc_length_field_get_length (HC_LENGTH_FIELD (self->editor));
      break;
    case HC_MEMBER_NUMBER:
      *(double *) at = gtk_spin_button_get_value (GTK_SPIN_BUTTON (self->editor));
      break;
    case HC_MEMBER_COUNT:
      *(int *) at = gtk_spin_button_get_value_as_int (GTK_SPIN_BUTTON (self->editor));
      break;
    case HC_MEMBER_FLAG:
      *(gboolean *) at = gtk_switch_get_active (GTK_SWITCH (self->editor));
      break;
    case HC_MEMBER_WORD:
      *(int *) at = (int) hc_picker_get_picked (HC_PICKER (self->editor));
      break;
    case HC_MEMBER_DATE:
      *(guint32 *) at = hc_date_field_get_day (HC_DATE_FIELD (self->editor));
      break;
    case HC_MEMBER_IDS:
      self->chosen[0] = (char *) entered_text (self);
      *(char ***) at = *self->chosen[0] != '\0' ? self->chosen : NULL;
      break;
    default:
      *(char **) at = (char *) entered_text (self);
      break;
    }
}

static void
hc_property_field_class_init (HcPropertyFieldClass *klass)
{
  signals[ENTERED] = g_signal_new ("entered", G_TYPE_FROM_CLASS (klass), G_SIGNAL_RUN_LAST, 0,
                                   NULL, NULL, NULL, G_TYPE_NONE, 0);
}

static void
hc_property_field_init (HcPropertyField *self)
{
  gtk_box_set_spacing (GTK_BOX (self), 8);
}

HcPropertyField *
hc_property_field_new (const HcProperty *property, const HcMember *member, HcBook *book)
{
  HcPropertyField *self = g_object_new (HC_TYPE_PROPERTY_FIELD, NULL);

  self->property = property;
  self->member = member;
  self->editor = new_editor (self, book);
  return self;
}
