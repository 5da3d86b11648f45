/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Who of the predators about gets in to the birds, and by what. */
#include "config.h"

#include "needs/judges/judges.h"

#include "book/figure-names.h"
#include "needs/judges/intrusion.h"

#include <glib/gi18n-lib.h>

/* Rain falls as snow. */
#define FREEZING_C 0

static void
prey_init (HcPrey *prey, const HcNeedContext *context, HcCondition condition, guint space)
{
  const HcHouse *house = context->about->house;

  prey->here = *context;
  prey->here.condition = condition;
  prey->here.space = hc_house_get_space (house, condition, space);
  hc_need_context_count (&prey->here, context->about->flock);
  prey->rooms = g_new0 (gboolean, hc_house_get_n_rooms (house));
}

static void
prey_clear (gpointer prey)
{
  g_free (((HcPrey *) prey)->rooms);
}

static void
note_homes (HcPrey *prey)
{
  const HcCase *about = prey->here.about;
  guint room;

  for (guint i = 0; i < hc_flock_get_n_rows (about->flock); i++)
    if (hc_house_find_room (about->house, hc_flock_get_row (about->flock, i)->pen, &room)
        && hc_need_context_has_room (&prey->here, room))
      prey->rooms[room] = TRUE;
}

/* By night birds are at home, or under a roof where a door was left open; by
 * day, those that go out are in the run. */
static void
note_rooms (HcPrey *prey, gboolean by_night)
{
  const GArray *rooms = prey->here.space->rooms;

  for (guint i = 0; i < rooms->len; i++)
    {
      guint room = g_array_index (rooms, guint, i);
      gboolean roofed = hc_room_get (hc_house_get_room (prey->here.about->house, room))->kind
                        == HC_PEN_INDOOR;

      prey->rooms[room] = by_night == roofed;
    }
  if (by_night)
    note_homes (prey);
}

static GPtrArray *
find_animals (const HcNeedContext *context)
{
  GPtrArray *animals = g_ptr_array_new ();
  char **ids = context->about->site->predators;

  for (char **id = ids; id != NULL && *id != NULL; id++)
    {
      const HcPredator *animal = hc_book_get_predator (context->about->book, *id);

      if (animal != NULL && !g_ptr_array_find (animals, animal, NULL))
        g_ptr_array_add (animals, (gpointer) animal);
    }
  return animals;
}

static void
let_in (const HcNeedContext *context, const HcPredator *animal, gboolean by_night,
        const GArray *preys, GHashTable *found)
{
  HcIntrusion intrusion;

  if (!(by_night ? animal->hunts_by_night : animal->hunts_by_day))
    return;
  hc_intrusion_begin (&intrusion, context, animal, by_night, found);
  for (guint i = 0; i < preys->len; i++)
    {
      const HcPrey *prey = &g_array_index (preys, HcPrey, i);

      hc_intrusion_tell (&intrusion, prey);
      if (by_night)
        hc_intrusion_reach_in (&intrusion, prey);
    }
  hc_intrusion_end (&intrusion);
}

static const HcPredator *
find_digger (const HcPrey *prey, GPtrArray *animals, const HcRoom *room)
{
  for (guint i = 0; i < animals->len; i++)
    if (hc_room_is_dug_into (room, prey->here.about->book, animals->pdata[i]))
      return animals->pdata[i];
  return NULL;
}

/* A dig guard of just the least is told, once it is all that keeps diggers out. */
static void
judge_guard (const HcPrey *prey, GPtrArray *animals, const HcRoom *room, HcAnswer *answer)
{
  const HcNeedContext *here = &prey->here;
  const HcPenValues *pen = hc_room_get (room);
  const HcPredator *digger = find_digger (prey, animals, room);
  const HcLimit *limit
      = hc_need_context_find_plain_limit (here, HC_FIGURE_PREDATORS_APRON, HC_LEVEL_GOOD);
  double good_mm = hc_intrusion_get_figure (here, HC_FIGURE_PREDATORS_APRON, HC_LEVEL_GOOD, 0);
  HcFinding *finding;

  if (digger == NULL || limit == NULL || pen->apron_mm >= good_mm
      || pen->apron_mm
             < hc_intrusion_get_figure (here, HC_FIGURE_PREDATORS_APRON, HC_LEVEL_TIGHT, 0)
      || pen->dug_mm >= hc_intrusion_get_figure (here, HC_FIGURE_PREDATORS_DUG, HC_LEVEL_TIGHT,
                                                 0))
    return;
  finding = hc_finding_new ("predators.narrow-guard", HC_LEVEL_TIGHT);
  hc_finding_add_id (finding, hc_pen_get_id (hc_room_get_pen (room)));
  hc_finding_add_animal (finding, digger->id);
  hc_finding_set_measure (finding, pen->apron_mm, good_mm, "mm");
  hc_finding_set_figure (finding, hc_case_get_standard (here->about, HC_LEVEL_GOOD),
                         &limit->figure);
  hc_answer_take_once (answer, finding);
}

