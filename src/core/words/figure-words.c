/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What a figure asks, and who says so. */
#include "config.h"

#include "words/figure-words.h"

#include <glib/gi18n-lib.h>
#include <math.h>

/**
 * hc_figure_words_unit: (skip)
 * @unit: a unit
 *
 * Returns: (transfer full): how it is written after a number
 */
char *
hc_figure_words_unit (HcFigureUnit unit)
{
  static const struct
  {
    HcFigureUnit unit;
    const char *sign;
  } signs[] = {
    { HC_FIGURE_MM, "mm" },      { HC_FIGURE_CM, "cm" },          { HC_FIGURE_M, "m" },
    { HC_FIGURE_INCH, "in" },    { HC_FIGURE_CM2, "cm²" },        { HC_FIGURE_M2, "m²" },
    { HC_FIGURE_SQUARE_FOOT, "ft²" }, { HC_FIGURE_KG, "kg" },     { HC_FIGURE_DEGREES, "°" },
    { HC_FIGURE_CELSIUS, "°C" }, { HC_FIGURE_PERCENT, "%" },      { HC_FIGURE_TIMES, "×" },
    { HC_FIGURE_COUNT, "" },     { HC_FIGURE_WATTS, "W" },        { HC_FIGURE_PPM, "ppm" },
    { HC_FIGURE_LUX, "lx" },     { HC_FIGURE_M3_PER_H_KG, "m³/h/kg" },
    { HC_FIGURE_BIRDS, N_("birds") }, { HC_FIGURE_DAYS, N_("days") },
    { HC_FIGURE_WEEKS, N_("weeks") }, { HC_FIGURE_HOURS, N_("hours") },
  };

  for (guint i = 0; i < G_N_ELEMENTS (signs); i++)
    if (signs[i].unit == unit)
      return g_strdup (*signs[i].sign ? _(signs[i].sign) : "");
  return g_strdup ("");
}

static char *
number (double value)
{
  return g_strdup_printf ("%.10g", round (value * 1000) / 1000);
}

static char *
amount (double used, HcFigureUnit unit)
{
  g_autofree char *stated = number (hc_figure_unit_to_stated (unit, used));
  g_autofree char *sign = hc_figure_words_unit (unit);
  const char *gap = *sign == '\0' || unit == HC_FIGURE_DEGREES ? "" : " ";

  return g_strdup_printf ("%s%s%s", stated, gap, sign);
}

/**
 * hc_figure_words_limit: (skip)
 * @limit: a limit
 * @level: a level asked
 *
 * Returns: (transfer full) (nullable): the bound, %NULL when nothing is asked
 */
char *
hc_figure_words_limit (const HcLimit *limit, HcLevel level)
{
  double bound;

  if (!hc_limit_get (limit, level, &bound))
    return NULL;
  return amount (bound, limit->figure.unit);
}

static void
add_part (GString *text, char *part)
{
  if (text->len > 0)
    g_string_append (text, " + ");
  g_string_append (text, part);
  g_free (part);
}

static void
add_amount (GString *text, double used, HcFigureUnit unit, const char *format)
{
  g_autofree char *words = amount (used, unit);

  if (used > 0)
    add_part (text, g_strdup_printf (format, words));
}

static void
add_sharing (GString *text, double sharing, HcFigureUnit unit, const char *format)
{
  g_autofree char *birds = number (sharing);
  g_autofree char *one = amount (hc_figure_unit_to_used (unit, 1), unit);

  if (sharing > 0)
    add_part (text, g_strdup_printf (format, birds, one));
}

static void
add_step (GString *text, const HcClause *clause, HcFigureUnit unit)
{
  g_autofree char *more = amount (clause->step_amount, unit);
  g_autofree char *step = number (clause->step);
  g_autofree char *from = number (clause->step_from);

  if (clause->step > 0)
    /* Translators: an amount, then two numbers of birds. */
    add_part (text, g_strdup_printf (_("%s for every %s birds begun beyond %s"), more, step,
                                     from));
}

static void
add_share (GString *text, const HcClause *clause)
{
  static const char *const bases[]
      = { N_("of the ground floor"), N_("of the floor asked for"), N_("of the perimeter") };
  g_autofree char *percent = number (clause->share * 100);

  if (clause->share > 0)
    add_part (text, g_strdup_printf ("%s %% %s", percent, _(bases[clause->of])));
}

static char *
words_of_clause (const HcClause *clause, HcFigureUnit unit)
{
  GString *text = g_string_new (NULL);

  add_amount (text, clause->fixed, unit, _("%s in all"));
  add_amount (text, clause->each, unit, _("%s a bird"));
  /* Translators: a number of birds, then one unit: "9 birds to 1 m²". */
  add_sharing (text, clause->birds_per, unit, _("%s birds to %s"));
  add_amount (text, clause->per_kg, unit, _("%s a kg of birds"));
  add_sharing (text, clause->kg_per, unit, _("%s kg of birds to %s"));
  add_step (text, clause, unit);
  add_share (text, clause);
  return g_string_free (text, FALSE);
}

/**
 * hc_figure_words_demand: (skip)
 * @demand: a demand
 * @level: a level asked
 *
 * Returns: (transfer full) (nullable): what is asked, %NULL when nothing is
 */
char *
hc_figure_words_demand (const HcDemand *demand, HcLevel level)
{
  guint at = level - HC_LEVEL_TIGHT;
  GString *text = g_string_new (NULL);

  for (guint i = 0; i < demand->n_clauses[at]; i++)
    {
      g_autofree char *clause
          = words_of_clause (&demand->clauses[at][i], demand->figure.unit);

      if (i > 0)
        g_string_append (text, _(", or if more, "));
      g_string_append (text, clause);
    }
  return g_string_free (text, text->len == 0);
}

/* What is practice at one level may be backed by a source at another. */
static const char *
say_evidence (const HcFigure *figure)
{
  static const char *const evidence[] = {
    [HC_EVIDENCE_PUBLISHED] = N_("published"),
    [HC_EVIDENCE_PRACTICE] = N_("common practice, no source"),
    [HC_EVIDENCE_JUDGEMENT] = N_("judgement between sources"),
    [HC_EVIDENCE_MEMORY] = N_("from memory"),
    [HC_EVIDENCE_OWN] = N_("your own figure"),
  };

  if (figure->evidence == HC_EVIDENCE_PRACTICE && figure->source != NULL)
    return _("common practice, compare");
  return _(evidence[figure->evidence]);
}

/**
 * hc_figure_words_source: (skip)
 * @figure: a figure
 *
 * Returns: (transfer full): who says so, in words
 */
char *
hc_figure_words_source (const HcFigure *figure)
{
  GString *text = g_string_new (say_evidence (figure));

  if (figure->source != NULL)
    g_string_append_printf (text, ": %s", figure->source->title);
  if (figure->source != NULL && figure->source->year > 0)
    g_string_append_printf (text, " (%d)", figure->source->year);
  if (figure->place != NULL && *figure->place != '\0')
    g_string_append_printf (text, ", %s", figure->place);
  if (figure->reason != NULL && *figure->reason != '\0')
    g_string_append_printf (text, ": %s", figure->reason);
  return g_string_free (text, FALSE);
}
