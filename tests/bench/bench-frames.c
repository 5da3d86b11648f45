/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Times the work of each frame of a drag: edit, check, layout and drawing, from
 * the frame clock's first signal to its last. */
#include "config.h"

#include "bench.h"
#include "bench-window.h"
#include "yardstick.h"

#define N_SETTLING 30
#define N_FRAMES 500

typedef struct
{
  HcDocument *document;
  BenchStep step;
  gpointer data;
  double start_ms;
  double checked_ms[N_FRAMES];
  double times_ms[N_FRAMES];
  guint n_frames;
} Drag;

static void
frame_begins (GdkFrameClock *clock, Drag *drag)
{
  g_autoptr (HcPlan) moved = NULL;

  drag->start_ms = hc_processor_ms ();
  moved = drag->step (hc_document_get_settled_plan (drag->document), drag->n_frames, drag->data);
  g_assert_nonnull (moved);
  hc_document_preview (drag->document, moved);
}

static gboolean
is_counted (const Drag *drag)
{
  return drag->n_frames >= N_SETTLING && drag->n_frames < N_SETTLING + N_FRAMES;
}

static void
frame_checked (GdkFrameClock *clock, Drag *drag)
{
  if (is_counted (drag))
    drag->checked_ms[drag->n_frames - N_SETTLING] = hc_processor_ms () - drag->start_ms;
}

static void
frame_ends (GdkFrameClock *clock, Drag *drag)
{
  if (is_counted (drag))
    drag->times_ms[drag->n_frames - N_SETTLING] = hc_processor_ms () - drag->start_ms;
  drag->n_frames++;
}

/* @what is said with the figures; @most_ms is what the slowest hundredth holds. */
void
bench_drag_for_frames (HcWindow *window, BenchStep step, gpointer data, const char *what,
                       double most_ms)
{
  GdkFrameClock *clock = gtk_widget_get_frame_clock (GTK_WIDGET (window));
  g_autofree char *slowest = g_strdup_printf ("%s, 99th percentile", what);
  Drag drag = { .document = hc_window_get_document (window), .step = step, .data = data };

  g_signal_connect (clock, "before-paint", G_CALLBACK (frame_begins), &drag);
  g_signal_connect_after (clock, "update", G_CALLBACK (frame_checked), &drag);
  g_signal_connect (clock, "after-paint", G_CALLBACK (frame_ends), &drag);
  gdk_frame_clock_begin_updating (clock);
  while (drag.n_frames < N_SETTLING + N_FRAMES)
    g_main_context_iteration (NULL, TRUE);
  gdk_frame_clock_end_updating (clock);
  g_signal_handlers_disconnect_by_data (clock, &drag);
  g_print ("%s, median: %.3g ms, %.3g ms of it edit and check\n", what,
           bench_percentile (drag.times_ms, N_FRAMES, 0.5),
           bench_percentile (drag.checked_ms, N_FRAMES, 0.5));
  bench_report (slowest, bench_percentile (drag.times_ms, N_FRAMES, 0.99), most_ms, "ms");
}
