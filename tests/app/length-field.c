/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A field for a length understands what keepers type and keeps what it cannot. */
#include "config.h"

#include "app/fields/length-field.h"

#include <string.h>

typedef struct
{
  GtkWidget *field;
  GtkWidget *entry;
  guint entered;
  double mm;
} Fixture;

static void
entered (HcLengthField *field, double mm, Fixture *fixture)
{
  fixture->entered++;
  fixture->mm = mm;
}

static GtkWidget *
find_entry (GtkWidget *widget)
{
  if (GTK_IS_ENTRY (widget))
    return widget;
  for (GtkWidget *child = gtk_widget_get_first_child (widget); child != NULL;
       child = gtk_widget_get_next_sibling (child))
    {
      GtkWidget *found = find_entry (child);

      if (found != NULL)
        return found;
    }
  return NULL;
}

static void
set_up (Fixture *fixture, gconstpointer data)
{
  fixture->field = g_object_ref_sink (hc_length_field_new ("Width"));
  fixture->entry = find_entry (fixture->field);
  hc_length_field_set_range (HC_LENGTH_FIELD (fixture->field), 10, 5000);
  hc_length_field_set_length (HC_LENGTH_FIELD (fixture->field), 700);
  g_signal_connect (fixture->field, "entered", G_CALLBACK (entered), fixture);
}

static void
tear_down (Fixture *fixture, gconstpointer data)
{
  g_assert_finalize_object (fixture->field);
}

static void
type (Fixture *fixture, const char *text)
{
  gtk_editable_set_text (GTK_EDITABLE (fixture->entry), text);
  g_signal_emit_by_name (fixture->entry, "activate");
}

static void
lengths_are_understood (Fixture *fixture, gconstpointer data)
{
  static const struct
  {
    const char *text;
    double mm;
  } typed[] = {
    { "2' 3 1/2\"", 698.5 }, { "27.5 in", 698.5 }, { "71 cm", 710 },
    { "0.9m", 900 },         { "0,95 m", 950 },    { "120", 1200 },
  };

  for (guint i = 0; i < G_N_ELEMENTS (typed); i++)
    {
      fixture->mm = 0;
      type (fixture, typed[i].text);
      g_assert_cmpfloat_with_epsilon (fixture->mm, typed[i].mm, 1e-6);
    }
}

static void
nonsense_keeps_the_old_length (Fixture *fixture, gconstpointer data)
{
  static const char *const nonsense[] = { "wide", "", "3 stone", "nan", "-5 cm", "99 m", "1 mm" };

  for (guint i = 0; i < G_N_ELEMENTS (nonsense); i++)
    {
      type (fixture, nonsense[i]);
      g_assert_cmpuint (fixture->entered, ==, 0);
      g_assert_cmpfloat (hc_length_field_get_length (HC_LENGTH_FIELD (fixture->field)), ==, 700);
      g_assert_true (gtk_widget_has_css_class (fixture->entry, "error"));
      gtk_test_accessible_assert_state (GTK_ACCESSIBLE (fixture->entry),
                                        GTK_ACCESSIBLE_STATE_INVALID,
                                        GTK_ACCESSIBLE_INVALID_TRUE);
    }
  type (fixture, "80 cm");
  g_assert_cmpuint (fixture->entered, ==, 1);
  g_assert_false (gtk_widget_has_css_class (fixture->entry, "error"));
}

static void
the_same_length_is_not_entered_again (Fixture *fixture, gconstpointer data)
{
  type (fixture, gtk_editable_get_text (GTK_EDITABLE (fixture->entry)));
  g_assert_cmpuint (fixture->entered, ==, 0);
}

static void
units_change_what_is_shown_not_what_it_is (Fixture *fixture, gconstpointer data)
{
  hc_length_field_set_length (HC_LENGTH_FIELD (fixture->field), 2 * 304.8);
  hc_length_field_set_units (HC_LENGTH_FIELD (fixture->field), HC_UNITS_FEET);
  g_assert_nonnull (strchr (gtk_editable_get_text (GTK_EDITABLE (fixture->entry)), '2'));
  g_assert_cmpfloat (hc_length_field_get_length (HC_LENGTH_FIELD (fixture->field)), ==, 609.6);
  g_assert_cmpuint (fixture->entered, ==, 0);
}

#define ADD(path, test) g_test_add (path, Fixture, NULL, set_up, test, tear_down)

int
main (int argc, char *argv[])
{
  gtk_test_init (&argc, &argv, NULL);
  ADD ("/app/length-field/understood", lengths_are_understood);
  ADD ("/app/length-field/nonsense", nonsense_keeps_the_old_length);
  ADD ("/app/length-field/same", the_same_length_is_not_entered_again);
  ADD ("/app/length-field/units", units_change_what_is_shown_not_what_it_is);
  return g_test_run ();
}
