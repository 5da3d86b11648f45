/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * More and larger openings: pop holes, windows and vents. */
#include "config.h"

#include "begin/bare-house.h"
#include "begin/house-figure.h"
#include "begin/raise.h"

#include "base/ids.h"
#include "book/make-opening.h"
#include "plan/edit-opening.h"
#include "plan/wall-places.h"

static const HcPoint south = { 0, 1 };
static const HcPoint north = { 0, -1 };
static const HcPoint west = { -1, 0 };

/* As wide as it is to be and the wall has room for. */
static HcPlan *
add_in_wall (HcPlan *plan, HcBook *book, const char *kind, HcPoint outward,
             void (*suit) (HcPlan *plan, HcBook *book, HcOpeningValues *values))
{
  HcLayout *layout = hc_plan_get_layout (plan);
  const char *wall = hc_bare_house_find_wall (layout, HC_BARE_HOUSE_PEN, outward);
  const HcOpeningType *type = hc_book_get_opening_type (book, kind);
  g_autofree char *id = hc_id_new ();
  g_autoptr (HcOpening) pattern = NULL;
  g_autoptr (HcOpening) opening = NULL;
  HcOpeningValues values;
  double length_mm;

  if (wall == NULL || type == NULL)
    return NULL;
  length_mm = hc_layout_get_wall_length (layout, wall);
  pattern = hc_opening_type_make (type, id);
  values = *hc_opening_get (pattern);
  values.wall = (char *) wall;
  values.along_mm = length_mm / 2;
  suit (plan, book, &values);
  values.width_mm
      = MIN (values.width_mm, length_mm - 2 * hc_house_measure (book, "beside_opening_mm"));
  opening = hc_opening_with (pattern, &values);
  return hc_plan_add_opening (plan, opening, NULL);
}

static void
suit_pop_hole (HcPlan *plan, HcBook *book, HcOpeningValues *values)
{
  values->width_mm = hc_house_figure (plan, book, "way-out.pop-hole-width", values->width_mm);
  values->height_mm = hc_house_figure (plan, book, "way-out.pop-hole-height", values->height_mm);
}

static void
suit_window (HcPlan *plan, HcBook *book, HcOpeningValues *values)
{
  values->width_mm = hc_house_measure (book, "window_width_mm");
  values->height_mm = hc_house_measure (book, "window_height_mm");
}

static void
suit_vent (HcPlan *plan, HcBook *book, HcOpeningValues *values)
{
  values->width_mm = hc_house_measure (book, "vent_width_mm");
  values->height_mm = hc_house_measure (book, "vent_height_mm");
}

static HcPlan *
add_in_any (HcPlan *plan, HcBook *book, const char *kind,
            void (*suit) (HcPlan *plan, HcBook *book, HcOpeningValues *values))
{
  const HcPoint sides[] = { south, north, west };

  for (guint i = 0; i < G_N_ELEMENTS (sides); i++)
    {
      HcPlan *more = add_in_wall (plan, book, kind, sides[i], suit);

      if (more != NULL)
        return more;
    }
  return NULL;
}

HcPlan *
hc_raise_way_out (HcPlan *plan, HcBook *book)
{
  return add_in_wall (plan, book, "pop_hole", south, suit_pop_hole);
}

HcPlan *
hc_raise_light (HcPlan *plan, HcBook *book)
{
  return add_in_any (plan, book, "window", suit_window);
}

HcPlan *
hc_raise_air (HcPlan *plan, HcBook *book)
{
  return add_in_any (plan, book, "vent", suit_vent);
}
