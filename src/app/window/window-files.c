/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The window's files: open, save, draw to a file, and the question before closing. */
#include "config.h"

#include "app/fields/plain-names.h"
#include "app/window/window-private.h"

#include "base/error.h"
#include "drawing/export.h"

#include <glib/gi18n.h>

#define PLAN_TYPE "application/vnd.hencote.plan+json"
#define PLAN_ENDING ".hencote"

static void
remember (GFile *file)
{
  g_autofree char *uri = g_file_get_uri (file);

  gtk_recent_manager_add_item (gtk_recent_manager_get_default (), uri);
}

/**
 * hc_window_open_file:
 * @self: a window
 * @file: a plan file
 *
 * Shows the plan in @file, in this window if it shows none yet, and brings the
 * window to the front. A file that cannot be read is told with its reason and
 * changes nothing.
 */
void
hc_window_open_file (HcWindow *self, GFile *file)
{
  g_autoptr (GError) error = NULL;
  g_autoptr (HcDocument) document = hc_document_load (file, &error);
  HcWindow *window = self;

  if (document == NULL)
    {
      gtk_window_present (GTK_WINDOW (self));
      hc_window_ask_nothing (self, _("This Plan Cannot Be Opened"), error->message);
      return;
    }
  if (self->document != NULL)
    window = hc_window_new (HC_APPLICATION (gtk_window_get_application (GTK_WINDOW (self))));
  hc_window_take_document (window, document);
  gtk_window_present (GTK_WINDOW (window));
  remember (file);
}

/**
 * hc_window_ask_nothing: (skip)
 * @self: a window
 * @heading: what happened
 * @body: why, and what to do
 */
void
hc_window_ask_nothing (HcWindow *self, const char *heading, const char *body)
{
  GtkWidget *dialog = adw_message_dialog_new (GTK_WINDOW (self), heading, body);

  adw_message_dialog_add_response (ADW_MESSAGE_DIALOG (dialog), "close", _("_Close"));
  hc_name_plainly (dialog);
  gtk_window_present (GTK_WINDOW (dialog));
}

static void
finish_close (HcWindow *self)
{
  self->closing = TRUE;
  gtk_window_close (GTK_WINDOW (self));
}

static void
save_over (HcWindow *self, GFile *file, gboolean over_changes);

static void
changed_answered (AdwMessageDialog *dialog, const char *response, HcWindow *self)
{
  if (g_str_equal (response, "over"))
    save_over (self, hc_document_get_file (self->document), TRUE);
  else if (g_str_equal (response, "as"))
    gtk_widget_activate_action (GTK_WIDGET (self), "win.save-as", NULL);
  else
    self->close_after_save = FALSE;
}

static void
ask_about_changes (HcWindow *self, const char *reason)
{
  GtkWidget *dialog
      = adw_message_dialog_new (GTK_WINDOW (self), _("The File Was Changed Elsewhere"), reason);

  adw_message_dialog_add_responses (ADW_MESSAGE_DIALOG (dialog), "cancel", _("_Cancel"), "as",
                                    _("Save _As…"), "over", _("Save _Over It"), NULL);
  adw_message_dialog_set_response_appearance (ADW_MESSAGE_DIALOG (dialog), "over",
                                              ADW_RESPONSE_DESTRUCTIVE);
  g_signal_connect (dialog, "response", G_CALLBACK (changed_answered), self);
  hc_name_plainly (dialog);
  gtk_window_present (GTK_WINDOW (dialog));
}

static void
save_over (HcWindow *self, GFile *file, gboolean over_changes)
{
  g_autoptr (GError) error = NULL;

  if (hc_document_save (self->document, file, over_changes, &error))
    {
      remember (file);
      if (self->close_after_save)
        finish_close (self);
      return;
    }
  if (g_error_matches (error, HC_ERROR, HC_ERROR_CHANGED))
    ask_about_changes (self, error->message);
  else
    {
      self->close_after_save = FALSE;
      hc_window_ask_nothing (self, _("The Plan Could Not Be Saved"), error->message);
    }
}

static GtkFileFilter *
plan_filter (void)
{
  GtkFileFilter *filter = gtk_file_filter_new ();

  gtk_file_filter_set_name (filter, _("Hencote plans"));
  gtk_file_filter_add_mime_type (filter, PLAN_TYPE);
  gtk_file_filter_add_pattern (filter, "*" PLAN_ENDING);
  return filter;
}

