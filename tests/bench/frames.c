/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The work of a frame while one of 300 fittings is dragged on the floor. */
#include "config.h"

#include "app/application.h"
#include "bench.h"
#include "bench-window.h"
#include "plan/edit-fitting.h"

#define N_PENS 10
#define N_FITTINGS 300
#define STEP_MM 7
#define MOST_MS 12

static HcPlan *
move_fitting (HcPlan *plan, guint frame, gpointer id)
{
  const char *const ids[] = { id, NULL };
  HcPoint by = { STEP_MM * (frame % 40 + 1.0), 0 };

  return hc_plan_move_fittings (plan, ids, by, NULL);
}

int
main (void)
{
  g_autoptr (GApplication) application = G_APPLICATION (hc_application_new ());
  g_autoptr (HcPlan) plan = bench_plan (N_PENS, N_FITTINGS);
  g_autoptr (HcDocument) document = hc_document_new (plan);
  g_autofree char *id = bench_first_fitting (plan);
  HcWindow *window = bench_open_window (application, document);

  bench_drag_for_frames (window, move_fitting, id, "frame while dragging", MOST_MS);
  return 0;
}
