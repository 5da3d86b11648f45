/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Places to sleep: the usable stretches of bars, and who can use them. */
#include "config.h"

#include "supply/offer-private.h"

#include "base/whole.h"
#include "book/figure-names.h"
#include "supply/bars.h"

/* What each level leaves of the bars of a room. */
typedef struct
{
  const HcOfferContext *context;
  const GArray *bars;
  GArray *usable[HC_N_ASKED_LEVELS];
} Levels;

static gboolean
may_sit (const HcBody *body)
{
  return body->kind->perching != HC_PERCHING_NEVER;
}

static void
find_usable (Levels *levels)
{
  g_autofree guint *order = hc_bars_get_order (levels->bars);

  for (guint i = 0; i < HC_N_ASKED_LEVELS; i++)
    {
      HcLevel level = HC_LEVEL_TIGHT + i;
      HcBarLimits limits = {
        hc_figure_get_bound (levels->context, HC_FIGURE_ROOST_BAR_TO_WALL, level),
        hc_figure_get_bound (levels->context, HC_FIGURE_ROOST_BAR_TO_BAR, level),
        hc_figure_get_bound (levels->context, HC_FIGURE_ROOST_HEADROOM, level),
      };

      levels->usable[i]
          = hc_bars_get_usable (levels->context->room, levels->bars, order, &limits);
    }
}

static const char *
name_cause (const HcOfferContext *context, HcBarCause cause)
{
  static const char *const names[] = {
    [HC_BAR_CAUSE_WALL] = HC_FIGURE_ROOST_BAR_TO_WALL,
    [HC_BAR_CAUSE_HEADROOM] = HC_FIGURE_ROOST_HEADROOM,
    [HC_BAR_CAUSE_BAR] = HC_FIGURE_ROOST_BAR_TO_BAR,
  };
  const HcLimit *limit
      = cause != HC_BAR_CAUSE_NONE ? hc_figure_for (context, names[cause], NULL) : NULL;

  return limit != NULL ? limit->figure.id : NULL;
}

/* Where nights are cold a bar must cover the toes. */
static const char *
choose_width_figure (const HcOfferContext *context)
{
  const HcLimit *cold = hc_figure_for (context, HC_FIGURE_ROOST_COLD_NIGHT, NULL);

  if (cold == NULL || hc_limit_is_met (cold, HC_LEVEL_TIGHT, context->coldest_night_c))
    return HC_FIGURE_ROOST_BAR_WIDTH;
  return HC_FIGURE_ROOST_BAR_WIDTH_COLD;
}

static void
init_bar_place (const Levels *levels, guint bar, HcPlace *place)
{
  const HcRoomBar *here = &g_array_index (levels->bars, HcRoomBar, bar);

  hc_place_init (place, levels->context, hc_fitting_get_id (here->roost));
  place->part = here->part;
  place->height_mm = here->bar.height_mm;
  place->from = here->bar.from;
  place->to = here->bar.to;
  for (guint i = 0; i < HC_N_ASKED_LEVELS && place->why_not == NULL; i++)
    {
      const HcUsableBar *usable = &g_array_index (levels->usable[i], HcUsableBar, bar);

      place->why_not = name_cause (levels->context, usable->cause);
      place->blocker = usable->blocker;
    }
  hc_place_set_suits (place, hc_bodies_which (levels->context, may_sit));
  hc_place_keep_within (place, levels->context, HC_FIGURE_ROOST_BAR_HEIGHT, place->height_mm);
  hc_place_keep_within (place, levels->context, choose_width_figure (levels->context),
                        here->bar.width_mm);
}

static gboolean
has_stretch (const GArray *stretches, const HcStretch *stretch)
{
  for (guint i = 0; i < stretches->len; i++)
    {
      const HcStretch *other = &g_array_index (stretches, HcStretch, i);

      if (other->from_mm == stretch->from_mm && other->to_mm == stretch->to_mm)
        return TRUE;
    }
  return FALSE;
}

/* A stretch is one place at all levels that leave exactly this of the bar. */
static void
add_stretch (const Levels *levels, guint bar, const HcStretch *stretch, const HcPlace *whole,
             HcOffer *offer)
{
  double length_mm = g_array_index (levels->bars, HcRoomBar, bar).length_mm;
  HcPlace place = *whole;

  for (guint i = 0; i < HC_N_ASKED_LEVELS; i++)
    if (has_stretch (g_array_index (levels->usable[i], HcUsableBar, bar).stretches, stretch))
      place.amounts[i] = hc_mm (stretch->to_mm - stretch->from_mm);
  place.from = hc_point_between (whole->from, whole->to, stretch->from_mm / length_mm);
  place.to = hc_point_between (whole->from, whole->to, stretch->to_mm / length_mm);
  hc_offer_add_place (offer, &place);
}

static gboolean
came_before (const Levels *levels, guint bar, guint level, const HcStretch *stretch)
{
  for (guint i = 0; i < level; i++)
    if (has_stretch (g_array_index (levels->usable[i], HcUsableBar, bar).stretches, stretch))
      return TRUE;
  return FALSE;
}

/* A bar that nobody can sit on stays in the offer, with the reason. */
static void
add_bar (const Levels *levels, guint bar, HcOffer *offer)
{
  guint n_before = hc_offer_get_n_places (offer);
  HcPlace whole;

  init_bar_place (levels, bar, &whole);
  for (guint i = 0; i < HC_N_ASKED_LEVELS; i++)
    {
      const GArray *stretches
          = g_array_index (levels->usable[i], HcUsableBar, bar).stretches;

      for (guint j = 0; j < stretches->len; j++)
        {
          const HcStretch *stretch = &g_array_index (stretches, HcStretch, j);

          if (!came_before (levels, bar, i, stretch))
            add_stretch (levels, bar, stretch, &whole, offer);
        }
    }
  if (hc_offer_get_n_places (offer) == n_before)
    hc_offer_add_place (offer, &whole);
}

void
hc_offer_make_roost (HcOfferKind kind, const HcOfferContext *context, HcOffer *offer)
{
  g_autoptr (GArray) bars = NULL;
  Levels levels = { context };

  if (!hc_room_is_roofed (context->room))
    return;
  bars = hc_bars_of_room (context->room);
  levels.bars = bars;
  find_usable (&levels);
  for (guint i = 0; i < bars->len; i++)
    add_bar (&levels, i, offer);
  for (guint i = 0; i < HC_N_ASKED_LEVELS; i++)
    g_array_unref (levels.usable[i]);
}
