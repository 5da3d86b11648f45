/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A window in which something is dragged, to be measured. */
#include "config.h"

#include "bench-window.h"

HcWindow *
bench_open_window (GApplication *application, HcDocument *document)
{
  GtkWindow *window;

  g_application_register (application, NULL, NULL);
  g_application_activate (application);
  window = gtk_application_get_active_window (GTK_APPLICATION (application));
  hc_window_take_document (HC_WINDOW (window), document);
  return HC_WINDOW (window);
}

char *
bench_first_fitting (HcPlan *plan)
{
  HcPen *pen = hc_layout_get (hc_plan_get_layout (plan))->pens->pdata[0];

  return g_strdup (hc_fitting_get_id (hc_pen_get (pen)->fittings->pdata[0]));
}
