/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The work of a frame while one of 300 fittings is dragged: edit, check, layout
 * and drawing, from the frame clock's first signal to its last. */
#include "config.h"

#include "app/application.h"
#include "bench.h"
#include "bench-window.h"
#include "plan/edit-fitting.h"
#include "yardstick.h"

#define N_PENS 10
#define N_FITTINGS 300
#define N_SETTLING 30
#define N_FRAMES 500
#define STEP_MM 7
#define MOST_MS 12

typedef struct
{
  HcDocument *document;
  char *id;
  double start_ms;
  double checked_ms[N_FRAMES];
  double times_ms[N_FRAMES];
  guint n_frames;
} Drag;

static void
frame_begins (GdkFrameClock *clock, Drag *drag)
{
  const char *const ids[] = { drag->id, NULL };
  HcPoint by = { STEP_MM * (drag->n_frames % 40 + 1.0), 0 };
  g_autoptr (HcPlan) moved = NULL;

  drag->start_ms = hc_processor_ms ();
  moved = hc_plan_move_fittings (hc_document_get_settled_plan (drag->document), ids, by, NULL);
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

int
main (void)
{
  g_autoptr (GApplication) application = G_APPLICATION (hc_application_new ());
  g_autoptr (HcPlan) plan = bench_plan (N_PENS, N_FITTINGS);
  g_autoptr (HcDocument) document = hc_document_new (plan);
  Drag drag = { .document = document, .id = bench_first_fitting (plan) };
  HcWindow *window = bench_open_window (application, document);
  GdkFrameClock *clock = gtk_widget_get_frame_clock (GTK_WIDGET (window));

  g_signal_connect (clock, "before-paint", G_CALLBACK (frame_begins), &drag);
  g_signal_connect_after (clock, "update", G_CALLBACK (frame_checked), &drag);
  g_signal_connect (clock, "after-paint", G_CALLBACK (frame_ends), &drag);
  gdk_frame_clock_begin_updating (clock);
  while (drag.n_frames < N_SETTLING + N_FRAMES)
    g_main_context_iteration (NULL, TRUE);
  g_print ("frame while dragging, median: %.3g ms, %.3g ms of it edit and check\n",
           bench_percentile (drag.times_ms, N_FRAMES, 0.5),
           bench_percentile (drag.checked_ms, N_FRAMES, 0.5));
  bench_report ("frame while dragging, 99th percentile",
                bench_percentile (drag.times_ms, N_FRAMES, 0.99), MOST_MS, "ms");
  g_free (drag.id);
  return 0;
}
