/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * One figure: what is asked for whom, who says so, and the keeper's own. */
#include "config.h"

#include "app/rules/figure-row.h"

#include "app/needs/set-text.h"
#include "app/rules/own-figure-editor.h"

#include "words/figure-words.h"
#include "words/words.h"

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
  HcStandard *from;
  const HcFigure *figure;
  const char *heading;
};

G_DEFINE_FINAL_TYPE (HcFigureRow, hc_figure_row, GTK_TYPE_LIST_BOX_ROW)

enum
{
  SET,
  UNSET,
  N_SIGNALS
};

static guint signals[N_SIGNALS];

/* "roost.bar-to-bar": the need, then the measure. */
static const char *
heading_of (const HcFigure *figure)
{
  g_auto (GStrv) parts = g_strsplit (figure->name, ".", 2);
  const HcNeed *need = hc_need_find (parts[0]);

  return need != NULL ? hc_words_need_title (need->id) : _("Other figures");
}

const char *
hc_figure_row_get_figure (HcFigureRow *self)
{
  return self->figure->id;
}

/**
 * hc_figure_row_get_heading: (skip)
 * @self: a row
 *
 * Returns: what its figure is about, in the keeper's language
 */
const char *
hc_figure_row_get_heading (HcFigureRow *self)
{
  return self->heading;
}

static char *
say_who (const HcFigure *figure, HcBook *book)
{
  GString *text = g_string_new (NULL);

  for (guint i = 0; i < hc_book_get_n_kinds (book); i++)
    if (figure->kinds & (1u << i))
      g_string_append_printf (text, "%s%s", text->len > 0 ? ", " : "",
                              hc_kind_get_name (hc_book_get_kind_at (book, i), 2));
  if (text->len == 0)
    g_string_append (text, _("any bird"));
  if (figure->at_lay)
    g_string_append_printf (text, ", %s", _("at lay"));
  if (figure->conditions != 0)
    for (guint i = 0; i <= HC_CONDITION_SHUT_IN; i++)
      if (figure->conditions & (1u << i))
        g_string_append_printf (text, ", %s", hc_words_condition ((HcCondition) i));
  return g_string_free (text, FALSE);
}

static char *
say_levels (const HcLimit *limit, const HcDemand *demand)
{
  gboolean bounds_above = limit != NULL && limit->direction == HC_DIRECTION_AT_MOST;
  GString *text = g_string_new (NULL);

  for (guint i = 0; i < HC_N_ASKED_LEVELS; i++)
    {
      HcLevel level = (HcLevel) (HC_LEVEL_TIGHT + i);
      guint stated = limit != NULL ? limit->stated : demand->stated;
      g_autofree char *amount = limit != NULL ? hc_figure_words_limit (limit, level)
                                              : hc_figure_words_demand (demand, level);

      if (amount != NULL && stated & (1u << level))
        g_string_append_printf (text, "%s%s %s", text->len > 0 ? " · " : "",
                                bounds_above && i == 0 ? _("at most") : hc_words_level (level),
                                amount);
    }
  return g_string_free (text, FALSE);
}

/* Whose rules, then who says so, then where to read it. */
static char *
say_source (const HcStandard *from, const HcFigure *figure)
{
  g_autofree char *grounds = hc_figure_words_source (figure);
  const HcSource *source = figure->source;

  if (source == NULL)
    return g_strdup_printf ("%s · %s", hc_standard_get_name (from), grounds);
  return g_strdup_printf ("%s · %s · %s, %s", hc_standard_get_name (from), grounds,
                          source->publisher, source->where);
}

/**
 * hc_figure_row_matches: (skip)
 * @self: a row
 * @text: what the keeper looks for
 *
 * Returns: whether the figure speaks of it
 */
gboolean
hc_figure_row_matches (HcFigureRow *self, const char *text)
{
  GtkLabel *const labels[] = { self->what, self->who, self->levels, self->source, self->note };

  if (g_str_match_string (text, hc_figure_row_get_heading (self), TRUE))
    return TRUE;
  for (guint i = 0; i < G_N_ELEMENTS (labels); i++)
    if (g_str_match_string (text, gtk_label_get_text (labels[i]), TRUE))
      return TRUE;
  return FALSE;
}

/**
 * hc_figure_row_show_own: (skip)
 * @self: a row
 * @own: (nullable): the keeper's own figure in its place
 */
void
hc_figure_row_show_own (HcFigureRow *self, HcOwnFigure *own)
{
  g_autofree char *unit = hc_figure_words_unit (self->figure->unit);
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
  gtk_toggle_button_set_active (self->change, TRUE);
  gtk_widget_grab_focus (GTK_WIDGET (self->editor));
}

static void
own_set (HcFigureRow *self, double value, const char *reason)
{
  g_signal_emit (self, signals[SET], 0, value, reason);
}

static void
own_unset (HcFigureRow *self)
{
  g_signal_emit (self, signals[UNSET], 0);
}

/* Made when it is asked for: the rules have hundreds of figures, and few are
 * changed. */
static void
change_toggled (HcFigureRow *self)
{
  g_autofree char *unit = NULL;

  if (self->editor != NULL || !gtk_toggle_button_get_active (self->change))
    return;
  unit = hc_figure_words_unit (self->figure->unit);
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

  g_clear_pointer (&self->from, hc_standard_unref);
  g_clear_pointer (&self->own_figure, hc_own_figure_unref);
  G_OBJECT_CLASS (hc_figure_row_parent_class)->finalize (object);
}

static void
hc_figure_row_class_init (HcFigureRowClass *klass)
{
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (klass);

  G_OBJECT_CLASS (klass)->finalize = hc_figure_row_finalize;
  signals[SET] = g_signal_new ("set", G_TYPE_FROM_CLASS (klass), G_SIGNAL_RUN_LAST, 0, NULL, NULL,
                               NULL, G_TYPE_NONE, 2, G_TYPE_DOUBLE, G_TYPE_STRING);
  signals[UNSET] = g_signal_new ("unset", G_TYPE_FROM_CLASS (klass), G_SIGNAL_RUN_LAST, 0, NULL,
                                 NULL, NULL, G_TYPE_NONE, 0);
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
 * @book: the book
 * @from: the rules it is stated in
 * @limit: (nullable): the limit to show
 * @demand: (nullable): the demand to show, when there is no limit
 *
 * Returns: a row
 */
GtkWidget *
hc_figure_row_new (HcBook *book, HcStandard *from, const HcLimit *limit, const HcDemand *demand)
{
  HcFigureRow *self = g_object_new (HC_TYPE_FIGURE_ROW, NULL);
  const HcFigure *figure = limit != NULL ? &limit->figure : &demand->figure;
  g_autofree char *who = say_who (figure, book);
  g_autofree char *levels = say_levels (limit, demand);
  g_autofree char *source = say_source (from, figure);

  self->from = hc_standard_ref (from);
  self->figure = figure;
  self->heading = heading_of (figure);
  hc_set_text (self->what, hc_figure_words_measure (figure));
  hc_set_text (self->who, who);
  hc_set_text (self->levels, levels);
  hc_set_text (self->source, source);
  hc_set_text (self->note, hc_figure_get_note (figure));
  return GTK_WIDGET (self);
}
