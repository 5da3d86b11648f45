/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Looks for what cannot happen: birds that leave before they hatch, more that
 * go than there are, chicks without eggs. */
#include "config.h"

#include "plan/fault-private.h"

typedef struct
{
  const HcPlanValues *plan;
  GHashTable *pens;
  HcFault *fault;
} Search;

static gboolean
is_missing_pen (const Search *search,
                const char *pen)
{
  return pen != NULL && *pen != '\0' && !g_hash_table_contains (search->pens, pen);
}

static gboolean
find_day_fault (const Search *search,
                const char *id,
                guint32 on,
                guint32 hatched)
{
  if (on == 0)
    return hc_fault_set (search->fault, HC_FAULT_EMPTY, "on", id, NULL);
  return on < hatched && hc_fault_set (search->fault, HC_FAULT_BEFORE_HATCH, "on", id, NULL);
}

static gboolean
find_move_fault (const Search *search,
                 const HcMove *move,
                 const HcBatchValues *batch)
{
  const HcMoveValues *values = hc_move_get (move);
  const char *id = hc_move_get_id (move);

  if (find_day_fault (search, id, values->on, batch->hatched))
    return TRUE;
  if (is_missing_pen (search, values->pen))
    return hc_fault_set (search->fault, HC_FAULT_NO_SUCH, "pen", values->pen, NULL);
  if (is_missing_pen (search, values->from))
    return hc_fault_set (search->fault, HC_FAULT_NO_SUCH, "from", values->from, NULL);
  if (values->females > batch->females)
    return hc_fault_set (search->fault, HC_FAULT_MORE_THAN_THERE, "females", id, NULL);
  return values->males > batch->males
         && hc_fault_set (search->fault, HC_FAULT_MORE_THAN_THERE, "males", id, NULL);
}

static gboolean
find_in_moves (const Search *search,
               const HcBatchValues *batch)
{
  for (guint i = 0; i < batch->moves->len; i++)
    if (find_move_fault (search, batch->moves->pdata[i], batch))
      return hc_fault_inside_item (search->fault, "moves", i);
  return FALSE;
}

static int
compare_days (gconstpointer a,
              gconstpointer b,
              gpointer data)
{
  HcParts *leavings = data;
  guint32 one = hc_leaving_get (leavings->pdata[*(const guint *) a])->on;
  guint32 other = hc_leaving_get (leavings->pdata[*(const guint *) b])->on;

  return (one > other) - (one < other);
}

/* The places of @leavings in the order of their days. */
static guint *
sort_by_day (HcParts *leavings)
{
  guint *order = g_new (guint, leavings->len + 1);

  for (guint i = 0; i < leavings->len; i++)
    order[i] = i;
  g_qsort_with_data (order, (int) leavings->len, sizeof *order, compare_days, leavings);
  return order;
}

static gboolean
find_leaving_fault (const Search *search,
                    const HcLeaving *leaving,
                    const HcBatchValues *batch,
                    int left[2])
{
  const HcLeavingValues *values = hc_leaving_get (leaving);
  const char *id = hc_leaving_get_id (leaving);

  if (find_day_fault (search, id, values->on, batch->hatched))
    return TRUE;
  if (is_missing_pen (search, values->from))
    return hc_fault_set (search->fault, HC_FAULT_NO_SUCH, "from", values->from, NULL);
  if (values->females > left[0])
    return hc_fault_set (search->fault, HC_FAULT_MORE_THAN_THERE, "females", id, NULL);
  if (values->males > left[1])
    return hc_fault_set (search->fault, HC_FAULT_MORE_THAN_THERE, "males", id, NULL);
  if (values->females == 0 && values->males == 0)
    left[0] = left[1] = 0;
  left[0] -= values->females;
  left[1] -= values->males;
  return FALSE;
}

static gboolean
find_in_leavings (const Search *search,
                  const HcBatchValues *batch)
{
  g_autofree guint *order = sort_by_day (batch->leavings);
  int left[2] = { batch->females, batch->males };

  for (guint i = 0; i < batch->leavings->len; i++)
    if (find_leaving_fault (search, batch->leavings->pdata[order[i]], batch, left))
      return hc_fault_inside_item (search->fault, "leavings", order[i]);
  return FALSE;
}

