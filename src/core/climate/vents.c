/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * How far to open which vent: one at a time, the one that helps most first. */
#include "config.h"

#include "climate/vents.h"

#include "climate/risk.h"

/* What a flap can be set to without a rule: quarters. */
#define N_NOTCHES 4

/* More steps than these nobody takes at dusk. */
#define MOST_STEPS 6

/* Less than this is not worth a walk to the vent. */
#define WORTH 0.02

typedef struct
{
  const HcHouseNight *asked;
  HcHouseAir *air;
  double *was;
  double risk;
} Search;

typedef struct
{
  guint way;
  double open;
  double risk;
} Step;

static double
get_open (const Search *search, guint way)
{
  return hc_house_air_get_way (search->air, way)->open;
}

static double
weigh (const Search *search, HcNight *night)
{
  hc_night_settle (search->air, &search->asked->ask, NULL, night);
  return hc_night_get_risk (search->air, &search->asked->ask, night, HC_NIGHT_VENT_FAULTS);
}

static double
weigh_with (Search *search, guint way, double open)
{
  HcNight night = { 0 };
  double before = get_open (search, way);
  double risk;

  hc_house_air_open (search->air, way, open);
  risk = weigh (search, &night);
  hc_house_air_open (search->air, way, before);
  return risk;
}

/* Vents of spaces where all is well stay as they are. */
static gboolean
is_worth_trying (const Search *search, const HcNight *night, guint way)
{
  const HcAirPath *path = &search->air->air.paths[way];
  gboolean concerned = FALSE;

  for (guint i = 0; i < night->n_spaces; i++)
    if ((path->space == (int) i || path->beyond == (int) i) && night->spaces[i].birds > 0)
      concerned |= (night->spaces[i].faults & HC_NIGHT_VENT_FAULTS) != 0;
  return concerned && hc_house_air_get_way (search->air, way)->is_vent;
}

static void
try_notches (Search *search, guint way, Step *best)
{
  for (guint notch = 0; notch <= N_NOTCHES; notch++)
    {
      double open = (double) notch / N_NOTCHES;
      double risk = weigh_with (search, way, open);

      if (risk < best->risk - WORTH)
        *best = (Step){ way, open, risk };
    }
}

static gboolean
take_step (Search *search)
{
  HcNight night = { 0 };
  Step best;

  search->risk = weigh (search, &night);
  best = (Step){ 0, 0, search->risk };
  for (guint way = 0; search->risk > 0 && way < search->air->ways->len; way++)
    if (is_worth_trying (search, &night, way))
      try_notches (search, way, &best);
  if (best.risk >= search->risk)
    return FALSE;
  hc_house_air_open (search->air, best.way, best.open);
  search->risk = best.risk;
  return TRUE;
}

/* As many as are needed, and no more. */
static void
undo_needless_steps (Search *search)
{
  for (guint way = 0; way < search->air->ways->len; way++)
    if (get_open (search, way) != search->was[way]
        && weigh_with (search, way, search->was[way]) <= search->risk)
      hc_house_air_open (search->air, way, search->was[way]);
}

static GArray *
gather_steps (const Search *search)
{
  GArray *steps = g_array_new (FALSE, FALSE, sizeof (HcVentStep));

  for (guint way = 0; way < search->air->ways->len; way++)
    {
      HcVentStep step = { hc_house_air_get_way (search->air, way)->id, search->was[way],
                          get_open (search, way) };

      if (step.open != step.was)
        g_array_append_val (steps, step);
    }
  return steps;
}

/**
 * hc_vents_solve: (skip)
 * @asked: a night; its ids are handed on
 * @after: (out caller-allocates): the night with the vents so
 *
 * Dry first, no draught; of equal steps the one that opens least, which keeps most
 * warmth. Each is tried with the night worked out anew.
 *
 * Returns: (transfer full) (element-type HcVentStep): what to open and shut; none
 *   where all is well, or where no vent helps
 */
GArray *
hc_vents_solve (const HcHouseNight *asked, HcNight *after)
{
  g_autoptr (HcHouseAir) air = hc_house_air_new (&asked->ask);
  Search search = { asked, air, NULL, 0 };
  GArray *steps;

  *after = asked->night;
  if (air == NULL)
    return g_array_new (FALSE, FALSE, sizeof (HcVentStep));
  search.was = g_new (double, air->ways->len + 1);
  for (guint way = 0; way < air->ways->len; way++)
    search.was[way] = get_open (&search, way);
  for (guint step = 0; step < MOST_STEPS && take_step (&search); step++)
    ;
  undo_needless_steps (&search);
  weigh (&search, after);
  steps = gather_steps (&search);
  g_free (search.was);
  return steps;
}
