/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The shelf offers everything in the book, and finds it by its name. */
#include "config.h"

#include "app/shelf/shelf.h"
#include "app/shelf/thing.h"
#include "panel-test.h"

static guint
things_in (HcBook *book)
{
  static const guint pen_and_run = 2;

  return hc_book_get_n_fitting_types (book) + hc_book_get_n_opening_types (book) + pen_and_run;
}

static void
look_for (PanelFixture *fixture, const char *text)
{
  GtkWidget *search = find_widget (fixture->panel, GTK_TYPE_SEARCH_ENTRY, 0);

  gtk_editable_set_text (GTK_EDITABLE (search), text);
  g_signal_emit_by_name (search, "search-changed");
}

static void
offers_everything_in_the_book (PanelFixture *fixture, gconstpointer data)
{
  g_assert_cmpuint (count_shown (fixture->panel, HC_TYPE_THING), ==, things_in (fixture->book));
}

static void
every_thing_has_a_name_and_a_purpose (PanelFixture *fixture, gconstpointer data)
{
  GtkWidget *thing;

  for (guint i = 0; (thing = find_widget (fixture->panel, HC_TYPE_THING, i)) != NULL; i++)
    {
      GtkWidget *button = find_widget (thing, GTK_TYPE_BUTTON, 0);

      gtk_test_accessible_assert_role (GTK_ACCESSIBLE (button), GTK_ACCESSIBLE_ROLE_BUTTON);
      g_assert_true (gtk_test_accessible_has_relation (GTK_ACCESSIBLE (button),
                                                       GTK_ACCESSIBLE_RELATION_LABELLED_BY));
      g_assert_true (gtk_test_accessible_has_property (GTK_ACCESSIBLE (button),
                                                       GTK_ACCESSIBLE_PROPERTY_DESCRIPTION));
    }
}

static void
finds_what_can_be_bought_and_shows_all_again (PanelFixture *fixture, gconstpointer data)
{
  look_for (fixture, "treadle");
  g_assert_cmpuint (count_shown (fixture->panel, HC_TYPE_THING), ==, 1);
  look_for (fixture, "nothing of that name");
  g_assert_cmpuint (count_shown (fixture->panel, HC_TYPE_THING), ==, 0);
  g_assert_true (says (fixture->panel, "Nothing here has that name"));
  look_for (fixture, "");
  g_assert_cmpuint (count_shown (fixture->panel, HC_TYPE_THING), ==, things_in (fixture->book));
}

static void
a_size_to_buy_is_chosen_in_place (PanelFixture *fixture, gconstpointer data)
{
  const HcFittingType *type = hc_book_get_fitting_type (fixture->book, "feeder", "round");
  GtkWidget *thing = g_object_ref_sink (hc_thing_new_fitting (type));
  const HcDevice *device = &type->devices[1];

  g_assert_true (gtk_widget_activate_action (thing, "thing.device", "s", device->id));
  g_assert_true (says (thing, hc_device_get_name (device)));
  g_assert_finalize_object (thing);
}

int
main (int argc, char **argv)
{
  gtk_test_init (&argc, &argv, NULL);
  adw_init ();
#define ADD(name)                                                                      \
  g_test_add ("/app/shelf/" #name, PanelFixture, hc_shelf_get_type, panel_set_up, name, \
              panel_tear_down)
  ADD (offers_everything_in_the_book);
  ADD (every_thing_has_a_name_and_a_purpose);
  ADD (finds_what_can_be_bought_and_shows_all_again);
  ADD (a_size_to_buy_is_chosen_in_place);
  return g_test_run ();
}
