/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The keeper's way round: to everything that is filled, emptied or scraped. */
#include "config.h"

#include "needs/judges/judges.h"

#include "book/figure-names.h"
#include "needs/answer.h"
#include "needs/context.h"
#include "needs/reach/service.h"

#include <glib/gi18n-lib.h>

/* The keeper as one level of the rules has them; the slimmer one walks only
 * where the wider does not get to. */
typedef struct
{
  HcLevel level;
  HcWayThrough *through;
  double arm_mm;
} Keeper;

typedef struct
{
  Keeper at_ease;
  Keeper slim;
} Keepers;

static double
find_bound (const HcNeedContext *context, const char *figure, HcLevel level, double otherwise)
{
  const HcLimit *limit = hc_need_context_find_plain_limit (context, figure, level);
  double bound = otherwise;

  if (limit != NULL)
    hc_limit_get (limit, level, &bound);
  return bound;
}

static HcShape *
find_way (HcRoom *room, const HcWalker *walker, gpointer data)
{
  const HcNeedContext *context = data;

  return hc_check_cache_get_way (context->about->cache, room,
                                 hc_case_get_standard (context->about, HC_LEVEL_GOOD), walker);
}

/* Who stoops gets in: what must be high enough is the least headroom. */
static HcWayThrough *
walk_through (const HcNeedContext *context, const char *figure, HcLevel level)
{
  HcWalker walker = {
    find_bound (context, figure, level, 0),
    find_bound (context, HC_FIGURE_REACH_HEADROOM, HC_LEVEL_TIGHT, 0),
    find_bound (context, HC_FIGURE_REACH_STEP_OVER, HC_LEVEL_TIGHT, 0),
  };

  return hc_way_through_new (context->about->house, &walker, find_way, (gpointer) context);
}

static HcWayThrough *
get_way (const HcNeedContext *context, Keeper *keeper)
{
  if (keeper->through == NULL)
    keeper->through = walk_through (context, HC_FIGURE_REACH_KEEPER_WAY, keeper->level);
  return keeper->through;
}

static const char *
get_pen_id (const HcNeedContext *context, guint room)
{
  return hc_pen_get_id (hc_room_get_pen (hc_house_get_room (context->about->house, room)));
}

static HcFinding *
tell (const HcNeedContext *context, const char *code, HcLevel level, const char *id,
      HcAnswer *answer)
{
  const HcLimit *limit = hc_need_context_find_plain_limit (context, HC_FIGURE_REACH_KEEPER_WAY,
                                                           HC_LEVEL_GOOD);
  HcFinding *finding = hc_finding_new (code, level);

  hc_finding_add_id (finding, id);
  if (limit != NULL)
    hc_finding_set_figure (finding, hc_case_get_standard (context->about, HC_LEVEL_GOOD),
                           &limit->figure);
  hc_answer_take (answer, finding);
  return finding;
}

static gboolean
has_keeper_door (const HcRoom *room)
{
  HcParts *openings = hc_room_get_openings (room);

  for (guint i = 0; i < openings->len; i++)
    if (hc_opening_get (openings->pdata[i])->kind == HC_OPENING_KEEPER_DOOR)
      return TRUE;
  return FALSE;
}

/* A small ark is tipped up or has a lid. */
static gboolean
is_looked_into (const HcNeedContext *context, const HcRoom *room)
{
  HcParts *buildings = hc_plan_get (context->about->plan)->buildings;
  const char *own = hc_room_get (room)->building;
  HcBuilding *building = own != NULL ? hc_parts_find (buildings, own) : NULL;

  return building != NULL && hc_building_get (building)->kind == HC_BUILDING_ARK;
}

static gboolean
serves (const HcNeedContext *context, Keeper *keeper, guint room, guint fitting)
{
  return hc_service_reaches (get_way (context, keeper), context->about->house, room, fitting,
                             keeper->arm_mm);
}

static const char *
find_blocker (const HcNeedContext *context, Keeper *keeper, guint room, guint fitting)
{
  HcWayThrough *through = get_way (context, keeper);

  if (!hc_way_through_enters (through, room))
    return NULL;
  return hc_service_find_blocker (through, context->about->house, room, fitting);
}

static void
judge_thing (const HcNeedContext *context, Keepers *keepers, guint room, guint fitting,
             HcAnswer *answer)
{
  HcRoom *here = hc_house_get_room (context->about->house, room);
  const char *id = hc_fitting_get_id (hc_room_get (here)->fittings->pdata[fitting]);
  gboolean squeezes;
  HcFinding *finding;
  const char *blocker;

  if (serves (context, &keepers->at_ease, room, fitting))
    return;
  squeezes = serves (context, &keepers->slim, room, fitting);
  blocker = find_blocker (context, squeezes ? &keepers->at_ease : &keepers->slim, room, fitting);
  if (squeezes)
    finding = tell (context, blocker != NULL ? "reach.squeeze-past" : "reach.squeeze",
                    HC_LEVEL_TIGHT, id, answer);
  else
    finding = tell (context, blocker != NULL ? "reach.blocked" : "reach.too-far",
                    HC_LEVEL_SHORT, id, answer);
  if (blocker != NULL)
    hc_finding_add_id (finding, blocker);
}

static gboolean
serves_all (const HcNeedContext *context, Keeper *keeper, guint room)
{
  HcParts *fittings = hc_room_get (hc_house_get_room (context->about->house, room))->fittings;

  for (guint i = 0; i < fittings->len; i++)
    if (hc_service_is_wanted (fittings->pdata[i]) && !serves (context, keeper, room, i))
      return FALSE;
  return TRUE;
}

