/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Keys of the floor: everything the mouse does there, keys do too. */
#include "config.h"

#include "app/floor/floor-private.h"

#include "app/floor/floor-drag.h"
#include "app/floor/floor-handle.h"

#include "base/ids.h"
#include "plan/edit-corner.h"
#include "plan/edit-fitting.h"
#include "plan/edit-opening.h"
#include "plan/edit-pen.h"
#include "plan/wall-places.h"

#include <glib/gi18n.h>

#define STEP_MM 10.0
#define BIG_STEP_MM 100.0
#define FINE_STEP_MM 1.0
#define TURN_STEP_DEG 15.0
#define PAN_STEP_PX 40.0

static const char *const *
selection (HcFloor *self)
{
  return hc_document_get_selection (hc_panel_get_document (HC_PANEL (self)));
}

static HcPlan *
plan_of (HcFloor *self)
{
  return hc_document_get_settled_plan (hc_panel_get_document (HC_PANEL (self)));
}

static gboolean
apply (HcFloor *self, HcPlan *plan, GError *error, const char *label, const char *merge)
{
  return hc_panel_apply (HC_PANEL (self), plan, error, label, merge);
}

/* Ids of the selection that are fittings, or openings, or pens. */
static char **
selected_of (HcFloor *self, HcItemKind kind)
{
  g_autoptr (GStrvBuilder) builder = g_strv_builder_new ();
  const char *const *ids = selection (self);

  for (guint i = 0; ids[i] != NULL; i++)
    {
      HcFloorItem *item = hc_floor_get_item (self, ids[i]);

      if (item != NULL && hc_floor_item_get_kind (item) == kind)
        g_strv_builder_add (builder, ids[i]);
    }
  return g_strv_builder_end (builder);
}

static void
nudge_fittings (HcFloor *self, HcPoint by)
{
  g_auto (GStrv) ids = selected_of (self, HC_ITEM_FITTING);
  g_autofree char *merge = g_strjoinv (" ", ids);
  GError *error = NULL;
  HcPlan *plan;

  if (*ids == NULL)
    return;
  plan = hc_plan_move_fittings (plan_of (self), (const char *const *) ids, by, &error);
  apply (self, plan, error, _("Move"), merge);
}

static void
nudge_opening (HcFloor *self, const char *id, HcPoint by)
{
  HcOpening *opening = hc_layout_get_opening (self->layout, id);
  HcWall *wall = hc_layout_get_wall (self->layout, hc_opening_get (opening)->wall);
  HcPoint from, to;
  GError *error = NULL;
  double along_mm = hc_opening_get (opening)->along_mm;
  HcPlan *plan;

  if (!hc_layout_get_wall_line (self->layout, wall, &from, &to))
    return;
  along_mm += hc_point_dot (by, hc_point_unit (hc_point_subtract (to, from)));
  plan = hc_plan_slide_opening (plan_of (self), id, hc_wall_get_id (wall), along_mm, &error);
  apply (self, plan, error, _("Slide Along the Wall"), id);
}

/* The focused opening goes to the middle of the next wall, or the one before. */
static void
go_to_wall (GtkWidget *widget, const char *name, GVariant *parameter)
{
  HcFloor *self = HC_FLOOR (widget);
  HcParts *walls = hc_layout_get (self->layout)->walls;
  HcOpening *opening = hc_layout_get_opening (self->layout, *selection (self));
  guint at;
  const char *wall;
  GError *error = NULL;
  HcPlan *plan;

  if (opening == NULL
      || !hc_parts_find_index (walls, hc_opening_get (opening)->wall, &at))
    return;
  at = (at + walls->len + (guint) g_variant_get_int32 (parameter)) % walls->len;
  wall = hc_part_get_id (walls->pdata[at]);
  plan = hc_plan_slide_opening (plan_of (self), hc_opening_get_id (opening), wall,
                                hc_layout_get_wall_length (self->layout, wall) / 2, &error);
  apply (self, plan, error, _("Move to Another Wall"), NULL);
}

