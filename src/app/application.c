/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The application: its book, its actions, its windows. */
#include "config.h"

#include "app/application.h"

#include "app/views/view-table.h"
#include "app/window/window.h"

#include <glib-unix.h>
#include <glib/gi18n.h>

struct _HcApplication
{
  AdwApplication parent_instance;

  HcBook *book;
  GPtrArray *rules_left_out;
  gboolean told_rules_left_out;
};

G_DEFINE_FINAL_TYPE (HcApplication, hc_application, ADW_TYPE_APPLICATION)

/**
 * hc_application_get_book:
 * @self: the application
 *
 * Returns: (transfer none): the book of the trade, with the keeper's own rules
 */
HcBook *
hc_application_get_book (HcApplication *self)
{
  g_return_val_if_fail (HC_IS_APPLICATION (self), NULL);
  return self->book;
}

/**
 * hc_application_list_rules_left_out: (skip)
 * @self: the application
 *
 * Returns: (transfer full): a line for each of the keeper's files of rules that
 *   could not be used, saying what is wrong where
 */
char *
hc_application_list_rules_left_out (HcApplication *self)
{
  GString *lines = g_string_new (NULL);

  for (guint i = 0; i < self->rules_left_out->len; i++)
    g_string_append_printf (lines, "%s%s", i > 0 ? "\n" : "",
                            (const char *) self->rules_left_out->pdata[i]);
  return g_string_free (lines, FALSE);
}

static HcWindow *
present_new_window (HcApplication *self)
{
  HcWindow *window = hc_window_new (self);

  gtk_window_present (GTK_WINDOW (window));
  return window;
}

static void
tell_rules_left_out (HcApplication *self, HcWindow *window)
{
  if (self->told_rules_left_out)
    return;
  for (guint i = 0; i < self->rules_left_out->len; i++)
    hc_window_say (window, self->rules_left_out->pdata[i]);
  self->told_rules_left_out = TRUE;
}

static void
hc_application_activate (GApplication *application)
{
  HcApplication *self = HC_APPLICATION (application);
  GtkWindow *active = gtk_application_get_active_window (GTK_APPLICATION (self));

  if (active != NULL)
    gtk_window_present (active);
  else
    tell_rules_left_out (self, present_new_window (self));
}

static void
hc_application_open (GApplication *application, GFile **files, int n_files, const char *hint)
{
  HcApplication *self = HC_APPLICATION (application);

  for (int i = 0; i < n_files; i++)
    {
      HcWindow *window = hc_window_new (self);

      hc_window_open_file (window, files[i]);
      tell_rules_left_out (self, window);
    }
}

static void
new_plan (GSimpleAction *action, GVariant *parameter, gpointer data)
{
  present_new_window (data);
}

static void
close_all (GSimpleAction *action, GVariant *parameter, gpointer data)
{
  g_autoptr (GList) windows = g_list_copy (gtk_application_get_windows (data));

  for (GList *at = windows; at != NULL; at = at->next)
    gtk_window_close (at->data);
}

static void
show_help (GSimpleAction *action, GVariant *parameter, gpointer data)
{
  gtk_show_uri (gtk_application_get_active_window (data), "help:hencote", GDK_CURRENT_TIME);
}

static void
show_about (GSimpleAction *action, GVariant *parameter, gpointer data)
{
  static const char *developers[] = { "The Hencote authors", NULL };

  adw_show_about_window (gtk_application_get_active_window (data),
                         "application-name", "Hencote",
                         "application-icon", HC_APPLICATION_ID,
                         "version", HC_VERSION,
                         "comments", _("Plan a hen house before you cut wood or set eggs."),
                         "developer-name", _("The Hencote authors"),
                         "developers", developers,
                         /* Translators: your name and address, one a line */
                         "translator-credits", _("translator-credits"),
                         "license-type", GTK_LICENSE_GPL_3_0,
                         NULL);
}

static const GActionEntry actions[] = {
  { "new", new_plan },
  { "quit", close_all },
  { "help", show_help },
  { "about", show_about },
};

