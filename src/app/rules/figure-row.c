/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * One figure: what is asked for whom, who says so, and the keeper's own. */
#include "config.h"

#include "app/rules/figure-row.h"

#include "app/needs/set-text.h"
#include "app/rules/own-figure-editor.h"

#include "words/figure-words.h"

#include <glib/gi18n.h>

struct _HcFigureRow
{
  GtkListBoxRow parent_instance;

  GtkLabel *what;
  GtkLabel *who;
  GtkLabel *levels;
  GtkLabel *own;
  GtkLabel *source;
  GtkLabel *note;
  GtkToggleButton *change;
  GtkRevealer *place;
  HcOwnFigureEditor *editor;

  HcOwnFigure *own_figure;
  HcFigureEntry entry;
};

G_DEFINE_FINAL_TYPE (HcFigureRow, hc_figure_row, GTK_TYPE_LIST_BOX_ROW)

const char *
hc_figure_row_get_figure (HcFigureRow *self)
{
  return hc_figure_entry_get_figure (&self->entry)->id;
}

const HcFigureEntry *
hc_figure_row_get_entry (HcFigureRow *self)
{
  return &self->entry;
}

/**
 * hc_figure_row_show_own: (skip)
 * @self: a row
 * @own: (nullable): the keeper's own figure in its place
 */
void
hc_figure_row_show_own (HcFigureRow *self, HcOwnFigure *own)
{
  g_autofree char *unit = hc_figure_words_unit (hc_figure_entry_get_figure (&self->entry)->unit);
  g_autofree char *sentence = NULL;

  if (own != NULL)
    sentence = g_strdup_printf (_("My own: %.10g %s. %s"), hc_own_figure_get (own)->value, unit,
                                hc_own_figure_get (own)->reason);
  g_clear_pointer (&self->own_figure, hc_own_figure_unref);
  self->own_figure = own != NULL ? hc_own_figure_ref (own) : NULL;
  if (self->editor != NULL)
    hc_own_figure_editor_show (self->editor, own);
  hc_set_text (self->own, sentence);
}

void
hc_figure_row_open (HcFigureRow *self)
{
  if (!gtk_widget_get_sensitive (GTK_WIDGET (self->change)))
    {
      gtk_widget_grab_focus (GTK_WIDGET (self));
      return;
    }
  gtk_toggle_button_set_active (self->change, TRUE);
  gtk_widget_grab_focus (GTK_WIDGET (self->editor));
}

static void
own_set (HcFigureRow *self, double value, const char *reason)
{
  gtk_widget_activate_action (GTK_WIDGET (self), "rules.set-own", "(sds)",
                              hc_figure_row_get_figure (self), value, reason);
}

static void
own_unset (HcFigureRow *self)
{
  gtk_widget_activate_action (GTK_WIDGET (self), "rules.unset-own", "s",
                              hc_figure_row_get_figure (self));
}

/* Made when it is asked for: the rules have hundreds of figures, and few are
 * changed. */
static void
change_toggled (HcFigureRow *self)
{
  g_autofree char *unit = NULL;

  if (self->editor != NULL || !gtk_toggle_button_get_active (self->change))
    return;
  unit = hc_figure_words_unit (hc_figure_entry_get_figure (&self->entry)->unit);
  self->editor = HC_OWN_FIGURE_EDITOR (hc_own_figure_editor_new (unit));
  g_signal_connect_swapped (self->editor, "set", G_CALLBACK (own_set), self);
  g_signal_connect_swapped (self->editor, "unset", G_CALLBACK (own_unset), self);
  hc_own_figure_editor_show (self->editor, self->own_figure);
  gtk_revealer_set_child (self->place, GTK_WIDGET (self->editor));
}

static void
hc_figure_row_finalize (GObject *object)
{
  HcFigureRow *self = HC_FIGURE_ROW (object);

  g_clear_pointer (&self->own_figure, hc_own_figure_unref);
  G_OBJECT_CLASS (hc_figure_row_parent_class)->finalize (object);
}

static void
hc_figure_row_class_init (HcFigureRowClass *klass)
{
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (klass);

  G_OBJECT_CLASS (klass)->finalize = hc_figure_row_finalize;
  gtk_widget_class_set_template_from_resource (widget_class, "/org/hencote/Hencote/figure-row.ui");
  gtk_widget_class_bind_template_child (widget_class, HcFigureRow, what);
  gtk_widget_class_bind_template_child (widget_class, HcFigureRow, who);
  gtk_widget_class_bind_template_child (widget_class, HcFigureRow, levels);
  gtk_widget_class_bind_template_child (widget_class, HcFigureRow, own);
  gtk_widget_class_bind_template_child (widget_class, HcFigureRow, source);
  gtk_widget_class_bind_template_child (widget_class, HcFigureRow, note);
  gtk_widget_class_bind_template_child (widget_class, HcFigureRow, change);
  gtk_widget_class_bind_template_child (widget_class, HcFigureRow, place);
  gtk_widget_class_bind_template_callback (widget_class, change_toggled);
}

static void
hc_figure_row_init (HcFigureRow *self)
{
  gtk_widget_init_template (GTK_WIDGET (self));
}

/**
 * hc_figure_row_new: (skip)
 * @entry: the figure it tells
 * @read_only: whether the keeper can set none of their own
 *
 * Returns: a row
 */
GtkWidget *
hc_figure_row_new (const HcFigureEntry *entry, gboolean read_only)
{
  HcFigureRow *self = g_object_new (HC_TYPE_FIGURE_ROW, NULL);
  const HcFigure *figure = hc_figure_entry_get_figure (entry);
  g_autofree char *who = hc_figure_entry_say_who (entry);
  g_autofree char *levels = hc_figure_entry_say_levels (entry);
  g_autofree char *source = hc_figure_entry_say_source (entry);

  self->entry = *entry;
  gtk_widget_set_focusable (GTK_WIDGET (self), read_only);
  gtk_widget_set_sensitive (GTK_WIDGET (self->change), !read_only);
  hc_set_text (self->what, hc_figure_words_measure (figure));
  hc_set_text (self->who, who);
  hc_set_text (self->levels, levels);
  hc_set_text (self->source, source);
  hc_set_text (self->note, hc_figure_get_note (figure));
  return GTK_WIDGET (self);
}