/* A nudged handle is a short drag. */
static void
nudge_handle (HcFloor *self, HcFloorItem *handle, HcPoint by)
{
  g_autoptr (HcFloorDrag) drag = hc_floor_drag_new (self, handle,
                                                    hc_floor_item_get_frame (handle)->centre);
  g_autofree char *merge = g_strdup_printf ("%s %u", hc_floor_item_get_id (handle),
                                            hc_floor_item_get_number (handle));
  GError *error = NULL;
  HcPlan *plan;

  drag->free = TRUE;
  drag->to = hc_point_add (drag->from, by);
  plan = hc_floor_drag_get_plan (self, drag, &error);
  apply (self, plan, error, hc_floor_drag_get_label (drag), merge);
}

/* With nothing chosen, the arrows look further that way. */
static void
look_further (HcFloor *self, HcPoint by)
{
  double step_px = PAN_STEP_PX / STEP_MM;
  HcSight sight = hc_sight_panned (&self->sight, -by.x_mm * step_px, -by.y_mm * step_px);

  hc_floor_set_sight (self, &sight);
}

static gboolean
is_chosen_alone (HcFloor *self, HcFloorItem *item)
{
  const char *const *ids = selection (self);

  return g_strcmp0 (ids[0], hc_floor_item_get_id (item)) == 0 && ids[1] == NULL;
}

static gboolean
nudge (GtkWidget *widget, GVariant *args, gpointer data)
{
  HcFloor *self = HC_FLOOR (widget);
  GtkWidget *focus = gtk_root_get_focus (gtk_widget_get_root (widget));
  HcFloorItem *item = HC_IS_FLOOR_ITEM (focus) ? HC_FLOOR_ITEM (focus) : NULL;
  HcPoint by;

  g_variant_get (args, "(dd)", &by.x_mm, &by.y_mm);
  if (item != NULL && hc_floor_item_get_kind (item) == HC_ITEM_HANDLE)
    nudge_handle (self, item, by);
  else if (item != NULL && hc_floor_item_get_kind (item) == HC_ITEM_OPENING
           && is_chosen_alone (self, item))
    nudge_opening (self, hc_floor_item_get_id (item), by);
  else if (*selection (self) == NULL)
    look_further (self, by);
  else
    nudge_fittings (self, by);
  return TRUE;
}

static HcFloorItem *
focused_handle (HcFloor *self, HcHandleRole role)
{
  GtkWidget *focus = gtk_root_get_focus (gtk_widget_get_root (GTK_WIDGET (self)));
  HcFloorItem *item = HC_IS_FLOOR_ITEM (focus) ? HC_FLOOR_ITEM (focus) : NULL;

  if (item == NULL || hc_floor_item_get_kind (item) != HC_ITEM_HANDLE
      || hc_floor_item_get_number (item) != (guint) role)
    return NULL;
  return item;
}

/* A wall gets a corner in its middle, so that the pen can take another shape. */
static void
insert_corner (GtkWidget *widget, const char *name, GVariant *parameter)
{
  HcFloor *self = HC_FLOOR (widget);
  HcFloorItem *handle = focused_handle (self, HC_HANDLE_WALL);
  g_autofree char *corner = hc_id_new ();
  g_autofree char *wall = hc_id_new ();
  const char *id;
  GError *error = NULL;
  HcPlan *plan;

  if (handle == NULL)
    return;
  id = hc_floor_item_get_id (handle);
  plan = hc_plan_insert_corner (plan_of (self), id,
                                hc_layout_get_wall_length (self->layout, id) / 2, corner, wall,
                                &error);
  if (apply (self, plan, error, _("Add a Corner"), NULL))
    hc_floor_focus_handle (self, corner, HC_HANDLE_CORNER);
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
  HcFloorItem *handle = focused_handle (self, HC_HANDLE_CORNER);
  GError *error = NULL;

  if (handle == NULL)
    return FALSE;
  apply (self, hc_plan_remove_corner (plan_of (self), hc_floor_item_get_id (handle), &error),
         error, _("Remove a Corner"), NULL);
  return TRUE;
}