static GtkFileChooserNative *
file_chooser (HcWindow *self, const char *title, GtkFileChooserAction action, const char *accept)
{
  GtkFileChooserNative *chooser
      = gtk_file_chooser_native_new (title, GTK_WINDOW (self), action, accept, NULL);

  gtk_native_dialog_set_modal (GTK_NATIVE_DIALOG (chooser), TRUE);
  return chooser;
}

static void
open_chosen (GtkNativeDialog *chooser, int response, HcWindow *self)
{
  g_autoptr (GFile) file = NULL;

  if (response == GTK_RESPONSE_ACCEPT)
    file = gtk_file_chooser_get_file (GTK_FILE_CHOOSER (chooser));
  g_object_unref (chooser);
  if (file != NULL)
    hc_window_open_file (self, file);
}

static void
choose_open (GtkWidget *widget, const char *name, GVariant *parameter)
{
  HcWindow *self = HC_WINDOW (widget);
  GtkFileChooserNative *chooser
      = file_chooser (self, _("Open a Plan"), GTK_FILE_CHOOSER_ACTION_OPEN, _("_Open"));
  g_autoptr (GtkFileFilter) filter = plan_filter ();

  gtk_file_chooser_add_filter (GTK_FILE_CHOOSER (chooser), filter);
  g_signal_connect (chooser, "response", G_CALLBACK (open_chosen), self);
  gtk_native_dialog_show (GTK_NATIVE_DIALOG (chooser));
}

/* A name typed without an ending gets that of plans, unless that would be
 * another file nobody asked about. */
static GFile *
with_ending (GFile *chosen)
{
  g_autofree char *name = g_file_get_basename (chosen);
  g_autofree char *ended = g_strconcat (name, PLAN_ENDING, NULL);
  g_autoptr (GFile) folder = g_file_get_parent (chosen);
  g_autoptr (GFile) file = folder != NULL ? g_file_get_child (folder, ended) : NULL;

  if (file == NULL || strchr (name, '.') != NULL || g_file_query_exists (file, NULL))
    return g_object_ref (chosen);
  return g_steal_pointer (&file);
}

static void
save_chosen (GtkNativeDialog *chooser, int response, HcWindow *self)
{
  g_autoptr (GFile) file = NULL;

  g_autoptr (GFile) chosen = NULL;

  if (response == GTK_RESPONSE_ACCEPT)
    chosen = gtk_file_chooser_get_file (GTK_FILE_CHOOSER (chooser));
  g_object_unref (chooser);
  if (chosen != NULL)
    file = with_ending (chosen);
  if (file != NULL)
    save_over (self, file, TRUE);
  else
    self->close_after_save = FALSE;
}

static char *
suggested_name (HcWindow *self, const char *suffix)
{
  g_autofree char *title = hc_window_get_plan_title (self);

  g_strdelimit (title, "/\\", '-');
  return g_strconcat (title, suffix, NULL);
}

static void
choose_save (GtkWidget *widget, const char *name, GVariant *parameter)
{
  HcWindow *self = HC_WINDOW (widget);
  GtkFileChooserNative *chooser
      = file_chooser (self, _("Save the Plan As"), GTK_FILE_CHOOSER_ACTION_SAVE, _("_Save"));
  g_autofree char *suggested = suggested_name (self, PLAN_ENDING);

  gtk_file_chooser_set_current_name (GTK_FILE_CHOOSER (chooser), suggested);
  g_signal_connect (chooser, "response", G_CALLBACK (save_chosen), self);
  gtk_native_dialog_show (GTK_NATIVE_DIALOG (chooser));
}

static void
save (GtkWidget *widget, const char *name, GVariant *parameter)
{
  HcWindow *self = HC_WINDOW (widget);
  GFile *file = hc_document_get_file (self->document);

  if (file != NULL)
    save_over (self, file, FALSE);
  else
    choose_save (widget, name, parameter);
}

