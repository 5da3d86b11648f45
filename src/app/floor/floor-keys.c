/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Keys of the floor: everything the mouse does there, keys do too. */
#include "config.h"

#include "app/floor/floor-handle.h"
#include "app/floor/floor-private.h"

#include "base/ids.h"
#include "plan/edit-corner.h"
#include "plan/edit-fitting.h"
#include "plan/edit-opening.h"
#include "plan/wall-places.h"

#include <glib/gi18n.h>

#define TURN_STEP_DEG 15.0
#define BESIDE_MM 200.0

static void
nudge_fittings (HcFloor *self, HcPoint by)
{
  g_auto (GStrv) ids = hc_canvas_get_selected (&self->canvas, HC_ITEM_FITTING);
  g_autofree char *merge = g_strjoinv (" ", ids);
  GError *error = NULL;
  HcPlan *plan;

  if (*ids == NULL)
    return;
  plan = hc_plan_move_fittings (hc_canvas_get_plan (&self->canvas), (const char *const *) ids, by, &error);
  hc_canvas_apply (&self->canvas, plan, error, _("Move"), merge);
}

static void
nudge_opening (HcFloor *self, const char *id, HcPoint by)
{
  HcOpening *opening = hc_layout_get_opening (self->canvas.layout, id);
  HcWall *wall = hc_layout_get_wall (self->canvas.layout, hc_opening_get (opening)->wall);
  HcPoint from, to;
  GError *error = NULL;
  double along_mm = hc_opening_get (opening)->along_mm;
  HcPlan *plan;

  if (!hc_layout_get_wall_line (self->canvas.layout, wall, &from, &to))
    return;
  along_mm += hc_point_dot (by, hc_point_unit (hc_point_subtract (to, from)));
  plan = hc_plan_slide_opening (hc_canvas_get_plan (&self->canvas), id, hc_wall_get_id (wall), along_mm, &error);
  hc_canvas_apply (&self->canvas, plan, error, _("Slide Along the Wall"), id);
}

/**
 * hc_floor_nudge: (skip)
 * @canvas: the floor
 * @focus: (nullable): what has the focus
 * @by: the step of an arrow key
 */
void
hc_floor_nudge (HcCanvas *canvas, HcCanvasItem *focus, HcPoint by)
{
  if (focus != NULL && hc_canvas_item_get_kind (focus) == HC_ITEM_OPENING
      && hc_canvas_is_chosen_alone (canvas, focus))
    nudge_opening (HC_FLOOR (canvas), hc_canvas_item_get_id (focus), by);
  else
    nudge_fittings (HC_FLOOR (canvas), by);
}

/* The focused opening goes to the middle of the next wall, or the one before. */
static void
go_to_wall (GtkWidget *widget, const char *name, GVariant *parameter)
{
  HcFloor *self = HC_FLOOR (widget);
  HcParts *walls = hc_layout_get (self->canvas.layout)->walls;
  HcOpening *opening = hc_layout_get_opening (self->canvas.layout, *hc_canvas_get_selection (&self->canvas));
  guint at;
  const char *wall;
  GError *error = NULL;
  HcPlan *plan;

  if (opening == NULL
      || !hc_parts_find_index (walls, hc_opening_get (opening)->wall, &at))
    return;
  at = (at + walls->len + (guint) g_variant_get_int32 (parameter)) % walls->len;
  wall = hc_part_get_id (walls->pdata[at]);
  plan = hc_plan_slide_opening (hc_canvas_get_plan (&self->canvas), hc_opening_get_id (opening), wall,
                                hc_layout_get_wall_length (self->canvas.layout, wall) / 2, &error);
  hc_canvas_apply (&self->canvas, plan, error, _("Move to Another Wall"), NULL);
}

static HcCanvasItem *
focused_handle (HcFloor *self, HcHandleRole role)
{
  GtkWidget *focus = gtk_root_get_focus (gtk_widget_get_root (GTK_WIDGET (self)));
  HcCanvasItem *item = HC_IS_CANVAS_ITEM (focus) ? HC_CANVAS_ITEM (focus) : NULL;

  if (item == NULL || hc_canvas_item_get_kind (item) != HC_ITEM_HANDLE
      || hc_canvas_item_get_number (item) != (guint) role)
    return NULL;
  return item;
}

/* A wall gets a corner in its middle, so that the pen can take another shape. */
static void
insert_corner (GtkWidget *widget, const char *name, GVariant *parameter)
{
  HcFloor *self = HC_FLOOR (widget);
  HcCanvasItem *handle = focused_handle (self, HC_HANDLE_WALL);
  g_autofree char *corner = hc_id_new ();
  g_autofree char *wall = hc_id_new ();
  const char *id;
  GError *error = NULL;
  HcPlan *plan;

  if (handle == NULL)
    return;
  id = hc_canvas_item_get_id (handle);
  plan = hc_plan_insert_corner (hc_canvas_get_plan (&self->canvas), id,
                                hc_layout_get_wall_length (self->canvas.layout, id) / 2, corner, wall,
                                &error);
  if (hc_canvas_apply (&self->canvas, plan, error, _("Add a Corner"), NULL))
    hc_canvas_focus_handle (&self->canvas, corner, HC_HANDLE_CORNER);
}

