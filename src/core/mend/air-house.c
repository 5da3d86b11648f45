/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Water out at dusk, droppings out every day, a roof that keeps warm. */
#include "config.h"

#include "mend/air-private.h"

#include "plan/edit-fitting.h"
#include "plan/edit-pen.h"

/* A roof is worth building anew where it passes so many times less heat. */
#define WORTH_BUILDING 2

/* Faults of the space a pen is part of, where birds sleep. */
guint
hc_mend_get_faults (const HcHouseNight *night, const char *pen)
{
  guint space;

  if (!hc_house_night_find_space (night, pen, &space)
      || night->night.spaces[space].birds == 0)
    return 0;
  return night->night.spaces[space].faults;
}

/* Takes over @plan. */
static HcPlan *
take_out (HcPlan *plan, HcFitting *fitting, HcRemedy *remedy)
{
  g_autoptr (HcPlan) before = plan;
  HcFittingValues values = *hc_fitting_get (fitting);

  values.out_at_night = TRUE;
  hc_remedy_add (remedy, hc_fitting_get_id (fitting), 1);
  return hc_plan_set_fitting (before, hc_fitting_get_id (fitting), &values, NULL);
}

static gboolean
is_open_water (const HcFittingValues *values)
{
  return values->kind == HC_FITTING_DRINKER && values->form != HC_FORM_NIPPLES
         && values->form != HC_FORM_CUPS && !values->out_at_night;
}

/* Chicks under heat drink by night too. */
static gboolean
has_chicks (const HcFlock *flock, const char *pen)
{
  for (guint i = 0; i < hc_flock_get_n_rows (flock); i++)
    {
      const HcFlockRow *row = hc_flock_get_row (flock, i);

      if (row->count > 0 && g_strcmp0 (row->pen, pen) == 0
          && hc_flock_get_body (flock, row->body)->under_heat)
        return TRUE;
    }
  return FALSE;
}

HcPlan *
hc_mend_take_water_out (const HcHouseNight *night, HcRemedy *remedy)
{
  HcParts *pens = hc_layout_get (hc_plan_get_layout (night->plan))->pens;
  HcPlan *plan = hc_plan_ref (night->plan);

  for (guint i = 0; i < pens->len; i++)
    {
      HcParts *fittings = hc_pen_get (pens->pdata[i])->fittings;
      const char *pen = hc_pen_get_id (pens->pdata[i]);

      if (!(hc_mend_get_faults (night, pen) & HC_NIGHT_OPEN_WATER)
          || has_chicks (night->ask.flock, pen))
        continue;
      for (guint j = 0; plan != NULL && fittings != NULL && j < fittings->len; j++)
        if (is_open_water (hc_fitting_get (fittings->pdata[j])))
          plan = take_out (plan, fittings->pdata[j], remedy);
    }
  return plan;
}

typedef gboolean (*Change) (const HcHouseNight *night, HcPenValues *values);

/* Changes every pen with a fault of @mask. */
static HcPlan *
change_pens (const HcHouseNight *night, guint mask, Change change, HcRemedy *remedy)
{
  HcParts *pens = hc_layout_get (hc_plan_get_layout (night->plan))->pens;
  HcPlan *plan = hc_plan_ref (night->plan);

  for (guint i = 0; plan != NULL && i < pens->len; i++)
    {
      const char *pen = hc_pen_get_id (pens->pdata[i]);
      HcPenValues values = *hc_pen_get (pens->pdata[i]);
      g_autoptr (HcPlan) before = NULL;

      if (!(hc_mend_get_faults (night, pen) & mask) || !change (night, &values))
        continue;
      before = g_steal_pointer (&plan);
      plan = hc_plan_set_pen (before, pen, &values, NULL);
      hc_remedy_add (remedy, pen, 1);
    }
  return plan;
}

static gboolean
clear_droppings (const HcHouseNight *night, HcPenValues *values)
{
  gboolean changes = !values->droppings_cleared;

  values->droppings_cleared = TRUE;
  return changes;
}

HcPlan *
hc_mend_clear_droppings (const HcHouseNight *night, HcRemedy *remedy)
{
  return change_pens (night, HC_NIGHT_DAMP_AIR | HC_NIGHT_SWEATING | HC_NIGHT_STALE,
                      clear_droppings, remedy);
}

static const HcConstruction *
find_warmest_roof (const HcBook *book)
{
  const HcConstruction *warmest = NULL;

  for (guint i = 0; i < hc_book_get_n_constructions (book); i++)
    {
      const HcConstruction *roof = hc_book_get_construction_at (book, i);

      if (roof->roof && (warmest == NULL || roof->u_w_m2k < warmest->u_w_m2k))
        warmest = roof;
    }
  return warmest;
}

static gboolean
insulate_roof (const HcHouseNight *night, HcPenValues *values)
{
  const HcBook *book = hc_flock_get_book (night->ask.flock);
  const HcConstruction *warmest = find_warmest_roof (book);
  const HcConstruction *now = hc_book_get_construction (book, values->roof_construction);
  double now_u = now != NULL ? now->u_w_m2k
                             : hc_book_get_air_figure (book, "bare_roof_u")->value;

  if (warmest == NULL || warmest->u_w_m2k * WORTH_BUILDING > now_u)
    return FALSE;
  values->roof_construction = (char *) warmest->id;
  return TRUE;
}

HcPlan *
hc_mend_insulate_roof (const HcHouseNight *night, HcRemedy *remedy)
{
  return change_pens (night, HC_NIGHT_DAMP_AIR | HC_NIGHT_SWEATING, insulate_roof, remedy);
}
