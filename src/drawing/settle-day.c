/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * By day: some eat, drink, lay, bathe or keep warm. */
#include "config.h"

#include "settling.h"

#include "drawing/ink.h"

/* What part of a flock does what at a glance, common practice, no source. */
#define EATING 0.16
#define DRINKING 0.25
#define LAYING 0.35
#define BATHING 0.40
#define CHICKS_WARMING 0.55
#define EDGE_TRIES 10
#define NESTS_TOLD_APART 64

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
  return hc_settling_may_go_to (bird, seat->pen);
}

static gboolean
find_seat (const HcSettling *work, const HcSceneBird *bird, HcBirdDoing doing, guint *found)
{
  GArray *seats = work->scene->seats;
  guint first = seats->len ? bird->seed % seats->len : 0;

  for (guint i = 0; i < seats->len; i++)
    {
      guint at = (first + i) % seats->len;
      const HcSceneSeat *seat = hc_settling_seat (work, at);

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
  HcBirdLook look = hc_settling_look (bird);

  if (doing == HC_BIRD_LAYS)
    return hc_bird_spot_in_nest (fitting, bird->seed % NESTS_TOLD_APART + turn);
  if (doing == HC_BIRD_WARMS)
    return hc_bird_spot_by_heater (fitting, bird->seed % 24 + turn, 24, turn % 3 == 2);
  return hc_bird_spot_at_edge (fitting, &look, bird->seed + turn * 31);
}

/* Goes to a place of its own for @doing, when there is one it can get at. */
static gboolean
go_about (HcSettling *work, guint which, HcBirdDoing doing)
{
  const HcSceneBird *bird = hc_settling_bird (work, which);
  double half = hc_settling_look (bird).width_mm * 0.45;
  const HcFittingValues *fitting;
  guint seat;

  if (!find_seat (work, bird, doing, &seat))
    return FALSE;
  fitting = hc_settling_fitting (work, hc_settling_seat (work, seat)->id);
  for (guint turn = 0; fitting != NULL && turn < EDGE_TRIES; turn++)
    {
      HcBirdSpot spot = spot_of (fitting, bird, doing, turn);

      if (!hc_elbow_room_is_free (work->room, hc_settling_seat (work, seat)->pen, spot.at, half))
        continue;
      hc_settling_settle (work, which, spot, doing, FALSE);
      work->used[seat]++;
      return TRUE;
    }
  return FALSE;
}

static gboolean
bathe (HcSettling *work, guint which)
{
  const HcSceneBird *bird = hc_settling_bird (work, which);
  double half = hc_settling_look (bird).width_mm * 0.5;

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
          hc_settling_settle (work, which, spot, HC_BIRD_BATHES, FALSE);
          return TRUE;
        }
    }
  return FALSE;
}

void
hc_settle_by_day (HcSettling *work)
{
  for (guint i = 0; i < work->scene->birds->len; i++)
    {
      HcBirdDoing doing = choose_doing (hc_settling_bird (work, i));

      if (doing == HC_BIRD_BATHES)
        bathe (work, i);
      else if (doing != HC_BIRD_ROAMS)
        go_about (work, i, doing);
    }
}
