/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The keeper's own figures laid over a standard. */
#include "config.h"

#include "book/standard.h"

#include "book/standard-private.h"

#include <math.h>
#include <string.h>

static HcClause
share_of_clause (const HcClause *whole, double share)
{
  HcClause part = *whole;

  part.fixed *= share;
  part.each *= share;
  part.birds_per /= share;
  part.per_kg *= share;
  part.kg_per /= share;
  part.step_amount *= share;
  part.share *= share;
  return part;
}

/* Fills the demands that are a share of another one. */
void
hc_standard_work_out_shares (HcStandard *self)
{
  for (guint i = 0; i < self->n_demands; i++)
    {
      HcDemand *part = &self->demands[i];
      const HcDemand *whole;

      if (part->share_of == NULL)
        continue;
      whole = hc_standard_find_demand_by_id (self, part->share_of);
      part->stated = whole->stated;
      memcpy (part->n_clauses, whole->n_clauses, sizeof part->n_clauses);
      for (guint level = 0; level < HC_N_ASKED_LEVELS; level++)
        for (guint j = 0; j < part->n_clauses[level]; j++)
          part->clauses[level][j] = share_of_clause (&whole->clauses[level][j], part->share);
    }
}

static void
claim (HcFigure *figure, HcKeep *keep, const char *reason)
{
  figure->evidence = HC_EVIDENCE_OWN;
  figure->source = NULL;
  figure->place = NULL;
  figure->note = NULL;
  figure->reason = hc_keep_text (keep, reason != NULL ? reason : "");
}

static gboolean
override_limit (HcLimit *limit, double value)
{
  for (guint level = 0; level < HC_N_ASKED_LEVELS; level++)
    limit->levels[level] = hc_figure_unit_to_used (limit->figure.unit, value);
  limit->stated = 1u << HC_LEVEL_TIGHT;
  return TRUE;
}

/* The clause a keeper means by 'the figure' is the first; sums and minimums
 * beside it stay. */
static gboolean
override_clause (HcClause *clause, HcFigureUnit unit, double value)
{
  double used = hc_figure_unit_to_used (unit, value);

  if (clause->birds_per > 0 || clause->kg_per > 0)
    {
      if (value <= 0)
        return FALSE;
      *(clause->birds_per > 0 ? &clause->birds_per : &clause->kg_per) = value;
      return TRUE;
    }
  if (clause->each > 0)
    clause->each = used;
  else if (clause->per_kg > 0)
    clause->per_kg = used;
  else if (clause->share > 0)
    clause->share = value / 100;
  else
    clause->fixed = used;
  return TRUE;
}

static gboolean
override_demand (HcDemand *demand, double value)
{
  guint first = 0;

  while (first < HC_N_ASKED_LEVELS - 1 && demand->n_clauses[first] == 0)
    first++;
  if (!override_clause (&demand->clauses[first][0], demand->figure.unit, value))
    return FALSE;
  memmove (demand->clauses[0], demand->clauses[first], sizeof demand->clauses[0]);
  demand->n_clauses[0] = demand->n_clauses[first];
  demand->stated = 1u << HC_LEVEL_TIGHT;
  demand->share_of = NULL;
  return TRUE;
}

static void
override (HcStandard *self, const HcOverride *own)
{
  HcLimit *limit = hc_standard_find_limit_by_id (self, own->figure);
  HcDemand *demand = hc_standard_find_demand_by_id (self, own->figure);

  if (!isfinite (own->value) || own->value < 0)
    return;
  if (limit != NULL && override_limit (limit, own->value))
    claim (&limit->figure, self->keep, own->reason);
  if (demand != NULL && override_demand (demand, own->value))
    claim (&demand->figure, self->keep, own->reason);
}

static HcStandard *
copy_of (HcStandard *self)
{
  g_autoptr (HcKeep) keep = hc_keep_new ();
  HcStandard *copy = hc_standard_new (keep);

  copy->base = hc_standard_ref (self);
  copy->id = self->id;
  copy->name = self->name;
  copy->about = self->about;
  copy->minimum_only = self->minimum_only;
  copy->platforms_count = self->platforms_count;
  copy->sources = self->sources;
  copy->limits = g_memdup2 (self->limits, self->n_limits * sizeof (HcLimit));
  copy->n_limits = self->n_limits;
  copy->demands = g_memdup2 (self->demands, self->n_demands * sizeof (HcDemand));
  copy->n_demands = self->n_demands;
  return copy;
}

/**
 * hc_standard_with_overrides:
 * @self: a standard
 * @overrides: (array length=n_overrides): the keeper's own figures
 * @n_overrides: how many
 *
 * Lays own figures over a standard and over its fallback. An own figure holds
 * for all levels alike. For a demand it takes the place of the coefficient
 * that is stated first: area or edge for each bird, birds to a metre or to a
 * box, a share in per cent; fixed amounts and minimums beside it stay, and
 * figures that are a share of it follow. Figures this standard does not have,
 * and values that are not finite, below zero, or zero where they divide, are
 * passed over.
 *
 * Returns: (transfer full): the standard with the own figures in it; @self
 *   when there are none
 */
HcStandard *
hc_standard_with_overrides (HcStandard *self, const HcOverride *overrides, gsize n_overrides)
{
  HcStandard *copy;

  g_return_val_if_fail (self != NULL, NULL);
  if (n_overrides == 0)
    return hc_standard_ref (self);
  copy = copy_of (self);
  for (gsize i = 0; i < n_overrides; i++)
    override (copy, &overrides[i]);
  hc_standard_work_out_shares (copy);
  if (self->fallback != NULL)
    copy->fallback = hc_standard_with_overrides (self->fallback, overrides, n_overrides);
  return copy;
}
