/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The window's actions that add to the plan, and show a part of it. */
#include "config.h"

#include "app/window/window-private.h"

#include "app/floor/floor-view.h"

#include "book/make-fitting.h"
#include "book/make-opening.h"
#include "plan/edit-pen.h"

#include <glib/gi18n.h>

/* A pen to begin with, whose lengths the keeper then types. */
#define FIRST_WIDTH_MM 3000.0
#define FIRST_DEPTH_MM 2000.0
#define APART_MM 500.0

/* Things are put on the floor, so it comes into sight. */
static HcFloor *
floor_of (HcWindow *self)
{
  return hc_floor_view_get_floor (HC_FLOOR_VIEW (hc_views_show (self->views, "floor")));
}

static void
find_thing (GtkWidget *widget, const char *name, GVariant *parameter)
{
  HcWindow *self = HC_WINDOW (widget);

  adw_flap_set_reveal_flap (self->tools_flap, TRUE);
  gtk_stack_set_visible_child (self->tools, GTK_WIDGET (self->shelf));
  gtk_widget_grab_focus (GTK_WIDGET (hc_late_panel_get_panel (HC_LATE_PANEL (self->shelf))));
}

/* "kind/form/device", the device empty for one made to measure. */
static void
add_fitting (GtkWidget *widget, const char *name, GVariant *parameter)
{
  HcWindow *self = HC_WINDOW (widget);
  g_auto (GStrv) words = g_strsplit (g_variant_get_string (parameter, NULL), "/", 3);
  const HcFittingType *type = NULL;
  g_autoptr (HcFitting) pattern = NULL;
  HcPoint at;

  if (self->document != NULL && g_strv_length (words) == 3)
    type = hc_book_get_fitting_type (hc_checker_get_book (self->checker), words[0], words[1]);
  if (type == NULL)
    return;
  pattern = hc_fitting_type_make (type, hc_fitting_type_find_device (type, words[2]), "new",
                                  hc_point (0, 0));
  at = hc_floor_get_free_place (floor_of (self), pattern);
  hc_floor_add_fitting (floor_of (self), pattern, at);
}

static void
add_opening (GtkWidget *widget, const char *name, GVariant *parameter)
{
  HcWindow *self = HC_WINDOW (widget);
  const HcOpeningType *type = NULL;
  g_autoptr (HcOpening) pattern = NULL;

  if (self->document != NULL)
    type = hc_book_get_opening_type (hc_checker_get_book (self->checker),
                                     g_variant_get_string (parameter, NULL));
  if (type == NULL)
    return;
  pattern = hc_opening_type_make (type, "new");
  hc_floor_add_opening (floor_of (self), pattern, hc_floor_get_free_place (floor_of (self), NULL));
}

static gboolean
is_run (GVariant *parameter)
{
  return g_str_equal (g_variant_get_string (parameter, NULL), "run");
}

static void
take_tool (GtkWidget *widget, const char *name, GVariant *parameter)
{
  HcFloor *floor = floor_of (HC_WINDOW (widget));

  hc_floor_set_tool (floor, is_run (parameter) ? HC_TOOL_RUN : HC_TOOL_PEN);
  gtk_widget_grab_focus (GTK_WIDGET (floor));
}

/* Beside everything there is, level with the highest of it. */
static HcPoint
place_beside (HcLayout *layout)
{
  HcParts *corners = hc_layout_get (layout)->corners;
  HcPoint at = hc_point (0, 0);

  for (guint i = 0; i < corners->len; i++)
    {
      const HcCornerValues *corner = hc_corner_get (corners->pdata[i]);

      at.x_mm = i == 0 ? corner->x_mm : MAX (at.x_mm, corner->x_mm);
      at.y_mm = i == 0 ? corner->y_mm : MIN (at.y_mm, corner->y_mm);
    }
  if (corners->len > 0)
    at.x_mm += APART_MM;
  return at;
}

