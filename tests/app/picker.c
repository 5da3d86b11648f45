/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * One name is picked out of several. */
#include "config.h"

#include "app/fields/name-search.h"
#include "app/fields/picker-list.h"
#include "app/fields/picker-row.h"
#include "app/fields/picker.h"
#include "panel-test.h"

static const char *const many[] = { "Ancona", "Bielefelder", "Cochin", "Faverolles", "Hamburg",
                                    "Leghorn", "Maran", "Orpington", "Red Leghorn", "Silkie",
                                    "Sussex", "Welsummer", NULL };

typedef struct
{
  GtkWidget *window;
  GtkWidget *picker;
  guint n_picked;
} Fixture;

static void
count_picked (Fixture *fixture)
{
  fixture->n_picked++;
}

static void
set_up (Fixture *fixture, gconstpointer data)
{
  fixture->window = gtk_window_new ();
  fixture->picker = hc_picker_new ("Breed");
  gtk_window_set_child (GTK_WINDOW (fixture->window), fixture->picker);
  for (guint i = 0; many[i] != NULL; i++)
    hc_picker_offer (HC_PICKER (fixture->picker), many[i], many[i], i == 9 ? "bantam" : NULL);
  g_signal_connect_swapped (fixture->picker, "picked", G_CALLBACK (count_picked), fixture);
  g_object_add_weak_pointer (G_OBJECT (fixture->picker), (gpointer *) &fixture->picker);
  gtk_window_present (GTK_WINDOW (fixture->window));
}

static void
tear_down (Fixture *fixture, gconstpointer data)
{
  gtk_window_destroy (GTK_WINDOW (fixture->window));
  g_assert_null (fixture->picker);
}

static GtkListBox *
list_of (Fixture *fixture)
{
  return GTK_LIST_BOX (find_widget (fixture->picker, GTK_TYPE_LIST_BOX, 0));
}

/* Names as they stand in the list, while something is typed. */
static char *
narrowed (Fixture *fixture, const char *typed)
{
  GtkEditable *search = GTK_EDITABLE (find_widget (fixture->picker, GTK_TYPE_SEARCH_ENTRY, 0));
  g_autoptr (GString) names = g_string_new (NULL);
  GtkListBoxRow *row;

  gtk_editable_set_text (search, typed);
  for (int i = 0; (row = gtk_list_box_get_row_at_index (list_of (fixture), i)) != NULL; i++)
    if (hc_picker_row_get_rank (HC_PICKER_ROW (row)) != HC_NAME_OTHER)
      g_string_append_printf (names, "%s ", many[hc_picker_row_get_index (HC_PICKER_ROW (row))]);
  return g_strdup (g_strchomp (names->str));
}

static void
list_is_built_when_it_opens (Fixture *fixture, gconstpointer data)
{
  g_assert_null (find_widget (fixture->picker, GTK_TYPE_POPOVER, 0));
  open_picker (fixture->picker);
  g_assert_cmpuint (count_shown (fixture->picker, HC_TYPE_PICKER_ROW), ==,
                    G_N_ELEMENTS (many) - 1);
}

static void
opens_on_what_is_picked (Fixture *fixture, gconstpointer data)
{
  GtkListBoxRow *row;

  hc_picker_set_picked (HC_PICKER (fixture->picker), 6);
  open_picker (fixture->picker);
  row = gtk_list_box_get_selected_row (list_of (fixture));
  g_assert_cmpuint (hc_picker_row_get_index (HC_PICKER_ROW (row)), ==, 6);
  gtk_test_accessible_assert_property (GTK_ACCESSIBLE (row), GTK_ACCESSIBLE_PROPERTY_LABEL,
                                       "Maran");
  gtk_test_accessible_assert_property (GTK_ACCESSIBLE (row), GTK_ACCESSIBLE_PROPERTY_DESCRIPTION,
                                       "chosen now");
  g_assert_cmpuint (fixture->n_picked, ==, 0);
}

static void
a_row_tells_what_its_name_is (Fixture *fixture, gconstpointer data)
{
  open_picker (fixture->picker);
  gtk_test_accessible_assert_property (
      GTK_ACCESSIBLE (find_widget (fixture->picker, HC_TYPE_PICKER_ROW, 9)),
      GTK_ACCESSIBLE_PROPERTY_DESCRIPTION, "bantam");
  g_assert_true (says (fixture->picker, "bantam"));
}

static void
another_name_is_told_once (Fixture *fixture, gconstpointer data)
{
  GtkWidget *button = find_widget (fixture->picker, GTK_TYPE_TOGGLE_BUTTON, 0);

  pick (fixture->picker, 7);
  g_assert_cmpuint (fixture->n_picked, ==, 1);
  g_assert_cmpstr (hc_picker_get_id (HC_PICKER (fixture->picker)), ==, "Orpington");
  gtk_test_accessible_assert_property (GTK_ACCESSIBLE (button), GTK_ACCESSIBLE_PROPERTY_LABEL,
                                       "Breed: Orpington");
  pick (fixture->picker, 7);
  g_assert_cmpuint (fixture->n_picked, ==, 1);
}

