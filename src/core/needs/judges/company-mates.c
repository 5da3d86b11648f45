/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Males and females of a species, grown birds only. */
#include "config.h"

#include "needs/judges/company.h"

#include "book/figure-names.h"

/* Grown birds of one species in one day space. @kind is that of most of the
 * males, whose figure counts. */
typedef struct
{
  gint64 males;
  gint64 females;
  HcBodies bodies;
  guint kind_of;
} Mates;

static Mates
count_mates (const HcNeedContext *context, HcSpecies species)
{
  Mates mates = { 0 };
  gint64 most = 0;

  for (guint body = 0; body < hc_need_context_get_n_bodies (context); body++)
    {
      const HcBody *bird = hc_need_context_get_body (context, body);
      gint64 birds = context->counts[body];

      if (birds == 0 || bird->kind->species != species || bird->kind->raised_for_meat
          || bird->age_weeks < bird->kind->grown_week)
        continue;
      mates.bodies |= (HcBodies) 1 << body;
      if (bird->female)
        mates.females += birds;
      else
        mates.males += birds;
      if (!bird->female && birds > most)
        {
          most = birds;
          mates.kind_of = body;
        }
    }
  return mates;
}

static void
take_ratio (const HcNeedContext *context, const Mates *mates, const char *figure,
            const char *code, HcAnswer *answer)
{
  double ratio = (double) mates->females / (double) mates->males;
  const HcLimit *limit
      = hc_need_context_find_limit (context, figure, mates->kind_of, HC_LEVEL_GOOD);
  HcLevel level = limit != NULL ? hc_limit_grade (limit, ratio) : HC_LEVEL_PLENTY;
  HcFinding *finding;
  double wanted;

  if (level >= HC_LEVEL_GOOD || !hc_limit_get (limit, level + 1, &wanted))
    return;
  finding = hc_finding_new (code, level);
  finding->birds = mates->males;
  finding->kinds = mates->bodies;
  hc_finding_set_measure (finding, ratio, wanted, "birds");
  hc_finding_set_figure (finding, hc_case_get_standard (context->about, HC_LEVEL_GOOD),
                         &limit->figure);
  hc_need_context_name_pens (context, finding);
  if (limit->direction == HC_DIRECTION_AT_LEAST)
    hc_answer_take (answer, finding);
  else
    hc_answer_remark (answer, finding);
}

/* Too few females for a male wears them out; too many only leaves eggs that
 * will not hatch, which is worth knowing and harms no bird. */
void
hc_company_tell_mates (const HcNeedContext *context, HcAnswer *answer)
{
  for (HcSpecies species = HC_SPECIES_CHICKEN; species <= HC_SPECIES_GOOSE; species++)
    {
      Mates mates = count_mates (context, species);

      if (mates.males == 0 || mates.females == 0)
        continue;
      take_ratio (context, &mates, HC_FIGURE_COMPANY_FEWEST_FEMALES, "company.too-many-males",
                  answer);
      take_ratio (context, &mates, HC_FIGURE_COMPANY_FEMALES_PER_MALE,
                  "company.too-few-males", answer);
    }
}
