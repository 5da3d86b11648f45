/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The work of a frame of the weather view while all vents of the demo house are
 * dragged open: the night, its figures and its picture. */
#include "config.h"

#include "app/application.h"
#include "app/weather/weather-view.h"
#include "bench.h"
#include "bench-window.h"
#include "yardstick.h"

#define N_SETTLING 60
#define N_FRAMES 400
#define MOST_MS 12

typedef struct
{
  GtkRange *slider;
  double start_ms;
  double times_ms[N_FRAMES];
  guint n_frames;
} Drag;

static GtkWidget *
find_widget (GtkWidget *root, GType type)
{
  GtkWidget *found = g_type_is_a (G_OBJECT_TYPE (root), type) ? root : NULL;

  for (GtkWidget *at = gtk_widget_get_first_child (root); found == NULL && at != NULL;
       at = gtk_widget_get_next_sibling (at))
    found = find_widget (at, type);
  return found;
}

static void
frame_begins (GdkFrameClock *clock, Drag *drag)
{
  drag->start_ms = hc_processor_ms ();
  gtk_range_set_value (drag->slider, drag->n_frames % 100);
}

static void
frame_ends (GdkFrameClock *clock, Drag *drag)
{
  if (drag->n_frames >= N_SETTLING && drag->n_frames < N_SETTLING + N_FRAMES)
    drag->times_ms[drag->n_frames - N_SETTLING] = hc_processor_ms () - drag->start_ms;
  drag->n_frames++;
}

/* The view is built when it is first shown. */
static GtkWidget *
wait_for_view (HcWindow *window)
{
  GtkWidget *view = NULL;

  g_action_group_activate_action (G_ACTION_GROUP (window), "view",
                                  g_variant_new_string ("weather"));
  while ((view = find_widget (GTK_WIDGET (window), HC_TYPE_WEATHER_VIEW)) == NULL
         || !gtk_widget_get_mapped (view))
    g_main_context_iteration (NULL, TRUE);
  return view;
}

int
main (void)
{
  g_autoptr (GApplication) application = G_APPLICATION (hc_application_new ());
  g_autoptr (HcPlan) plan = bench_demo_plan ();
  g_autoptr (HcDocument) document = hc_document_new (plan);
  HcWindow *window = bench_open_window (application, document);
  GdkFrameClock *clock = gtk_widget_get_frame_clock (GTK_WIDGET (window));
  Drag drag = { 0 };

  drag.slider = GTK_RANGE (find_widget (wait_for_view (window), GTK_TYPE_SCALE));
  g_signal_connect (clock, "before-paint", G_CALLBACK (frame_begins), &drag);
  g_signal_connect (clock, "after-paint", G_CALLBACK (frame_ends), &drag);
  gdk_frame_clock_begin_updating (clock);
  while (drag.n_frames < N_SETTLING + N_FRAMES)
    g_main_context_iteration (NULL, TRUE);
  bench_report ("frame while a vent is dragged, 99th percentile",
                bench_percentile (drag.times_ms, N_FRAMES, 0.99), MOST_MS, "ms");
  return 0;
}
