/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Moves the far walls of a ready house; what stands by a wall stays by it, and
 * what runs along one grows with it. */
#include "config.h"

#include "begin/stretch.h"

#include "base/box.h"
#include "base/units.h"
#include "plan/edit-fitting.h"
#include "plan/edit-opening.h"
#include "plan/move-corners.h"
#include "plan/wall-corners.h"
#include "plan/wall-places.h"

#include <glib/gi18n-lib.h>
#include <math.h>

/* What reaches over more of the house than this runs along its wall. */
#define RUNS_ALONG 0.6

typedef struct
{
  HcBox inside;
  double wall_mm;
  HcPoint more;
} Stretch;

static HcPen *
find_indoors (const HcLayout *layout)
{
  HcParts *pens = hc_layout_get (layout)->pens;

  for (guint i = 0; i < pens->len; i++)
    if (hc_pen_get (pens->pdata[i])->kind == HC_PEN_INDOOR)
      return pens->pdata[i];
  return NULL;
}

static gboolean
measure (const HcPlan *plan, Stretch *stretch)
{
  HcLayout *layout = hc_plan_get_layout (plan);
  HcPen *pen = find_indoors (layout);
  g_autoptr (GArray) ring = NULL;

  if (pen == NULL)
    return FALSE;
  ring = hc_layout_get_pen_ring (layout, pen);
  stretch->inside = hc_box_around ((const HcPoint *) ring->data, ring->len);
  stretch->wall_mm
      = hc_wall_get (hc_layout_get_wall (layout, hc_pen_get (pen)->walls[0]))->thickness_mm;
  return ring->len > 2;
}

/**
 * hc_ready_house_get_outside:
 * @plan: a plan with one house
 * @width_mm: (out): its width over the outer faces of its walls
 * @length_mm: (out): its length
 */
void
hc_ready_house_get_outside (const HcPlan *plan, double *width_mm, double *length_mm)
{
  Stretch stretch = { 0 };

  *width_mm = *length_mm = 0;
  if (!measure (plan, &stretch))
    return;
  *width_mm = stretch.inside.width_mm + 2 * stretch.wall_mm;
  *length_mm = stretch.inside.depth_mm + 2 * stretch.wall_mm;
}

/* What is by the near wall stays, what is by the far one goes with it, what is
 * between goes half the way. */
static double
stretched (double at, double start, double size, double more)
{
  double part = (at - start) / size;

  if (part < 0.4)
    return at;
  return part > 0.6 ? at + more : at + more / 2;
}

static HcPoint
stretched_point (const Stretch *stretch, HcPoint at)
{
  return hc_point (
      stretched (at.x_mm, stretch->inside.x_mm, stretch->inside.width_mm, stretch->more.x_mm),
      stretched (at.y_mm, stretch->inside.y_mm, stretch->inside.depth_mm, stretch->more.y_mm));
}

static HcPlan *
move_walls (HcPlan *plan, const Stretch *stretch, GError **error)
{
  HcLayout *layout = hc_plan_get_layout (plan);
  HcParts *corners = hc_layout_get (layout)->corners;
  g_autoptr (GArray) moves = g_array_new (FALSE, FALSE, sizeof (HcCornerMove));

  for (guint i = 0; i < corners->len; i++)
    {
      const char *id = hc_corner_get_id (corners->pdata[i]);
      HcCornerMove move = { id, stretched_point (stretch, hc_corner_get_point (layout, id)) };

      g_array_append_val (moves, move);
    }
  return hc_edit_move_corners (plan, (const HcCornerMove *) moves->data, moves->len, error);
}

static gboolean
may_grow (const HcFittingValues *values)
{
  return values->kind == HC_FITTING_ROOST || values->kind == HC_FITTING_DROPPINGS_BOARD;
}

static void
grow_along (const Stretch *stretch, HcFittingValues *values)
{
  gboolean lies_along_x = fabs (remainder (values->turn_deg, 180)) < 1;
  double side_mm = lies_along_x ? stretch->inside.width_mm : stretch->inside.depth_mm;

  if (may_grow (values) && values->width_mm > RUNS_ALONG * side_mm)
    values->width_mm += lies_along_x ? stretch->more.x_mm : stretch->more.y_mm;
}

static HcPlan *
move_fitting (HcPlan *plan, const char *id, const HcFittingValues *before,
              const Stretch *stretch, GError **error)
{
  HcFittingValues values = *before;
  HcPoint at = stretched_point (stretch, hc_point (before->x_mm, before->y_mm));

  values.x_mm = at.x_mm;
  values.y_mm = at.y_mm;
  grow_along (stretch, &values);
  return hc_plan_set_fitting (plan, id, &values, error);
}

