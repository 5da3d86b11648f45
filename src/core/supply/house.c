/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A layout's rooms, kept where nothing changed, and the spaces they make. */
#include "config.h"

#include "supply/house.h"

#include "supply/joining.h"

#define N_CONDITIONS (HC_CONDITION_SHUT_IN + 1)

struct _HcHouse
{
  gatomicrefcount refs;
  HcLayout *layout;
  GPtrArray *rooms;
  GPtrArray *spaces[N_CONDITIONS];
  GPtrArray *air_spaces;
};

static HcRoom *
find_or_make_room (HcLayout *layout, HcPen *pen, const HcRoof *roof, HcHouse *before)
{
  guint room;

  if (before != NULL && hc_house_find_room (before, hc_pen_get_id (pen), &room)
      && hc_room_is_still (hc_house_get_room (before, room), layout, pen, roof))
    return hc_room_ref (hc_house_get_room (before, room));
  return hc_room_new (layout, pen, roof);
}

static void
find_rooms (HcHouse *house, HcHouse *before)
{
  HcParts *pens = hc_layout_get (house->layout)->pens;
  g_autoptr (GArray) roofs = hc_layout_get_roofs (house->layout);

  house->rooms = g_ptr_array_new_with_free_func ((GDestroyNotify) hc_room_unref);
  for (guint i = 0; i < pens->len; i++)
    g_ptr_array_add (house->rooms, find_or_make_room (house->layout, pens->pdata[i],
                                                      &g_array_index (roofs, HcRoof, i), before));
}

static gboolean
stands_open (const HcOpening *opening, HcCondition condition)
{
  return hc_opening_lets_birds_through (opening)
         && (condition != HC_CONDITION_NIGHT || !hc_opening_get (opening)->shut_at_dusk);
}

static void
join_by_doors (const HcHouse *house, guint room, HcCondition condition, HcJoining *joining)
{
  HcRoom *here = hc_house_get_room (house, room);
  HcParts *openings = hc_room_get_openings (here);
  guint other;

  for (guint i = 0; i < openings->len; i++)
    {
      const HcRoomWall *wall = hc_room_get_wall_of (here, openings->pdata[i]);

      if (wall != NULL && stands_open (openings->pdata[i], condition)
          && hc_house_find_room (house, wall->beyond, &other))
        hc_joining_join (joining, room, other);
    }
}

static GPtrArray *
find_spaces (const HcHouse *house, HcCondition condition)
{
  g_autoptr (HcJoining) joining = hc_joining_new (house->rooms->len);

  for (guint i = 0; condition == HC_CONDITION_SHUT_IN && i < house->rooms->len; i++)
    if (!hc_room_counts_shut_in (house->rooms->pdata[i]))
      hc_joining_leave_out (joining, i);
  for (guint i = 0; i < house->rooms->len; i++)
    join_by_doors (house, i, condition, joining);
  return hc_joining_get_spaces (joining);
}

static gboolean
lets_air_over (const HcRoom *room, const HcRoomWall *wall)
{
  const HcWallValues *values = hc_wall_get (wall->wall);

  return values->kind != HC_WALL_SOLID
         || (values->height_mm > 0 && values->height_mm < hc_room_get_ceiling_along_mm (room, wall->from, wall->to));
}

static gboolean
lets_air_through (const HcOpening *opening)
{
  const HcOpeningValues *values = hc_opening_get (opening);

  if (values->kind == HC_OPENING_VENT || values->kind == HC_OPENING_WINDOW)
    return values->open_winter > 0;
  return stands_open (opening, HC_CONDITION_NIGHT);
}

static void
join_by_air (const HcHouse *house, guint room, HcJoining *joining)
{
  HcRoom *here = hc_house_get_room (house, room);
  HcParts *openings = hc_room_get_openings (here);
  guint other;

  for (guint i = 0; i < hc_room_get_n_walls (here); i++)
    if (lets_air_over (here, hc_room_get_wall (here, i))
        && hc_house_find_room (house, hc_room_get_wall (here, i)->beyond, &other))
      hc_joining_join (joining, room, other);
  for (guint i = 0; i < openings->len; i++)
    {
      const HcRoomWall *wall = hc_room_get_wall_of (here, openings->pdata[i]);

      if (wall != NULL && lets_air_through (openings->pdata[i])
          && hc_house_find_room (house, wall->beyond, &other))
        hc_joining_join (joining, room, other);
    }
}

static GPtrArray *
find_air_spaces (const HcHouse *house)
{
  g_autoptr (HcJoining) joining = hc_joining_new (house->rooms->len);

  for (guint i = 0; i < house->rooms->len; i++)
    if (!hc_room_is_roofed (house->rooms->pdata[i]))
      hc_joining_leave_out (joining, i);
  for (guint i = 0; i < house->rooms->len; i++)
    join_by_air (house, i, joining);
  return hc_joining_get_spaces (joining);
}

