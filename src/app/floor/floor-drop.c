/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Things dropped on the floor: fittings where they fall, openings into the nearest wall. */
#include "config.h"

#include "app/floor/floor-private.h"

#include "base/ids.h"
#include "plan/edit-fitting.h"
#include "plan/edit-opening.h"
#include "plan/wall-places.h"
#include "supply/free-place.h"

#include <glib/gi18n.h>

static void
select_new (HcFloor *self, const char *id)
{
  const char *const ids[] = { id, NULL };

  hc_document_select (hc_panel_get_document (HC_PANEL (self)), ids);
  gtk_widget_grab_focus (GTK_WIDGET (self));
}

/**
 * hc_floor_add_fitting:
 * @self: the floor
 * @pattern: a fitting like the one to add
 * @at: where, mm
 */
void
hc_floor_add_fitting (HcFloor *self, HcFitting *pattern, HcPoint at)
{
  HcPlan *plan = hc_document_get_settled_plan (hc_panel_get_document (HC_PANEL (self)));
  HcFittingValues values = *hc_fitting_get (pattern);
  g_autofree char *id = hc_id_new ();
  g_autoptr (HcFitting) fitting = NULL;
  GError *error = NULL;

  values.x_mm = at.x_mm;
  values.y_mm = at.y_mm;
  fitting = hc_fitting_new (id, &values);
  if (hc_panel_apply (HC_PANEL (self), hc_plan_add_fitting (plan, fitting, &error), error,
                      _("Add"), NULL))
    select_new (self, id);
}

/**
 * hc_floor_add_opening:
 * @self: the floor
 * @pattern: an opening like the one to add
 * @at: near which wall, mm
 */
void
hc_floor_add_opening (HcFloor *self, HcOpening *pattern, HcPoint at)
{
  HcPlan *plan = hc_document_get_settled_plan (hc_panel_get_document (HC_PANEL (self)));
  HcOpeningValues values = *hc_opening_get (pattern);
  g_autofree char *id = hc_id_new ();
  g_autoptr (HcOpening) opening = NULL;
  GError *error = NULL;
  HcWall *wall = hc_layout_find_nearest_wall (hc_plan_get_layout (plan), at, &values.along_mm);

  if (wall == NULL)
    {
      hc_panel_say (HC_PANEL (self), _("There is no wall yet. Draw a pen first."));
      return;
    }
  values.wall = (char *) hc_wall_get_id (wall);
  opening = hc_opening_new (id, &values);
  if (hc_panel_apply (HC_PANEL (self), hc_plan_add_opening (plan, opening, &error), error,
                      _("Add"), NULL))
    select_new (self, id);
}

static gboolean
dropped (GtkDropTarget *target, const GValue *value, double x, double y, HcFloor *self)
{
  HcPoint at = hc_sight_to_mm (&self->canvas.sight, x, y);

  if (hc_panel_get_document (HC_PANEL (self)) == NULL)
    return FALSE;
  if (G_VALUE_HOLDS (value, hc_fitting_get_type ()))
    hc_floor_add_fitting (self, g_value_get_boxed (value), at);
  else
    hc_floor_add_opening (self, g_value_get_boxed (value), at);
  return TRUE;
}

/**
 * hc_floor_add_drop: (skip)
 * @self: the floor
 */
void
hc_floor_add_drop (HcFloor *self)
{
  GType types[] = { hc_fitting_get_type (), hc_opening_get_type () };
  GtkDropTarget *target = gtk_drop_target_new (G_TYPE_INVALID, GDK_ACTION_COPY);

  gtk_drop_target_set_gtypes (target, types, G_N_ELEMENTS (types));
  g_signal_connect (target, "drop", G_CALLBACK (dropped), self);
  gtk_widget_add_controller (GTK_WIDGET (self), GTK_EVENT_CONTROLLER (target));
}

/* The middle of what is selected, else of what is in sight. */
static HcPoint
middle_of_interest (HcFloor *self)
{
  const char *const *ids
      = hc_document_get_selection (hc_panel_get_document (HC_PANEL (self)));
  HcCanvasItem *item = ids[0] != NULL ? hc_canvas_get_item (&self->canvas, ids[0]) : NULL;

  if (item != NULL)
    return hc_canvas_item_get_frame (item)->centre;
  return hc_sight_to_mm (&self->canvas.sight, gtk_widget_get_width (GTK_WIDGET (self)) / 2.0,
                         gtk_widget_get_height (GTK_WIDGET (self)) / 2.0);
}

/**
 * hc_floor_get_free_place:
 * @self: the floor
 * @thing: (nullable): a fitting that is to be added by keys; %NULL for an opening
 *
 * Returns: where to put it: near what is selected, else near the middle of what
 *   is in sight, and clear of what stands there
 */
HcPoint
hc_floor_get_free_place (HcFloor *self, HcFitting *thing)
{
  HcChecker *checker = hc_panel_get_checker (HC_PANEL (self));
  HcHouse *house
      = hc_check_get_house (hc_checker_get_check (checker, hc_checker_get_condition (checker)));
  HcPoint middle = middle_of_interest (self);
  HcPen *pen = hc_layout_find_pen_at (hc_house_get_layout (house), middle);
  guint room;

  if (pen == NULL || thing == NULL || !hc_house_find_room (house, hc_pen_get_id (pen), &room))
    return middle;
  return hc_room_find_free_place (hc_house_get_room (house, room), thing, middle);
}
