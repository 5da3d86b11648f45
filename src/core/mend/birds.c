/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Another pen for some birds, or fewer of them. */
#include "config.h"

#include "mend/mending.h"

#include "plan/edit-flock.h"

/* Groups the finding names, or else those that live in its pens. */
static GPtrArray *
list_batches (const HcMending *self)
{
  HcParts *batches = hc_plan_get (self->plan)->batches;
  g_autoptr (GPtrArray) pens = hc_mending_list_pens (self);
  GPtrArray *found = g_ptr_array_new ();

  for (guint i = 0; i < batches->len; i++)
    if (g_strv_contains ((const char *const *) self->finding->ids,
                         hc_part_get_id (batches->pdata[i])))
      g_ptr_array_add (found, batches->pdata[i]);
  for (guint i = 0; found->len == 0 && i < batches->len; i++)
    for (guint pen = 0; pen < pens->len; pen++)
      if (g_strcmp0 (hc_batch_get (batches->pdata[i])->pen, hc_pen_get_id (pens->pdata[pen]))
          == 0)
        {
          g_ptr_array_add (found, batches->pdata[i]);
          break;
        }
  return found;
}

static void
try_batch (HcMending *self, const HcBatch *batch, const HcBatchValues *values, double amount)
{
  const char *id = hc_batch_get_id (batch);

  hc_mending_try (self, hc_plan_set_batch (self->plan, id, values, NULL), id, amount);
}

static void
move_house (HcMending *self)
{
  g_autoptr (GPtrArray) batches = list_batches (self);
  HcParts *pens = hc_layout_get (self->layout)->pens;

  for (guint i = 0; i < batches->len; i++)
    for (guint pen = 0; pen < pens->len; pen++)
      {
        HcBatchValues values = *hc_batch_get (batches->pdata[i]);

        if (hc_pen_get (pens->pdata[pen])->kind != HC_PEN_INDOOR
            || g_strcmp0 (values.pen, hc_pen_get_id (pens->pdata[pen])) == 0)
          continue;
        values.pen = (char *) hc_pen_get_id (pens->pdata[pen]);
        try_batch (self, batches->pdata[i], &values, 0);
      }
}

static void
keep_fewer_males (HcMending *self)
{
  g_autoptr (GPtrArray) batches = list_batches (self);

  for (guint i = 0; i < batches->len; i++)
    for (int fewer = 1; fewer <= hc_batch_get (batches->pdata[i])->males; fewer++)
      {
        HcBatchValues values = *hc_batch_get (batches->pdata[i]);

        values.males -= fewer;
        try_batch (self, batches->pdata[i], &values, fewer);
      }
}

static void
take_out (HcBatchValues *values, int birds)
{
  int males = MIN (values->males, birds * values->males / MAX (1, values->males + values->females));

  values->males -= males;
  values->females = MAX (0, values->females - (birds - males));
}

/* As many fewer as find no place, or twice that many; some are kept. */
static void
keep_fewer (HcMending *self)
{
  g_autoptr (GPtrArray) batches = list_batches (self);

  for (guint i = 0; i < batches->len; i++)
    {
      const HcBatchValues *now = hc_batch_get (batches->pdata[i]);
      int most = now->females + now->males - 1;

      self->tries = 0;
      for (int fewer = (int) MAX (1, MIN (self->finding->birds, most)); most > 0;
           fewer = MIN (2 * fewer, most))
        {
          HcBatchValues values = *now;

          take_out (&values, fewer);
          try_batch (self, batches->pdata[i], &values, fewer);
          if (fewer == most || hc_mending_is_done (self))
            break;
        }
    }
}

const HcRecipe hc_recipes_of_birds[] = {
  { "birds.another-pen", move_house },
  { "birds.fewer-males", keep_fewer_males },
  { "birds.fewer", keep_fewer },
  { NULL },
};
