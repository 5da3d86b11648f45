/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Settles every bird: first those with a place of their own, then the others
 * on what floor is left. */
#include "config.h"

#include "bird-scene.h"

#include "drawing/ink.h"
#include "drawing/settling.h"

#define OUT_ON_AN_ORDINARY_DAY 0.7

static gboolean
is_run (const HcSettling *work, const char *id)
{
  HcPen *pen = hc_layout_get_pen (work->scene->layout, id);

  return pen != NULL && hc_pen_get (pen)->kind == HC_PEN_RUN;
}

static double
pull_of (const HcSettling *work, const char *pen, gboolean out)
{
  return is_run (work, pen) == out ? hc_elbow_room_get_area_mm2 (work->room, pen) : 0;
}

/* A pen to roam in: out of doors more often than not, the larger the likelier;
 * birds that cannot go where they like stay at home. */
static const char *
choose_pen (const HcSettling *work, const HcSceneBird *bird)
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
settle_on_the_floor (HcSettling *work, guint which)
{
  const HcSceneBird *bird = hc_settling_bird (work, which);
  HcBirdLook look = hc_settling_look (bird);
  HcBirdSpot spot = { .heading_deg = 360 * hc_chance (bird->seed, 5) };
  gboolean night = work->scene->night;

  if (!hc_elbow_room_find (work->room, choose_pen (work, bird), look.length_mm * 0.5,
                           bird->seed, &spot.at)
      && !hc_elbow_room_find (work->room, bird->pen, look.width_mm * 0.5, bird->seed, &spot.at))
    return;
  hc_settling_settle (work, which, spot, night ? HC_BIRD_SLEEPS : HC_BIRD_ROAMS,
          night && (bird->body->roosts || bird->body->under_heat));
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
  HcSettling work = { scene, room, g_array_new (FALSE, FALSE, sizeof (HcBirdPlace)), settled,
                    used };

  if (scene->night)
    hc_settle_for_the_night (&work);
  else
    hc_settle_by_day (&work);
  for (guint i = 0; i < scene->birds->len; i++)
    if (!settled[i])
      settle_on_the_floor (&work, i);
  return work.places;
}
