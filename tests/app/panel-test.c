/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The demo plan, judged, in a window that holds one part. */
#include "config.h"

#include "panel-test.h"

#include "app/fields/picker.h"
#include "app/fields/picker-row.h"

#include "begin/ready-house.h"

/* @type is a pointer to the function that registers the part's type. */
void
panel_set_up (PanelFixture *fixture, gconstpointer type)
{
  g_autoptr (HcPlan) plan = hc_demo_open ("demo", NULL);
  GType (*get_type) (void) = (GType (*) (void)) type;

  fixture->book = hc_book_load_default (NULL);
  fixture->document = hc_document_new (plan);
  fixture->checker = hc_checker_new (fixture->document, fixture->book);
  hc_checker_update (fixture->checker);
  fixture->panel = g_object_new (get_type (), "checker", fixture->checker, NULL);
  fixture->window = gtk_window_new ();
  gtk_window_set_child (GTK_WINDOW (fixture->window), fixture->panel);
  g_object_add_weak_pointer (G_OBJECT (fixture->panel), (gpointer *) &fixture->panel);
}

void
panel_tear_down (PanelFixture *fixture, gconstpointer type)
{
  gtk_window_destroy (GTK_WINDOW (fixture->window));
  g_assert_null (fixture->panel);
  g_object_unref (fixture->checker);
  g_object_unref (fixture->document);
  hc_book_unref (fixture->book);
}

static GtkWidget *
find_from (GtkWidget *root, GType type, guint *which)
{
  if (g_type_is_a (G_OBJECT_TYPE (root), type) && (*which)-- == 0)
    return root;
  for (GtkWidget *at = gtk_widget_get_first_child (root); at != NULL;
       at = gtk_widget_get_next_sibling (at))
    {
      GtkWidget *found = find_from (at, type, which);

      if (found != NULL)
        return found;
    }
  return NULL;
}

GtkWidget *
find_widget (GtkWidget *root, GType type, guint which)
{
  return find_from (root, type, &which);
}

static gboolean
is_shown (GtkWidget *widget, GtkWidget *root)
{
  for (; widget != root; widget = gtk_widget_get_parent (widget))
    if (!gtk_widget_get_visible (widget))
      return FALSE;
  return TRUE;
}

guint
count_shown (GtkWidget *root, GType type)
{
  GtkWidget *found;
  guint n = 0;

  for (guint i = 0; (found = find_widget (root, type, i)) != NULL; i++)
    n += is_shown (found, root);
  return n;
}

gboolean
says (GtkWidget *root, const char *text)
{
  GtkWidget *label;

  for (guint i = 0; (label = find_widget (root, GTK_TYPE_LABEL, i)) != NULL; i++)
    if (strstr (gtk_label_get_text (GTK_LABEL (label)), text) != NULL)
      return TRUE;
  return FALSE;
}

void
open_picker (GtkWidget *picker)
{
  gtk_menu_button_popup (GTK_MENU_BUTTON (find_widget (picker, GTK_TYPE_MENU_BUTTON, 0)));
}

/* As the keeper does: the list is opened, and a row of it activated. */
void
pick (GtkWidget *picker, guint row)
{
  open_picker (picker);
  gtk_widget_activate (find_widget (picker, HC_TYPE_PICKER_ROW, row));
  while (g_main_context_iteration (NULL, FALSE))
    ;
}
