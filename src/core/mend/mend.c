/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Puts a finding to the recipes its need lists, and sorts what mends it. */
#include "config.h"

#include "mend/mend.h"

#include "mend/mending.h"

static const HcRecipe *const tables[] = {
  hc_recipes_of_bars,   hc_recipes_of_nests,   hc_recipes_of_troughs,
  hc_recipes_of_floors, hc_recipes_of_heaters, hc_recipes_of_openings,
  hc_recipes_of_guards, hc_recipes_of_places,  hc_recipes_of_birds,
  hc_recipes_of_nights,
};

static const HcRecipe *
find_recipe (const char *id)
{
  for (guint i = 0; i < G_N_ELEMENTS (tables); i++)
    for (const HcRecipe *recipe = tables[i]; recipe->id != NULL; recipe++)
      if (g_str_equal (recipe->id, id))
        return recipe;
  return NULL;
}

/**
 * hc_mend_knows: (skip)
 * @id: a remedy that a need lists
 *
 * Returns: whether there is a recipe for it
 */
gboolean
hc_mend_knows (const char *id)
{
  return find_recipe (id) != NULL;
}

static void
follow (HcMending *mending, const HcRecipe *recipe, GPtrArray *remedies)
{
  mending->recipe = recipe->id;
  mending->tries = 0;
  mending->best = NULL;
  recipe->suggest (mending);
  if (mending->best != NULL)
    g_ptr_array_add (remedies, g_steal_pointer (&mending->best));
}

static gboolean
makes_worse (const HcRemedy *remedy)
{
  for (guint i = 0; i < remedy->changes->len; i++)
    {
      const HcNeedChange *change = &g_array_index (remedy->changes, HcNeedChange, i);

      if (change->after < change->before && change->after < HC_LEVEL_GOOD)
        return TRUE;
    }
  return FALSE;
}

/* What mends it whole and spoils nothing comes first, fewer birds last. */
static int
rank (const HcRemedy *remedy)
{
  if (g_str_equal (remedy->code, "birds.fewer"))
    return 4;
  return (makes_worse (remedy) ? 2 : 0) + (remedy->after > 0 ? 1 : 0);
}

static void
put_in_order (GPtrArray *remedies)
{
  GPtrArray *sorted = g_ptr_array_new ();

  for (int at = 0; at <= 4; at++)
    for (guint i = 0; i < remedies->len; i++)
      if (rank (remedies->pdata[i]) == at)
        g_ptr_array_add (sorted, remedies->pdata[i]);
  for (guint i = 0; i < sorted->len; i++)
    remedies->pdata[i] = sorted->pdata[i];
  g_ptr_array_unref (sorted);
}

/**
 * hc_mend_finding: (skip)
 * @cache: what earlier checks worked out; of this thread
 * @book: the book
 * @check: the plan judged
 * @need: the need that found it
 * @finding: what is to be mended
 *
 * Every remedy is judged by the real check: afterwards the finding is gone or
 * smaller, the plan is better as a whole, and no other need falls short.
 *
 * Returns: (transfer full) (element-type HcRemedy): ways to mend it, the best
 *   first and fewer birds last; none where nothing fits
 */
GPtrArray *
hc_mend_finding (HcCheckCache *cache, HcBook *book, HcCheck *check, HcNeedId need,
                 const HcFinding *finding)
{
  const char *const *ids = hc_mending_list_remedies (need);
  GPtrArray *remedies = g_ptr_array_new_with_free_func ((GDestroyNotify) hc_remedy_free);
  HcMending mending = {
    .cache = cache,
    .book = book,
    .check = check,
    .plan = hc_check_get_plan (check),
    .layout = hc_plan_get_layout (hc_check_get_plan (check)),
    .need = need,
    .finding = finding,
    .score = hc_score_of (check),
  };

  for (; ids != NULL && finding->level < HC_LEVEL_GOOD && *ids != NULL; ids++)
    follow (&mending, find_recipe (*ids), remedies);
  put_in_order (remedies);
  return remedies;
}
