/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A choice among entries of the book or pens of the plan. */
#include "config.h"

#include "app/properties/choice.h"

#include "app/fields/open-at-choice.h"

#include "base/ids.h"
#include "words/house-words.h"

#include <glib/gi18n.h>

#define SHOWN_CHARS 5

struct _HcChoice
{
  GtkWidget parent_instance;

  GtkDropDown *list;
  GPtrArray *ids;
  gboolean showing;
  guint telling;
};

G_DEFINE_FINAL_TYPE (HcChoice, hc_choice, GTK_TYPE_WIDGET)

enum
{
  ENTERED,
  N_SIGNALS
};

static guint signals[N_SIGNALS];

static void
set_up (GtkListItemFactory *factory, GtkListItem *item)
{
  GtkWidget *label = gtk_label_new (NULL);

  gtk_label_set_xalign (GTK_LABEL (label), 0);
  gtk_list_item_set_child (item, label);
}

static void
bind_name (GtkListItemFactory *factory, GtkListItem *item)
{
  gtk_label_set_text (GTK_LABEL (gtk_list_item_get_child (item)),
                      gtk_string_object_get_string (gtk_list_item_get_item (item)));
}

static void
set_up_shown (GtkListItemFactory *factory, GtkListItem *item)
{
  set_up (factory, item);
  gtk_label_set_ellipsize (GTK_LABEL (gtk_list_item_get_child (item)), PANGO_ELLIPSIZE_END);
  gtk_label_set_width_chars (GTK_LABEL (gtk_list_item_get_child (item)), SHOWN_CHARS);
}

static GtkListItemFactory *
new_factory (GCallback set_up_item)
{
  GtkListItemFactory *factory = gtk_signal_list_item_factory_new ();

  g_signal_connect (factory, "setup", set_up_item, NULL);
  g_signal_connect (factory, "bind", G_CALLBACK (bind_name), NULL);
  return factory;
}

static void
add_entry (HcChoice *self, GtkStringList *names, const char *id, const char *name)
{
  g_ptr_array_add (self->ids, g_strdup (id));
  gtk_string_list_append (names, name);
}

/* New names, without that being the keeper's choice. */
static void
offer (HcChoice *self, GtkStringList *names)
{
  self->showing = TRUE;
  gtk_drop_down_set_model (self->list, G_LIST_MODEL (names));
  self->showing = FALSE;
}

/**
 * hc_choice_offer_words: (skip)
 * @self: a choice
 * @words: what the keeper reads for each, marked for translation
 */
void
hc_choice_offer_words (HcChoice *self, const char *const *words)
{
  g_autoptr (GtkStringList) names = gtk_string_list_new (NULL);

  g_ptr_array_set_size (self->ids, 0);
  for (guint i = 0; words[i] != NULL; i++)
    add_entry (self, names, words[i], _(words[i]));
  offer (self, names);
}

static void
add_book_entries (HcChoice *self, GtkStringList *names, HcBook *book, HcChoices choices)
{
  switch (choices)
    {
    case HC_CHOICES_BEDDING:
      for (guint i = 0; i < hc_book_get_n_beddings (book); i++)
        add_entry (self, names, hc_book_get_bedding_at (book, i)->id,
                   hc_material_get_name (hc_book_get_bedding_at (book, i)->name));
      break;
    case HC_CHOICES_MESH:
      for (guint i = 0; i < hc_book_get_n_meshes (book); i++)
        add_entry (self, names, hc_book_get_mesh_at (book, i)->id,
                   hc_material_get_name (hc_book_get_mesh_at (book, i)->name));
      break;
    case HC_CHOICES_FLOOR:
      for (guint i = 0; i < hc_book_get_n_floor_layers (book); i++)
        add_entry (self, names, hc_book_get_floor_layer_at (book, i)->id,
                   hc_material_get_name (hc_book_get_floor_layer_at (book, i)->name));
      break;
    case HC_CHOICES_BREED:
      for (guint i = 0; i < hc_book_get_n_breeds (book); i++)
        add_entry (self, names, hc_book_get_breed_at (book, i)->id,
                   hc_breed_get_name (hc_book_get_breed_at (book, i)));
      break;
    case HC_CHOICES_KIND:
      for (guint i = 0; i < hc_book_get_n_kinds (book); i++)
        add_entry (self, names, hc_book_get_kind_at (book, i)->id,
                   hc_kind_get_name (hc_book_get_kind_at (book, i), 1));
      break;
    case HC_CHOICES_PEN:
    case HC_CHOICES_BUILDING:
    case HC_CHOICES_NONE:
      break;
    }
}

/**
 * hc_choice_offer_book: (skip)
 * @self: a choice
 * @book: the book
 * @choices: which of its entries to offer
 */
void
hc_choice_offer_book (HcChoice *self, HcBook *book, HcChoices choices)
{
  g_autoptr (GtkStringList) names = gtk_string_list_new (NULL);

  g_ptr_array_set_size (self->ids, 0);
  add_entry (self, names, "", _("None"));
  add_book_entries (self, names, book, choices);
  offer (self, names);
  gtk_drop_down_set_enable_search (self->list, choices == HC_CHOICES_BREED);
}

static void
add_pens (HcChoice *self, GtkStringList *names, HcPlan *plan)
{
  HcParts *pens = hc_layout_get (hc_plan_get_layout (plan))->pens;

  for (guint i = 0; i < pens->len; i++)
    {
      g_autofree char *name = hc_words_pen_name (pens->pdata[i]);

      add_entry (self, names, hc_part_get_id (pens->pdata[i]), name);
    }
}

