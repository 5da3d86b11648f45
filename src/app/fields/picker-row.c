/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A name in the list of a picker, and a line on what it is. */
#include "config.h"

#include "app/fields/picker-row.h"

#include <glib/gi18n.h>

#define WIDEST_LINE_CHARS 44

struct _HcPickerRow
{
  GtkListBoxRow parent_instance;

  guint index;
  char *name;
  char *about;
  GtkWidget *tick;
  HcNameRank rank;
};

G_DEFINE_FINAL_TYPE (HcPickerRow, hc_picker_row, GTK_TYPE_LIST_BOX_ROW)

static void
hc_picker_row_finalize (GObject *object)
{
  g_free (HC_PICKER_ROW (object)->name);
  g_free (HC_PICKER_ROW (object)->about);
  G_OBJECT_CLASS (hc_picker_row_parent_class)->finalize (object);
}

static void
hc_picker_row_class_init (HcPickerRowClass *klass)
{
  G_OBJECT_CLASS (klass)->finalize = hc_picker_row_finalize;
}

static void
hc_picker_row_init (HcPickerRow *self)
{
}

static GtkWidget *
new_line (const char *text)
{
  GtkWidget *line = gtk_label_new (text);

  gtk_label_set_xalign (GTK_LABEL (line), 0);
  gtk_label_set_wrap (GTK_LABEL (line), TRUE);
  gtk_label_set_natural_wrap_mode (GTK_LABEL (line), GTK_NATURAL_WRAP_NONE);
  gtk_label_set_max_width_chars (GTK_LABEL (line), WIDEST_LINE_CHARS);
  return line;
}

static GtkWidget *
new_lines (const char *name, const char *about)
{
  GtkWidget *lines = gtk_box_new (GTK_ORIENTATION_VERTICAL, 0);

  gtk_widget_set_hexpand (lines, TRUE);
  gtk_box_append (GTK_BOX (lines), new_line (name));
  if (about != NULL)
    {
      GtkWidget *line = new_line (about);

      gtk_widget_add_css_class (line, "dim-label");
      gtk_widget_add_css_class (line, "caption");
      gtk_box_append (GTK_BOX (lines), line);
    }
  return lines;
}

/**
 * hc_picker_row_new: (skip)
 * @index: the place of the name among those to pick from
 * @name: the name
 * @about: (nullable): a few words on what it is
 *
 * The row takes the focus, so it is the row that a screen reader asks for both.
 */
GtkWidget *
hc_picker_row_new (guint index, const char *name, const char *about)
{
  HcPickerRow *self = g_object_new (HC_TYPE_PICKER_ROW, NULL);
  GtkWidget *content = gtk_box_new (GTK_ORIENTATION_HORIZONTAL, 12);

  self->index = index;
  self->name = g_strdup (name);
  self->about = g_strdup (about);
  self->tick = gtk_image_new_from_icon_name ("object-select-symbolic");
  gtk_box_append (GTK_BOX (content), new_lines (name, about));
  gtk_box_append (GTK_BOX (content), self->tick);
  gtk_list_box_row_set_child (GTK_LIST_BOX_ROW (self), content);
  gtk_accessible_update_property (GTK_ACCESSIBLE (self), GTK_ACCESSIBLE_PROPERTY_LABEL, name, -1);
  hc_picker_row_set_picked (self, FALSE);
  return GTK_WIDGET (self);
}

guint
hc_picker_row_get_index (HcPickerRow *self)
{
  return self->index;
}

static char *
say_picked (const char *about)
{
  if (about == NULL)
    return g_strdup (_("chosen now"));
  /* Translators: what a name in a list is, as in "heavy hen, chosen now" */
  return g_strdup_printf (_("%s, chosen now"), about);
}

void
hc_picker_row_set_picked (HcPickerRow *self, gboolean picked)
{
  g_autofree char *told = picked ? say_picked (self->about) : g_strdup (self->about);

  gtk_widget_set_opacity (self->tick, picked ? 1 : 0);
  if (told != NULL)
    gtk_accessible_update_property (GTK_ACCESSIBLE (self), GTK_ACCESSIBLE_PROPERTY_DESCRIPTION,
                                    told, -1);
  else
    gtk_accessible_reset_property (GTK_ACCESSIBLE (self), GTK_ACCESSIBLE_PROPERTY_DESCRIPTION);
}

void
hc_picker_row_search (HcPickerRow *self, const char *typed)
{
  self->rank = hc_name_search (typed, self->name, self->about);
}

HcNameRank
hc_picker_row_get_rank (HcPickerRow *self)
{
  return self->rank;
}
