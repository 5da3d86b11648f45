/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The walls between two pens go, and they are one. */
#include "config.h"

#include "plan/edit-homes.h"
#include "plan/edit-partition.h"
#include "plan/edit-sound.h"
#include "plan/forget-pen.h"
#include "plan/without-walls.h"

#include <glib/gi18n-lib.h>

static gboolean
has_wall (const HcPen *pen, const char *wall)
{
  return g_strv_contains ((const char *const *) hc_pen_get (pen)->walls, wall);
}

/* Where in the ring of @pen its own walls begin after those it shares with
 * @other; -1 when they begin in no place, or in several. */
static int
find_own_walls (const HcPen *pen, const HcPen *other)
{
  char **walls = hc_pen_get (pen)->walls;
  guint n = g_strv_length (walls);
  int start = -1;

  for (guint i = 0; i < n; i++)
    {
      if (has_wall (other, walls[i]) || !has_wall (other, walls[(i + n - 1) % n]))
        continue;
      if (start >= 0)
        return -1;
      start = i;
    }
  return start;
}

static GPtrArray *
own_walls (const HcPen *pen, const HcPen *other, guint start)
{
  char **walls = hc_pen_get (pen)->walls;
  guint n = g_strv_length (walls);
  GPtrArray *own = g_ptr_array_new ();

  for (guint i = start; !has_wall (other, walls[i % n]); i++)
    g_ptr_array_add (own, walls[i % n]);
  return own;
}

static gboolean
meet (const HcLayout *layout, const char *one, const char *other)
{
  return hc_layout_get_shared_corner (hc_layout_get_wall (layout, one),
                                      hc_layout_get_wall (layout, other))
         != NULL;
}

/* Both may run round the same way or not. */
static char **
common_ring (const HcLayout *layout, const GPtrArray *one, const GPtrArray *other)
{
  g_autoptr (GStrvBuilder) ring = g_strv_builder_new ();
  gboolean forward = meet (layout, one->pdata[one->len - 1], other->pdata[0]);

  for (guint i = 0; i < one->len; i++)
    g_strv_builder_add (ring, one->pdata[i]);
  for (guint i = 0; i < other->len; i++)
    g_strv_builder_add (ring, other->pdata[forward ? i : other->len - 1 - i]);
  return g_strv_builder_end (ring);
}

static void
add_end (const HcLayout *layout, const char *corner, GArray *places)
{
  const HcCornerValues *values = hc_corner_get (hc_layout_get_corner (layout, corner));
  HcPoint at = { values->x_mm, values->y_mm };

  g_array_append_val (places, at);
}

static GArray *
drop_shared_walls (const HcLayout *layout, HcLayoutValues *values, const HcPen *pen,
                   const HcPen *other)
{
  char **walls = hc_pen_get (pen)->walls;
  GArray *places = g_array_new (FALSE, FALSE, sizeof (HcPoint));

  for (guint i = 0; walls[i] != NULL; i++)
    if (has_wall (other, walls[i]))
      {
        const HcWallValues *wall = hc_wall_get (hc_layout_get_wall (layout, walls[i]));

        add_end (layout, wall->from, places);
        add_end (layout, wall->to, places);
        hc_edit_drop_wall (values, walls[i]);
      }
  return places;
}

static HcParts *
all_fittings (const HcPen *pen, const HcPen *other)
{
  HcParts *fittings = hc_parts_new ();
  HcParts *both[] = { hc_pen_get (pen)->fittings, hc_pen_get (other)->fittings };

  for (guint i = 0; i < G_N_ELEMENTS (both); i++)
    for (guint j = 0; j < both[i]->len; j++)
      g_ptr_array_add (fittings, hc_fitting_ref (both[i]->pdata[j]));
  return fittings;
}

static HcLayout *
joined (HcLayout *layout, HcPen *pen, HcPen *other, char **ring)
{
  g_auto (HcLayoutValues) values = hc_edit_hold_layout (layout);
  HcPenValues one = *hc_pen_get (pen);
  g_autoptr (HcParts) fittings = all_fittings (pen, other);
  g_autoptr (GArray) places = drop_shared_walls (layout, &values, pen, other);
  g_autoptr (HcPen) grown = NULL;

  one.walls = ring;
  one.fittings = fittings;
  grown = hc_pen_with (pen, &one);
  hc_edit_drop (&values.pens, hc_pen_get_id (other));
  hc_edit_put (&values.pens, grown);
  return hc_layout_without_bare_corners (layout, &values, places);
}

static gboolean
may_be_one (HcPen *pen, HcPen *other, GError **error)
{
  if (pen == NULL || other == NULL || pen == other)
    hc_edit_refuse (error, _("That pen is no longer in the plan. Choose another."));
  else if (hc_pen_get (pen)->kind != hc_pen_get (other)->kind)
    hc_edit_refuse (error, _("A run and an indoor pen cannot be one. Put a pop hole between them "
                             "instead."));
  else if (find_own_walls (pen, other) < 0 || find_own_walls (other, pen) < 0)
    hc_edit_refuse (error, _("“%s” and “%s” do not meet along one stretch of wall. Choose two "
                             "pens side by side."),
                    hc_pen_get (pen)->name, hc_pen_get (other)->name);
  else
    return TRUE;
  return FALSE;
}

/**
 * hc_plan_join_pens:
 * @plan: a plan
 * @pen: id of a pen; it grows, and stays as it is otherwise
 * @other: id of a pen beside it, which goes
 * @error: says why not
 *
 * The walls between them go, with their doors. What stands in either stays
 * where it stands; birds at home in @other are at home in @pen then.
 *
 * Returns: (transfer full): the changed plan, or %NULL and a %HC_ERROR_EDIT
 */
HcPlan *
hc_plan_join_pens (HcPlan *plan, const char *pen, const char *other, GError **error)
{
  HcLayout *layout = hc_plan_get_layout (plan);
  HcPen *grows = hc_layout_get_pen (layout, pen);
  HcPen *goes = hc_layout_get_pen (layout, other);
  g_autoptr (GPtrArray) own = NULL;
  g_autoptr (GPtrArray) new = NULL;
  g_auto (GStrv) ring = NULL;
  g_autoptr (HcLayout) one = NULL;
  g_autoptr (HcPlan) walled = NULL;
  g_autoptr (HcPlan) homed = NULL;

  if (!may_be_one (grows, goes, error))
    return NULL;
  own = own_walls (grows, goes, find_own_walls (grows, goes));
  new = own_walls (goes, grows, find_own_walls (goes, grows));
  ring = common_ring (layout, own, new);
  one = joined (layout, grows, goes, ring);
  walled = hc_plan_with_layout (plan, one);
  homed = hc_edit_forget_pen (walled, other, pen);
  return hc_edit_if_sound (plan, hc_edit_rehouse_all (homed), error);
}
