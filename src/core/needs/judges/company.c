/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Lone birds, chicks among grown birds, ducks among hens. */
#include "config.h"

#include "needs/judges/company.h"

#include "book/figure-names.h"

static gint64
count_species (const HcNeedContext *context, HcSpecies species, HcBodies *bodies)
{
  gint64 birds = 0;

  *bodies = 0;
  for (guint body = 0; body < hc_need_context_get_n_bodies (context); body++)
    if (context->counts[body] > 0
        && hc_need_context_get_body (context, body)->kind->species == species)
      {
        birds += context->counts[body];
        *bodies |= (HcBodies) 1 << body;
      }
  return birds;
}

static void
take_graded (const HcNeedContext *context, const char *code, const HcLimit *limit,
             double measured, HcBodies kinds, const char *unit, HcAnswer *answer)
{
  HcLevel level = limit != NULL ? hc_limit_grade (limit, measured) : HC_LEVEL_PLENTY;
  HcFinding *finding;
  double wanted;

  if (level >= HC_LEVEL_GOOD || !hc_limit_get (limit, level + 1, &wanted))
    return;
  finding = hc_finding_new (code, level);
  finding->birds = hc_need_context_count_birds (context, kinds);
  finding->kinds = kinds;
  hc_finding_set_measure (finding, measured, wanted, unit);
  hc_finding_set_figure (finding, hc_case_get_standard (context->about, HC_LEVEL_GOOD),
                         &limit->figure);
  hc_need_context_name_pens (context, finding);
  hc_answer_take (answer, finding);
}

void
hc_company_tell_lonely (const HcNeedContext *context, HcAnswer *answer)
{
  const HcLimit *fewest = hc_need_context_find_plain_limit (context, HC_FIGURE_COMPANY_FEWEST,
                                                            HC_LEVEL_GOOD);

  for (HcSpecies species = HC_SPECIES_CHICKEN; species <= HC_SPECIES_GOOSE; species++)
    {
      HcBodies bodies;
      gint64 birds = count_species (context, species, &bodies);

      if (birds > 0)
        take_graded (context, "company.lonely", fewest, (double) birds, bodies, "birds", answer);
    }
}

/* The youngest of the space, where grown birds live there too. */
void
hc_company_tell_ages (const HcNeedContext *context, HcAnswer *answer)
{
  const HcLimit *from = hc_need_context_find_plain_limit (
      context, HC_FIGURE_COMPANY_TOGETHER_FROM, HC_LEVEL_GOOD);
  int youngest = HC_WEEK_GROWN;
  gboolean grown = FALSE;
  HcBodies young = 0;

  for (guint body = 0; body < hc_need_context_get_n_bodies (context); body++)
    {
      const HcBody *bird = hc_need_context_get_body (context, body);

      if (context->counts[body] == 0)
        continue;
      if (bird->age_weeks >= bird->kind->grown_week)
        grown = TRUE;
      else
        youngest = MIN (youngest, bird->age_weeks);
    }
  if (!grown || youngest == HC_WEEK_GROWN || from == NULL)
    return;
  for (guint body = 0; body < hc_need_context_get_n_bodies (context); body++)
    if (context->counts[body] > 0
        && !hc_limit_is_met (from, HC_LEVEL_GOOD,
                             hc_need_context_get_body (context, body)->age_weeks))
      young |= (HcBodies) 1 << body;
  take_graded (context, "company.too-young", from, youngest, young, "weeks", answer);
}

static HcBodies
find_drakes (const HcNeedContext *context)
{
  HcBodies drakes = 0;

  for (guint body = 0; body < hc_need_context_get_n_bodies (context); body++)
    {
      const HcBody *bird = hc_need_context_get_body (context, body);

      if (context->counts[body] > 0 && bird->kind->species == HC_SPECIES_DUCK && !bird->female)
        drakes |= (HcBodies) 1 << body;
    }
  return drakes;
}

static void
take_about_kinds (const HcNeedContext *context, const char *code, HcLevel level, HcBodies kinds,
                  HcAnswer *answer)
{
  HcFinding *finding = hc_finding_new (code, level);

  finding->birds = hc_need_context_count_birds (context, kinds);
  finding->kinds = kinds;
  hc_need_context_name_pens (context, finding);
  hc_answer_take (answer, finding);
}

/* Drakes without ducks of their own turn on the hens; ducks wet the bedding
 * hens scratch in. */
void
hc_company_tell_kinds (const HcNeedContext *context, HcAnswer *answer)
{
  HcBodies ducks;
  HcBodies hens;
  HcBodies drakes = find_drakes (context);
  gint64 n_ducks = count_species (context, HC_SPECIES_DUCK, &ducks);
  gint64 n_hens = count_species (context, HC_SPECIES_CHICKEN, &hens);

  if (n_ducks == 0 || n_hens == 0)
    return;
  if (drakes != 0 && drakes == ducks)
    take_about_kinds (context, "company.drakes-with-hens", HC_LEVEL_SHORT, drakes, answer);
  else
    take_about_kinds (context, "company.ducks-splash", HC_LEVEL_TIGHT, ducks, answer);
}
