/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * year: the flock week by week, and the worst day. */
#include "config.h"

#include "cli/verb.h"

#include "cli/year.h"

#include <glib/gi18n.h>

static HcExit
end_with (const HcYear *year)
{
  HcCondition condition;
  guint index;

  if (!hc_year_find_worst (year, &index, &condition))
    return HC_EXIT_ENOUGH;
  return hc_year_day_get_worse (hc_year_get_day (year, index), NULL)->level == HC_LEVEL_SHORT
             ? HC_EXIT_SHORT
             : HC_EXIT_ENOUGH;
}

static HcExit
run (HcCall *call, GString *out, GError **error)
{
  g_autoptr (HcTallier) tallier = NULL;
  g_autoptr (HcYear) year = NULL;

  if (!hc_call_open_plan (call, error))
    return HC_EXIT_WRONG;
  tallier = hc_tallier_new (call->cache, call->book);
  if (call->ask != NULL)
    return hc_year_ask (call, tallier, out, error) ? HC_EXIT_ENOUGH : HC_EXIT_WRONG;
  year = hc_year_work_out (tallier, call->plan, hc_plan_get_day (call->plan), call->weeks,
                           HC_YEAR_EVERY_NEED);
  if (call->json)
    hc_year_write_json (call, year, out);
  else if (call->csv)
    hc_year_write_csv (year, out);
  else
    hc_year_tell (call, year, out);
  return end_with (year);
}

const HcVerb hc_verb_year = {
  .name = "year",
  .summary = N_("Say week by week who is there, what happens, and which day is the worst"),
  .argument = N_("FILE"),
  .options = HC_CALL_ON | HC_CALL_RULES | HC_CALL_WEEKS | HC_CALL_ASK,
  .run = run,
};
