/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * How far one animal gets, and what lets it in to the birds. */
#include "config.h"

#include "needs/judges/intrusion.h"

#include "book/figure-names.h"

/* By night, and by day in the run. */
static const struct
{
  const char *by_night;
  const char *by_day;
  const char *figure;
} tellings[HC_N_WAY_IN_CAUSES] = {
  [HC_WAY_IN_LEFT_OPEN] = { "predators.left-open", NULL, NULL },
  [HC_WAY_IN_LATCH] = { "predators.latch", "predators.day-latch", NULL },
  [HC_WAY_IN_GAP] = { "predators.gap", "predators.day-gap", NULL },
  [HC_WAY_IN_BARE] = { "predators.bare", "predators.day-bare", NULL },
  [HC_WAY_IN_HOLES] = { "predators.holes", "predators.day-holes", NULL },
  [HC_WAY_IN_TORN] = { "predators.torn", "predators.day-torn", NULL },
  [HC_WAY_IN_STAPLES] = { "predators.staples", "predators.day-staples", NULL },
  [HC_WAY_IN_OVER]
  = { "predators.over", "predators.day-over", HC_FIGURE_PREDATORS_FENCE_HEIGHT },
  [HC_WAY_IN_UNDER] = { "predators.under", "predators.day-under", HC_FIGURE_PREDATORS_APRON },
  [HC_WAY_IN_FLOOR] = { "predators.floor", NULL, HC_FIGURE_PREDATORS_APRON },
  [HC_WAY_IN_SKY] = { "predators.sky", "predators.day-sky", NULL },
  [HC_WAY_IN_ROOF_HOLES] = { "predators.roof-holes", "predators.day-roof-holes", NULL },
  [HC_WAY_IN_ROOF_TORN] = { "predators.roof-torn", "predators.day-roof-torn", NULL },
};

double
hc_intrusion_get_figure (const HcNeedContext *context, const char *figure, HcLevel level,
                         double otherwise_mm)
{
  const HcLimit *limit = hc_need_context_find_plain_limit (context, figure, level);
  double bound = otherwise_mm;

  if (limit != NULL)
    hc_limit_get (limit, level, &bound);
  return bound;
}

static gboolean
gets_to (const HcIntrusion *self, guint room)
{
  return room == HC_OUTSIDE || self->reached[room];
}

static void
wander (HcIntrusion *self)
{
  gboolean further = TRUE;

  while (further)
    {
      further = FALSE;
      for (guint i = 0; i < self->ways->len; i++)
        {
          const HcWayIn *way = &g_array_index (self->ways, HcWayIn, i);

          if (self->reached[way->room] || !gets_to (self, way->beyond))
            continue;
          self->reached[way->room] = TRUE;
          further = TRUE;
        }
    }
}

void
hc_intrusion_begin (HcIntrusion *self, const HcNeedContext *context, const HcPredator *animal,
                    gboolean by_night, GHashTable *found)
{
  const HcHouse *house = context->about->house;

  self->context = context;
  self->found = found;
  self->intruder = (HcIntruder){
    .animal = animal,
    .book = context->about->book,
    .by_night = by_night,
    .apron_mm = hc_intrusion_get_figure (context, HC_FIGURE_PREDATORS_APRON, HC_LEVEL_TIGHT, 0),
    .dug_mm = hc_intrusion_get_figure (context, HC_FIGURE_PREDATORS_DUG, HC_LEVEL_TIGHT, 0),
    .fence_mm
    = hc_intrusion_get_figure (context, HC_FIGURE_PREDATORS_FENCE_HEIGHT, HC_LEVEL_TIGHT,
                               animal->jumps_mm),
  };
  self->ways = hc_ways_in_find (house, &self->intruder);
  self->reached = g_new0 (gboolean, hc_house_get_n_rooms (house));
  wander (self);
}

void
hc_intrusion_end (HcIntrusion *self)
{
  g_clear_pointer (&self->ways, g_array_unref);
  g_clear_pointer (&self->reached, g_free);
}

