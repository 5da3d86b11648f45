/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Who lives together: mates, ages and kinds. */
#include "config.h"

#include "needs/judges/judges.h"

#include "needs/judges/company.h"

#include <glib/gi18n-lib.h>

static void
tell_homeless (const HcNeedContext *context, HcAnswer *answer)
{
  const HcFlock *flock = context->about->flock;
  g_autoptr (HcFinding) finding = hc_finding_new ("company.no-home", HC_LEVEL_SHORT);
  guint room;

  for (guint i = 0; i < hc_flock_get_n_rows (flock); i++)
    {
      const HcFlockRow *row = hc_flock_get_row (flock, i);

      if (row->count == 0 || hc_house_find_room (context->about->house, row->pen, &room))
        continue;
      finding->birds += row->count;
      finding->kinds |= (HcBodies) 1 << row->body;
      hc_finding_add_id (finding, row->batch);
    }
  if (finding->birds > 0)
    hc_answer_take (answer, g_steal_pointer (&finding));
}

static void
judge (const HcNeedContext *context, HcAnswer *answer)
{
  const HcHouse *house = context->about->house;
  HcCondition condition = hc_case_get_condition (context->about, HC_SCOPE_DAY_SPACE);

  answer->applies = hc_flock_get_total (context->about->flock) > 0;
  answer->birds = hc_flock_get_total (context->about->flock);
  tell_homeless (context, answer);
  hc_company_tell_new_birds (context, answer);
  for (guint space = 0; space < hc_house_get_n_spaces (house, condition); space++)
    {
      HcNeedContext here = *context;

      here.space = hc_house_get_space (house, condition, space);
      here.condition = condition;
      hc_need_context_count (&here, context->about->flock);
      hc_company_tell_mates (&here, answer);
      hc_company_tell_lonely (&here, answer);
      hc_company_tell_ages (&here, answer);
      hc_company_tell_kinds (&here, answer);
    }
}

const HcNeed hc_need_company = {
  .id = HC_NEED_COMPANY,
  .word = "company",
  .title = N_("Who lives together"),
  .question = N_("Do those that live together get on?"),
  .why = N_("Hens with too many cocks wear bare backs, chicks among grown birds get hurt, and a "
            "lone bird pines."),
  .help = "need-company",
  .sort = HC_NEED_BALANCE,
  .scope = HC_SCOPE_LAYOUT,
  .judge = judge,
  .lifts = { HC_N_OFFER_KINDS },
};
