/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Up and down: to every roost, nest and pop hole, and back to the floor unhurt. */
#include "config.h"

#include "needs/judges/judges.h"

#include "book/figure-names.h"
#include "needs/answer.h"
#include "needs/climb/telling.h"
#include "needs/context.h"

#include <glib/gi18n-lib.h>

/* Routes of every body in every room of the space, room by room. */
typedef struct
{
  const HcNeedContext *context;
  HcAnswer *answer;
  HcRoutes *routes;
} Climbing;

/* The ledges of one thing, which stand next to each other, and how well the
 * worst of them is reached; @trap is one that birds get up to and not down from
 * unhurt, 0 for none. */
typedef struct
{
  guint first;
  guint n_ledges;
  guint worst[HC_N_ROUTES];
  HcLevel levels[HC_N_ROUTES];
  guint trap;
} Target;

static HcRoutes *
get_routes (const Climbing *self, guint room, guint body)
{
  return &self->routes[room * hc_need_context_get_n_bodies (self->context) + body];
}

static const HcFloorLayer *
get_top_layer (const HcNeedContext *context, const HcRoom *room)
{
  char **layers = hc_room_get (room)->floor_layers;
  guint n = layers != NULL ? g_strv_length (layers) : 0;

  return n > 0 ? hc_book_get_floor_layer (context->about->book, layers[n - 1]) : NULL;
}

static gboolean
lands_hard (const HcNeedContext *context, const HcRoom *room)
{
  const HcFloorLayer *top = get_top_layer (context, room);
  const HcLimit *soft
      = hc_need_context_find_plain_limit (context, HC_FIGURE_CLIMB_SOFT_BEDDING, HC_LEVEL_GOOD);

  return top != NULL && top->hard && soft != NULL
         && !hc_limit_is_met (soft, HC_LEVEL_TIGHT, hc_room_get (room)->bedding_mm);
}

static void
find_routes (Climbing *self, guint room)
{
  const HcNeedContext *context = self->context;
  HcRoom *here = hc_need_context_get_room (context, room);
  HcStandard *standard = hc_case_get_standard (context->about, HC_LEVEL_GOOD);
  const HcClimb *climb = hc_check_cache_get_climb (context->about->cache, here, standard);
  gboolean hard = lands_hard (context, here);

  for (guint body = 0; body < hc_need_context_get_n_bodies (context); body++)
    {
      HcClimber climber;

      if (context->counts[body] == 0)
        continue;
      hc_climber_init (&climber, standard, hc_need_context_get_body (context, body), hard);
      hc_routes_find (get_routes (self, room, body), climb, &climber);
    }
}

static gboolean
wants (const HcBody *body, HcLedgeKind kind)
{
  if (kind == HC_LEDGE_BAR)
    return body->roosts;
  if (kind == HC_LEDGE_NEST)
    return body->at_lay;
  return kind == HC_LEDGE_SILL && !body->under_heat;
}

/* Of ledges reached no better than each other, the lower tells more. */
static gboolean
is_worse (const HcRoutes *routes, HcRoute route, guint ledge, guint than)
{
  if (routes->levels[route][ledge] != routes->levels[route][than])
    return routes->levels[route][ledge] < routes->levels[route][than];
  return hc_climb_get_ledge (routes->climb, ledge)->height_mm
         < hc_climb_get_ledge (routes->climb, than)->height_mm;
}

static void
look_at_ledge (const HcRoutes *routes, guint ledge, Target *target)
{
  for (HcRoute route = 0; route < HC_N_ROUTES; route++)
    if (is_worse (routes, route, ledge, target->worst[route]))
      {
        target->levels[route] = routes->levels[route][ledge];
        target->worst[route] = ledge;
      }
  if (target->trap == 0 && routes->levels[HC_ROUTE_UP][ledge] > HC_LEVEL_SHORT
      && routes->levels[HC_ROUTE_DOWN][ledge] == HC_LEVEL_SHORT)
    target->trap = ledge;
}

/* The thing whose ledges begin at @first. */
static Target
look_at_target (const HcRoutes *routes, guint first)
{
  const char *id = hc_climb_get_ledge (routes->climb, first)->id;
  Target target = { first, 0, { first, first },
                    { routes->levels[HC_ROUTE_UP][first], routes->levels[HC_ROUTE_DOWN][first] },
                    0 };

  for (guint i = first;
       i < routes->climb->ledges->len && hc_climb_get_ledge (routes->climb, i)->id == id;
       i++, target.n_ledges++)
    look_at_ledge (routes, i, &target);
  return target;
}

static HcLevel
get_level (const HcRoutes *routes, guint ledge)
{
  return MIN (routes->levels[HC_ROUTE_UP][ledge], routes->levels[HC_ROUTE_DOWN][ledge]);
}

/* Seats on one bar, or boxes in one row: how much of what the bird wants. */
static double
get_amount (const Climbing *self, guint room, const HcLedge *ledge)
{
  const HcFittingValues *values = hc_fitting_get (
      hc_room_get (hc_need_context_get_room (self->context, room))->fittings->pdata[ledge->thing]);

  if (ledge->kind == HC_LEDGE_BAR)
    return values->width_mm;
  return values->form == HC_FORM_GROUP ? G_MAXDOUBLE : values->columns;
}