static HcPlan *
move_fittings (HcPlan *plan, const HcLayout *before, const Stretch *stretch, GError **error)
{
  HcParts *pens = hc_layout_get (before)->pens;
  g_autoptr (HcPlan) moved = hc_plan_ref (plan);

  for (guint i = 0; moved != NULL && i < pens->len; i++)
    {
      HcParts *fittings = hc_pen_get (pens->pdata[i])->fittings;

      for (guint j = 0; moved != NULL && j < fittings->len; j++)
        {
          g_autoptr (HcPlan) last = g_steal_pointer (&moved);

          moved = move_fitting (last, hc_fitting_get_id (fittings->pdata[j]),
                                hc_fitting_get (fittings->pdata[j]), stretch, error);
        }
    }
  return g_steal_pointer (&moved);
}

static double
floor_growth (const Stretch *stretch)
{
  const HcBox *inside = &stretch->inside;

  return (1 + stretch->more.x_mm / inside->width_mm)
         * (1 + stretch->more.y_mm / inside->depth_mm);
}

static gboolean
grows_with_floor (const HcOpeningValues *values)
{
  return values->kind == HC_OPENING_WINDOW || values->kind == HC_OPENING_VENT;
}

/* Light and air are asked for by the floor. */
static HcPlan *
move_opening (HcPlan *plan, const HcLayout *before, HcOpening *opening, const Stretch *stretch,
              GError **error)
{
  HcOpeningValues values = *hc_opening_get (opening);
  HcLayout *layout = hc_plan_get_layout (plan);
  const char *id = hc_opening_get_id (opening);
  HcPoint at = stretched_point (
      stretch, hc_layout_get_place_in_wall (before, values.wall, values.along_mm));
  HcPlan *wider = NULL;

  values.along_mm
      = hc_point_distance (hc_layout_get_place_in_wall (layout, values.wall, 0), at);
  if (grows_with_floor (&values) && floor_growth (stretch) > 1)
    {
      HcOpeningValues grown = values;

      grown.width_mm *= floor_growth (stretch);
      wider = hc_plan_set_opening (plan, id, &grown, NULL);
    }
  return wider != NULL ? wider : hc_plan_set_opening (plan, id, &values, error);
}

static HcPlan *
move_openings (HcPlan *plan, const HcLayout *before, const Stretch *stretch, GError **error)
{
  HcParts *openings = hc_layout_get (before)->openings;
  g_autoptr (HcPlan) moved = hc_plan_ref (plan);

  for (guint i = 0; moved != NULL && i < openings->len; i++)
    {
      g_autoptr (HcPlan) last = g_steal_pointer (&moved);

      moved = move_opening (last, before, openings->pdata[i], stretch, error);
    }
  return g_steal_pointer (&moved);
}

static gboolean
is_within (const HcPlan *plan, double asked_mm, double own_mm, GError **error)
{
  HcUnits units = hc_plan_get_site (plan)->units;
  g_autofree char *least = hc_length_format (own_mm * HC_STRETCH_LEAST, units);
  g_autofree char *most = hc_length_format (own_mm * HC_STRETCH_MOST, units);

  if (asked_mm >= own_mm * HC_STRETCH_LEAST && asked_mm <= own_mm * HC_STRETCH_MOST)
    return TRUE;
  hc_edit_refuse (error, _("This house can be from %s to %s. For other sizes begin with the three "
                           "questions."),
                  least, most);
  return FALSE;
}

/**
 * hc_ready_house_stretch:
 * @plan: the plan of a ready house
 * @width_mm: its width over the outer faces of its walls
 * @length_mm: its length
 * @error: says between which measures it can be
 *
 * Its far walls move and the run with them. Things keep their sizes and stay by
 * the wall they are by; roosts and droppings boards that run along a wall grow
 * with it.
 *
 * Returns: (transfer full): the house to those measures, or %NULL and a
 *   %HC_ERROR_EDIT
 */
HcPlan *
hc_ready_house_stretch (HcPlan *plan, double width_mm, double length_mm, GError **error)
{
  HcLayout *before = hc_plan_get_layout (plan);
  Stretch stretch = { 0 };
  double own_width_mm, own_length_mm;
  g_autoptr (HcPlan) walled = NULL;
  g_autoptr (HcPlan) furnished = NULL;

  if (!measure (plan, &stretch))
    return hc_edit_refuse (error, _("There is no house in this plan. Draw a pen first."));
  hc_ready_house_get_outside (plan, &own_width_mm, &own_length_mm);
  if (!is_within (plan, width_mm, own_width_mm, error)
      || !is_within (plan, length_mm, own_length_mm, error))
    return NULL;
  stretch.more = hc_point (width_mm - own_width_mm, length_mm - own_length_mm);
  walled = move_walls (plan, &stretch, error);
  furnished = walled != NULL ? move_fittings (walled, before, &stretch, error) : NULL;
  return furnished != NULL ? move_openings (furnished, before, &stretch, error) : NULL;
}