/* Keys of every action that has one; letters alone act only on the floor. */
static const struct
{
  const char *action;
  const char *keys[3];
} accels[] = {
  { "app.new", { "<Control>n" } },
  { "app.quit", { "<Control>q" } },
  { "app.help", { "F1" } },
  { "win.open", { "<Control>o" } },
  { "win.save", { "<Control>s" } },
  { "win.save-as", { "<Control><Shift>s" } },
  { "win.export", { "<Control>e" } },
  { "win.undo", { "<Control>z" } },
  { "win.redo", { "<Control><Shift>z", "<Control>y" } },
  { "win.find-thing", { "<Control>f" } },
  { "win.tools", { "F9" } },
  { "win.needs", { "<Shift>F9" } },
  { "win.feet", { "<Control>u" } },
  { "win.rules", { "<Control>r" } },
  { "win.show-birds", { "<Control>b" } },
  { "win.condition('day')", { "<Alt>1" } },
  { "win.condition('night')", { "<Alt>2" } },
  { "win.condition('shut-in')", { "<Alt>3" } },
  { "win.close", { "<Control>w" } },
  { "win.zoom-in", { "<Control>plus", "<Control>equal" } },
  { "win.zoom-out", { "<Control>minus" } },
  { "win.zoom-fit", { "<Control>0" } },
  { "win.keys", { "<Control>question" } },
};

static void
set_keys_of_views (GtkApplication *self)
{
  guint n_kinds;
  const HcViewKind *kinds = hc_view_kinds_list (&n_kinds);

  for (guint i = 0; i < n_kinds; i++)
    {
      const char *const keys[] = { kinds[i].keys, NULL };
      g_autofree char *action = g_strdup_printf ("win.view('%s')", kinds[i].id);

      gtk_application_set_accels_for_action (self, action, keys);
    }
}

static void
load_book (HcApplication *self)
{
  g_autofree char *rules = g_build_filename (g_get_user_data_dir (), "hencote", "standards", NULL);
  g_autoptr (GError) error = NULL;

  self->book = hc_book_load (rules, &self->rules_left_out, &error);
  if (self->book == NULL)
    g_error ("The program's own data cannot be read: %s", error->message);
}

/* Asked to end by the system: nothing can be asked of the keeper any more, so
 * what is not saved is kept as drafts. */
static gboolean
end_on_signal (gpointer data)
{
  GList *at = gtk_application_get_windows (data);

  for (; at != NULL; at = at->next)
    if (HC_IS_WINDOW (at->data))
      hc_window_write_draft_now (at->data);
  g_application_quit (data);
  return G_SOURCE_REMOVE;
}

static void
hc_application_startup (GApplication *application)
{
  HcApplication *self = HC_APPLICATION (application);

  G_APPLICATION_CLASS (hc_application_parent_class)->startup (application);
  load_book (self);
  g_action_map_add_action_entries (G_ACTION_MAP (self), actions, G_N_ELEMENTS (actions), self);
  for (guint i = 0; i < G_N_ELEMENTS (accels); i++)
    gtk_application_set_accels_for_action (GTK_APPLICATION (self), accels[i].action,
                                           accels[i].keys);
  set_keys_of_views (GTK_APPLICATION (self));
  gtk_window_set_default_icon_name (HC_APPLICATION_ID);
  g_unix_signal_add (SIGTERM, end_on_signal, self);
  g_unix_signal_add (SIGHUP, end_on_signal, self);
}

static void
hc_application_finalize (GObject *object)
{
  HcApplication *self = HC_APPLICATION (object);

  g_clear_pointer (&self->book, hc_book_unref);
  g_clear_pointer (&self->rules_left_out, g_ptr_array_unref);
  G_OBJECT_CLASS (hc_application_parent_class)->finalize (object);
}

static void
hc_application_class_init (HcApplicationClass *klass)
{
  G_OBJECT_CLASS (klass)->finalize = hc_application_finalize;
  G_APPLICATION_CLASS (klass)->startup = hc_application_startup;
  G_APPLICATION_CLASS (klass)->activate = hc_application_activate;
  G_APPLICATION_CLASS (klass)->open = hc_application_open;
}

static void
hc_application_init (HcApplication *self)
{
}

HcApplication *
hc_application_new (void)
{
  return g_object_new (HC_TYPE_APPLICATION,
                       "application-id", HC_APPLICATION_ID,
                       "flags", G_APPLICATION_HANDLES_OPEN,
                       "resource-base-path", "/org/hencote/Hencote",
                       NULL);
}