/* Enter on a wall adds a corner; on anything else it leads to its properties. */
static void
go_into (GtkWidget *widget, const char *name, GVariant *parameter)
{
  gboolean wall = focused_handle (HC_FLOOR (widget), HC_HANDLE_WALL) != NULL;

  gtk_widget_activate_action (widget, wall ? "floor.insert-corner" : "win.describe", NULL);
}

static gboolean
remove_focused_corner (HcFloor *self)
{
  HcCanvasItem *handle = focused_handle (self, HC_HANDLE_CORNER);
  GError *error = NULL;

  if (handle == NULL)
    return FALSE;
  hc_canvas_apply (&self->canvas, hc_plan_remove_corner (hc_canvas_get_plan (&self->canvas), hc_canvas_item_get_id (handle), &error),
         error, _("Remove a Corner"), NULL);
  return TRUE;
}

/* A second press takes a corner out, or adds one to a wall, as Delete and Enter do. */
static void
change_corner (GtkWidget *widget, const char *name, GVariant *parameter)
{
  if (!remove_focused_corner (HC_FLOOR (widget)))
    insert_corner (widget, name, parameter);
}

static void
remove_selected (GtkWidget *widget, const char *name, GVariant *parameter)
{
  if (!remove_focused_corner (HC_FLOOR (widget)))
    hc_canvas_remove_selected (HC_CANVAS (widget));
}

static void
duplicate_selected (GtkWidget *widget, const char *name, GVariant *parameter)
{
  HcFloor *self = HC_FLOOR (widget);
  g_auto (GStrv) ids = hc_canvas_get_selected (&self->canvas, HC_ITEM_FITTING);
  guint n = g_strv_length (ids);
  g_auto (GStrv) copies = g_new0 (char *, n + 1);
  GError *error = NULL;
  HcPlan *plan;

  if (n == 0)
    return;
  for (guint i = 0; i < n; i++)
    copies[i] = hc_id_new ();
  plan = hc_plan_duplicate_fittings (hc_canvas_get_plan (&self->canvas), (const char *const *) ids,
                                     (const char *const *) copies,
                                     (HcPoint){ BESIDE_MM, BESIDE_MM }, &error);
  if (hc_canvas_apply (&self->canvas, plan, error, _("Duplicate"), NULL))
    hc_document_select (hc_panel_get_document (HC_PANEL (self)), (const char *const *) copies);
}

static void
turn_selected (GtkWidget *widget, const char *name, GVariant *parameter)
{
  HcFloor *self = HC_FLOOR (widget);
  g_auto (GStrv) ids = hc_canvas_get_selected (&self->canvas, HC_ITEM_FITTING);
  GError *error = NULL;
  HcPlan *plan;

  if (*ids == NULL)
    return;
  plan = hc_plan_turn_fittings (hc_canvas_get_plan (&self->canvas), (const char *const *) ids,
                                g_variant_get_double (parameter), &error);
  hc_canvas_apply (&self->canvas, plan, error, _("Turn"), "turn");
}

/**
 * hc_floor_class_add_actions: (skip)
 * @klass: the class of floors
 */
void
hc_floor_class_add_actions (GtkWidgetClass *klass)
{
  gtk_widget_class_install_action (klass, "floor.remove", NULL, remove_selected);
  gtk_widget_class_install_action (klass, "floor.duplicate", NULL, duplicate_selected);
  gtk_widget_class_install_action (klass, "floor.insert-corner", NULL, insert_corner);
  gtk_widget_class_install_action (klass, "floor.change-corner", NULL, change_corner);
  gtk_widget_class_install_action (klass, "floor.go-into", NULL, go_into);
  gtk_widget_class_install_action (klass, "floor.go-to-wall", "i", go_to_wall);
  gtk_widget_class_install_action (klass, "floor.turn", "d", turn_selected);

  gtk_widget_class_add_binding_action (klass, GDK_KEY_Delete, 0, "floor.remove", NULL);
  gtk_widget_class_add_binding_action (klass, GDK_KEY_BackSpace, 0, "floor.remove", NULL);
  gtk_widget_class_add_binding_action (klass, GDK_KEY_Insert, 0, "floor.insert-corner", NULL);
  gtk_widget_class_add_binding_action (klass, GDK_KEY_Return, 0, "floor.go-into", NULL);
  gtk_widget_class_add_binding_action (klass, GDK_KEY_KP_Enter, 0, "floor.go-into", NULL);
  gtk_widget_class_add_binding_action (klass, GDK_KEY_Page_Down, 0, "floor.go-to-wall", "i", 1);
  gtk_widget_class_add_binding_action (klass, GDK_KEY_Page_Up, 0, "floor.go-to-wall", "i", -1);
  gtk_widget_class_add_binding_action (klass, GDK_KEY_d, GDK_CONTROL_MASK, "floor.duplicate",
                                       NULL);
  gtk_widget_class_add_binding_action (klass, GDK_KEY_r, 0, "floor.turn", "d", 90.0);
  gtk_widget_class_add_binding_action (klass, GDK_KEY_bracketright, 0, "floor.turn", "d",
                                       TURN_STEP_DEG);
  gtk_widget_class_add_binding_action (klass, GDK_KEY_bracketleft, 0, "floor.turn", "d",
                                       -TURN_STEP_DEG);
}