static void
add_pen (GtkWidget *widget, const char *name, GVariant *parameter)
{
  HcWindow *self = HC_WINDOW (widget);
  HcPlan *plan = hc_document_get_settled_plan (self->document);
  HcPoint one = place_beside (hc_plan_get_layout (plan));
  HcPoint other = hc_point (one.x_mm + FIRST_WIDTH_MM, one.y_mm + FIRST_DEPTH_MM);
  HcPenKind kind = is_run (parameter) ? HC_PEN_RUN : HC_PEN_INDOOR;
  g_auto (GStrv) ids = hc_pen_ids_new ();
  GError *error = NULL;
  HcPlan *after = hc_plan_add_pen (plan, kind, one, other, (const char *const *) ids, &error);

  if (!hc_panel_apply (HC_PANEL (self->views), after, error,
                       kind == HC_PEN_RUN ? _("Add Run") : _("Add Pen"), NULL))
    return;
  hc_canvas_fit (HC_CANVAS (floor_of (self)));
  hc_canvas_show_part (HC_CANVAS (floor_of (self)), ids[0]);
}

static void
show_group (HcWindow *self, const char *id)
{
  gtk_stack_set_visible_child_name (self->tools, "birds");
  adw_flap_set_reveal_flap (self->tools_flap, TRUE);
  hc_flock_page_show_group (
      HC_FLOCK_PAGE (hc_late_panel_get_panel (HC_LATE_PANEL (self->flock_page))), id);
}

/* Of birds, the pen they live in is shown, and their card on the page of birds. */
static void
show_parts (GtkWidget *widget, const char *name, GVariant *parameter)
{
  HcWindow *self = HC_WINDOW (widget);
  HcParts *batches = hc_plan_get (hc_document_get_plan (self->document))->batches;
  g_autofree const char **ids = g_variant_get_strv (parameter, NULL);
  g_autoptr (GVariant) pens = NULL;
  const char *group = NULL;

  for (guint i = 0; ids[i] != NULL; i++)
    {
      HcBatch *batch = hc_parts_find (batches, ids[i]);

      if (batch == NULL)
        continue;
      group = group != NULL ? group : hc_batch_get_id (batch);
      ids[i] = hc_batch_get (batch)->pen != NULL ? hc_batch_get (batch)->pen : "";
    }
  pens = g_variant_ref_sink (g_variant_new_strv (ids, -1));
  if (!hc_views_activate (self->views, "view.show-parts", pens))
    hc_canvas_show_parts (HC_CANVAS (floor_of (self)), ids);
  if (group != NULL)
    show_group (self, group);
}

/* A wall that the floor's focus is on is looked at when the side is shown. */
static void
choose_wall (GtkWidget *widget, const char *name, GVariant *parameter)
{
  HcWindow *self = HC_WINDOW (widget);

  g_free (self->wall);
  self->wall = g_variant_dup_string (parameter, NULL);
}

static void
look_at_wall (GtkWidget *widget, const char *name, GVariant *parameter)
{
  HcWindow *self = HC_WINDOW (widget);

  choose_wall (widget, name, parameter);
  if (self->document != NULL)
    hc_views_show (self->views, "side");
}

/**
 * hc_window_take_wall: (skip)
 * @self: a window
 *
 * Returns: (transfer full) (nullable): id of the wall chosen last, if it was not
 *   taken before
 */
char *
hc_window_take_wall (HcWindow *self)
{
  return g_steal_pointer (&self->wall);
}

/**
 * hc_window_get_scale: (skip)
 * @self: a window
 *
 * Returns: pixels for one millimetre on its floor
 */
double
hc_window_get_scale (HcWindow *self)
{
  HcFloorView *view = HC_FLOOR_VIEW (hc_views_get (self->views, "floor"));

  return hc_canvas_get_sight (HC_CANVAS (hc_floor_view_get_floor (view)))->scale;
}

/**
 * hc_window_class_add_adding_actions: (skip)
 * @klass: the class of windows
 */
void
hc_window_class_add_adding_actions (GtkWidgetClass *klass)
{
  gtk_widget_class_install_action (klass, "win.find-thing", NULL, find_thing);
  gtk_widget_class_install_action (klass, "win.add-fitting", "s", add_fitting);
  gtk_widget_class_install_action (klass, "win.add-opening", "s", add_opening);
  gtk_widget_class_install_action (klass, "win.add-pen", "s", add_pen);
  gtk_widget_class_install_action (klass, "win.tool", "s", take_tool);
  gtk_widget_class_install_action (klass, "win.show-parts", "as", show_parts);
  gtk_widget_class_install_action (klass, "win.choose-wall", "s", choose_wall);
  gtk_widget_class_install_action (klass, "win.look-at-wall", "s", look_at_wall);
}
