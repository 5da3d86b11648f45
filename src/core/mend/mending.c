/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What recipes make is judged by the real check: what is wrong must be gone or
 * smaller, and the plan better as a whole. */
#include "config.h"

#include "mend/mending.h"

#include "plan/edit-fitting.h"

/* So often one recipe may try. */
#define MOST_TRIES 6

static HcFlock *
get_flock (const HcMending *self, HcPlan *plan)
{
  if (hc_plan_get (plan)->batches == hc_plan_get (self->plan)->batches)
    return hc_flock_ref (hc_check_get_flock (self->check));
  return hc_flock_on (plan, self->book, hc_plan_get_day (plan));
}

static gboolean
is_smaller (const HcMending *self, const HcCheck *after)
{
  const HcFinding *same = hc_score_find_same (after, self->need, self->finding);

  if (same == NULL || same->level > self->finding->level)
    return TRUE;
  return hc_score_weigh (after, same) < hc_score_weigh (self->check, self->finding) - 1e-6;
}

static gboolean
spoils (const HcMending *self, const HcCheck *after)
{
  for (guint need = 0; need < HC_N_NEEDS; need++)
    if (hc_check_get_need_level (after, need) == HC_LEVEL_SHORT
        && hc_check_get_need_level (self->check, need) > HC_LEVEL_SHORT)
      return TRUE;
  return FALSE;
}

static void
note_changes (const HcMending *self, const HcCheck *after, HcRemedy *remedy)
{
  for (guint need = 0; need < HC_N_NEEDS; need++)
    {
      HcNeedChange change = { need, hc_check_get_need_level (self->check, need),
                              hc_check_get_need_level (after, need) };

      if (change.before != change.after)
        g_array_append_val (remedy->changes, change);
    }
  remedy->before = 1;
  remedy->after = hc_score_find_same (after, self->need, self->finding) != NULL;
}

static void
keep (HcMending *self, HcPlan *plan, const HcCheck *after, const char *part, double amount)
{
  HcRemedy *remedy = hc_remedy_new (self->recipe);

  hc_remedy_add (remedy, part, amount);
  remedy->plan = hc_plan_ref (plan);
  note_changes (self, after, remedy);
  g_clear_pointer (&self->best, hc_remedy_free);
  self->best = remedy;
}

/* Takes over @plan, %NULL for an edit that was refused. Returns whether it mends
 * what is wrong, so that nothing more need be tried. */
gboolean
hc_mending_try (HcMending *self, HcPlan *plan, const char *part, double amount)
{
  g_autoptr (HcPlan) made = plan;
  g_autoptr (HcFlock) flock = NULL;
  g_autoptr (HcCheck) after = NULL;
  HcScore score;

  if (made == NULL || made == self->plan || hc_mending_is_done (self))
    return FALSE;
  self->tries++;
  flock = get_flock (self, made);
  after = hc_check_plan (self->cache, made, self->book, hc_check_get_condition (self->check),
                         flock);
  score = hc_score_of (after);
  if (!hc_score_is_less (score, self->score) || !is_smaller (self, after)
      || spoils (self, after)
      || (self->best != NULL && !hc_score_is_less (score, self->best_score)))
    return FALSE;
  keep (self, made, after, part, amount);
  self->best_score = score;
  return hc_mending_is_mended (self);
}

gboolean
hc_mending_try_fitting (HcMending *self, const HcFitting *fitting,
                        const HcFittingValues *values, double amount)
{
  const char *id = hc_fitting_get_id (fitting);

  return hc_mending_try (self, hc_plan_set_fitting (self->plan, id, values, NULL), id, amount);
}

/* Whether the recipe has mended it whole. */
gboolean
hc_mending_is_mended (const HcMending *self)
{
  return self->best != NULL && self->best->after == 0;
}

/* Whether the recipe has mended it, or tried often enough. */
gboolean
hc_mending_is_done (const HcMending *self)
{
  return self->tries >= MOST_TRIES || hc_mending_is_mended (self);
}

static void
add_pen (GPtrArray *pens, HcPen *pen)
{
  if (pen != NULL && !g_ptr_array_find (pens, pen, NULL))
    g_ptr_array_add (pens, pen);
}

