/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Who says so: the rules, the source, and what stands behind the figure. */
#include "config.h"

#include "words/words.h"

#include <glib/gi18n-lib.h>

static const char *
rules_name (HcStandard *standard, const HcFigure *figure)
{
  for (HcStandard *at = standard; at != NULL; at = hc_standard_get_fallback (at))
    if (g_strcmp0 (hc_standard_get_id (at), figure->standard) == 0)
      return hc_standard_get_name (at);
  return hc_standard_get_name (standard);
}

static char *
published (const HcFigure *figure)
{
  const HcSource *source = figure->source;
  g_autofree char *where = NULL;

  if (source == NULL)
    return g_strdup (_("published"));
  where = figure->place != NULL && *figure->place != '\0'
              ? g_strdup_printf ("%s, %s", source->title, figure->place)
              : g_strdup (source->title);
  if (source->year > 0)
    return g_strdup_printf ("%s (%s, %d)", where, source->publisher, source->year);
  return g_strdup_printf ("%s (%s)", where, source->publisher);
}

static char *
evidence_of (const HcFigure *figure)
{
  switch (figure->evidence)
    {
    case HC_EVIDENCE_PUBLISHED:
      return published (figure);
    case HC_EVIDENCE_PRACTICE:
      return g_strdup (_("common practice among keepers, no published source"));
    case HC_EVIDENCE_JUDGEMENT:
      return g_strdup (_("our choice where sources differ or say nothing"));
    case HC_EVIDENCE_MEMORY:
      return g_strdup (_("from memory, not looked up"));
    default:
      g_return_val_if_reached (g_strdup (""));
    }
}

/**
 * hc_words_finding_source: (skip)
 * @finding: a finding
 *
 * Returns: (transfer full) (nullable): where the figure it is judged by comes
 *   from; %NULL when it needs none
 */
char *
hc_words_finding_source (const HcFinding *finding)
{
  g_autofree char *evidence = NULL;
  const HcFigure *figure;

  if (finding->figure == NULL || finding->standard == NULL)
    return NULL;
  figure = hc_standard_find_figure (finding->standard, finding->figure);
  if (figure == NULL)
    return NULL;
  if (figure->evidence == HC_EVIDENCE_OWN)
    return figure->reason != NULL && *figure->reason != '\0'
               ? g_strdup_printf (_("Your own figure: %s"), figure->reason)
               : g_strdup (_("Your own figure."));
  evidence = evidence_of (figure);
  /* Translators: whose rules, then what stands behind the figure. */
  return g_strdup_printf (_("%s: %s."), rules_name (finding->standard, figure), evidence);
}