static void
typing_narrows_the_list (Fixture *fixture, gconstpointer data)
{
  g_autofree char *within = NULL;
  g_autofree char *told = NULL;
  g_autofree char *none = NULL;
  g_autofree char *all = NULL;

  open_picker (fixture->picker);
  within = narrowed (fixture, "l");
  told = narrowed (fixture, "banta");
  none = narrowed (fixture, "xyz");
  all = narrowed (fixture, "");
  g_assert_cmpstr (within, ==,
                   "Leghorn Red Leghorn Bielefelder Faverolles Silkie Welsummer");
  g_assert_cmpstr (told, ==, "Silkie");
  g_assert_cmpstr (none, ==, "");
  g_assert_cmpint (strlen (all), >, 80);
}

static void
enter_takes_the_best_answer (Fixture *fixture, gconstpointer data)
{
  g_autofree char *found = NULL;

  open_picker (fixture->picker);
  found = narrowed (fixture, "horn");
  g_signal_emit_by_name (find_widget (fixture->picker, GTK_TYPE_SEARCH_ENTRY, 0), "activate");
  while (g_main_context_iteration (NULL, FALSE))
    ;
  g_assert_cmpstr (hc_picker_get_id (HC_PICKER (fixture->picker)), ==, "Leghorn");
}

static void
what_is_offered_anew_is_listed_anew (Fixture *fixture, gconstpointer data)
{
  static const char *const few[] = { "Run", "Ark", NULL };

  pick (fixture->picker, 7);
  hc_picker_offer_words (HC_PICKER (fixture->picker), few);
  g_assert_cmpstr (hc_picker_get_id (HC_PICKER (fixture->picker)), ==, "Run");
  open_picker (fixture->picker);
  g_assert_cmpuint (count_shown (fixture->picker, HC_TYPE_PICKER_ROW), ==, 2);
  g_assert_cmpuint (count_shown (fixture->picker, GTK_TYPE_SEARCH_ENTRY), ==, 0);
  g_assert_cmpuint (fixture->n_picked, ==, 1);
}

static void
ids_not_offered_pick_the_first (Fixture *fixture, gconstpointer data)
{
  hc_picker_set_id (HC_PICKER (fixture->picker), "Cochin");
  g_assert_cmpuint (hc_picker_get_picked (HC_PICKER (fixture->picker)), ==, 2);
  hc_picker_set_id (HC_PICKER (fixture->picker), "nothing");
  g_assert_cmpuint (hc_picker_get_picked (HC_PICKER (fixture->picker)), ==, 0);
  hc_picker_clear (HC_PICKER (fixture->picker));
  g_assert_cmpstr (hc_picker_get_id (HC_PICKER (fixture->picker)), ==, "");
}

typedef struct
{
  const char *typed;
  const char *name;
  const char *about;
  HcNameRank rank;
} Search;

static const Search searches[] = {
  { "", "Orpington", NULL, HC_NAME_BEGINS },
  { "  ", "Orpington", NULL, HC_NAME_BEGINS },
  { "ORP", "Orpington", NULL, HC_NAME_BEGINS },
  { "red", "Rhode Island Red", NULL, HC_NAME_WORD_BEGINS },
  { "red rho", "Rhode Island Red", NULL, HC_NAME_WORD_BEGINS },
  { "land", "Rhode Island Red", NULL, HC_NAME_HOLDS },
  { "fav", "Faverolles (salmon)", NULL, HC_NAME_BEGINS },
  { "salmon", "Faverolles (salmon)", NULL, HC_NAME_WORD_BEGINS },
  { "e", "Heeler", NULL, HC_NAME_HOLDS },
  { "brahm", "Brähma", NULL, HC_NAME_BEGINS },
  { "ÄHMA", "brahma", NULL, HC_NAME_HOLDS },
  { "duck", "Aylesbury", "duck", HC_NAME_TOLD },
  { "duck ayl", "Aylesbury", "duck", HC_NAME_TOLD },
  { "goose", "Aylesbury", "duck", HC_NAME_OTHER },
  { "ayl goose", "Aylesbury", "duck", HC_NAME_OTHER },
};

static void
names_are_ranked (gconstpointer data)
{
  const Search *search = data;

  g_assert_cmpint (hc_name_search (search->typed, search->name, search->about), ==, search->rank);
}

#define ADD(name, test) g_test_add ("/app/picker/" name, Fixture, NULL, set_up, test, tear_down)

int
main (int argc, char **argv)
{
  gtk_test_init (&argc, &argv, NULL);

  ADD ("list-is-built-when-it-opens", list_is_built_when_it_opens);
  ADD ("opens-on-what-is-picked", opens_on_what_is_picked);
  ADD ("a-row-tells-what-its-name-is", a_row_tells_what_its_name_is);
  ADD ("another-name-is-told-once", another_name_is_told_once);
  ADD ("typing-narrows-the-list", typing_narrows_the_list);
  ADD ("enter-takes-the-best-answer", enter_takes_the_best_answer);
  ADD ("what-is-offered-anew-is-listed-anew", what_is_offered_anew_is_listed_anew);
  ADD ("ids-not-offered-pick-the-first", ids_not_offered_pick_the_first);
  for (guint i = 0; i < G_N_ELEMENTS (searches); i++)
    {
      g_autofree char *path = g_strdup_printf ("/app/picker/names-are-ranked/%u", i);

      g_test_add_data_func (path, &searches[i], names_are_ranked);
    }
  return g_test_run ();
}
