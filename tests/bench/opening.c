/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Opens a window, prints a line with its first frame, and when it has come to
 * rest the memory it takes, kB: `bench-opening PLAN` the program with a plan,
 * without one an empty libadwaita window. */
#include "config.h"

#include "app/application.h"
#include "memory.h"

#include <adwaita.h>

#define REST_MS 1000

static void
end (GApplication *application)
{
  g_print ("%ld\n", bench_proportional_kb ());
  g_application_quit (application);
}

static void
first_frame (GdkFrameClock *clock, GApplication *application)
{
  g_signal_handlers_disconnect_by_func (clock, first_frame, application);
  g_print ("first frame\n");
  fflush (stdout);
  g_timeout_add_once (REST_MS, (GSourceOnceFunc) end, application);
}

static void
window_realized (GtkWidget *window, GApplication *application)
{
  g_signal_connect_after (gtk_widget_get_frame_clock (window), "paint", G_CALLBACK (first_frame),
                          application);
}

static void
window_added (GtkApplication *application, GtkWindow *window)
{
  g_signal_connect (window, "realize", G_CALLBACK (window_realized), application);
}

static void
open_empty (GtkApplication *application)
{
  GtkWidget *window = adw_application_window_new (application);

  gtk_window_set_default_size (GTK_WINDOW (window), 1200, 800);
  adw_application_window_set_content (ADW_APPLICATION_WINDOW (window), adw_header_bar_new ());
  gtk_window_present (GTK_WINDOW (window));
}

int
main (int argc, char **argv)
{
  g_autoptr (GApplication) application
      = argc > 1 ? G_APPLICATION (hc_application_new ())
                 : G_APPLICATION (adw_application_new ("org.hencote.Empty",
                                                       G_APPLICATION_DEFAULT_FLAGS));

  g_signal_connect (application, "window-added", G_CALLBACK (window_added), NULL);
  if (argc <= 1)
    g_signal_connect (application, "activate", G_CALLBACK (open_empty), NULL);
  return g_application_run (application, argc, argv);
}