static void
add_buildings (HcChoice *self, GtkStringList *names, HcPlan *plan)
{
  HcParts *buildings = hc_plan_get (plan)->buildings;
  g_autofree char *id = hc_id_new ();

  for (guint i = 0; i < buildings->len; i++)
    {
      g_autofree char *name = hc_words_building_name (buildings->pdata[i]);

      add_entry (self, names, hc_part_get_id (buildings->pdata[i]), name);
    }
  add_entry (self, names, id, _("New building"));
}

/**
 * hc_choice_offer_plan: (skip)
 * @self: a choice
 * @plan: the plan
 * @choices: pens or buildings of it; of buildings, also a new one
 */
void
hc_choice_offer_plan (HcChoice *self, HcPlan *plan, HcChoices choices)
{
  g_autoptr (GtkStringList) names = gtk_string_list_new (NULL);

  g_ptr_array_set_size (self->ids, 0);
  add_entry (self, names, "", _("None"));
  if (choices == HC_CHOICES_PEN)
    add_pens (self, names, plan);
  else
    add_buildings (self, names, plan);
  offer (self, names);
}

void
hc_choice_set_selected (HcChoice *self, guint selected)
{
  self->showing = TRUE;
  gtk_drop_down_set_selected (self->list, selected);
  self->showing = FALSE;
}

/**
 * hc_choice_set_label: (skip)
 * @self: a choice
 * @label: the label that says what is chosen
 */
void
hc_choice_set_label (HcChoice *self, GtkWidget *label)
{
  gtk_label_set_mnemonic_widget (GTK_LABEL (label), GTK_WIDGET (self->list));
  gtk_accessible_update_relation (GTK_ACCESSIBLE (self->list), GTK_ACCESSIBLE_RELATION_LABELLED_BY,
                                  label, NULL, -1);
}

/**
 * hc_choice_set_told: (skip)
 * @self: a choice
 * @told: what is chosen, for a screen reader, where no label says it
 */
void
hc_choice_set_told (HcChoice *self, const char *told)
{
  gtk_accessible_update_property (GTK_ACCESSIBLE (self->list), GTK_ACCESSIBLE_PROPERTY_LABEL, told,
                                  -1);
}

guint
hc_choice_get_selected (HcChoice *self)
{
  return gtk_drop_down_get_selected (self->list);
}

void
hc_choice_set_id (HcChoice *self, const char *id)
{
  guint found = 0;

  for (guint i = 0; i < self->ids->len; i++)
    if (g_strcmp0 (self->ids->pdata[i], id != NULL ? id : "") == 0)
      found = i;
  hc_choice_set_selected (self, found);
}

const char *
hc_choice_get_id (HcChoice *self)
{
  guint selected = hc_choice_get_selected (self);

  return selected < self->ids->len ? self->ids->pdata[selected] : "";
}

static gboolean
tell_entered (gpointer self)
{
  HC_CHOICE (self)->telling = 0;
  g_signal_emit (self, signals[ENTERED], 0);
  return G_SOURCE_REMOVE;
}

/* Told once the list has closed: what is entered may change what it offers. */
static void
selected (HcChoice *self)
{
  if (!self->showing && self->telling == 0)
    self->telling = g_idle_add_full (G_PRIORITY_DEFAULT, tell_entered, self, NULL);
}

static void
hc_choice_dispose (GObject *object)
{
  HcChoice *self = HC_CHOICE (object);

  g_clear_handle_id (&self->telling, g_source_remove);
  if (self->list != NULL)
    gtk_widget_unparent (GTK_WIDGET (self->list));
  self->list = NULL;
  g_clear_pointer (&self->ids, g_ptr_array_unref);
  G_OBJECT_CLASS (hc_choice_parent_class)->dispose (object);
}

static void
hc_choice_class_init (HcChoiceClass *klass)
{
  G_OBJECT_CLASS (klass)->dispose = hc_choice_dispose;
  signals[ENTERED] = g_signal_new ("entered", G_TYPE_FROM_CLASS (klass), G_SIGNAL_RUN_LAST, 0,
                                   NULL, NULL, NULL, G_TYPE_NONE, 0);
  gtk_widget_class_set_layout_manager_type (GTK_WIDGET_CLASS (klass), GTK_TYPE_BIN_LAYOUT);
}

/* The name shown is cut short, those to choose from are not. */
static void
hc_choice_init (HcChoice *self)
{
  g_autoptr (GtkListItemFactory) shown = new_factory (G_CALLBACK (set_up_shown));
  g_autoptr (GtkListItemFactory) listed = new_factory (G_CALLBACK (set_up));
  g_autoptr (GtkExpression) name
      = gtk_property_expression_new (GTK_TYPE_STRING_OBJECT, NULL, "string");

  self->ids = g_ptr_array_new_with_free_func (g_free);
  self->list = GTK_DROP_DOWN (gtk_drop_down_new (NULL, NULL));
  gtk_drop_down_set_factory (self->list, shown);
  gtk_drop_down_set_list_factory (self->list, listed);
  gtk_drop_down_set_expression (self->list, name);
  gtk_widget_set_parent (GTK_WIDGET (self->list), GTK_WIDGET (self));
  hc_open_at_choice (self->list);
  g_signal_connect_swapped (self->list, "notify::selected", G_CALLBACK (selected), self);
}

GtkWidget *
hc_choice_new (void)
{
  return g_object_new (HC_TYPE_CHOICE, NULL);
}
