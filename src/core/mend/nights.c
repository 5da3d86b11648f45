/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What mends the air of the coldest night, judged by all needs as well. */
#include "config.h"

#include "mend/mending.h"

#include "mend/air.h"

static void
take_name (HcRemedy *remedy, const HcRemedy *from)
{
  remedy->code = from->code;
  g_ptr_array_set_size (remedy->ids, 0);
  g_array_set_size (remedy->amounts, 0);
  for (guint i = 0; i < from->ids->len; i++)
    hc_remedy_add (remedy, from->ids->pdata[i], hc_remedy_get_amount (from, i));
}

static void
mend_night (HcMending *self)
{
  g_autoptr (HcHouseNight) night
      = hc_house_night_new (self->plan, hc_check_get_house (self->check),
                            hc_check_get_flock (self->check), NULL);
  g_autoptr (GPtrArray) remedies = hc_mend_air (night);

  for (guint i = 0; i < remedies->len; i++)
    {
      const HcRemedy *remedy = remedies->pdata[i];

      hc_mending_try (self, hc_plan_ref (remedy->plan), "", 0);
      if (self->best != NULL && self->best->plan == remedy->plan)
        take_name (self->best, remedy);
    }
}

const HcRecipe hc_recipes_of_nights[] = {
  { "air.night", mend_night },
  { NULL },
};