static gboolean
find_in_batches (const Search *search)
{
  HcParts *batches = search->plan->batches;

  for (guint i = 0; i < batches->len; i++)
    {
      const HcBatchValues *batch = hc_batch_get (batches->pdata[i]);

      if (find_in_moves (search, batch) || find_in_leavings (search, batch))
        return hc_fault_inside_item (search->fault, "batches", i);
    }
  return FALSE;
}

static gboolean
find_in_steps (const Search *search,
               HcParts *steps)
{
  for (guint i = 0; i < steps->len; i++)
    {
      const HcStepValues *step = hc_step_get (steps->pdata[i]);

      if (!is_missing_pen (search, step->pen))
        continue;
      hc_fault_set (search->fault, HC_FAULT_NO_SUCH, "pen", step->pen, NULL);
      return hc_fault_inside_item (search->fault, "steps", i);
    }
  return FALSE;
}

static gboolean
find_clutch_fault (const Search *search,
                   const HcClutch *clutch)
{
  const HcClutchValues *values = hc_clutch_get (clutch);
  const char *id = hc_clutch_get_id (clutch);

  if (is_missing_pen (search, values->pen))
    return hc_fault_set (search->fault, HC_FAULT_NO_SUCH, "pen", values->pen, NULL);
  if (values->fertile_high_percent > 0
      && values->fertile_low_percent > values->fertile_high_percent)
    return hc_fault_set (search->fault, HC_FAULT_LOW_ABOVE_HIGH, "fertile_low_percent", id, NULL);
  if (values->hatch_high_percent > 0 && values->hatch_low_percent > values->hatch_high_percent)
    return hc_fault_set (search->fault, HC_FAULT_LOW_ABOVE_HIGH, "hatch_low_percent", id, NULL);
  if (values->harvest_on != 0 && values->harvest_on <= values->set_on)
    return hc_fault_set (search->fault, HC_FAULT_BEFORE_HATCH, "harvest_on", id, NULL);
  return find_in_steps (search, values->steps);
}

static gboolean
find_in_clutches (const Search *search)
{
  HcParts *clutches = search->plan->clutches;

  for (guint i = 0; i < clutches->len; i++)
    if (find_clutch_fault (search, clutches->pdata[i]))
      return hc_fault_inside_item (search->fault, "clutches", i);
  return FALSE;
}

/* Results outlive the group they are about: the record stays. */
static gboolean
find_result_fault (const Search *search,
                   const HcResult *result)
{
  const HcResultValues *values = hc_result_get (result);
  const HcClutch *clutch = hc_parts_find (search->plan->clutches, values->of);
  const char *id = hc_result_get_id (result);

  if (values->on == 0)
    return hc_fault_set (search->fault, HC_FAULT_EMPTY, "on", id, NULL);
  if (clutch == NULL || values->what > HC_RESULT_HATCHED)
    return FALSE;
  if (values->on < hc_clutch_get (clutch)->set_on)
    return hc_fault_set (search->fault, HC_FAULT_BEFORE_HATCH, "on", id, NULL);
  return values->count > hc_clutch_get (clutch)->eggs
         && hc_fault_set (search->fault, HC_FAULT_MORE_THAN_SET, "count", id, NULL);
}

static gboolean
find_in_results (const Search *search)
{
  HcParts *results = search->plan->results;

  for (guint i = 0; i < results->len; i++)
    if (find_result_fault (search, results->pdata[i]))
      return hc_fault_inside_item (search->fault, "results", i);
  return FALSE;
}

/**
 * hc_season_find_fault: (skip)
 * @plan: a plan
 * @pens: ids of the pens of all its variants
 * @fault: (out caller-allocates): filled when something is wrong
 *
 * Returns: whether something is planned or told of birds and eggs that cannot
 *   happen
 */
gboolean
hc_season_find_fault (const HcPlan *plan,
                      GHashTable *pens,
                      HcFault *fault)
{
  Search search = { hc_plan_get (plan), pens, fault };

  return find_in_batches (&search) || find_in_clutches (&search) || find_in_results (&search);
}
