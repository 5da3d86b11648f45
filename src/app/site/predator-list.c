/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A switch for each predator of the book. */
#include "config.h"

#include "app/site/predator-list.h"

struct _HcPredatorList
{
  GtkBox parent_instance;

  GHashTable *boxes;
  gboolean showing;
};

G_DEFINE_FINAL_TYPE (HcPredatorList, hc_predator_list, GTK_TYPE_BOX)

enum
{
  ENTERED,
  N_SIGNALS
};

static guint signals[N_SIGNALS];

static void
toggled (HcPredatorList *self)
{
  if (!self->showing)
    g_signal_emit (self, signals[ENTERED], 0);
}

static void
add_row (HcPredatorList *self, const HcPredator *animal)
{
  GtkWidget *row = gtk_box_new (GTK_ORIENTATION_HORIZONTAL, 6);
  GtkWidget *label = gtk_label_new (hc_predator_get_name (animal));
  GtkWidget *box = gtk_switch_new ();

  gtk_label_set_xalign (GTK_LABEL (label), 0);
  gtk_widget_set_hexpand (label, TRUE);
  gtk_widget_set_valign (box, GTK_ALIGN_CENTER);
  gtk_widget_set_tooltip_text (row, hc_predator_get_note (animal));
  gtk_accessible_update_relation (GTK_ACCESSIBLE (box), GTK_ACCESSIBLE_RELATION_LABELLED_BY,
                                  label, NULL, -1);
  g_signal_connect_swapped (box, "notify::active", G_CALLBACK (toggled), self);
  gtk_box_append (GTK_BOX (row), label);
  gtk_box_append (GTK_BOX (row), box);
  gtk_box_append (GTK_BOX (self), row);
  g_hash_table_insert (self->boxes, (gpointer) animal->id, box);
}

static gboolean
is_named (char **ids, const char *id)
{
  return ids != NULL && g_strv_contains ((const char *const *) ids, id);
}

/**
 * hc_predator_list_show: (skip)
 * @self: the list
 * @book: the book whose predators there are to tick
 * @ids: (nullable) (array zero-terminated=1): those that are about
 */
void
hc_predator_list_show (HcPredatorList *self, HcBook *book, char **ids)
{
  GHashTableIter iter;
  gpointer id, box;

  for (guint i = 0; g_hash_table_size (self->boxes) < hc_book_get_n_predators (book); i++)
    add_row (self, hc_book_get_predator_at (book, i));
  self->showing = TRUE;
  g_hash_table_iter_init (&iter, self->boxes);
  while (g_hash_table_iter_next (&iter, &id, &box))
    gtk_switch_set_active (box, is_named (ids, id));
  self->showing = FALSE;
}

static gboolean
is_ticked (HcPredatorList *self, const char *id)
{
  GtkSwitch *box = g_hash_table_lookup (self->boxes, id);

  return box != NULL && gtk_switch_get_active (box);
}

/**
 * hc_predator_list_get_ids: (skip)
 * @self: the list
 * @before: (nullable) (array zero-terminated=1): those that were about
 *
 * Returns: (transfer full): ids of those ticked, in the order of @before, the
 *   new one last; what the book does not know stays
 */
char **
hc_predator_list_get_ids (HcPredatorList *self, char **before)
{
  g_autoptr (GStrvBuilder) ids = g_strv_builder_new ();
  GHashTableIter iter;
  gpointer id;

  for (guint i = 0; before != NULL && before[i] != NULL; i++)
    if (is_ticked (self, before[i]) || !g_hash_table_contains (self->boxes, before[i]))
      g_strv_builder_add (ids, before[i]);
  g_hash_table_iter_init (&iter, self->boxes);
  while (g_hash_table_iter_next (&iter, &id, NULL))
    if (is_ticked (self, id) && !is_named (before, id))
      g_strv_builder_add (ids, id);
  return g_strv_builder_end (ids);
}

static void
hc_predator_list_finalize (GObject *object)
{
  g_hash_table_unref (HC_PREDATOR_LIST (object)->boxes);
  G_OBJECT_CLASS (hc_predator_list_parent_class)->finalize (object);
}

static void
hc_predator_list_class_init (HcPredatorListClass *klass)
{
  G_OBJECT_CLASS (klass)->finalize = hc_predator_list_finalize;
  signals[ENTERED] = g_signal_new ("entered", G_TYPE_FROM_CLASS (klass), G_SIGNAL_RUN_LAST, 0,
                                   NULL, NULL, NULL, G_TYPE_NONE, 0);
}

static void
hc_predator_list_init (HcPredatorList *self)
{
  gtk_orientable_set_orientation (GTK_ORIENTABLE (self), GTK_ORIENTATION_VERTICAL);
  gtk_box_set_spacing (GTK_BOX (self), 6);
  self->boxes = g_hash_table_new (g_str_hash, g_str_equal);
}
