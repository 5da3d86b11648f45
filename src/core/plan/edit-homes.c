/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Puts fittings into the pen their middle stands in, or among the loose ones. */
#include "config.h"

#include "plan/edit-homes.h"

#include "base/ring.h"

static gboolean
holds (const HcLayout *layout, const HcPen *pen, HcPoint at)
{
  g_autoptr (GArray) ring = hc_layout_get_pen_ring (layout, pen);

  return ring->len > 2
         && hc_ring_contains_point ((const HcPoint *) ring->data, ring->len, at);
}

static HcPoint
middle_of (const HcFitting *fitting)
{
  const HcFittingValues *values = hc_fitting_get (fitting);

  return (HcPoint){ values->x_mm, values->y_mm };
}

/* A fitting that still stands in @before stays there without a look at the
 * other pens: most moves are within one pen. */
static HcPen *
home_of (const HcLayout *layout, HcPen *before, HcPoint at)
{
  if (before != NULL && holds (layout, before, at))
    return before;
  return hc_layout_find_pen_at (layout, at);
}

static HcPen *
pen_with_fittings (HcPen *pen, HcParts *fittings)
{
  HcPenValues values = *hc_pen_get (pen);

  values.fittings = fittings;
  return hc_pen_with (pen, &values);
}

static HcPen *
pen_holding (const HcLayoutValues *values, const char *id)
{
  for (guint i = 0; i < values->pens->len; i++)
    if (hc_parts_find (hc_pen_get (values->pens->pdata[i])->fittings, id) != NULL)
      return values->pens->pdata[i];
  return NULL;
}

/**
 * hc_edit_take_fitting: (skip)
 * @values: (inout): held values of a layout
 * @id: id of a fitting to take out of it
 */
void
hc_edit_take_fitting (HcLayoutValues *values, const char *id)
{
  HcPen *home = pen_holding (values, id);
  g_autoptr (HcParts) without = NULL;
  g_autoptr (HcPen) emptied = NULL;

  if (home == NULL)
    {
      hc_edit_drop (&values->loose, id);
      return;
    }
  without = hc_parts_without (hc_pen_get (home)->fittings, id);
  emptied = pen_with_fittings (home, without);
  hc_edit_put (&values->pens, emptied);
}

static void
put_into_pen (HcLayoutValues *values, const char *pen, HcFitting *fitting)
{
  HcPen *home = hc_parts_find (values->pens, pen);
  g_autoptr (HcParts) with = hc_parts_with (hc_pen_get (home)->fittings, fitting);
  g_autoptr (HcPen) filled = pen_with_fittings (home, with);

  hc_edit_put (&values->pens, filled);
}

/**
 * hc_edit_house_fitting: (skip)
 * @layout: the layout, for the rings of its pens
 * @values: (inout): held values of @layout, perhaps with other fittings
 * @fitting: a fitting, new or with a changed place
 *
 * Puts it where it stands. Within one pen, and among the loose ones, it keeps
 * its place in the list.
 */
void
hc_edit_house_fitting (const HcLayout *layout, HcLayoutValues *values, HcFitting *fitting)
{
  const char *id = hc_fitting_get_id (fitting);
  HcPen *before = pen_holding (values, id);
  HcPen *home = home_of (layout, before, middle_of (fitting));

  if (home != before || (home == NULL && before != NULL))
    hc_edit_take_fitting (values, id);
  if (home != NULL)
    {
      hc_edit_drop (&values->loose, id);
      put_into_pen (values, hc_pen_get_id (home), fitting);
    }
  else
    hc_edit_put (&values->loose, fitting);
}

static void
rehouse_list (const HcLayout *layout, HcLayoutValues *values, HcParts *fittings)
{
  for (guint i = 0; i < fittings->len; i++)
    hc_edit_house_fitting (layout, values, fittings->pdata[i]);
}

/**
 * hc_edit_rehouse_all: (skip)
 * @plan: a plan whose walls have changed
 *
 * Returns: (transfer full): the plan with every fitting in the pen it stands
 *   in now; @plan when all do
 */
HcPlan *
hc_edit_rehouse_all (HcPlan *plan)
{
  HcLayout *layout = hc_plan_get_layout (plan);
  g_auto (HcLayoutValues) values = hc_edit_hold_layout (layout);
  HcParts *pens = values.pens;
  HcParts *loose = values.loose;

  for (guint i = 0; i < pens->len; i++)
    rehouse_list (layout, &values, hc_pen_get (pens->pdata[i])->fittings);
  rehouse_list (layout, &values, loose);
  return hc_edit_with_layout (plan, &values);
}
