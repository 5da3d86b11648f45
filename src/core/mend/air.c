/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Ways to mend the air of the night, each judged by the night it makes. */
#include "config.h"

#include "mend/air.h"

#include "climate/risk.h"
#include "mend/air-private.h"

/* So much less risk is worth telling where no fault goes away whole. */
#define WORTH 0.1

#define ALL (~0u)

typedef struct
{
  const char *code;
  HcPlan *(*make) (const HcHouseNight *night, HcRemedy *remedy);
} Maker;

/* From what costs nothing to what has to be built; vents once more at last, since dry
 * houses want them less open. */
static const Maker makers[] = {
  { "air.vents", hc_mend_set_vents },
  { "air.water-out", hc_mend_take_water_out },
  { "air.droppings", hc_mend_clear_droppings },
  { "air.new-vent", hc_mend_add_vent },
  { "air.roof", hc_mend_insulate_roof },
  { "air.vents", hc_mend_set_vents },
};

static HcHouseNight *
make_night (const HcHouseNight *like, HcPlan *plan)
{
  return hc_house_night_new (plan, NULL, like->ask.flock, &like->ask.weather);
}

static guint
count (const HcHouseNight *night)
{
  return hc_night_count_faults (&night->night, ALL);
}

static double
get_risk (const HcHouseNight *night)
{
  return night->air != NULL ? hc_night_get_risk (night->air, &night->ask, &night->night, ALL)
                            : 0;
}

/* Fewer faults, or as many that are less bad. */
static gboolean
is_better (const HcHouseNight *night, const HcHouseNight *than)
{
  return count (night) < count (than)
         || (count (night) == count (than) && get_risk (night) < get_risk (than) - WORTH);
}

/* The night @maker makes of @night, or %NULL where that is no better. */
static HcHouseNight *
make_better (const Maker *maker, const HcHouseNight *night, HcRemedy *remedy)
{
  g_autoptr (HcHouseNight) after = NULL;

  remedy->plan = maker->make (night, remedy);
  if (remedy->plan == NULL || remedy->plan == night->plan)
    return NULL;
  after = make_night (night, remedy->plan);
  remedy->before = count (night);
  remedy->after = count (after);
  return is_better (after, night) ? g_steal_pointer (&after) : NULL;
}

static void
add_single (const HcHouseNight *night, const Maker *maker, GPtrArray *remedies)
{
  g_autoptr (HcRemedy) remedy = hc_remedy_new (maker->code);
  g_autoptr (HcHouseNight) after = make_better (maker, night, remedy);

  if (after != NULL)
    g_ptr_array_add (remedies, g_steal_pointer (&remedy));
}

/* One after another, until nothing is wrong. */
static HcPlan *
mend_all (const HcHouseNight *night, HcRemedy *all)
{
  g_autoptr (HcHouseNight) now = make_night (night, night->plan);

  for (guint i = 0; i < G_N_ELEMENTS (makers) && count (now) > 0; i++)
    {
      g_autoptr (HcRemedy) step = hc_remedy_new (makers[i].code);
      g_autoptr (HcHouseNight) after = make_better (&makers[i], now, step);

      if (after == NULL)
        continue;
      g_ptr_array_add (all->steps, g_steal_pointer (&step));
      hc_house_night_free (now);
      now = g_steal_pointer (&after);
    }
  return hc_plan_ref (now->plan);
}

/* Worth telling only where it does more than the best of them alone. */
static void
add_all (const HcHouseNight *night, GPtrArray *remedies)
{
  const Maker maker = { "air.all", mend_all };
  g_autoptr (HcRemedy) all = hc_remedy_new (maker.code);
  g_autoptr (HcHouseNight) after = make_better (&maker, night, all);

  for (guint i = 0; i < remedies->len; i++)
    if (after != NULL && ((HcRemedy *) remedies->pdata[i])->after <= all->after)
      return;
  if (after != NULL && all->steps->len > 1)
    g_ptr_array_insert (remedies, 0, g_steal_pointer (&all));
}

/**
 * hc_mend_air: (skip)
 * @night: a night
 *
 * Every way is judged by the real night of the plan it makes: only those after which
 * the avoidable risk is gone or smaller are told.
 *
 * Returns: (transfer full) (element-type HcRemedy): ways to mend it, first all that
 *   helps together where that does more; none where nothing is wrong or nothing helps
 */
GPtrArray *
hc_mend_air (const HcHouseNight *night)
{
  GPtrArray *remedies = g_ptr_array_new_with_free_func ((GDestroyNotify) hc_remedy_free);

  if (count (night) == 0)
    return remedies;
  for (guint i = 0; i + 1 < G_N_ELEMENTS (makers); i++)
    add_single (night, &makers[i], remedies);
  add_all (night, remedies);
  return remedies;
}
