/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * By doors and pop holes, and through windows and vents. */
#include "config.h"

#include "supply/ways-in-private.h"

static gboolean
is_hole (const HcOpeningValues *values)
{
  return values->kind == HC_OPENING_WINDOW || values->kind == HC_OPENING_VENT;
}

static double
least_side_mm (const HcOpeningValues *values)
{
  return MIN (values->width_mm, values->height_mm);
}

/* Of a latch nobody told of, only those that open any simple one are feared. */
static gboolean
opens (const HcIntruder *intruder, const char *id)
{
  const HcLatch *latch = hc_book_get_latch (intruder->book, id);

  if (latch == NULL)
    return intruder->animal->opens_latches;
  return g_strv_contains (latch->opened_by, intruder->animal->id);
}

static gboolean
stands_open (const HcIntruder *intruder, const HcOpeningValues *values)
{
  if (values->kind == HC_OPENING_EGG_DOOR)
    return FALSE;
  return intruder->by_night ? !values->shut_at_dusk : values->open_by_day;
}

static void
add (HcProwl *prowl, HcWayInCause cause, const HcOpening *opening, double have_mm)
{
  const HcRoomWall *wall = hc_room_get_wall_of (prowl->here, opening);
  const HcOpeningValues *values = hc_opening_get (opening);
  HcWayIn *way = hc_prowl_add (prowl, cause, wall, hc_opening_get_id (opening));
  HcPoint along = hc_point_unit (hc_point_subtract (wall->line_to, wall->line_from));

  way->from = hc_point_add (
      wall->line_from, hc_point_scale (along, values->along_mm - values->width_mm / 2));
  way->to = hc_point_add (
      wall->line_from, hc_point_scale (along, values->along_mm + values->width_mm / 2));
  way->have_mm = have_mm;
  if (have_mm > 0)
    way->want_mm = prowl->intruder->animal->passes_mm;
}

static void
look_at_door (HcProwl *prowl, const HcOpening *opening, const HcOpeningValues *values)
{
  const HcIntruder *intruder = prowl->intruder;

  if (stands_open (intruder, values))
    {
      if (least_side_mm (values) > intruder->animal->passes_mm)
        add (prowl, HC_WAY_IN_LEFT_OPEN, opening, 0);
      return;
    }
  if (opens (intruder, values->latch) && least_side_mm (values) > intruder->animal->passes_mm)
    add (prowl, HC_WAY_IN_LATCH, opening, 0);
  if (values->gap_mm > intruder->animal->passes_mm)
    add (prowl, HC_WAY_IN_GAP, opening, values->gap_mm);
}

/* A window that is opened in any season is a hole: nobody runs round at dusk
 * to shut them all. */
static void
look_at_hole (HcProwl *prowl, const HcOpening *opening, const HcOpeningValues *values)
{
  HcWayInCause cause;
  double have_mm;

  if (MAX (values->open_winter, values->open_summer) <= 0
      || least_side_mm (values) <= prowl->intruder->animal->passes_mm
      || !hc_prowl_passes_mesh (prowl, values->mesh, values->fixing, &cause, &have_mm))
    return;
  add (prowl, cause, opening, have_mm);
}

void
hc_prowl_round_openings (HcProwl *prowl)
{
  HcParts *openings = hc_room_get_openings (prowl->here);

  for (guint i = 0; i < openings->len; i++)
    {
      const HcOpeningValues *values = hc_opening_get (openings->pdata[i]);

      if (hc_room_get_wall_of (prowl->here, openings->pdata[i]) == NULL
          || (values->sill_mm > 0 && !hc_prowl_gets_up (prowl, values->sill_mm)))
        continue;
      if (is_hole (values))
        look_at_hole (prowl, openings->pdata[i], values);
      else
        look_at_door (prowl, openings->pdata[i], values);
    }
}