/* The pens it is about: named, or those its things, openings or birds are in. */
GPtrArray *
hc_mending_list_pens (const HcMending *self)
{
  GPtrArray *pens = g_ptr_array_new ();

  for (char **id = self->finding->ids; *id != NULL; id++)
    {
      HcPen *inside = NULL;
      HcOpening *opening = hc_layout_get_opening (self->layout, *id);
      HcBatch *batch = hc_parts_find (hc_plan_get (self->plan)->batches, *id);
      HcPen *beside[2] = { NULL, NULL };

      add_pen (pens, hc_layout_get_pen (self->layout, *id));
      if (hc_layout_get_fitting (self->layout, *id, &inside) != NULL)
        add_pen (pens, inside);
      if (batch != NULL && hc_batch_get (batch)->pen != NULL)
        add_pen (pens, hc_layout_get_pen (self->layout, hc_batch_get (batch)->pen));
      if (opening == NULL)
        continue;
      hc_layout_get_pens_beside (self->layout, hc_opening_get (opening)->wall, beside);
      add_pen (pens, beside[0]);
      add_pen (pens, beside[1]);
    }
  return pens;
}

/* Those the finding names, or else all there are in its pens. */
GPtrArray *
hc_mending_list_fittings (const HcMending *self, HcFittingKind kind)
{
  g_autoptr (GPtrArray) pens = hc_mending_list_pens (self);
  GPtrArray *found = g_ptr_array_new ();

  for (char **id = self->finding->ids; *id != NULL; id++)
    {
      HcFitting *fitting = hc_layout_get_fitting (self->layout, *id, NULL);

      if (fitting != NULL && hc_fitting_get (fitting)->kind == (int) kind)
        g_ptr_array_add (found, fitting);
    }
  for (guint i = 0; found->len == 0 && i < pens->len; i++)
    {
      HcParts *fittings = hc_pen_get (pens->pdata[i])->fittings;

      for (guint j = 0; j < fittings->len; j++)
        if (hc_fitting_get (fittings->pdata[j])->kind == (int) kind)
          g_ptr_array_add (found, fittings->pdata[j]);
      if (found->len > 0)
        break;
    }
  return found;
}

static gboolean
is_in_pen (const HcPen *pen, const char *wall)
{
  return g_strv_contains ((const char *const *) hc_pen_get (pen)->walls, wall);
}

/* Openings of a kind in the walls of its pens. */
GPtrArray *
hc_mending_list_openings (const HcMending *self, HcOpeningKind kind)
{
  g_autoptr (GPtrArray) pens = hc_mending_list_pens (self);
  HcParts *openings = hc_layout_get (self->layout)->openings;
  GPtrArray *found = g_ptr_array_new ();

  for (guint i = 0; i < openings->len; i++)
    for (guint pen = 0; pen < pens->len; pen++)
      if (hc_opening_get (openings->pdata[i])->kind == (int) kind
          && is_in_pen (pens->pdata[pen], hc_opening_get (openings->pdata[i])->wall)
          && !g_ptr_array_find (found, openings->pdata[i], NULL))
        g_ptr_array_add (found, openings->pdata[i]);
  return found;
}

/* The first thing it names, if that is a fitting. */
HcFitting *
hc_mending_get_fitting (const HcMending *self, HcPen **pen)
{
  return self->finding->ids[0] != NULL
             ? hc_layout_get_fitting (self->layout, self->finding->ids[0], pen)
             : NULL;
}

HcOpening *
hc_mending_get_opening (const HcMending *self)
{
  return self->finding->ids[0] != NULL
             ? hc_layout_get_opening (self->layout, self->finding->ids[0])
             : NULL;
}

/* What the rules call good. */
double
hc_mending_get_figure (const HcMending *self, const char *name, double otherwise)
{
  const char *id = hc_rules_get (hc_plan_get (self->plan)->rules)->standard;
  HcStandard *standard = hc_book_get_standard (self->book, id);
  const HcLimit *limit;
  double bound = otherwise;

  if (standard == NULL)
    standard = hc_book_get_standard (self->book, HC_BOOK_DEFAULT_STANDARD);
  limit = hc_standard_find_limit (standard, name, NULL, 0, HC_CONDITION_DAY);
  if (limit != NULL)
    hc_limit_get (limit, HC_LEVEL_GOOD, &bound);
  return bound;
}
