/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The walls of a house in order, pen by pen, with names and a menu of them. */
#include "config.h"

#include "app/side/side-walls.h"

#include "drawing/side-cut.h"
#include "words/house-words.h"

#include <glib/gi18n.h>

/* @number: counted round its pen, as the pen's properties do */
typedef struct
{
  const HcRoom *room;
  const HcRoomWall *wall;
  guint number;
} Place;

/* A wall between two pens is looked at from one of them. */
static gboolean
is_looked_at (const HcHouse *house, const Place *place)
{
  HcRoom *room = NULL;

  hc_side_cut_find_wall (house, hc_wall_get_id (place->wall->wall), &room);
  return room == place->room;
}

static GArray *
list_places (const HcHouse *house)
{
  GArray *places = g_array_new (FALSE, FALSE, sizeof (Place));

  for (guint i = 0; i < hc_house_get_n_rooms (house); i++)
    {
      const HcRoom *room = hc_house_get_room (house, i);

      for (guint j = 0; j < hc_room_get_n_walls (room); j++)
        {
          Place place = { room, hc_room_get_wall (room, j), j + 1 };

          if (is_looked_at (house, &place))
            g_array_append_val (places, place);
        }
    }
  return places;
}

static gboolean
find_place (const GArray *places, const char *wall, guint *at)
{
  for (guint i = 0; i < places->len; i++)
    if (g_str_equal (hc_wall_get_id (g_array_index (places, Place, i).wall->wall), wall))
      {
        *at = i;
        return TRUE;
      }
  return FALSE;
}

/**
 * hc_side_walls_find_next: (skip)
 * @house: a house
 * @wall: id of one of its walls
 * @by: how many further; negative to go back
 *
 * Returns: id of another wall, the first coming after the last
 */
const char *
hc_side_walls_find_next (const HcHouse *house, const char *wall, int by)
{
  g_autoptr (GArray) places = list_places (house);
  int n = (int) places->len;
  guint at;

  if (!find_place (places, wall, &at))
    return wall;
  at = (guint) ((((int) at + by) % n + n) % n);
  return hc_wall_get_id (g_array_index (places, Place, at).wall->wall);
}

/**
 * hc_side_walls_name: (skip)
 * @house: a house
 * @wall: id of one of its walls
 *
 * Returns: (transfer full): "Byre end, wall 2"
 */
char *
hc_side_walls_name (const HcHouse *house, const char *wall)
{
  g_autoptr (GArray) places = list_places (house);
  g_autofree char *pen = NULL;
  guint at;

  if (wall == NULL || !find_place (places, wall, &at))
    return g_strdup (_("No wall yet"));
  pen = hc_words_pen_name (hc_room_get_pen (g_array_index (places, Place, at).room));
  /* Translators: the name of a pen, then the number of a wall, counted round it */
  return g_strdup_printf (_("%s, wall %u"), pen, g_array_index (places, Place, at).number);
}

static void
add_wall (GMenu *menu, const Place *place, HcUnits units)
{
  g_autofree char *length = hc_length_format (
      hc_point_distance (place->wall->from, place->wall->to), units);
  /* Translators: the number of a wall, then its length */
  g_autofree char *label = g_strdup_printf (_("Wall %u, %s"), place->number, length);
  g_autoptr (GMenuItem) item = g_menu_item_new (label, NULL);

  g_menu_item_set_action_and_target (item, "sideview.wall", "s",
                                     hc_wall_get_id (place->wall->wall));
  g_menu_append_item (menu, item);
}

/**
 * hc_side_walls_list: (skip)
 * @house: a house
 * @units: the keeper's units
 *
 * Returns: (transfer full): a menu with the walls of each pen
 */
GMenu *
hc_side_walls_list (const HcHouse *house, HcUnits units)
{
  g_autoptr (GArray) places = list_places (house);
  GMenu *menu = g_menu_new ();
  g_autoptr (GMenu) section = NULL;

  for (guint i = 0; i < places->len; i++)
    {
      const Place *place = &g_array_index (places, Place, i);

      if (i == 0 || place->room != g_array_index (places, Place, i - 1).room)
        {
          g_autofree char *pen = hc_words_pen_name (hc_room_get_pen (place->room));

          g_clear_object (&section);
          section = g_menu_new ();
          g_menu_append_section (menu, pen, G_MENU_MODEL (section));
        }
      add_wall (section, place, units);
    }
  return menu;
}
