/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Local rules, as the keeper entered them. */
#include "config.h"

#include "needs/judges/judges.h"

#include "needs/answer.h"
#include "needs/context.h"

#include <glib/gi18n-lib.h>

static gint64
count_males (const HcFlock *flock, HcBodies *kinds)
{
  gint64 males = 0;

  *kinds = 0;
  for (guint i = 0; i < hc_flock_get_n_rows (flock); i++)
    {
      const HcFlockRow *row = hc_flock_get_row (flock, i);

      if (hc_flock_get_body (flock, row->body)->female)
        continue;
      males += row->count;
      *kinds |= (HcBodies) 1 << row->body;
    }
  return males;
}

static void
judge_count (const char *code, gint64 there, gint64 allowed, HcBodies kinds, HcAnswer *answer)
{
  HcFinding *finding;

  hc_answer_lower (answer, HC_LEVEL_GOOD);
  if (there <= allowed)
    return;
  finding = hc_finding_new (code, HC_LEVEL_SHORT);
  finding->birds = there - allowed;
  finding->kinds = kinds;
  hc_finding_set_measure (finding, there, allowed, "count");
  hc_answer_take (answer, finding);
}

static void
judge (const HcNeedContext *context, HcAnswer *answer)
{
  const HcSiteValues *site = context->about->site;
  const HcFlock *flock = context->about->flock;
  HcBodies kinds;
  gint64 males = count_males (flock, &kinds);

  if (site->birds_allowed > 0)
    judge_count ("site-rules.too-many-birds", hc_flock_get_total (flock), site->birds_allowed, 0,
                 answer);
  if (site->males_allowed >= 0)
    judge_count ("site-rules.too-many-males", males, site->males_allowed, kinds, answer);
}

const HcNeed hc_need_site_rules = {
  .id = HC_NEED_SITE_RULES,
  .word = "site-rules",
  .title = N_("Local rules"),
  .question = N_("Do you keep to what is allowed where you live?"),
  .why = N_("Councils limit how many birds are kept, and whether one may crow. A neighbour who "
            "complains is harder to please than a rule."),
  .help = "need-site-rules",
  .sort = HC_NEED_CONDITION,
  .scope = HC_SCOPE_LAYOUT,
  .judge = judge,
  .lifts = { HC_N_OFFER_KINDS },
};
