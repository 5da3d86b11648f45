/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Settles every bird: first those with a place of their own, then the others
 * on what floor is left. */
#include "config.h"

#include "bird-scene.h"

#include "drawing/bird-spot.h"
#include "drawing/elbow-room.h"
#include "drawing/ink.h"

/* What part of a flock does what at a glance, common practice, no source. */
#define EATING 0.16
#define DRINKING 0.25
#define LAYING 0.35
#define BATHING 0.40
#define CHICKS_WARMING 0.55
#define OUT_ON_AN_ORDINARY_DAY 0.7
#define EDGE_TRIES 10
#define NESTS_TOLD_APART 64

/* How much shorter a bird looks from above when it sits tucked up. */
#define TUCKED_UP 0.72

typedef struct
{
  const HcBirdScene *scene;
  HcElbowRoom *room;
  GArray *places;
  gboolean *settled;
  gint64 *used;
} Settling;

static const HcSceneBird *
bird_at (const Settling *work, guint bird)
{
  return &g_array_index (work->scene->birds, HcSceneBird, bird);
}

static const HcSceneSeat *
seat_at (const Settling *work, guint seat)
{
  return &g_array_index (work->scene->seats, HcSceneSeat, seat);
}

static HcBirdLook
look_of (const HcSceneBird *bird)
{
  return hc_bird_look (bird->body, bird->coat);
}

static gboolean
may_go_to (const HcSceneBird *bird, const char *pen)
{
  for (guint i = 0; i < bird->pens->len; i++)
    if (g_strcmp0 (bird->pens->pdata[i], pen) == 0)
      return TRUE;
  return FALSE;
}

static gboolean
sits (HcBirdDoing doing)
{
  return doing == HC_BIRD_SLEEPS || doing == HC_BIRD_LAYS;
}

static void
settle (Settling *work, guint which, HcBirdSpot spot, HcBirdDoing doing, gboolean wanting)
{
  const HcSceneBird *bird = bird_at (work, which);
  HcBirdPlace place
      = { spot.at, spot.heading_deg, bird->index, look_of (bird), doing, wanting };

  if (sits (doing))
    place.look.length_mm *= TUCKED_UP;
  g_array_append_val (work->places, place);
  hc_elbow_room_take (work->room, spot.at, place.look.width_mm * 0.5);
  work->settled[which] = TRUE;
}

/* Birds of that body still without a place, those at home in the pen first. */
static GArray *
take_birds (const Settling *work, const HcSceneSeat *seat)
{
  GArray *taken = g_array_new (FALSE, FALSE, sizeof (guint));

  for (int at_home = 1; at_home >= 0; at_home--)
    for (guint i = 0; i < work->scene->birds->len && taken->len < seat->count; i++)
      {
        const HcSceneBird *bird = bird_at (work, i);

        if (!work->settled[i] && bird->index == seat->body
            && (g_strcmp0 (bird->pen, seat->pen) == 0) == at_home
            && may_go_to (bird, seat->pen))
          g_array_append_val (taken, i);
      }
  return taken;
}

static HcPoint
middle_of_pen (const Settling *work, const char *id)
{
  HcPen *pen = hc_layout_get_pen (work->scene->layout, id);
  g_autoptr (GArray) ring = NULL;

  if (pen == NULL)
    return hc_point (0, 0);
  ring = hc_layout_get_pen_ring (work->scene->layout, pen);
  return hc_box_centre (hc_box_around ((const HcPoint *) ring->data, ring->len));
}

static gboolean
is_same_stretch (const HcSceneSeat *a, const HcSceneSeat *b)
{
  return a->doing == b->doing && g_strcmp0 (a->id, b->id) == 0
         && hc_point_equal (a->from, b->from) && hc_point_equal (a->to, b->to);
}

static double
width_of (const Settling *work, GArray *birds)
{
  double width = 0;

  for (guint i = 0; i < birds->len; i++)
    width += look_of (bird_at (work, g_array_index (birds, guint, i))).width_mm;
  return width;
}

/* Shares a stretch of bar out by the width of those who sit on it. */
static void
perch (Settling *work, const HcSceneSeat *seat, GArray *birds)
{
  HcPoint middle = middle_of_pen (work, seat->pen);
  double total = width_of (work, birds);
  double before = 0;

  for (guint i = 0; i < birds->len; i++)
    {
      guint which = g_array_index (birds, guint, i);
      const HcSceneBird *bird = bird_at (work, which);
      double width = look_of (bird).width_mm;
      HcBirdSpot spot = hc_bird_spot_on_bar (seat->from, seat->to,
                                             (before + width / 2) / total, middle);

      spot.heading_deg += 14 * (hc_chance (bird->seed, 2) - 0.5);
      if (hc_chance (bird->seed, 1) < 0.15)
        spot.heading_deg += 180;
      settle (work, which, spot, HC_BIRD_SLEEPS, FALSE);
      before += width;
    }
}