/**
 * hc_house_new: (skip)
 * @layout: a layout
 * @before: (nullable): the house as it was before an edit
 *
 * Rooms that did not change are those of @before, so that what was worked out
 * for them still holds.
 *
 * Returns: (transfer full): the house
 */
HcHouse *
hc_house_new (HcLayout *layout, HcHouse *before)
{
  HcHouse *house = g_new0 (HcHouse, 1);

  g_atomic_ref_count_init (&house->refs);
  house->layout = hc_layout_ref (layout);
  find_rooms (house, before);
  for (HcCondition i = 0; i < N_CONDITIONS; i++)
    house->spaces[i] = find_spaces (house, i);
  house->air_spaces = find_air_spaces (house);
  return house;
}

HcHouse *
hc_house_ref (HcHouse *house)
{
  g_return_val_if_fail (house != NULL, NULL);
  g_atomic_ref_count_inc (&house->refs);
  return house;
}

void
hc_house_unref (HcHouse *house)
{
  g_return_if_fail (house != NULL);
  if (!g_atomic_ref_count_dec (&house->refs))
    return;
  for (guint i = 0; i < N_CONDITIONS; i++)
    g_ptr_array_unref (house->spaces[i]);
  g_ptr_array_unref (house->air_spaces);
  g_ptr_array_unref (house->rooms);
  hc_layout_unref (house->layout);
  g_free (house);
}

guint
hc_house_get_n_rooms (const HcHouse *house)
{
  return house->rooms->len;
}

HcRoom *
hc_house_get_room (const HcHouse *house, guint room)
{
  g_return_val_if_fail (room < house->rooms->len, NULL);
  return house->rooms->pdata[room];
}

gboolean
hc_house_find_room (const HcHouse *house, const char *pen, guint *room)
{
  for (guint i = 0; i < house->rooms->len; i++)
    if (g_str_equal (hc_pen_get_id (hc_room_get_pen (house->rooms->pdata[i])), pen))
      {
        *room = i;
        return TRUE;
      }
  return FALSE;
}

HcLayout *
hc_house_get_layout (const HcHouse *house)
{
  return house->layout;
}

guint
hc_house_get_n_spaces (const HcHouse *house, HcCondition condition)
{
  return house->spaces[condition]->len;
}

/**
 * hc_house_get_space: (skip)
 * @house: a house
 * @condition: ordinary day, night or shut in
 * @space: index of a space
 *
 * Returns: (transfer none): rooms that birds can walk between in @condition
 */
const HcSpace *
hc_house_get_space (const HcHouse *house, HcCondition condition, guint space)
{
  return g_ptr_array_index (house->spaces[condition], space);
}

static gboolean
leads_outside (const HcRoom *room, HcCondition condition)
{
  HcParts *openings = hc_room_get_openings (room);

  for (guint i = 0; i < openings->len; i++)
    {
      const HcRoomWall *wall = hc_room_get_wall_of (room, openings->pdata[i]);

      if (hc_opening_get (openings->pdata[i])->kind == HC_OPENING_POP_HOLE && wall != NULL
          && *wall->beyond == '\0' && stands_open (openings->pdata[i], condition))
        return TRUE;
    }
  return FALSE;
}

/**
 * hc_house_space_has_run: (skip)
 * @house: a house
 * @condition: ordinary day, night or shut in
 * @space: index of a space of that condition
 *
 * Returns: whether birds of that space have a run, or a pop hole to the open
 *   ground; shut in, only a run under a solid roof counts
 */
gboolean
hc_house_space_has_run (const HcHouse *house, HcCondition condition, guint space)
{
  const GArray *rooms = hc_house_get_space (house, condition, space)->rooms;

  for (guint i = 0; i < rooms->len; i++)
    {
      HcRoom *room = hc_house_get_room (house, g_array_index (rooms, guint, i));

      if (!hc_room_is_roofed (room)
          || (condition != HC_CONDITION_SHUT_IN && leads_outside (room, condition)))
        return TRUE;
    }
  return FALSE;
}

guint
hc_house_get_n_air_spaces (const HcHouse *house)
{
  return house->air_spaces->len;
}

/**
 * hc_house_get_air_space: (skip)
 * @house: a house
 * @space: index of an air space
 *
 * Returns: (transfer none): indoor rooms that share their air on a winter
 *   night: through mesh, over a low partition, or through what is left open
 */
const HcSpace *
hc_house_get_air_space (const HcHouse *house, guint space)
{
  return g_ptr_array_index (house->air_spaces, space);
}
