/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Heights a thing may be caught at: floor and bedding, its neighbours' heights,
 * and bars above the nests. */
#include "config.h"

#include "supply/catch-height.h"

#include "supply/stand.h"

#include <math.h>

/* @tall_mm: from its underside to its top */
typedef struct
{
  const char *id;
  int kind;
  gboolean is_opening;
  double wanted_mm;
  double tall_mm;
  double nearest_mm;
  double nest_below_mm;
  HcHeightCatch *caught;
} Raising;

/* Above the underside of what is raised, the line is @off_mm higher. */
static void
offer (Raising *raising, HcHeightKind kind, double line_mm, double off_mm, const char *id)
{
  double base_mm = line_mm - off_mm;
  double away_mm = fabs (base_mm - raising->wanted_mm);

  if (base_mm < 0 || away_mm > raising->nearest_mm)
    return;
  raising->nearest_mm = away_mm;
  *raising->caught = (HcHeightCatch){ kind, base_mm, line_mm, id };
}

static double
highest_nest_floor_mm (const HcFitting *nests)
{
  return hc_stand_get_nest_floor_mm (nests, (guint) MAX (hc_fitting_get (nests)->rows, 1) - 1);
}

/* Bars keep above the nests, and nests below the bars. */
static void
offer_by_rules (Raising *raising, HcFitting *self, HcFitting *other)
{
  const HcFittingValues *values = hc_fitting_get (other);
  const char *id = hc_fitting_get_id (other);

  if (raising->nest_below_mm <= 0 || self == NULL)
    return;
  if (raising->kind == HC_FITTING_ROOST && values->kind == HC_FITTING_NEST_BOXES)
    offer (raising, HC_HEIGHT_OVER_NESTS, highest_nest_floor_mm (other) + raising->nest_below_mm,
           0, id);
  else if (raising->kind == HC_FITTING_NEST_BOXES && values->kind == HC_FITTING_ROOST)
    offer (raising, HC_HEIGHT_UNDER_BARS, values->base_mm - raising->nest_below_mm,
           highest_nest_floor_mm (self) - hc_fitting_get (self)->base_mm, id);
}

static void
offer_fittings (Raising *raising, HcFitting *self, HcParts *fittings)
{
  for (guint i = 0; i < fittings->len; i++)
    {
      HcFitting *other = fittings->pdata[i];
      const char *id = hc_fitting_get_id (other);
      double bottom_mm, top_mm;

      if (g_str_equal (id, raising->id))
        continue;
      hc_stand_get_heights (other, &bottom_mm, &top_mm);
      offer (raising, HC_HEIGHT_UNDERSIDE, bottom_mm, 0, id);
      offer (raising, HC_HEIGHT_TOP, top_mm, raising->tall_mm, id);
      offer_by_rules (raising, self, other);
    }
}

static void
offer_openings (Raising *raising, HcParts *openings)
{
  for (guint i = 0; i < openings->len; i++)
    {
      const HcOpeningValues *values = hc_opening_get (openings->pdata[i]);
      const char *id = hc_opening_get_id (openings->pdata[i]);

      if (g_str_equal (id, raising->id))
        continue;
      offer (raising, HC_HEIGHT_UNDERSIDE, values->sill_mm, 0, id);
      offer (raising, HC_HEIGHT_TOP, values->sill_mm + values->height_mm, raising->tall_mm, id);
    }
}

static void
offer_heights_of (Raising *raising, HcFitting *self, const HcRoom *room)
{
  const HcPenValues *pen = hc_room_get (room);

  offer (raising, HC_HEIGHT_FLOOR, 0, 0, NULL);
  if (pen->bedding_mm > 0)
    offer (raising, HC_HEIGHT_BEDDING, pen->bedding_mm, 0, NULL);
  if (raising->is_opening)
    offer_openings (raising, hc_room_get_openings (room));
  else
    offer_fittings (raising, self, pen->fittings);
}

static void
offer_heights_beside (Raising *raising, const HcHouse *house, const HcOpening *opening)
{
  HcPen *beside[2];
  guint n = hc_layout_get_pens_beside (hc_house_get_layout (house),
                                       hc_opening_get (opening)->wall, beside);
  guint room;

  for (guint i = 0; i < n; i++)
    if (hc_house_find_room (house, hc_pen_get_id (beside[i]), &room))
      offer_heights_of (raising, NULL, hc_house_get_room (house, room));
}

static void
raise_fitting (Raising *raising, const HcHouse *house, HcFitting *fitting, HcPen *pen)
{
  double bottom_mm, top_mm;
  guint room;

  hc_stand_get_heights (fitting, &bottom_mm, &top_mm);
  raising->kind = hc_fitting_get (fitting)->kind;
  raising->tall_mm = top_mm - bottom_mm;
  offer (raising, HC_HEIGHT_AS_BEFORE, bottom_mm, 0, NULL);
  if (pen != NULL && hc_house_find_room (house, hc_pen_get_id (pen), &room))
    offer_heights_of (raising, fitting, hc_house_get_room (house, room));
}

/**
 * hc_house_catch_height: (skip)
 * @house: the house as it was
 * @id: id of a fitting or an opening that is raised or lowered
 * @base_mm: how high the hand has its underside
 * @reach_mm: from how far away a height catches it
 * @nest_below_mm: how far below the lowest bar the rules want nests, 0 when they
 *   do not ask
 * @caught: (out): what caught it
 *
 * Returns: whether something did
 */
gboolean
hc_house_catch_height (const HcHouse *house, const char *id, double base_mm, double reach_mm,
                       double nest_below_mm, HcHeightCatch *caught)
{
  HcLayout *layout = hc_house_get_layout (house);
  HcPen *pen = NULL;
  HcFitting *fitting = hc_layout_get_fitting (layout, id, &pen);
  HcOpening *opening = hc_layout_get_opening (layout, id);
  Raising raising = { .id = id, .wanted_mm = base_mm, .nearest_mm = reach_mm,
                      .nest_below_mm = nest_below_mm, .caught = caught };

  caught->base_mm = -1;
  if (fitting != NULL)
    raise_fitting (&raising, house, fitting, pen);
  else if (opening != NULL)
    {
      raising.is_opening = TRUE;
      raising.tall_mm = hc_opening_get (opening)->height_mm;
      offer (&raising, HC_HEIGHT_AS_BEFORE, hc_opening_get (opening)->sill_mm, 0, NULL);
      offer_heights_beside (&raising, house, opening);
    }
  return caught->base_mm >= 0;
}