static double
sum_reached (const Climbing *self, guint body, HcLedgeKind kind)
{
  double sum = 0;

  for (guint room = 0; room < hc_need_context_get_n_rooms (self->context); room++)
    {
      const HcRoutes *routes = get_routes (self, room, body);

      for (guint i = 0; i < routes->climb->ledges->len; i++)
        if (hc_climb_get_ledge (routes->climb, i)->kind == kind
            && get_level (routes, i) >= HC_LEVEL_GOOD)
          sum += get_amount (self, room, hc_climb_get_ledge (routes->climb, i));
    }
  return sum;
}

/* Whether all birds of @body find what they want where they get to well. */
static gboolean
is_served (const Climbing *self, guint body, HcLedgeKind kind)
{
  const HcNeedContext *context = self->context;
  const HcBasis basis = { 0 };
  const HcDemand *demand;

  if (kind == HC_LEDGE_SILL)
    return FALSE;
  demand = hc_need_context_find_demand (
      context, kind == HC_LEDGE_BAR ? HC_FIGURE_ROOST_SEAT : HC_FIGURE_NESTS_BOXES, body,
      HC_LEVEL_GOOD);
  return demand != NULL
         && sum_reached (self, body, kind)
                >= hc_demand_required (demand, HC_LEVEL_GOOD, context->counts[body],
                                       hc_need_context_get_body (context, body)->mass_kg, &basis);
}

/* Whether any birds that want it can use the thing that begins at @first. */
static gboolean
is_of_use (const Climbing *self, guint room, guint first, HcLedgeKind kind)
{
  const HcNeedContext *context = self->context;

  for (guint body = 0; body < hc_need_context_get_n_bodies (context); body++)
    if (context->counts[body] > 0 && wants (hc_need_context_get_body (context, body), kind))
      {
        Target target = look_at_target (get_routes (self, room, body), first);

        if (MIN (target.levels[HC_ROUTE_UP], target.levels[HC_ROUTE_DOWN]) > HC_LEVEL_SHORT)
          return TRUE;
      }
  return FALSE;
}

/* Birds that have all they want elsewhere need not get there; but where they do
 * get up, they must come down unhurt. */
static void
judge_target (const Climbing *self, guint room, guint body, const Target *target,
              gboolean is_needed)
{
  const HcRoutes *routes = get_routes (self, room, body);

  if (is_needed && target->levels[HC_ROUTE_UP] < HC_LEVEL_GOOD)
    hc_climb_tell (self->context, routes, HC_ROUTE_UP, target->worst[HC_ROUTE_UP], body,
                   self->answer);
  if (target->trap != 0)
    hc_climb_tell (self->context, routes, HC_ROUTE_DOWN, target->trap, body, self->answer);
  else if (is_needed && target->levels[HC_ROUTE_UP] > HC_LEVEL_SHORT
           && target->levels[HC_ROUTE_DOWN] < HC_LEVEL_GOOD)
    hc_climb_tell (self->context, routes, HC_ROUTE_DOWN, target->worst[HC_ROUTE_DOWN], body,
                   self->answer);
}

static void
judge_room (const Climbing *self, guint room, guint body, HcLedgeKind kind, gboolean served)
{
  const HcRoutes *routes = get_routes (self, room, body);
  guint i = 1;

  while (i < routes->climb->ledges->len)
    {
      Target target = look_at_target (routes, i);

      if (hc_climb_get_ledge (routes->climb, i)->kind == kind)
        {
          hc_answer_lower (self->answer, HC_LEVEL_GOOD);
          judge_target (self, room, body, &target, !served || !is_of_use (self, room, i, kind));
        }
      i += target.n_ledges;
    }
}

static void
judge_body (const Climbing *self, guint body)
{
  static const HcLedgeKind kinds[] = { HC_LEDGE_BAR, HC_LEDGE_NEST, HC_LEDGE_SILL };

  for (guint i = 0; i < G_N_ELEMENTS (kinds); i++)
    if (wants (hc_need_context_get_body (self->context, body), kinds[i]))
      for (guint room = 0; room < hc_need_context_get_n_rooms (self->context); room++)
        judge_room (self, room, body, kinds[i], is_served (self, body, kinds[i]));
}

static void
judge (const HcNeedContext *context, HcAnswer *answer)
{
  guint n_rooms = hc_need_context_get_n_rooms (context);
  guint n_bodies = hc_need_context_get_n_bodies (context);
  Climbing climbing = { context, answer, g_new0 (HcRoutes, n_rooms * n_bodies + 1) };

  for (guint room = 0; room < n_rooms; room++)
    find_routes (&climbing, room);
  for (guint body = 0; body < n_bodies; body++)
    if (context->counts[body] > 0)
      judge_body (&climbing, body);
  for (guint i = 0; i < n_rooms * n_bodies; i++)
    if (climbing.routes[i].climb != NULL)
      hc_routes_clear (&climbing.routes[i]);
  g_free (climbing.routes);
}

const HcNeed hc_need_climb = {
  .id = HC_NEED_CLIMB,
  .word = "climb",
  .title = N_("Up and down"),
  .question = N_("Do birds get up, and down again unhurt?"),
  .why = N_("Most broken keel bones come from hard landings and missed hops. What birds cannot "
            "get up to is not used, and heavy birds that must jump far come down hard."),
  .help = "need-climb",
  .sort = HC_NEED_CONDITION,
  .scope = HC_SCOPE_DAY_SPACE,
  .settles = TRUE,
  .judge = judge,
  .lifts = { HC_N_OFFER_KINDS },
};