static void
remove_selected (GtkWidget *widget, const char *name, GVariant *parameter)
{
  HcFloor *self = HC_FLOOR (widget);
  g_auto (GStrv) fittings = selected_of (self, HC_ITEM_FITTING);
  g_auto (GStrv) openings = selected_of (self, HC_ITEM_OPENING);
  g_auto (GStrv) pens = selected_of (self, HC_ITEM_PEN);
  g_autoptr (HcPlan) plan = hc_plan_ref (plan_of (self));
  HcPlan *changed;
  GError *error = NULL;

  if (remove_focused_corner (self))
    return;
  changed = hc_plan_remove_fittings (plan, (const char *const *) fittings, &error);
  if (changed != NULL)
    {
      hc_plan_unref (plan);
      plan = changed;
      changed = hc_plan_remove_openings (plan, (const char *const *) openings, &error);
    }
  for (guint i = 0; changed != NULL && pens[i] != NULL; i++)
    {
      hc_plan_unref (plan);
      plan = changed;
      changed = hc_plan_remove_pen (plan, pens[i], &error);
    }
  apply (self, changed, error, _("Remove"), NULL);
}

static void
duplicate_selected (GtkWidget *widget, const char *name, GVariant *parameter)
{
  HcFloor *self = HC_FLOOR (widget);
  g_auto (GStrv) ids = selected_of (self, HC_ITEM_FITTING);
  guint n = g_strv_length (ids);
  g_auto (GStrv) copies = g_new0 (char *, n + 1);
  GError *error = NULL;
  HcPlan *plan;

  if (n == 0)
    return;
  for (guint i = 0; i < n; i++)
    copies[i] = hc_id_new ();
  plan = hc_plan_duplicate_fittings (plan_of (self), (const char *const *) ids,
                                     (const char *const *) copies,
                                     (HcPoint){ 2 * BIG_STEP_MM, 2 * BIG_STEP_MM }, &error);
  if (apply (self, plan, error, _("Duplicate"), NULL))
    hc_document_select (hc_panel_get_document (HC_PANEL (self)), (const char *const *) copies);
}

static void
turn_selected (GtkWidget *widget, const char *name, GVariant *parameter)
{
  HcFloor *self = HC_FLOOR (widget);
  g_auto (GStrv) ids = selected_of (self, HC_ITEM_FITTING);
  GError *error = NULL;
  HcPlan *plan;

  if (*ids == NULL)
    return;
  plan = hc_plan_turn_fittings (plan_of (self), (const char *const *) ids,
                                g_variant_get_double (parameter), &error);
  apply (self, plan, error, _("Turn"), "turn");
}

/* The focus goes on by itself; what is chosen stays chosen. */
static void
walk (GtkWidget *widget, const char *name, GVariant *parameter)
{
  HcFloor *self = HC_FLOOR (widget);
  gboolean forward = g_variant_get_int32 (parameter) > 0;

  self->walking = TRUE;
  hc_floor_focus (widget, forward ? GTK_DIR_TAB_FORWARD : GTK_DIR_TAB_BACKWARD);
  self->walking = FALSE;
}

/* What has the focus joins what is chosen, or leaves it. */
static void
choose_too (GtkWidget *widget, const char *name, GVariant *parameter)
{
  GtkWidget *focus = gtk_root_get_focus (gtk_widget_get_root (widget));

  if (HC_IS_FLOOR_ITEM (focus)
      && hc_floor_item_get_kind (HC_FLOOR_ITEM (focus)) != HC_ITEM_HANDLE)
    hc_floor_choose (HC_FLOOR (widget), HC_FLOOR_ITEM (focus), TRUE);
}

