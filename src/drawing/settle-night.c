/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * By night: on the bars and under the heaters that were allotted. */
#include "config.h"

#include "settling.h"

#include "drawing/ink.h"

/* Birds of that body still without a place, those at home in the pen first. */
static GArray *
take_birds (const HcSettling *work, const HcSceneSeat *seat)
{
  GArray *taken = g_array_new (FALSE, FALSE, sizeof (guint));

  for (int at_home = 1; at_home >= 0; at_home--)
    for (guint i = 0; i < work->scene->birds->len && taken->len < seat->count; i++)
      {
        const HcSceneBird *bird = hc_settling_bird (work, i);

        if (!work->settled[i] && bird->index == seat->body
            && (g_strcmp0 (bird->pen, seat->pen) == 0) == at_home
            && hc_settling_may_go_to (bird, seat->pen))
          g_array_append_val (taken, i);
      }
  return taken;
}

static HcPoint
middle_of_pen (const HcSettling *work, const char *id)
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
width_of (const HcSettling *work, GArray *birds)
{
  double width = 0;

  for (guint i = 0; i < birds->len; i++)
    width += hc_settling_look (hc_settling_bird (work, g_array_index (birds, guint, i))).width_mm;
  return width;
}

/* Shares a stretch of bar out by the width of those who sit on it. */
static void
perch (HcSettling *work, const HcSceneSeat *seat, GArray *birds)
{
  HcPoint middle = middle_of_pen (work, seat->pen);
  double total = width_of (work, birds);
  double before = 0;

  for (guint i = 0; i < birds->len; i++)
    {
      guint which = g_array_index (birds, guint, i);
      const HcSceneBird *bird = hc_settling_bird (work, which);
      double width = hc_settling_look (bird).width_mm;
      HcBirdSpot spot = hc_bird_spot_on_bar (seat->from, seat->to,
                                             (before + width / 2) / total, middle);

      spot.heading_deg += 14 * (hc_chance (bird->seed, 2) - 0.5);
      if (hc_chance (bird->seed, 1) < 0.15)
        spot.heading_deg += 180;
      hc_settling_settle (work, which, spot, HC_BIRD_SLEEPS, FALSE);
      before += width;
    }
}

static void
nestle (HcSettling *work, const HcSceneSeat *seat, GArray *birds)
{
  const HcFittingValues *heater = hc_settling_fitting (work, seat->id);

  for (guint i = 0; heater != NULL && i < birds->len; i++)
    hc_settling_settle (work, g_array_index (birds, guint, i),
            hc_bird_spot_by_heater (heater, i, birds->len, i % 3 == 2), HC_BIRD_WARMS, FALSE);
}

/* Everybody who has a place for the night goes to it. */
void
hc_settle_for_the_night (HcSettling *work)
{
  GArray *seats = work->scene->seats;

  for (guint i = 0; i < seats->len;)
    {
      const HcSceneSeat *first = hc_settling_seat (work, i);
      g_autoptr (GArray) birds = g_array_new (FALSE, FALSE, sizeof (guint));

      for (; i < seats->len && is_same_stretch (first, hc_settling_seat (work, i)); i++)
        {
          g_autoptr (GArray) more = take_birds (work, hc_settling_seat (work, i));

          g_array_append_vals (birds, more->data, more->len);
        }
      if (first->doing == HC_BIRD_SLEEPS)
        perch (work, first, birds);
      else if (first->doing == HC_BIRD_WARMS)
        nestle (work, first, birds);
    }
}
