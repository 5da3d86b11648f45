/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The names of a picker, looked through with arrow keys or by typing. */
#include "config.h"

#include "app/fields/picker-list.h"

#include "app/fields/picker-row.h"

/* Of more names than this the keeper sees from the start that one can type. */
#define FEW_NAMES 10

struct _HcPickerList
{
  GtkBox parent_instance;

  GtkSearchEntry *search;
  GtkScrolledWindow *scroller;
  GtkListBox *list;
  guint n_names;
};

G_DEFINE_FINAL_TYPE (HcPickerList, hc_picker_list, GTK_TYPE_BOX)

enum
{
  CHOSEN,
  GIVEN_UP,
  N_SIGNALS
};

static guint signals[N_SIGNALS];

static gboolean
is_found (GtkListBoxRow *row, gpointer data)
{
  return hc_picker_row_get_rank (HC_PICKER_ROW (row)) != HC_NAME_OTHER;
}

static int
compare_rows (GtkListBoxRow *a, GtkListBoxRow *b, gpointer data)
{
  int by_rank = (int) hc_picker_row_get_rank (HC_PICKER_ROW (a))
                - (int) hc_picker_row_get_rank (HC_PICKER_ROW (b));

  return by_rank != 0 ? by_rank
                      : (int) hc_picker_row_get_index (HC_PICKER_ROW (a))
                            - (int) hc_picker_row_get_index (HC_PICKER_ROW (b));
}

/* Those not found stand last. */
static GtkListBoxRow *
best_row (HcPickerList *self)
{
  GtkListBoxRow *row = gtk_list_box_get_row_at_index (self->list, 0);

  return row != NULL && is_found (row, NULL) ? row : NULL;
}

static void
narrow (HcPickerList *self)
{
  const char *typed = gtk_editable_get_text (GTK_EDITABLE (self->search));
  GtkListBoxRow *row;

  for (int i = 0; (row = gtk_list_box_get_row_at_index (self->list, i)) != NULL; i++)
    hc_picker_row_search (HC_PICKER_ROW (row), typed);
  gtk_list_box_invalidate_sort (self->list);
  gtk_list_box_invalidate_filter (self->list);
  gtk_list_box_select_row (self->list, best_row (self));
  gtk_adjustment_set_value (gtk_scrolled_window_get_vadjustment (self->scroller), 0);
}

static void
row_activated (HcPickerList *self, HcPickerRow *row)
{
  g_signal_emit (self, signals[CHOSEN], 0, hc_picker_row_get_index (row));
}

static void
choose_best (HcPickerList *self)
{
  GtkListBoxRow *best = best_row (self);

  if (best != NULL)
    row_activated (self, HC_PICKER_ROW (best));
}

static void
give_up (HcPickerList *self)
{
  g_signal_emit (self, signals[GIVEN_UP], 0);
}

static gboolean
go_down_to_list (GtkEventControllerKey *controller, guint key, guint code, GdkModifierType state,
                 HcPickerList *self)
{
  GtkListBoxRow *best = best_row (self);

  if ((key != GDK_KEY_Down && key != GDK_KEY_KP_Down) || best == NULL)
    return GDK_EVENT_PROPAGATE;
  gtk_widget_grab_focus (GTK_WIDGET (best));
  return GDK_EVENT_STOP;
}

/* Up from the first row; the last one has nothing below it. */
static gboolean
leave_list (HcPickerList *self, GtkDirectionType direction)
{
  if (direction == GTK_DIR_UP && gtk_widget_get_visible (GTK_WIDGET (self->search)))
    gtk_widget_grab_focus (GTK_WIDGET (self->search));
  return TRUE;
}

static gboolean
is_typing (guint key, GdkModifierType state)
{
  return (state & (GDK_CONTROL_MASK | GDK_ALT_MASK)) == 0
         && g_unichar_isgraph (gdk_keyval_to_unicode (key));
}

/* What is typed while a name has the focus goes to the entry, which shows then. */
static gboolean
type_on_list (GtkEventControllerKey *controller, guint key, guint code, GdkModifierType state,
              HcPickerList *self)
{
  GtkWidget *text = GTK_WIDGET (gtk_editable_get_delegate (GTK_EDITABLE (self->search)));

  if (!is_typing (key, state))
    return GDK_EVENT_PROPAGATE;
  gtk_widget_set_visible (GTK_WIDGET (self->search), TRUE);
  gtk_text_grab_focus_without_selecting (GTK_TEXT (text));
  return gtk_event_controller_key_forward (controller, text);
}