static void
select_all (GtkWidget *widget, const char *name, GVariant *parameter)
{
  HcFloor *self = HC_FLOOR (widget);
  g_autoptr (GStrvBuilder) builder = g_strv_builder_new ();
  g_auto (GStrv) ids = NULL;
  GHashTableIter at;
  gpointer id, item;

  g_hash_table_iter_init (&at, self->items);
  while (g_hash_table_iter_next (&at, &id, &item))
    if (hc_floor_item_get_kind (item) == HC_ITEM_FITTING)
      g_strv_builder_add (builder, id);
  ids = g_strv_builder_end (builder);
  hc_document_select (hc_panel_get_document (HC_PANEL (self)), (const char *const *) ids);
}

/* Ends what is going on: a drag, a tool, the selection. */
static void
give_up (GtkWidget *widget, const char *name, GVariant *parameter)
{
  static const char *const none[] = { NULL };
  HcFloor *self = HC_FLOOR (widget);

  if (self->drag != NULL)
    hc_floor_cancel_drag (self);
  else if (self->tool != HC_TOOL_CHOOSE)
    hc_floor_set_tool (self, HC_TOOL_CHOOSE);
  else
    {
      gtk_widget_grab_focus (widget);
      hc_document_select (hc_panel_get_document (HC_PANEL (self)), none);
    }
}

static void
bind_arrow (GtkWidgetClass *klass, guint key, guint keypad_key, double x, double y)
{
  static const struct
  {
    GdkModifierType modifiers;
    double step_mm;
  } steps[] = {
    { 0, STEP_MM },
    { GDK_SHIFT_MASK, BIG_STEP_MM },
    { GDK_ALT_MASK, FINE_STEP_MM },
  };

  for (guint i = 0; i < G_N_ELEMENTS (steps); i++)
    {
      gtk_widget_class_add_binding (klass, key, steps[i].modifiers, nudge, "(dd)",
                                    x * steps[i].step_mm, y * steps[i].step_mm);
      gtk_widget_class_add_binding (klass, keypad_key, steps[i].modifiers, nudge, "(dd)",
                                    x * steps[i].step_mm, y * steps[i].step_mm);
    }
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
  gtk_widget_class_install_action (klass, "floor.go-into", NULL, go_into);
  gtk_widget_class_install_action (klass, "floor.go-to-wall", "i", go_to_wall);
  gtk_widget_class_install_action (klass, "floor.turn", "d", turn_selected);
  gtk_widget_class_install_action (klass, "floor.select-all", NULL, select_all);
  gtk_widget_class_install_action (klass, "floor.walk", "i", walk);
  gtk_widget_class_install_action (klass, "floor.choose-too", NULL, choose_too);
  gtk_widget_class_install_action (klass, "floor.give-up", NULL, give_up);

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
  gtk_widget_class_add_binding_action (klass, GDK_KEY_a, GDK_CONTROL_MASK, "floor.select-all",
                                       NULL);
  gtk_widget_class_add_binding_action (klass, GDK_KEY_Tab, GDK_CONTROL_MASK, "floor.walk", "i", 1);
  gtk_widget_class_add_binding_action (klass, GDK_KEY_ISO_Left_Tab,
                                       GDK_CONTROL_MASK | GDK_SHIFT_MASK, "floor.walk", "i", -1);
  gtk_widget_class_add_binding_action (klass, GDK_KEY_space, GDK_CONTROL_MASK, "floor.choose-too",
                                       NULL);
  gtk_widget_class_add_binding_action (klass, GDK_KEY_Escape, 0, "floor.give-up", NULL);
  bind_arrow (klass, GDK_KEY_Left, GDK_KEY_KP_Left, -1, 0);
  bind_arrow (klass, GDK_KEY_Right, GDK_KEY_KP_Right, 1, 0);
  bind_arrow (klass, GDK_KEY_Up, GDK_KEY_KP_Up, 0, -1);
  bind_arrow (klass, GDK_KEY_Down, GDK_KEY_KP_Down, 0, 1);
}
