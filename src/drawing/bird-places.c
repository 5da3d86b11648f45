/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * From who got which place to where each bird is. */
#include "config.h"

#include "bird-places.h"

#include "drawing/bird-scene.h"

/* More birds than this cannot be told apart on any sheet. */
#define MOST_DRAWN 2000

static const struct
{
  HcNeedId need;
  HcBirdDoing doing;
  gboolean by_night;
} callings[] = {
  { HC_NEED_WARMTH, HC_BIRD_WARMS, TRUE },  { HC_NEED_ROOST, HC_BIRD_SLEEPS, TRUE },
  { HC_NEED_WARMTH, HC_BIRD_WARMS, FALSE }, { HC_NEED_FEED, HC_BIRD_EATS, FALSE },
  { HC_NEED_WATER, HC_BIRD_DRINKS, FALSE }, { HC_NEED_NESTS, HC_BIRD_LAYS, FALSE },
};

static int
compare_seats (gconstpointer a, gconstpointer b)
{
  const HcSceneSeat *one = a, *other = b;
  int order = g_strcmp0 (one->id, other->id);

  if (order != 0)
    return order;
  if (one->from.x_mm != other->from.x_mm)
    return one->from.x_mm < other->from.x_mm ? -1 : 1;
  if (one->from.y_mm != other->from.y_mm)
    return one->from.y_mm < other->from.y_mm ? -1 : 1;
  return (one->body > other->body) - (one->body < other->body);
}

static void
add_seats (HcAllotment *allotment, HcBirdDoing doing, GArray *seats)
{
  for (guint i = 0; i < hc_allotment_get_n_seats (allotment); i++)
    {
      const HcSeat *seat = hc_allotment_get_seat (allotment, i);
      const HcPlace *place
          = hc_offer_get_place (hc_allotment_get_offer (allotment, seat->offer), seat->place);
      HcSceneSeat given = { doing,     place->pen, place->id,  place->from,
                            place->to, seat->body, seat->count };

      g_array_append_val (seats, given);
    }
}

static GArray *
gather_seats (const HcCheck *check, gboolean night)
{
  GArray *seats = g_array_new (FALSE, FALSE, sizeof (HcSceneSeat));

  for (guint i = 0; i < G_N_ELEMENTS (callings); i++)
    {
      g_autoptr (GArray) some = g_array_new (FALSE, FALSE, sizeof (HcSceneSeat));

      if (callings[i].by_night != night)
        continue;
      for (guint j = 0; j < hc_check_get_n_allotments (check, callings[i].need); j++)
        add_seats (hc_check_get_allotment (check, callings[i].need, j), callings[i].doing, some);
      g_array_sort (some, compare_seats);
      g_array_append_vals (seats, some->data, some->len);
    }
  return seats;
}

static gboolean
space_has_room (const HcSpace *space, guint room)
{
  for (guint i = 0; i < space->rooms->len; i++)
    if (g_array_index (space->rooms, guint, i) == room)
      return TRUE;
  return FALSE;
}

/* Ids of the pens a bird that lives in @pen may go to. */
static GPtrArray *
pens_open_to (const HcCheck *check, const char *pen)
{
  HcHouse *house = hc_check_get_house (check);
  HcCondition condition = hc_check_get_condition (check);
  GPtrArray *pens = g_ptr_array_new ();
  guint home;

  if (!hc_house_find_room (house, pen, &home))
    return pens;
  for (guint i = 0; i < hc_house_get_n_spaces (house, condition); i++)
    {
      const HcSpace *space = hc_house_get_space (house, condition, i);

      if (!space_has_room (space, home))
        continue;
      for (guint j = 0; j < space->rooms->len; j++)
        g_ptr_array_add (pens, (gpointer) hc_pen_get_id (hc_room_get_pen (hc_house_get_room (
                                   house, g_array_index (space->rooms, guint, j)))));
    }
  return pens;
}

/* A group has a colour of its own, with one of another colour here and there. */
static guint
coat_of (const HcFlockRow *row, guint nth)
{
  guint own = g_str_hash (row->batch ? row->batch : "");

  return nth % 5 == 4 ? own + 3 : own;
}

static void
add_birds (HcBirdScene *scene, const HcFlock *flock, const HcFlockRow *row, GPtrArray *pens)
{
  guint seed = g_str_hash (row->batch ? row->batch : "") + row->body * 131u;

  for (guint i = 0; i < row->count && scene->birds->len < MOST_DRAWN; i++)
    {
      HcSceneBird bird = { hc_flock_get_body (flock, row->body), row->body, row->pen, pens,
                           coat_of (row, i), seed + i * 7907u };

      g_array_append_val (scene->birds, bird);
    }
}

/**
 * hc_bird_places:
 * @check: a plan judged in the condition to be drawn
 *
 * A pure function: the same plan puts its birds in the same places, and a
 * fitting that is moved moves only the birds that were in its way. What a bird
 * does by day is an illustration; the seats by night are those it was
 * allotted.
 *
 * Returns: (transfer full) (element-type HcBirdPlace): where each bird is
 */
GArray *
hc_bird_places (const HcCheck *check)
{
  HcFlock *flock = hc_check_get_flock (check);
  gboolean night = hc_check_get_condition (check) == HC_CONDITION_NIGHT;
  g_autoptr (GArray) birds = g_array_new (FALSE, FALSE, sizeof (HcSceneBird));
  g_autoptr (GArray) seats = gather_seats (check, night);
  g_autoptr (GPtrArray) all_pens
      = g_ptr_array_new_with_free_func ((GDestroyNotify) g_ptr_array_unref);
  HcBirdScene scene
      = { hc_house_get_layout (hc_check_get_house (check)), night, birds, seats };

  for (guint i = 0; i < hc_flock_get_n_rows (flock); i++)
    {
      const HcFlockRow *row = hc_flock_get_row (flock, i);
      GPtrArray *pens = pens_open_to (check, row->pen);

      g_ptr_array_add (all_pens, pens);
      add_birds (&scene, flock, row, pens);
    }
  return hc_bird_scene_settle (&scene);
}