/* A room too low to stand in is served by an arm through its doors. */
static gboolean
is_shut_off (const HcNeedContext *context, Keeper *keeper, guint room)
{
  HcHouse *house = context->about->house;

  if (hc_way_through_enters (get_way (context, keeper), room))
    return FALSE;
  if (!hc_service_reaches_in (get_way (context, keeper), house, room))
    return TRUE;
  return hc_walker_fits_in (hc_way_through_get_walker (keeper->through),
                            hc_house_get_room (house, room))
         && !serves_all (context, keeper, room);
}

static gboolean
has_service (HcParts *fittings)
{
  for (guint i = 0; i < fittings->len; i++)
    if (hc_service_is_wanted (fittings->pdata[i]))
      return TRUE;
  return FALSE;
}

/* A bare run is seldom entered. */
static void
tell_shut_off (const HcNeedContext *context, guint room, HcAnswer *answer)
{
  HcRoom *here = hc_house_get_room (context->about->house, room);
  gboolean is_bare_run
      = !hc_room_is_roofed (here) && !has_service (hc_room_get (here)->fittings);

  tell (context, has_keeper_door (here) ? "reach.shut-off" : "reach.no-door",
        is_bare_run ? HC_LEVEL_TIGHT : HC_LEVEL_SHORT, get_pen_id (context, room), answer);
}

static void
judge_room (const HcNeedContext *context, Keepers *keepers, guint room, HcAnswer *answer)
{
  HcParts *fittings = hc_room_get (hc_house_get_room (context->about->house, room))->fittings;

  if (is_shut_off (context, &keepers->at_ease, room)
      && is_shut_off (context, &keepers->slim, room))
    {
      tell_shut_off (context, room, answer);
      return;
    }
  for (guint i = 0; i < fittings->len; i++)
    if (hc_service_is_wanted (fittings->pdata[i]))
      judge_thing (context, keepers, room, i, answer);
}

static void
judge_doors (const HcNeedContext *context, Keeper *keeper, guint room, HcAnswer *answer)
{
  HcRoom *here = hc_house_get_room (context->about->house, room);
  const HcLimit *limit = hc_need_context_find_plain_limit (context, HC_FIGURE_REACH_HEADROOM,
                                                           HC_LEVEL_GOOD);
  HcParts *openings = hc_room_get_openings (here);
  double wanted;

  if (!hc_room_is_roofed (here) || !hc_way_through_enters (get_way (context, keeper), room))
    return;
  for (guint i = 0; limit != NULL && i < openings->len; i++)
    {
      const HcOpeningValues *values = hc_opening_get (openings->pdata[i]);
      HcFinding *finding;

      if (values->kind != HC_OPENING_KEEPER_DOOR
          || hc_limit_grade (limit, values->height_mm) >= HC_LEVEL_GOOD
          || !hc_limit_get (limit, HC_LEVEL_GOOD, &wanted))
        continue;
      finding = hc_finding_new ("reach.low-door", HC_LEVEL_TIGHT);
      hc_finding_add_id (finding, hc_opening_get_id (openings->pdata[i]));
      hc_finding_set_measure (finding, values->height_mm, wanted, "mm");
      hc_finding_set_figure (finding, hc_case_get_standard (context->about, HC_LEVEL_GOOD),
                             &limit->figure);
      hc_answer_take_once (answer, finding);
    }
}

/* Bedding comes in and dung goes out of every room the keeper walks into: the
 * barrow comes in, or up to its door. */
static void
judge_barrow (const HcNeedContext *context, Keeper *keeper, HcAnswer *answer)
{
  HcHouse *house = context->about->house;
  g_autoptr (HcWayThrough) barrow = NULL;

  for (guint room = 0; room < hc_house_get_n_rooms (house); room++)
    {
      if (!hc_room_is_roofed (hc_house_get_room (house, room))
          || !hc_way_through_enters (get_way (context, keeper), room)
          || hc_service_has_outside_door (house, room))
        continue;
      if (barrow == NULL)
        barrow = walk_through (context, HC_FIGURE_REACH_BARROW_WAY, HC_LEVEL_TIGHT);
      if (!hc_way_through_enters (barrow, room) && !hc_service_reaches_in (barrow, house, room))
        tell (context, "reach.no-barrow", HC_LEVEL_TIGHT, get_pen_id (context, room), answer);
    }
}

static Keeper
make_keeper (const HcNeedContext *context, HcLevel level)
{
  return (Keeper) { level, NULL, find_bound (context, HC_FIGURE_REACH_ARM, level, 0) };
}

static void
judge (const HcNeedContext *context, HcAnswer *answer)
{
  HcHouse *house = context->about->house;
  Keepers keepers
      = { make_keeper (context, HC_LEVEL_GOOD), make_keeper (context, HC_LEVEL_TIGHT) };

  for (guint room = 0; room < hc_house_get_n_rooms (house); room++)
    {
      if (is_looked_into (context, hc_house_get_room (house, room)))
        continue;
      answer->applies = TRUE;
      judge_room (context, &keepers, room, answer);
      judge_doors (context, &keepers.at_ease, room, answer);
    }
  if (answer->applies)
    judge_barrow (context, &keepers.at_ease, answer);
  g_clear_pointer (&keepers.at_ease.through, hc_way_through_free);
  g_clear_pointer (&keepers.slim.through, hc_way_through_free);
}

const HcNeed hc_need_reach = {
  .id = HC_NEED_REACH,
  .word = "reach",
  .title = N_("Your way round"),
  .question = N_("Do you get to everything?"),
  .why = N_("What is awkward to reach is cleaned less and looked at less, and there the mites "
            "and the sick bird are found last."),
  .help = "need-reach",
  .sort = HC_NEED_CONDITION,
  .scope = HC_SCOPE_LAYOUT,
  .settles = TRUE,
  .judge = judge,
  .lifts = { HC_N_OFFER_KINDS },
};