static void
judge_snow (const HcPrey *prey, const HcRoom *room, HcAnswer *answer)
{
  const HcPenValues *pen = hc_room_get (room);
  const HcMesh *mesh = hc_book_get_mesh (prey->here.about->book, pen->roof_mesh);
  HcFinding *finding;

  if ((pen->roof != HC_ROOF_NET && pen->roof != HC_ROOF_MESH) || mesh == NULL
      || !mesh->sags_under_snow || prey->here.about->site->coldest_night_c >= FREEZING_C)
    return;
  finding = hc_finding_new ("predators.snow", HC_LEVEL_TIGHT);
  hc_finding_add_id (finding, hc_pen_get_id (hc_room_get_pen (room)));
  hc_answer_take_once (answer, finding);
}

static void
judge_rooms (const HcPrey *prey, GPtrArray *animals, HcAnswer *answer)
{
  const HcHouse *house = prey->here.about->house;

  for (guint room = 0; room < hc_house_get_n_rooms (house); room++)
    if (prey->rooms[room])
      {
        judge_guard (prey, animals, hc_house_get_room (house, room), answer);
        judge_snow (prey, hc_house_get_room (house, room), answer);
      }
}

/* Grown cocks, and geese in company. */
static HcBodies
find_watch (const HcPrey *prey)
{
  HcBodies cocks = 0;
  HcBodies geese = 0;

  for (guint body = 0; body < hc_need_context_get_n_bodies (&prey->here); body++)
    {
      const HcBody *bird = hc_need_context_get_body (&prey->here, body);

      if (prey->here.counts[body] == 0 || bird->age_weeks < bird->kind->grown_week)
        continue;
      if (bird->kind->species == HC_SPECIES_GOOSE)
        geese |= (HcBodies) 1 << body;
      else if (bird->kind->species == HC_SPECIES_CHICKEN && !bird->female)
        cocks |= (HcBodies) 1 << body;
    }
  return hc_need_context_count_birds (&prey->here, geese) > 1 ? cocks | geese : cocks;
}

static void
note_watch (const HcPrey *prey, HcAnswer *answer)
{
  HcBodies watch = find_watch (prey);
  HcFinding *finding;

  if (watch == 0)
    return;
  finding = hc_finding_new ("predators.alarm", HC_LEVEL_GOOD);
  finding->kinds = watch;
  finding->birds = hc_need_context_count_birds (&prey->here, watch);
  hc_need_context_name_pens (&prey->here, finding);
  hc_answer_remark (answer, finding);
}

/* One for each space that birds live in. */
static GArray *
find_preys (const HcNeedContext *context, gboolean by_night)
{
  HcCondition condition = by_night ? HC_CONDITION_NIGHT : HC_CONDITION_DAY;
  GArray *preys = g_array_new (FALSE, FALSE, sizeof (HcPrey));

  g_array_set_clear_func (preys, prey_clear);
  for (guint space = 0; space < hc_house_get_n_spaces (context->about->house, condition); space++)
    {
      HcPrey prey;

      prey_init (&prey, context, condition, space);
      note_rooms (&prey, by_night);
      g_array_append_val (preys, prey);
      if (hc_need_context_get_bodies (&prey.here) == 0)
        g_array_set_size (preys, preys->len - 1);
    }
  return preys;
}

static void
judge_time (const HcNeedContext *context, GPtrArray *animals, gboolean by_night,
            HcAnswer *answer, GHashTable *found)
{
  g_autoptr (GArray) preys = find_preys (context, by_night);

  for (guint i = 0; i < animals->len; i++)
    let_in (context, animals->pdata[i], by_night, preys, found);
  for (guint i = 0; i < preys->len; i++)
    {
      judge_rooms (&g_array_index (preys, HcPrey, i), animals, answer);
      if (by_night)
        note_watch (&g_array_index (preys, HcPrey, i), answer);
    }
}

static gboolean
are_out (const HcNeedContext *context)
{
  return context->about->site->birds_go_out && context->about->condition == HC_CONDITION_DAY;
}

static void
take_found (GHashTable *found, HcAnswer *answer)
{
  GHashTableIter iter;
  gpointer finding;

  g_hash_table_iter_init (&iter, found);
  while (g_hash_table_iter_next (&iter, NULL, &finding))
    hc_answer_take (answer, hc_finding_ref (finding));
}

static void
judge (const HcNeedContext *context, HcAnswer *answer)
{
  g_autoptr (GPtrArray) animals = find_animals (context);
  g_autoptr (GHashTable) found = g_hash_table_new_full (g_str_hash, g_str_equal, g_free,
                                                        (GDestroyNotify) hc_finding_unref);

  if (animals->len == 0 || hc_need_context_get_bodies (context) == 0)
    return;
  answer->applies = TRUE;
  judge_time (context, animals, TRUE, answer, found);
  if (are_out (context))
    judge_time (context, animals, FALSE, answer, found);
  take_found (found, answer);
}

const HcNeed hc_need_predators = {
  .id = HC_NEED_PREDATORS,
  .word = "predators",
  .title = N_("Predators"),
  .question = N_("Can anything get in to the birds?"),
  .why = N_("What hunts tries every hole, every night, and has to find only one. Most birds are "
            "lost where a door was not shut at dusk."),
  .help = "need-predators",
  .sort = HC_NEED_CONDITION,
  .scope = HC_SCOPE_LAYOUT,
  .settles = TRUE,
  .judge = judge,
  .lifts = { HC_N_OFFER_KINDS },
};
