/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Memory after 10,000 drags on the floor of the demo plan, a few a frame,
 * against memory after the first thousand. */
#include "config.h"

#include "app/application.h"
#include "bench.h"
#include "bench-window.h"
#include "memory.h"
#include "plan/edit-fitting.h"

#define N_WARM 1000
#define N_DRAGS 10000
#define DRAGS_A_FRAME 4
#define N_PLACES 40
#define STEP_MM 5
#define MOST_MB 1.0

typedef struct
{
  HcWindow *window;
  HcPlan *start;
  char *id;
  guint n_drags;
} Drags;

static void
drag_once (Drags *drags)
{
  const char *const ids[] = { drags->id, NULL };
  HcPoint by = { STEP_MM * (1.0 + drags->n_drags % N_PLACES), 0 };
  HcDocument *document = hc_window_get_document (drags->window);
  g_autoptr (HcPlan) moved = hc_plan_move_fittings (drags->start, ids, by, NULL);

  g_assert_nonnull (moved);
  hc_document_preview (document, moved);
  hc_checker_update (hc_window_get_checker (drags->window));
  hc_document_commit_preview (document, "Move");
  drags->n_drags++;
}

static void
frame_begins (GdkFrameClock *clock, Drags *drags)
{
  for (guint i = 0; i < DRAGS_A_FRAME; i++)
    drag_once (drags);
}

static double
drag_until (Drags *drags, guint n_drags)
{
  while (drags->n_drags < n_drags)
    g_main_context_iteration (NULL, TRUE);
  return (double) bench_proportional_kb () / 1024;
}

int
main (void)
{
  g_autoptr (GApplication) application = G_APPLICATION (hc_application_new ());
  g_autoptr (HcPlan) plan = bench_demo_plan ();
  g_autoptr (HcDocument) document = hc_document_new (plan);
  Drags drags = { .start = plan, .id = bench_first_fitting (plan) };
  GdkFrameClock *clock;
  double before_mb;

  drags.window = bench_open_window (application, document);
  clock = gtk_widget_get_frame_clock (GTK_WIDGET (drags.window));
  g_signal_connect (clock, "before-paint", G_CALLBACK (frame_begins), &drags);
  gdk_frame_clock_begin_updating (clock);
  before_mb = drag_until (&drags, N_WARM);
  bench_report ("memory grows in 10,000 drags by",
                drag_until (&drags, N_WARM + N_DRAGS) - before_mb, MOST_MB, "MB");
  g_free (drags.id);
  return 0;
}