/* Whether it is at the door of the birds: where it gets to, and they are not. By
 * day they are all over their space. */
gboolean
hc_intrusion_comes_from (const HcIntrusion *self, const HcPrey *prey, guint beyond)
{
  if (beyond == HC_OUTSIDE)
    return TRUE;
  if (!self->intruder.by_night && hc_need_context_has_room (&prey->here, beyond))
    return FALSE;
  return self->reached[beyond] && !prey->rooms[beyond];
}

static HcBodies
find_taken (const HcPrey *prey, const HcPredator *animal)
{
  HcBodies taken = 0;

  if (!animal->takes_birds)
    return 0;
  for (guint body = 0; body < hc_need_context_get_n_bodies (&prey->here); body++)
    if (prey->here.counts[body] > 0
        && (animal->takes_to_week == 0
            || hc_body_get_week (hc_need_context_get_body (&prey->here, body))
                   <= animal->takes_to_week))
      taken |= (HcBodies) 1 << body;
  return taken;
}

static HcFinding *
look_up (HcIntrusion *self, const char *code, const char *part)
{
  g_autofree char *key = g_strconcat (code, " ", part, NULL);
  HcFinding *finding = g_hash_table_lookup (self->found, key);

  if (finding != NULL)
    return finding;
  finding = hc_finding_new (code, HC_LEVEL_TIGHT);
  hc_finding_add_id (finding, part);
  g_hash_table_insert (self->found, g_steal_pointer (&key), finding);
  return finding;
}

/* The finding about one thing, for all animals together. By night birds are
 * killed; by day somebody is about, and those that take no bird of these take
 * eggs and feed. */
HcFinding *
hc_intrusion_find (HcIntrusion *self, const HcPrey *prey, const char *code, const char *part)
{
  HcBodies taken = find_taken (prey, self->intruder.animal);
  HcFinding *finding = look_up (self, code, part);

  if (taken != 0 && self->intruder.by_night)
    finding->level = HC_LEVEL_SHORT;
  finding->kinds |= taken;
  finding->birds = hc_need_context_count_birds (&prey->here, finding->kinds);
  hc_finding_add_animal (finding, self->intruder.animal->id);
  return finding;
}

static void
measure (const HcIntrusion *self, HcFinding *finding, const HcWayIn *way)
{
  const HcNeedContext *context = self->context;
  const char *figure = tellings[way->cause].figure;
  const HcLimit *limit = figure != NULL ? hc_need_context_find_plain_limit (context, figure,
                                                                            HC_LEVEL_TIGHT)
                                        : NULL;

  if (way->want_mm > 0)
    hc_finding_set_measure (finding, way->have_mm,
                            finding->required > 0 ? MIN (finding->required, way->want_mm)
                                                  : way->want_mm,
                            "mm");
  if (limit != NULL)
    hc_finding_set_figure (finding, hc_case_get_standard (context->about, HC_LEVEL_TIGHT),
                           &limit->figure);
}

static void
tell_way (HcIntrusion *self, const HcPrey *prey, const HcWayIn *way)
{
  gboolean by_night = self->intruder.by_night;
  const char *code = by_night ? tellings[way->cause].by_night : tellings[way->cause].by_day;
  HcFinding *finding;

  if (code == NULL || (!by_night && find_taken (prey, self->intruder.animal) == 0))
    return;
  finding = hc_intrusion_find (self, prey, code, way->part);
  hc_finding_add_id (finding, way->wall);
  hc_finding_add_line (finding, way->from, way->to);
  measure (self, finding, way);
}

/* Only the last way counts, that into the rooms the birds are in. */
void
hc_intrusion_tell (HcIntrusion *self, const HcPrey *prey)
{
  for (guint i = 0; i < self->ways->len; i++)
    {
      const HcWayIn *way = &g_array_index (self->ways, HcWayIn, i);

      if (prey->rooms[way->room] && hc_intrusion_comes_from (self, prey, way->beyond))
        tell_way (self, prey, way);
    }
}
