/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The air of the coldest night: what of it can be mended, and plain cold beside it. */
#include "config.h"

#include "needs/judges/night-air.h"

#include "book/figure-names.h"
#include "climate/risk.h"
#include "plan/fitting.h"

typedef struct
{
  const HcNeedContext *context;
  const HcHouseNight *night;
  guint at;
  const HcNightSpace *space;
  HcAnswer *answer;
} Look;

static gboolean
find_space (const HcNeedContext *context, const HcHouseNight *night, guint *space)
{
  for (guint i = 0; i < hc_need_context_get_n_rooms (context); i++)
    if (hc_house_night_find_space (
            night, hc_pen_get_id (hc_room_get_pen (hc_need_context_get_room (context, i))), space))
      return TRUE;
  return FALSE;
}

static HcFinding *
begin (const Look *look, const char *code, HcLevel level)
{
  HcFinding *finding = hc_finding_new (code, level);

  finding->birds = look->space->birds;
  return finding;
}

/* Takes over @finding. */
static void
tell_of_pens (const Look *look, HcFinding *finding)
{
  hc_need_context_name_pens (look->context, finding);
  hc_answer_take_once (look->answer, finding);
}

/* The highest level @measured reaches; what air as it is outside cannot do is not asked.
 * Within @slack beyond the least it is not yet too little, nor within as much of what is
 * outside less than good. */
static HcLevel
grade (const Look *look, const char *name, double measured, double slack, double unavoidable,
       HcFinding *finding)
{
  for (HcLevel level = HC_LEVEL_TIGHT; level <= HC_LEVEL_GOOD; level++)
    {
      const HcLimit *limit = hc_need_context_find_plain_limit (look->context, name, level);
      double bound;

      if (limit == NULL || !hc_limit_get (limit, level, &bound))
        continue;
      bound = MAX (bound, unavoidable + (level == HC_LEVEL_GOOD ? slack : 0));
      if (measured <= bound)
        continue;
      hc_finding_set_measure (finding, measured, bound,
                              limit->figure.unit == HC_FIGURE_PERCENT ? "percent" : "ppm");
      hc_finding_set_figure (finding, hc_case_get_standard (look->context->about, level),
                             &limit->figure);
      return level == HC_LEVEL_TIGHT && measured > bound + slack ? HC_LEVEL_SHORT
                                                                 : HC_LEVEL_TIGHT;
    }
  return HC_LEVEL_GOOD;
}

static void
tell_over (const Look *look, const char *code, const char *name, double measured, double slack,
           double unavoidable)
{
  g_autoptr (HcFinding) finding = begin (look, code, HC_LEVEL_GOOD);

  finding->level = grade (look, name, measured, slack, unavoidable, finding);
  if (finding->level < HC_LEVEL_GOOD)
    tell_of_pens (look, g_steal_pointer (&finding));
}

/* We are unsure by so much where damp begins. */
static void
tell_damp (const Look *look)
{
  const HcAirFigure *damp
      = hc_book_get_air_figure (look->context->about->book, "damp_humidity");

  tell_over (look, "air.damp", HC_FIGURE_AIR_HUMIDITY, look->space->air.humidity,
             damp->high - damp->value, look->night->air->air.outside.humidity);
}

static void
tell_sweating (const Look *look)
{
  g_autoptr (HcFinding) finding = begin (look, "air.sweating", HC_LEVEL_TIGHT);

  for (guint i = 0; i < look->night->air->surfaces->len; i++)
    if (look->night->air->air.surfaces[i].space == (int) look->at
        && hc_night_is_sweating (&look->night->night, look->night->air, i))
      hc_finding_add_id (finding, look->night->air->parts->pdata[i]);
  tell_of_pens (look, g_steal_pointer (&finding));
}

static gboolean
is_open_water (const HcFittingValues *values)
{
  return values->kind == HC_FITTING_DRINKER && values->form != HC_FORM_NIPPLES
         && values->form != HC_FORM_CUPS && !values->out_at_night;
}

static void
tell_open_water (const Look *look)
{
  g_autoptr (HcFinding) finding = begin (look, "air.open-water", HC_LEVEL_TIGHT);

  for (guint i = 0; i < hc_need_context_get_n_rooms (look->context); i++)
    {
      HcParts *fittings = hc_room_get (hc_need_context_get_room (look->context, i))->fittings;

      for (guint j = 0; j < fittings->len; j++)
        if (is_open_water (hc_fitting_get (fittings->pdata[j])))
          hc_finding_add_id (finding, hc_fitting_get_id (fittings->pdata[j]));
    }
  hc_finding_set_measure (finding, look->space->air.t_c, 0, "celsius");
  hc_answer_take_once (look->answer, g_steal_pointer (&finding));
}

static void
tell_draught (const Look *look)
{
  const HcHouseAir *air = look->night->air;
  g_autoptr (HcFinding) finding = begin (look, "air.draught", HC_LEVEL_TIGHT);

  for (guint i = 0; i < air->ways->len; i++)
    if (air->air.paths[i].space == (int) look->at
        && hc_house_night_is_jet (look->night, i)
        && hc_air_state_get_flow (&look->night->night.state, &air->air, &air->air.paths[i])
                   .in_kg_s > 0)
      hc_finding_add_id (finding, hc_house_air_get_way (air, i)->id);
  hc_answer_take_once (look->answer, g_steal_pointer (&finding));
}

/* No keeper can mend the winter: worth knowing, whatever the level. */
static void
tell_plain_cold (const Look *look)
{
  HcFinding *finding;

  if (look->space->cold < HC_COLD_HIGH)
    return;
  finding = begin (look, "air.plain-cold", HC_LEVEL_TIGHT);
  hc_finding_set_measure (finding, look->space->air.t_c, 0, "celsius");
  hc_need_context_name_pens (look->context, finding);
  hc_answer_remark (look->answer, finding);
}

static void
tell_sealed (const Look *look)
{
  if (look->night->night.air_faults & HC_AIR_FAULT_SEALED && look->space->fresh_m3_h <= 0)
    tell_of_pens (look, begin (look, "air.sealed", HC_LEVEL_SHORT));
}

void
hc_night_air_judge (const HcNeedContext *context, HcAnswer *answer)
{
  const HcHouseNight *night = hc_case_get_night (context->about);
  Look look = { context, night, 0, NULL, answer };

  if (!answer->applies || !find_space (context, night, &look.at))
    return;
  look.space = &night->night.spaces[look.at];
  if (look.space->birds == 0)
    return;
  tell_sealed (&look);
  tell_damp (&look);
  tell_over (&look, "air.ammonia", HC_FIGURE_AIR_AMMONIA, look.space->air.ammonia_ppm, 0, 0);
  tell_over (&look, "air.carbon-dioxide", HC_FIGURE_AIR_CARBON_DIOXIDE, look.space->air.co2_ppm,
             0, 0);
  if (look.space->faults & HC_NIGHT_SWEATING)
    tell_sweating (&look);
  if (look.space->faults & HC_NIGHT_OPEN_WATER)
    tell_open_water (&look);
  if (look.space->faults & HC_NIGHT_DRAUGHT)
    tell_draught (&look);
  tell_plain_cold (&look);
}
