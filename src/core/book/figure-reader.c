/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Reading the figures of a standard. */
#include "config.h"

#include "book/figure-reader.h"

#include "book/words.h"

#include <glib/gi18n-lib.h>

#define MOST 100000
#define M2_IN_HUNDRED 100e6

static const char *const level_words[] = { "least", "good", "plenty" };

static void
read_applies (HcRecord *record, HcFigure *figure, const HcFigureContext *context)
{
  figure->kinds = hc_record_choices (record, "kinds", context->kind_words);
  figure->conditions = hc_record_choices (record, "conditions", hc_condition_words);
  figure->weeks_from = hc_record_maybe_whole (record, "weeks_from", 1, 1000, 1);
  figure->weeks_to = hc_record_maybe_whole (record, "weeks_to", 1, 1000, G_MAXINT);
  figure->at_lay = hc_record_flag (record, "at_lay");
  if (figure->weeks_to < figure->weeks_from)
    hc_record_fault (record, "weeks_to", _("this should not be before weeks_from."));
}

static void
read_grounds (HcRecord *record, HcFigure *figure, const HcFigureContext *context)
{
  figure->evidence = hc_sources_read_grounds (context->sources, record, &figure->source);
  figure->place = hc_record_maybe_text (record, "place");
  figure->note = hc_record_maybe_text (record, "note");
}

static void
read_figure (HcRecord *record, HcFigure *figure, const HcFigureContext *context)
{
  const char *need = hc_record_id (record, "need");
  const char *measure = hc_record_id (record, "measure");
  g_autofree char *name = g_strconcat (need, ".", measure, NULL);

  figure->id = hc_record_id (record, "id");
  figure->name = g_intern_string (name);
  figure->unit = (HcFigureUnit) hc_record_choice (record, "unit", hc_figure_unit_words);
  figure->standard = context->standard;
  read_applies (record, figure, context);
  read_grounds (record, figure, context);
}

static void
check_limit_levels (HcRecord *record, const HcLimit *limit)
{
  double lower, higher;

  if (limit->stated == 0)
    hc_record_fault (record, "least", _("state least, good or plenty."));
  for (HcLevel level = HC_LEVEL_GOOD; level <= HC_LEVEL_PLENTY; level++)
    if (hc_limit_get (limit, level - 1, &lower) && hc_limit_get (limit, level, &higher)
        && (limit->direction == HC_DIRECTION_AT_LEAST ? higher < lower : higher > lower))
      hc_record_fault (record, level_words[level - HC_LEVEL_TIGHT],
                       _("this should not be easier to reach than the level below it."));
}

void
hc_limit_read (HcRecord *record, gpointer item, gpointer user_data)
{
  HcLimit *limit = item;

  read_figure (record, &limit->figure, user_data);
  limit->direction = (HcDirection) hc_record_choice (record, "direction", hc_direction_words);
  for (guint i = 0; i < HC_N_ASKED_LEVELS; i++)
    if (hc_record_has (record, level_words[i]))
      {
        double stated = hc_record_number (record, level_words[i], -MOST, MOST);

        limit->levels[i] = hc_figure_unit_to_used (limit->figure.unit, stated);
        limit->stated |= 1u << (HC_LEVEL_TIGHT + i);
      }
  check_limit_levels (record, limit);
}

static double
read_share (HcRecord *record, HcFigureUnit unit)
{
  double rate;

  if (hc_record_has (record, "percent"))
    return hc_record_number (record, "percent", 0, 1000) / 100;
  if (hc_record_has (record, "one_in"))
    return 1 / hc_record_number (record, "one_in", 1, 1000);
  if (!hc_record_has (record, "per_100_m2"))
    return 0;
  rate = hc_record_number (record, "per_100_m2", 0, MOST);
  return hc_figure_unit_to_used (unit, rate) / M2_IN_HUNDRED;
}

static double
read_amount (HcRecord *record, const char *member, HcFigureUnit unit)
{
  return hc_figure_unit_to_used (unit, hc_record_maybe_number (record, member, 0, MOST, 0));
}

static void
read_clause (HcRecord *record, HcClause *clause, HcFigureUnit unit)
{
  clause->fixed = read_amount (record, "fixed", unit);
  clause->each = read_amount (record, "each", unit);
  clause->birds_per = hc_record_maybe_number (record, "birds_per", 0.001, MOST, 0);
  clause->per_kg = read_amount (record, "per_kg", unit);
  clause->kg_per = hc_record_maybe_number (record, "kg_per", 0.001, MOST, 0);
  clause->step_amount = read_amount (record, "step_amount", unit);
  clause->step_from = hc_record_maybe_number (record, "step_from", 0, MOST, 0);
  clause->step = hc_record_maybe_number (record, "step", 1, MOST, 0);
  clause->share = read_share (record, unit);
  if (clause->share > 0)
    clause->of = (HcBasisOf) hc_record_choice (record, "of", hc_basis_of_words);
  if (clause->step_amount > 0 && clause->step <= 0)
    hc_record_fault (record, "step", _("a step_amount needs the birds in a step."));
}

static void
read_level (HcRecord *record, HcDemand *demand, guint index)
{
  guint n = hc_record_count (record, level_words[index]);

  if (n == 0)
    return;
  if (n > HC_DEMAND_CLAUSES)
    hc_record_fault (record, level_words[index], _("at most %d clauses can be listed."),
                     HC_DEMAND_CLAUSES);
  demand->n_clauses[index] = MIN (n, HC_DEMAND_CLAUSES);
  demand->stated |= 1u << (HC_LEVEL_TIGHT + index);
  for (guint i = 0; i < demand->n_clauses[index]; i++)
    {
      g_autoptr (HcRecord) clause = hc_record_open_at (record, level_words[index], i);

      read_clause (clause, &demand->clauses[index][i], demand->figure.unit);
    }
}

/* Clauses cross, so levels are compared by what some flocks would ask. */
static void
check_demand_levels (HcRecord *record, const HcDemand *demand)
{
  static const HcBasis basis = { 20e6, 10e6, 18e3 };

  if (demand->stated == 0)
    hc_record_fault (record, "least", _("state least, good or plenty."));
  for (HcLevel level = HC_LEVEL_GOOD; level <= HC_LEVEL_PLENTY; level++)
    for (double birds = 1; birds <= 10000; birds *= 10)
      if (hc_demand_required (demand, level, birds, 2 * birds, &basis) * (1 + 1e-9)
          < hc_demand_required (demand, level - 1, birds, 2 * birds, &basis))
        hc_record_fault (record, level_words[level - HC_LEVEL_TIGHT],
                         _("this should not ask for less than the level below it."));
}

static void
read_share_of (HcRecord *record, HcDemand *demand)
{
  g_autoptr (HcRecord) share = hc_record_open (record, "share_of");

  demand->share_of = hc_record_id (share, "figure");
  demand->share = hc_record_number (share, "percent", 1, 100) / 100;
}

void
hc_demand_read (HcRecord *record, gpointer item, gpointer user_data)
{
  HcDemand *demand = item;

  read_figure (record, &demand->figure, user_data);
  if (hc_record_has (record, "share_of"))
    {
      read_share_of (record, demand);
      return;
    }
  for (guint i = 0; i < HC_N_ASKED_LEVELS; i++)
    read_level (record, demand, i);
  check_demand_levels (record, demand);
}
