/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What birds' ways of settling have in common. */
#include "config.h"

#include "settling.h"

/* How much shorter a bird looks from above when it sits tucked up. */
#define TUCKED_UP 0.72

const HcSceneBird *
hc_settling_bird (const HcSettling *work, guint bird)
{
  return &g_array_index (work->scene->birds, HcSceneBird, bird);
}

const HcSceneSeat *
hc_settling_seat (const HcSettling *work, guint seat)
{
  return &g_array_index (work->scene->seats, HcSceneSeat, seat);
}

HcBirdLook
hc_settling_look (const HcSceneBird *bird)
{
  return hc_bird_look (bird->body, bird->coat);
}

gboolean
hc_settling_may_go_to (const HcSceneBird *bird, const char *pen)
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

void
hc_settling_settle (HcSettling *work, guint which, HcBirdSpot spot, HcBirdDoing doing, gboolean wanting)
{
  const HcSceneBird *bird = hc_settling_bird (work, which);
  HcBirdPlace place
      = { spot.at, spot.heading_deg, bird->index, hc_settling_look (bird), doing, wanting };

  if (sits (doing))
    place.look.length_mm *= TUCKED_UP;
  g_array_append_val (work->places, place);
  hc_elbow_room_take (work->room, spot.at, place.look.width_mm * 0.5);
  work->settled[which] = TRUE;
}

const HcFittingValues *
hc_settling_fitting (const HcSettling *work, const char *id)
{
  HcFitting *fitting = hc_layout_get_fitting (work->scene->layout, id, NULL);

  return fitting ? hc_fitting_get (fitting) : NULL;
}
