/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * describe: the plan in plain words, pen by pen. */
#include "config.h"

#include "cli/verb.h"

#include "cli/describe.h"
#include "cli/json-writer.h"
#include "needs/ladder.h"
#include "words/words.h"

#include <glib/gi18n.h>

static char *
tell_headline (const HcCall *call)
{
  HcHeadline headline = { 0 };

  hc_headline_work_out (call->cache, call->plan, call->book, call->flock, &headline);
  return hc_words_headline (&headline, call->units);
}

static void
write_pen (HcJsonWriter *json, const HcCall *call, const HcPen *pen)
{
  g_autofree char *what = hc_describe_pen (call, pen);
  g_autofree char *birds = hc_describe_birds (call, hc_pen_get_id (pen));
  g_autofree char *openings = hc_describe_openings (call, pen);
  g_autoptr (GPtrArray) fittings = hc_describe_fittings (call, pen);

  hc_json_open (json, NULL, '{');
  hc_json_text (json, "id", hc_pen_get_id (pen));
  hc_json_text (json, "name", hc_pen_get (pen)->name);
  hc_json_text (json, "about", what);
  hc_json_text (json, "birds", birds);
  hc_json_text (json, "openings", openings);
  hc_json_open (json, "fittings", '[');
  for (guint i = 0; i < fittings->len; i++)
    hc_json_text (json, NULL, fittings->pdata[i]);
  hc_json_close (json, ']');
  hc_json_close (json, '}');
}

static void
write_json (const HcCall *call, GString *out)
{
  HcParts *pens = hc_layout_get (hc_plan_get_layout (call->plan))->pens;
  g_autofree char *headline = tell_headline (call);
  g_autofree char *day = hc_call_format_day (call);
  HcJsonWriter json = { out };

  hc_json_open (&json, NULL, '{');
  hc_json_text (&json, "title", hc_plan_get (call->plan)->title);
  hc_json_text (&json, "date", day);
  hc_json_count (&json, "birds", hc_flock_get_total (call->flock));
  hc_json_text (&json, "headline", headline);
  hc_json_open (&json, "pens", '[');
  for (guint i = 0; i < pens->len; i++)
    write_pen (&json, call, pens->pdata[i]);
  hc_json_close (&json, ']');
  hc_json_close (&json, '}');
}

static void
tell_pen (const HcCall *call, const HcPen *pen, GString *out)
{
  g_autofree char *what = hc_describe_pen (call, pen);
  g_autofree char *birds = hc_describe_birds (call, hc_pen_get_id (pen));
  g_autofree char *openings = hc_describe_openings (call, pen);
  g_autoptr (GPtrArray) fittings = hc_describe_fittings (call, pen);

  g_string_append_printf (out, "\n%s\n%s\n%s\n%s\n", hc_pen_get (pen)->name, what, openings,
                          birds);
  if (fittings->len > 0)
    g_string_append_printf (out, "%s\n", _("What is in it:"));
  for (guint i = 0; i < fittings->len; i++)
    g_string_append_printf (out, "  %u. %s.\n", i + 1, (const char *) fittings->pdata[i]);
}

static void
tell_plan (const HcCall *call, GString *out)
{
  HcParts *pens = hc_layout_get (hc_plan_get_layout (call->plan))->pens;
  g_autofree char *headline = tell_headline (call);
  g_autofree char *day = hc_call_format_day (call);
  int birds = (int) hc_flock_get_total (call->flock);

  g_string_append_printf (out, "%s\n", hc_plan_get (call->plan)->title);
  g_string_append_printf (
      /* Translators: a day, then a number of birds. */
      out, ngettext ("On %s there is %d bird.", "On %s there are %d birds.", (gulong) birds),
      day, birds);
  g_string_append_printf (out, " %s.\n", headline);
  g_string_append_printf (
      out, ngettext ("The plan has %u pen.", "The plan has %u pens and runs.", pens->len),
      pens->len);
  g_string_append_printf (
      out, "\n%s\n",
      _("Each is told as you find it from its doorway, facing in: 12 o'clock is straight "
        "ahead, 3 to your right, 9 to your left. Distances are to the middle of a thing."));
  for (guint i = 0; i < pens->len; i++)
    tell_pen (call, pens->pdata[i], out);
}

static HcExit
run (HcCall *call, GString *out, GError **error)
{
  if (!hc_call_open_plan (call, error))
    return HC_EXIT_WRONG;
  if (call->json)
    write_json (call, out);
  else
    tell_plan (call, out);
  return HC_EXIT_ENOUGH;
}

const HcVerb hc_verb_describe = {
  .name = "describe",
  .summary = N_("Tell the plan in plain words"),
  .argument = N_("FILE"),
  .options = HC_CALL_ON | HC_CALL_RULES,
  .run = run,
};
