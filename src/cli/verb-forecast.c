/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * forecast: what the flock gives and takes. */
#include "config.h"

#include "cli/verb.h"

#include "cli/forecast.h"

#include <glib/gi18n.h>

static HcExit
run (HcCall *call, GString *out, GError **error)
{
  g_autoptr (HcForecast) forecast = NULL;

  if (!hc_call_open_plan (call, error))
    return HC_EXIT_WRONG;
  forecast = hc_forecast_new (call->plan, call->book, hc_plan_get_day (call->plan), call->weeks);
  if (call->json)
    hc_forecast_write_json (call, forecast, out);
  else if (call->csv)
    hc_forecast_write_csv (forecast, out);
  else
    hc_forecast_tell (call, forecast, out);
  return HC_EXIT_ENOUGH;
}

const HcVerb hc_verb_forecast = {
  .name = "forecast",
  .summary = N_("Say what the flock lays, eats, drinks and costs, and fills the freezer with"),
  .argument = N_("FILE"),
  .options = HC_CALL_ON | HC_CALL_WEEKS,
  .run = run,
};
