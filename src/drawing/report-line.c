/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What a report says, before it is laid out. */
#include "config.h"

#include "report-line.h"

#include "words/words.h"

#include <glib/gi18n-lib.h>

#define INDENT 16.0
#define AFTER_HEADING 5.0

static void
line_clear (gpointer line)
{
  g_free (((HcReportLine *) line)->text);
  g_free (((HcReportLine *) line)->aside);
}

static HcReportLine *
add (GArray *lines, HcHand hand, char *text, double indent, double above)
{
  HcReportLine line = { hand, text, NULL, HC_REPORT_NO_LEVEL, -1, indent, above };

  g_array_append_val (lines, line);
  return &g_array_index (lines, HcReportLine, lines->len - 1);
}

static void
add_heading (GArray *lines, const char *text)
{
  add (lines, HC_HAND_HEADING, g_strdup (text), 0, 16);
}

static HcUnits
units_of (const HcSheet *sheet)
{
  return (HcUnits) hc_plan_get_site (hc_check_get_plan (sheet->check))->units;
}

static void
add_need (const HcSheet *sheet, GArray *lines, const HcNeed *need)
{
  HcLevel level = hc_check_get_need_level (sheet->check, need->id);
  gint64 birds = hc_check_get_birds (sheet->check, need->id);
  gint64 served = hc_check_get_served (sheet->check, need->id, HC_LEVEL_TIGHT);
  HcReportLine *line
      = add (lines, HC_HAND_BODY, g_strdup (g_dgettext (GETTEXT_PACKAGE, need->title)), INDENT,
             AFTER_HEADING);

  line->level = (int) level;
  if (need->sort == HC_NEED_COUNTING && birds > 0)
    {
      line->aside = g_strdup_printf (
          /* Translators: birds served of birds there, then a word such as "good". */
          _("%d of %d · %s"), (int) served, (int) birds,
          hc_words_level (level));
      line->share = CLAMP ((double) served / (double) birds, 0, 1);
    }
  else
    line->aside = g_strdup (hc_words_need_level (need->id, level));
}

static void
add_needs (const HcSheet *sheet, GArray *lines)
{
  add_heading (lines, _("What the birds need"));
  for (int id = 0; id < HC_N_NEEDS; id++)
    if (hc_check_applies (sheet->check, (HcNeedId) id))
      add_need (sheet, lines, hc_need_get ((HcNeedId) id));
}

static void
add_small (GArray *lines, char *text)
{
  if (text == NULL || *text == '\0')
    g_free (text);
  else
    add (lines, HC_HAND_SMALL, text, INDENT, 1);
}

static void
add_finding (const HcSheet *sheet, GArray *lines, const HcFinding *finding)
{
  HcReportLine *line
      = add (lines, HC_HAND_BODY, hc_words_finding (sheet->check, finding, units_of (sheet)),
             INDENT, AFTER_HEADING);

  line->level = (int) finding->level;
  add_small (lines, hc_words_finding_todo (sheet->check, finding, units_of (sheet)));
  add_small (lines, hc_words_finding_detail (finding, units_of (sheet)));
  add_small (lines, finding->figure ? hc_words_finding_source (finding) : NULL);
}

static void
add_findings (const HcSheet *sheet, GArray *lines, HcLevel level, const char *heading)
{
  gboolean headed = FALSE;

  for (int id = 0; id < HC_N_NEEDS; id++)
    for (guint i = 0; i < hc_check_get_n_findings (sheet->check, (HcNeedId) id); i++)
      {
        const HcFinding *finding = hc_check_get_finding (sheet->check, (HcNeedId) id, i);

        if (finding->level != level)
          continue;
        if (!headed)
          add_heading (lines, heading);
        headed = TRUE;
        add_finding (sheet, lines, finding);
      }
}

static void
add_ladder (const HcSheet *sheet, GArray *lines)
{
  guint rungs = sheet->ladder ? hc_ladder_get_n_rungs (sheet->ladder) : 0;

  if (rungs == 0)
    return;
  add_heading (lines, _("What runs out next"));
  for (guint i = 0; i < rungs; i++)
    add (lines, HC_HAND_BODY,
         hc_words_rung (hc_ladder_get_rung (sheet->ladder, i), units_of (sheet)), INDENT,
         AFTER_HEADING);
}

static void
add_cautions (GArray *lines)
{
  static const char *const cautions[] = {
    N_("The figures are aims and least measures, not promises. Watch your birds: they know "
       "better."),
    N_("Nothing here says that birds are safe. ‘Nothing found’ is the best a plan can say."),
    N_("Anything electric: ask a licensed electrician. Keep lamps off anything that burns."),
    N_("Check the print by its 100 mm line before you cut wood by it."),
  };

  add_heading (lines, _("Before you build"));
  for (guint i = 0; i < G_N_ELEMENTS (cautions); i++)
    add (lines, HC_HAND_BODY, g_strdup (_(cautions[i])), INDENT, AFTER_HEADING);
}

/* Returns: (transfer full) (element-type HcReportLine): what the report says */
GArray *
hc_report_lines_write (const HcSheet *sheet)
{
  GArray *lines = g_array_new (FALSE, FALSE, sizeof (HcReportLine));
  const char *title = hc_plan_get (hc_check_get_plan (sheet->check))->title;

  g_array_set_clear_func (lines, line_clear);
  add (lines, HC_HAND_TITLE, g_strdup (title ? title : ""), 0, 0);
  add (lines, HC_HAND_BODY,
       g_strdup (hc_words_condition (hc_check_get_condition (sheet->check))), 0, 2);
  if (sheet->headline != NULL)
    add (lines, HC_HAND_STRONG, hc_words_headline (sheet->headline, units_of (sheet)), 0, 8);
  add_needs (sheet, lines);
  add_findings (sheet, lines, HC_LEVEL_SHORT, _("Fix now"));
  add_findings (sheet, lines, HC_LEVEL_TIGHT, _("Worth doing"));
  add_ladder (sheet, lines);
  add_cautions (lines);
  return lines;
}
