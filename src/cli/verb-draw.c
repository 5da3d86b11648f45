/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * draw: the plan to scale, as PDF, SVG or PNG. */
#include "config.h"

#include "cli/verb.h"

#include "cli/json-writer.h"
#include "drawing/export.h"

#include <glib/gi18n.h>

#define LARGEST_SCALE 10000

static gboolean
say (GError **error, const char *format, const char *word)
{
  g_set_error (error, HC_CALL_ERROR, HC_CALL_ERROR_WORDS, format, word);
  return FALSE;
}

static gboolean
find_scale (const HcCall *call, int *scale, GError **error)
{
  guint64 found;

  *scale = 0;
  if (call->scale == NULL)
    return TRUE;
  if (!g_str_has_prefix (call->scale, "1:")
      || !g_ascii_string_to_unsigned (call->scale + 2, 10, 1, LARGEST_SCALE, &found, NULL))
    return say (error, _("--scale %s: write the scale as 1:20."), call->scale);
  *scale = (int) found;
  return TRUE;
}

static gboolean
find_paper (const HcCall *call, HcPaper *paper, GError **error)
{
  *paper = call->units == HC_UNITS_FEET ? HC_PAPER_LETTER : HC_PAPER_A4;
  if (call->paper == NULL || hc_paper_from_string (call->paper, paper))
    return TRUE;
  return say (error, _("--paper %s: the papers are ‘a4’, ‘a3’ and ‘letter’."), call->paper);
}

static gboolean
find_view (const HcCall *call, HcView *view, GError **error)
{
  static const char *const words[]
      = { [HC_VIEW_FLOOR] = "floor", [HC_VIEW_SIDE] = "side", [HC_VIEW_AIR] = "air",
          [HC_VIEW_SHEET] = "sheet" };
  const char *word = call->view != NULL ? call->view : words[HC_VIEW_SHEET];

  for (guint i = 0; i < G_N_ELEMENTS (words); i++)
    if (g_str_equal (words[i], word))
      {
        *view = (HcView) i;
        return TRUE;
      }
  return say (error, _("--view %s: the views are ‘floor’, ‘side’, ‘air’ and ‘sheet’."), word);
}

static gboolean
draw (const HcCall *call, HcView view, HcSheet *sheet, GError **error)
{
  HcHeadline headline = { 0 };
  g_autoptr (HcCheck) check = hc_call_check (call);
  g_autoptr (HcLadder) ladder = hc_ladder_climb (call->cache, call->plan, call->book,
                                                 call->flock, HC_LADDER_THIS_MIX, NULL,
                                                 HC_CONDITION_DAY, HC_LEVEL_GOOD);
  HcStandard *rules
      = hc_book_get_standard (call->book, hc_plan_get_rules (call->plan)->standard);

  hc_headline_work_out (call->cache, call->plan, call->book, call->flock, &headline);
  sheet->check = check;
  sheet->book = call->book;
  sheet->wall = call->wall;
  sheet->headline = &headline;
  sheet->ladder = ladder;
  sheet->rules = rules ? hc_standard_get_name (rules) : NULL;
  return hc_draw_to_file (sheet, view, call->to, error);
}

static HcExit
run (HcCall *call, GString *out, GError **error)
{
  HcSheet sheet = { NULL };
  HcJsonWriter json = { out };
  HcView view;

  if (call->to == NULL)
    {
      g_set_error_literal (error, HC_CALL_ERROR, HC_CALL_ERROR_WORDS,
                           _("Say with --to which file to draw to."));
      return HC_EXIT_WRONG;
    }
  if (!hc_call_open_plan (call, error) || !find_scale (call, &sheet.scale, error)
      || !find_paper (call, &sheet.paper, error) || !find_view (call, &view, error)
      || !draw (call, view, &sheet, error))
    return HC_EXIT_WRONG;
  if (call->json)
    {
      hc_json_open (&json, NULL, '{');
      hc_json_text (&json, "file", call->to);
      hc_json_close (&json, '}');
    }
  return HC_EXIT_ENOUGH;
}

const HcVerb hc_verb_draw = {
  .name = "draw",
  .summary = N_("Draw the plan to scale"),
  .argument = N_("FILE"),
  .options = HC_CALL_ON | HC_CALL_CONDITION | HC_CALL_RULES | HC_CALL_DRAWING,
  .run = run,
};
