/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Vents opened or shut as far as they should, and a vent where there is none. */
#include "config.h"

#include "mend/air-private.h"

#include "base/ids.h"
#include "book/make-opening.h"
#include "climate/risk.h"
#include "climate/vents.h"
#include "plan/edit-opening.h"

/* What a new vent leaves of the wall above it. */
#define BELOW_EAVES_MM 60

/* As wide as fits, up to this; how far it is opened is found afterwards. */
#define WIDEST_MM 1200.0
#define SHARE_OF_WALL 0.4

/* Where along a wall a new vent is tried, in this order. */
static const double spots[] = { 0.5, 0.3, 0.7, 0.15, 0.85 };

/* Takes over @plan. */
static HcPlan *
set_vent (HcPlan *plan, const HcVentStep *step, HcRemedy *remedy)
{
  g_autoptr (HcPlan) before = plan;
  HcOpening *opening = hc_layout_get_opening (hc_plan_get_layout (before), step->id);
  HcOpeningValues values = *hc_opening_get (opening);

  values.open_winter = step->open;
  hc_remedy_add (remedy, step->id, step->open);
  return hc_plan_set_opening (before, step->id, &values, NULL);
}

HcPlan *
hc_mend_set_vents (const HcHouseNight *night, HcRemedy *remedy)
{
  HcNight after;
  g_autoptr (GArray) steps = hc_vents_solve (night, &after);
  HcPlan *plan = steps->len > 0 ? hc_plan_ref (night->plan) : NULL;

  for (guint i = 0; plan != NULL && i < steps->len; i++)
    plan = set_vent (plan, &g_array_index (steps, HcVentStep, i), remedy);
  return plan;
}

/* Where vents stand less open than this together, they are to be opened before another
 * is built. */
#define BEFORE_BUILDING 0.5

static gboolean
has_more_to_open (const HcHouseNight *night, guint space)
{
  double open_m2 = 0, all_m2 = 0;

  for (guint i = 0; i < night->air->ways->len; i++)
    {
      const HcAirWay *way = hc_house_air_get_way (night->air, i);

      if (!way->is_vent || night->air->air.paths[i].space != (int) space)
        continue;
      all_m2 += way->whole_m2;
      open_m2 += way->whole_m2 * way->open;
    }
  return open_m2 < BEFORE_BUILDING * all_m2;
}

static HcPlan *
try_wall (HcPlan *plan, const HcOpeningType *type, const HcRoom *room, const HcRoomWall *wall,
          const char *id)
{
  g_autoptr (HcOpening) vent = hc_opening_type_make (type, id);
  HcOpeningValues values = *hc_opening_get (vent);
  double height_mm = hc_room_get_roof (room)->eaves_mm;
  double length_mm = hc_point_distance (wall->line_from, wall->line_to);
  HcPlan *changed = NULL;

  values.wall = (char *) hc_wall_get_id (wall->wall);
  values.open_winter = 1;
  values.width_mm = CLAMP (SHARE_OF_WALL * length_mm, values.width_mm, WIDEST_MM);
  values.sill_mm = MAX (height_mm - values.height_mm - BELOW_EAVES_MM, 0);
  for (guint i = 0; changed == NULL && i < G_N_ELEMENTS (spots); i++)
    {
      g_autoptr (HcOpening) tried = NULL;

      values.along_mm = spots[i] * length_mm;
      tried = hc_opening_new (id, &values);
      changed = hc_plan_add_opening (plan, tried, NULL);
    }
  return changed;
}

static HcPlan *
add_vent_to (const HcHouseNight *night, const HcRoom *room, HcRemedy *remedy)
{
  const HcBook *book = hc_flock_get_book (night->ask.flock);
  const HcOpeningType *type
      = hc_book_get_opening_type (book, hc_opening_kind_get_word (HC_OPENING_VENT));
  g_autofree char *id = hc_id_new ();
  HcPlan *changed = NULL;

  for (guint i = 0; type != NULL && changed == NULL && i < hc_room_get_n_walls (room); i++)
    {
      const HcRoomWall *wall = hc_room_get_wall (room, i);

      if (hc_room_wall_is_outer (wall) && hc_wall_get (wall->wall)->kind == HC_WALL_SOLID)
        changed = try_wall (night->plan, type, room, wall, id);
    }
  if (changed != NULL)
    hc_remedy_add (remedy, hc_pen_get_id (hc_room_get_pen (room)), 1);
  return changed;
}

HcPlan *
hc_mend_add_vent (const HcHouseNight *night, HcRemedy *remedy)
{
  guint space;

  for (guint i = 0; i < hc_house_get_n_rooms (night->ask.house); i++)
    {
      HcRoom *room = hc_house_get_room (night->ask.house, i);
      const char *pen = hc_pen_get_id (hc_room_get_pen (room));

      if ((hc_mend_get_faults (night, pen) & HC_NIGHT_VENT_FAULTS) != 0
          && hc_house_night_find_space (night, pen, &space) && !has_more_to_open (night, space))
        return add_vent_to (night, room, remedy);
    }
  return NULL;
}