static const HcFittingValues *
fitting_of (const Settling *work, const char *id)
{
  HcFitting *fitting = hc_layout_get_fitting (work->scene->layout, id, NULL);

  return fitting ? hc_fitting_get (fitting) : NULL;
}

static void
nestle (Settling *work, const HcSceneSeat *seat, GArray *birds)
{
  const HcFittingValues *heater = fitting_of (work, seat->id);

  for (guint i = 0; heater != NULL && i < birds->len; i++)
    settle (work, g_array_index (birds, guint, i),
            hc_bird_spot_by_heater (heater, i, birds->len, i % 3 == 2), HC_BIRD_WARMS, FALSE);
}

/* Everybody who has a place for the night goes to it. */
static void
settle_for_the_night (Settling *work)
{
  GArray *seats = work->scene->seats;

  for (guint i = 0; i < seats->len;)
    {
      const HcSceneSeat *first = seat_at (work, i);
      g_autoptr (GArray) birds = g_array_new (FALSE, FALSE, sizeof (guint));

      for (; i < seats->len && is_same_stretch (first, seat_at (work, i)); i++)
        {
          g_autoptr (GArray) more = take_birds (work, seat_at (work, i));

          g_array_append_vals (birds, more->data, more->len);
        }
      if (first->doing == HC_BIRD_SLEEPS)
        perch (work, first, birds);
      else if (first->doing == HC_BIRD_WARMS)
        nestle (work, first, birds);
    }
}

static gboolean
is_run (const Settling *work, const char *id)
{
  HcPen *pen = hc_layout_get_pen (work->scene->layout, id);

  return pen != NULL && hc_pen_get (pen)->kind == HC_PEN_RUN;
}

static double
pull_of (const Settling *work, const char *pen, gboolean out)
{
  return is_run (work, pen) == out ? hc_elbow_room_get_area_mm2 (work->room, pen) : 0;
}

/* A pen to roam in: out of doors more often than not, the larger the likelier;
 * birds that cannot go where they like stay at home. */
static const char *
choose_pen (const Settling *work, const HcSceneBird *bird)
{
  gboolean out = hc_chance (bird->seed, 3) < OUT_ON_AN_ORDINARY_DAY;
  double total = 0, drawn;

  if (work->scene->night || bird->body->under_heat)
    return bird->pen;
  for (guint i = 0; i < bird->pens->len; i++)
    total += pull_of (work, bird->pens->pdata[i], out);
  drawn = total * hc_chance (bird->seed, 4);
  for (guint i = 0; i < bird->pens->len; i++)
    {
      drawn -= pull_of (work, bird->pens->pdata[i], out);
      if (drawn < 0)
        return bird->pens->pdata[i];
    }
  return bird->pen;
}

static void
settle_on_the_floor (Settling *work, guint which)
{
  const HcSceneBird *bird = bird_at (work, which);
  HcBirdLook look = look_of (bird);
  HcBirdSpot spot = { .heading_deg = 360 * hc_chance (bird->seed, 5) };
  gboolean night = work->scene->night;

  if (!hc_elbow_room_find (work->room, choose_pen (work, bird), look.length_mm * 0.5,
                           bird->seed, &spot.at)
      && !hc_elbow_room_find (work->room, bird->pen, look.width_mm * 0.5, bird->seed, &spot.at))
    return;
  settle (work, which, spot, night ? HC_BIRD_SLEEPS : HC_BIRD_ROAMS,
          night && (bird->body->roosts || bird->body->under_heat));
}

static HcBirdDoing
choose_doing (const HcSceneBird *bird)
{
  double chance = hc_chance (bird->seed, 6);

  if (chance < EATING)
    return HC_BIRD_EATS;
  if (chance < DRINKING)
    return HC_BIRD_DRINKS;
  if (bird->body->under_heat)
    return chance < CHICKS_WARMING ? HC_BIRD_WARMS : HC_BIRD_ROAMS;
  if (chance < LAYING && bird->body->at_lay)
    return HC_BIRD_LAYS;
  return chance >= LAYING && chance < BATHING ? HC_BIRD_BATHES : HC_BIRD_ROAMS;
}

