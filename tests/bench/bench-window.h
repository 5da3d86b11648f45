/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A window in which something is dragged, to be measured. */
#pragma once

#include "app/window/window.h"

/* Makes of the plan as it was before the drag the one of a frame. */
typedef HcPlan *(*BenchStep) (HcPlan *plan, guint frame, gpointer data);

HcWindow *bench_open_window (GApplication *application, HcDocument *document);
char *bench_first_fitting (HcPlan *plan);
void bench_drag_for_frames (HcWindow *window, BenchStep step, gpointer data, const char *what,
                            double most_ms);
