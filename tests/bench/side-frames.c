/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The work of a frame while a wall of a house with 300 fittings is dragged and
 * the house is seen from its side. */
#include "config.h"

#include "app/application.h"
#include "bench.h"
#include "bench-window.h"
#include "plan/edit-wall.h"

#define N_PENS 10
#define N_FITTINGS 300
#define STEP_MM 5
#define MOST_MS 14

static HcPlan *
move_wall (HcPlan *plan, guint frame, gpointer id)
{
  return hc_plan_move_wall (plan, id, STEP_MM * (frame % 20 + 1.0), NULL);
}

int
main (void)
{
  g_autoptr (GApplication) application = G_APPLICATION (hc_application_new ());
  g_autoptr (HcPlan) plan = bench_plan (N_PENS, N_FITTINGS);
  g_autoptr (HcDocument) document = hc_document_new (plan);
  HcPen *pen = hc_layout_get (hc_plan_get_layout (plan))->pens->pdata[0];
  HcWindow *window = bench_open_window (application, document);

  g_action_group_activate_action (G_ACTION_GROUP (window), "view",
                                  g_variant_new_string ("side"));
  bench_drag_for_frames (window, move_wall, hc_pen_get (pen)->walls[0],
                         "frame while a wall is dragged, seen from the side", MOST_MS);
  return 0;
}