/* Chicks that need heat do not go far from it. */
static gboolean
may_use (const HcSceneBird *bird, const HcSceneSeat *seat)
{
  if (bird->body->under_heat)
    return g_strcmp0 (bird->pen, seat->pen) == 0;
  return may_go_to (bird, seat->pen);
}

static gboolean
find_seat (const Settling *work, const HcSceneBird *bird, HcBirdDoing doing, guint *found)
{
  GArray *seats = work->scene->seats;
  guint first = seats->len ? bird->seed % seats->len : 0;

  for (guint i = 0; i < seats->len; i++)
    {
      guint at = (first + i) % seats->len;
      const HcSceneSeat *seat = seat_at (work, at);

      if (seat->doing == doing && seat->body == bird->index && work->used[at] < seat->count
          && may_use (bird, seat))
        {
          *found = at;
          return TRUE;
        }
    }
  return FALSE;
}

static HcBirdSpot
spot_of (const HcFittingValues *fitting, const HcSceneBird *bird, HcBirdDoing doing, guint turn)
{
  HcBirdLook look = look_of (bird);

  if (doing == HC_BIRD_LAYS)
    return hc_bird_spot_in_nest (fitting, bird->seed % NESTS_TOLD_APART + turn);
  if (doing == HC_BIRD_WARMS)
    return hc_bird_spot_by_heater (fitting, bird->seed % 24 + turn, 24, turn % 3 == 2);
  return hc_bird_spot_at_edge (fitting, &look, bird->seed + turn * 31);
}

/* Goes to a place of its own for @doing, when there is one it can get at. */
static gboolean
go_about (Settling *work, guint which, HcBirdDoing doing)
{
  const HcSceneBird *bird = bird_at (work, which);
  double half = look_of (bird).width_mm * 0.45;
  const HcFittingValues *fitting;
  guint seat;

  if (!find_seat (work, bird, doing, &seat))
    return FALSE;
  fitting = fitting_of (work, seat_at (work, seat)->id);
  for (guint turn = 0; fitting != NULL && turn < EDGE_TRIES; turn++)
    {
      HcBirdSpot spot = spot_of (fitting, bird, doing, turn);

      if (!hc_elbow_room_is_free (work->room, seat_at (work, seat)->pen, spot.at, half))
        continue;
      settle (work, which, spot, doing, FALSE);
      work->used[seat]++;
      return TRUE;
    }
  return FALSE;
}

static gboolean
bathe (Settling *work, guint which)
{
  const HcSceneBird *bird = bird_at (work, which);
  double half = look_of (bird).width_mm * 0.5;

  for (guint i = 0; i < bird->pens->len; i++)
    {
      HcPen *pen = hc_layout_get_pen (work->scene->layout, bird->pens->pdata[i]);
      HcParts *fittings = hc_pen_get (pen)->fittings;

      for (guint j = 0; j < fittings->len; j++)
        {
          const HcFittingValues *bath = hc_fitting_get (fittings->pdata[j]);
          HcBirdSpot spot = hc_bird_spot_in_bath (bath, bird->seed);

          if (bath->kind != HC_FITTING_DUST_BATH
              || !hc_elbow_room_is_free (work->room, hc_pen_get_id (pen), spot.at, half))
            continue;
          settle (work, which, spot, HC_BIRD_BATHES, FALSE);
          return TRUE;
        }
    }
  return FALSE;
}

static void
settle_by_day (Settling *work)
{
  for (guint i = 0; i < work->scene->birds->len; i++)
    {
      HcBirdDoing doing = choose_doing (bird_at (work, i));

      if (doing == HC_BIRD_BATHES)
        bathe (work, i);
      else if (doing != HC_BIRD_ROAMS)
        go_about (work, i, doing);
    }
}

/**
 * hc_bird_scene_settle: (skip)
 * @scene: birds and their places
 *
 * Returns: (transfer full) (element-type HcBirdPlace): where each bird is; one
 *   whose home pen has no floor is left out
 */
GArray *
hc_bird_scene_settle (const HcBirdScene *scene)
{
  g_autoptr (HcElbowRoom) room = hc_elbow_room_new (scene->layout);
  g_autofree gboolean *settled = g_new0 (gboolean, scene->birds->len + 1);
  g_autofree gint64 *used = g_new0 (gint64, scene->seats->len + 1);
  Settling work = { scene, room, g_array_new (FALSE, FALSE, sizeof (HcBirdPlace)), settled,
                    used };

  if (scene->night)
    settle_for_the_night (&work);
  else
    settle_by_day (&work);
  for (guint i = 0; i < scene->birds->len; i++)
    if (!settled[i])
      settle_on_the_floor (&work, i);
  return work.places;
}