/* A list that is not laid out yet cannot be scrolled. */
static gboolean
show_in_the_middle (GtkWidget *row, GdkFrameClock *clock, gpointer data)
{
  HcPickerList *self = data;
  GtkAdjustment *scroll = gtk_scrolled_window_get_vadjustment (self->scroller);
  double page = gtk_adjustment_get_page_size (scroll);
  double top;

  if (!gtk_widget_get_mapped (row))
    return G_SOURCE_REMOVE;
  if (gtk_widget_get_height (row) == 0 || page == 0)
    return G_SOURCE_CONTINUE;
  gtk_widget_translate_coordinates (row, GTK_WIDGET (self->list), 0, 0, NULL, &top);
  gtk_adjustment_set_value (scroll, top - (page - gtk_widget_get_height (row)) / 2);
  return G_SOURCE_REMOVE;
}

static void
hc_picker_list_map (GtkWidget *widget)
{
  HcPickerList *self = HC_PICKER_LIST (widget);
  GtkListBoxRow *row;

  GTK_WIDGET_CLASS (hc_picker_list_parent_class)->map (widget);
  row = gtk_list_box_get_selected_row (self->list);
  if (row == NULL)
    return;
  gtk_widget_grab_focus (GTK_WIDGET (row));
  gtk_widget_add_tick_callback (GTK_WIDGET (row), show_in_the_middle, self, NULL);
}

static void
hc_picker_list_class_init (HcPickerListClass *klass)
{
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (klass);

  widget_class->map = hc_picker_list_map;
  signals[CHOSEN] = g_signal_new ("chosen", G_TYPE_FROM_CLASS (klass), G_SIGNAL_RUN_LAST, 0, NULL,
                                  NULL, NULL, G_TYPE_NONE, 1, G_TYPE_UINT);
  signals[GIVEN_UP] = g_signal_new ("given-up", G_TYPE_FROM_CLASS (klass), G_SIGNAL_RUN_LAST, 0,
                                    NULL, NULL, NULL, G_TYPE_NONE, 0);
  gtk_widget_class_set_template_from_resource (widget_class,
                                               "/org/hencote/Hencote/picker-list.ui");
  gtk_widget_class_bind_template_child (widget_class, HcPickerList, search);
  gtk_widget_class_bind_template_child (widget_class, HcPickerList, scroller);
  gtk_widget_class_bind_template_child (widget_class, HcPickerList, list);
  gtk_widget_class_bind_template_callback (widget_class, narrow);
  gtk_widget_class_bind_template_callback (widget_class, row_activated);
  gtk_widget_class_bind_template_callback (widget_class, choose_best);
  gtk_widget_class_bind_template_callback (widget_class, give_up);
  gtk_widget_class_bind_template_callback (widget_class, go_down_to_list);
  gtk_widget_class_bind_template_callback (widget_class, leave_list);
  gtk_widget_class_bind_template_callback (widget_class, type_on_list);
}

static void
hc_picker_list_init (HcPickerList *self)
{
  gtk_widget_init_template (GTK_WIDGET (self));
  gtk_list_box_set_filter_func (self->list, is_found, NULL, NULL);
  gtk_list_box_set_sort_func (self->list, compare_rows, NULL, NULL);
}

/**
 * hc_picker_list_new: (skip)
 * @what: (nullable): what is picked, such as "Breed"
 */
GtkWidget *
hc_picker_list_new (const char *what)
{
  HcPickerList *self = g_object_new (HC_TYPE_PICKER_LIST, NULL);

  if (what != NULL)
    gtk_accessible_update_property (GTK_ACCESSIBLE (self->list), GTK_ACCESSIBLE_PROPERTY_LABEL,
                                    what, -1);
  return GTK_WIDGET (self);
}

/**
 * hc_picker_list_add: (skip)
 * @self: a list
 * @name: a name to pick
 * @about: (nullable): a few words on what it is
 */
void
hc_picker_list_add (HcPickerList *self, const char *name, const char *about)
{
  gtk_list_box_append (self->list, hc_picker_row_new (self->n_names++, name, about));
}

/**
 * hc_picker_list_begin: (skip)
 * @self: a list, about to be shown
 * @picked: the place of the name picked now
 */
void
hc_picker_list_begin (HcPickerList *self, guint picked)
{
  GtkListBoxRow *row;

  gtk_editable_set_text (GTK_EDITABLE (self->search), "");
  gtk_widget_set_visible (GTK_WIDGET (self->search), self->n_names > FEW_NAMES);
  for (int i = 0; (row = gtk_list_box_get_row_at_index (self->list, i)) != NULL; i++)
    {
      gboolean is_picked = hc_picker_row_get_index (HC_PICKER_ROW (row)) == picked;

      hc_picker_row_set_picked (HC_PICKER_ROW (row), is_picked);
      if (is_picked)
        gtk_list_box_select_row (self->list, row);
    }
}