static void
export_chosen (GtkNativeDialog *chooser, int response, HcWindow *self)
{
  g_autoptr (GFile) file = NULL;
  g_autoptr (GError) error = NULL;
  g_autofree char *path = NULL;
  HcCheck *check = hc_checker_get_check (self->checker,
                                         hc_checker_get_condition (self->checker));

  if (response == GTK_RESPONSE_ACCEPT)
    file = gtk_file_chooser_get_file (GTK_FILE_CHOOSER (chooser));
  g_object_unref (chooser);
  if (file == NULL)
    return;
  path = g_file_get_path (file);
  if (path == NULL)
    hc_window_say (self, _("Drawings can be saved only to a folder on this computer."));
  else if (!hc_draw_floor_to_file (check, path, &error))
    hc_window_ask_nothing (self, _("The Drawing Could Not Be Saved"), error->message);
}

static void
choose_export (GtkWidget *widget, const char *name, GVariant *parameter)
{
  HcWindow *self = HC_WINDOW (widget);
  GtkFileChooserNative *chooser
      = file_chooser (self, _("Save a Drawing (PDF, SVG or PNG)"), GTK_FILE_CHOOSER_ACTION_SAVE,
                      _("_Save"));
  g_autofree char *suggested = suggested_name (self, ".pdf");

  gtk_file_chooser_set_current_name (GTK_FILE_CHOOSER (chooser), suggested);
  g_signal_connect (chooser, "response", G_CALLBACK (export_chosen), self);
  gtk_native_dialog_show (GTK_NATIVE_DIALOG (chooser));
}

/* Reading a file again that somebody else changed: what was not saved here
 * stays as a draft. */
static void
read_again (GtkWidget *widget, const char *name, GVariant *parameter)
{
  HcWindow *self = HC_WINDOW (widget);
  g_autoptr (GError) error = NULL;
  g_autoptr (HcDocument) document
      = hc_document_load (hc_document_get_file (self->document), &error);

  if (document == NULL)
    {
      hc_window_ask_nothing (self, _("This Plan Cannot Be Opened"), error->message);
      return;
    }
  if (hc_document_is_modified (self->document))
    hc_document_write_draft (self->document, NULL);
  hc_window_take_document (self, document);
}

static void
close_answered (AdwMessageDialog *dialog, const char *response, HcWindow *self)
{
  if (g_str_equal (response, "save"))
    {
      self->close_after_save = TRUE;
      save (GTK_WIDGET (self), NULL, NULL);
    }
  else if (g_str_equal (response, "discard"))
    {
      hc_document_drop_draft (self->document);
      finish_close (self);
    }
}

/**
 * hc_window_ask_before_closing: (skip)
 * @self: a window with changes that are not saved
 */
void
hc_window_ask_before_closing (HcWindow *self)
{
  GtkWidget *dialog = adw_message_dialog_new (
      GTK_WINDOW (self), _("Save the Changes?"),
      _("The plan was changed since it was last saved. Changes not saved are lost."));

  adw_message_dialog_add_responses (ADW_MESSAGE_DIALOG (dialog), "cancel", _("_Cancel"),
                                    "discard", _("_Discard"), "save", _("_Save"), NULL);
  adw_message_dialog_set_response_appearance (ADW_MESSAGE_DIALOG (dialog), "discard",
                                              ADW_RESPONSE_DESTRUCTIVE);
  adw_message_dialog_set_response_appearance (ADW_MESSAGE_DIALOG (dialog), "save",
                                              ADW_RESPONSE_SUGGESTED);
  adw_message_dialog_set_default_response (ADW_MESSAGE_DIALOG (dialog), "save");
  adw_message_dialog_set_close_response (ADW_MESSAGE_DIALOG (dialog), "cancel");
  g_signal_connect (dialog, "response", G_CALLBACK (close_answered), self);
  hc_name_plainly (dialog);
  gtk_window_present (GTK_WINDOW (dialog));
}

/**
 * hc_window_class_add_file_actions: (skip)
 * @klass: the class of windows
 */
void
hc_window_class_add_file_actions (GtkWidgetClass *klass)
{
  gtk_widget_class_install_action (klass, "win.open", NULL, choose_open);
  gtk_widget_class_install_action (klass, "win.save", NULL, save);
  gtk_widget_class_install_action (klass, "win.save-as", NULL, choose_save);
  gtk_widget_class_install_action (klass, "win.export", NULL, choose_export);
  gtk_widget_class_install_action (klass, "win.read-again", NULL, read_again);
}
