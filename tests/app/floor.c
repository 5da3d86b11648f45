/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The floor keeps a child for everything there is, and edits through them. */
#include "config.h"

#include "app/floor/floor.h"
#include "app/floor/floor-handle.h"

#include "begin/ready-house.h"
#include "plan/edit-fitting.h"

typedef struct
{
  GtkWidget *window;
  HcFloor *floor;
  HcDocument *document;
  HcChecker *checker;
  HcBook *book;
} Fixture;

static void
set_up (Fixture *fixture, gconstpointer data)
{
  g_autoptr (HcPlan) plan = hc_demo_open ("demo", NULL);

  fixture->book = hc_book_load_default (NULL);
  fixture->document = hc_document_new (plan);
  fixture->checker = hc_checker_new (fixture->document, fixture->book);
  hc_checker_update (fixture->checker);
  fixture->floor = g_object_new (HC_TYPE_FLOOR, "checker", fixture->checker, NULL);
  fixture->window = gtk_window_new ();
  gtk_window_set_default_size (GTK_WINDOW (fixture->window), 900, 700);
  gtk_window_set_child (GTK_WINDOW (fixture->window), GTK_WIDGET (fixture->floor));
  gtk_widget_realize (fixture->window);
}

static void
tear_down (Fixture *fixture, gconstpointer data)
{
  gtk_window_destroy (GTK_WINDOW (fixture->window));
  g_object_unref (fixture->checker);
  g_object_unref (fixture->document);
  hc_book_unref (fixture->book);
}

static HcLayout *
layout_of (Fixture *fixture)
{
  return hc_plan_get_layout (hc_document_get_plan (fixture->document));
}

static HcFitting *
first_fitting (Fixture *fixture)
{
  HcPen *pen = hc_layout_get (layout_of (fixture))->pens->pdata[0];

  return hc_pen_get (pen)->fittings->pdata[0];
}

static void
choose (Fixture *fixture, const char *id)
{
  const char *const ids[] = { id, NULL };

  hc_document_select (fixture->document, ids);
}

static guint
count_handles (Fixture *fixture, HcHandleRole role)
{
  GtkWidget *child = gtk_widget_get_first_child (GTK_WIDGET (fixture->floor));
  guint n = 0;

  for (; child != NULL; child = gtk_widget_get_next_sibling (child))
    if (HC_IS_CANVAS_ITEM (child)
        && hc_canvas_item_get_kind (HC_CANVAS_ITEM (child)) == HC_ITEM_HANDLE
        && hc_canvas_item_get_number (HC_CANVAS_ITEM (child)) == role)
      n++;
  return n;
}

static void
every_part_has_an_item_with_a_name (Fixture *fixture, gconstpointer data)
{
  const HcLayoutValues *layout = hc_layout_get (layout_of (fixture));

  for (guint i = 0; i < layout->pens->len; i++)
    {
      HcParts *fittings = hc_pen_get (layout->pens->pdata[i])->fittings;

      for (guint f = 0; f < fittings->len; f++)
        {
          HcCanvasItem *item
              = hc_canvas_get_item (HC_CANVAS (fixture->floor), hc_part_get_id (fittings->pdata[f]));

          g_assert_nonnull (item);
          g_assert_cmpint (hc_canvas_item_get_kind (item), ==, HC_ITEM_FITTING);
          gtk_test_accessible_assert_role (GTK_ACCESSIBLE (item), GTK_ACCESSIBLE_ROLE_BUTTON);
          g_assert_true (gtk_test_accessible_has_property (GTK_ACCESSIBLE (item),
                                                           GTK_ACCESSIBLE_PROPERTY_LABEL));
        }
    }
  for (guint i = 0; i < layout->openings->len; i++)
    g_assert_nonnull (
        hc_canvas_get_item (HC_CANVAS (fixture->floor), hc_part_get_id (layout->openings->pdata[i])));
}

static void
what_is_removed_loses_its_item (Fixture *fixture, gconstpointer data)
{
  g_autofree char *id = g_strdup (hc_fitting_get_id (first_fitting (fixture)));

  choose (fixture, id);
  gtk_widget_activate_action (GTK_WIDGET (fixture->floor), "floor.remove", NULL);
  g_assert_null (hc_canvas_get_item (HC_CANVAS (fixture->floor), id));
  g_assert_true (hc_document_undo (fixture->document));
  g_assert_nonnull (hc_canvas_get_item (HC_CANVAS (fixture->floor), id));
}

static void
turning_is_one_step (Fixture *fixture, gconstpointer data)
{
  HcFitting *before = hc_fitting_ref (first_fitting (fixture));
  const char *id = hc_fitting_get_id (before);
  double turned;

  choose (fixture, id);
  gtk_widget_activate_action (GTK_WIDGET (fixture->floor), "floor.turn", "d", 90.0);
  turned = hc_fitting_get (hc_layout_get_fitting (layout_of (fixture), id, NULL))->turn_deg;
  g_assert_cmpfloat (turned, !=, hc_fitting_get (before)->turn_deg);
  g_assert_true (hc_document_undo (fixture->document));
  g_assert_true (first_fitting (fixture) == before);
  hc_fitting_unref (before);
}

static void
a_duplicate_is_selected (Fixture *fixture, gconstpointer data)
{
  const char *id = hc_fitting_get_id (first_fitting (fixture));
  const char *const *selected;

  choose (fixture, id);
  gtk_widget_activate_action (GTK_WIDGET (fixture->floor), "floor.duplicate", NULL);
  selected = hc_document_get_selection (fixture->document);
  g_assert_nonnull (selected[0]);
  g_assert_cmpstr (selected[0], !=, id);
  g_assert_nonnull (hc_canvas_get_item (HC_CANVAS (fixture->floor), selected[0]));
}

static void
a_pen_has_a_handle_for_every_corner_and_wall (Fixture *fixture, gconstpointer data)
{
  HcPen *pen = hc_layout_get (layout_of (fixture))->pens->pdata[0];
  guint walls = g_strv_length (hc_pen_get (pen)->walls);

  choose (fixture, hc_pen_get_id (pen));
  g_assert_cmpuint (count_handles (fixture, HC_HANDLE_CORNER), ==, walls);
  g_assert_cmpuint (count_handles (fixture, HC_HANDLE_WALL), ==, walls);
  gtk_widget_activate_action (GTK_WIDGET (fixture->floor), "canvas.give-up", NULL);
  g_assert_cmpuint (count_handles (fixture, HC_HANDLE_CORNER), ==, 0);
}

static HcCanvasItem *
find_handle (Fixture *fixture, HcHandleRole role)
{
  GtkWidget *child = gtk_widget_get_first_child (GTK_WIDGET (fixture->floor));

  for (; child != NULL; child = gtk_widget_get_next_sibling (child))
    if (HC_IS_CANVAS_ITEM (child)
        && hc_canvas_item_get_kind (HC_CANVAS_ITEM (child)) == HC_ITEM_HANDLE
        && hc_canvas_item_get_number (HC_CANVAS_ITEM (child)) == role)
      return HC_CANVAS_ITEM (child);
  g_assert_not_reached ();
}

static HcPoint
corner_at (Fixture *fixture, const char *id)
{
  const HcCornerValues *corner
      = hc_corner_get (hc_layout_get_corner (layout_of (fixture), id));

  return (HcPoint){ corner->x_mm, corner->y_mm };
}

static void
a_corner_takes_every_step_before_it_is_drawn (Fixture *fixture, gconstpointer data)
{
  HcCanvas *canvas = HC_CANVAS (fixture->floor);
  HcPoint before, after, step = { -100, -50 };
  HcCanvasItem *handle;
  const char *id;

  choose (fixture, hc_part_get_id (hc_layout_get (layout_of (fixture))->pens->pdata[0]));
  handle = find_handle (fixture, HC_HANDLE_CORNER);
  id = hc_canvas_item_get_id (handle);
  before = corner_at (fixture, id);
  hc_canvas_nudge_item (canvas, handle, step);
  hc_canvas_nudge_item (canvas, handle, step);
  after = corner_at (fixture, id);
  g_assert_cmpfloat (after.x_mm, ==, before.x_mm + 2 * step.x_mm);
  g_assert_cmpfloat (after.y_mm, ==, before.y_mm + 2 * step.y_mm);
}

static void
only_what_is_made_to_measure_has_edges_to_pull (Fixture *fixture, gconstpointer data)
{
  HcParts *pens = hc_layout_get (layout_of (fixture))->pens;

  for (guint i = 0; i < pens->len; i++)
    {
      HcParts *fittings = hc_pen_get (pens->pdata[i])->fittings;

      for (guint f = 0; f < fittings->len; f++)
        {
          const HcFittingValues *values = hc_fitting_get (fittings->pdata[f]);
          gboolean bought = values->device != NULL && *values->device != '\0';

          choose (fixture, hc_part_get_id (fittings->pdata[f]));
          g_assert_cmpuint (count_handles (fixture, HC_HANDLE_RIGHT), ==,
                            bought || values->locked ? 0 : 1);
        }
    }
}

static void
an_opening_goes_to_the_next_wall (Fixture *fixture, gconstpointer data)
{
  HcOpening *opening = hc_layout_get (layout_of (fixture))->openings->pdata[0];
  g_autofree char *id = g_strdup (hc_opening_get_id (opening));
  g_autofree char *wall = g_strdup (hc_opening_get (opening)->wall);
  HcOpening *moved;

  choose (fixture, id);
  gtk_widget_activate_action (GTK_WIDGET (fixture->floor), "floor.go-to-wall", "i", 1);
  moved = hc_layout_get_opening (layout_of (fixture), id);
  g_assert_cmpstr (hc_opening_get (moved)->wall, !=, wall);
  gtk_widget_activate_action (GTK_WIDGET (fixture->floor), "floor.go-to-wall", "i", -1);
  moved = hc_layout_get_opening (layout_of (fixture), id);
  g_assert_cmpstr (hc_opening_get (moved)->wall, ==, wall);
}

static guint
count_widgets (GtkWidget *widget)
{
  guint n = 1;

  for (GtkWidget *at = gtk_widget_get_first_child (widget); at != NULL;
       at = gtk_widget_get_next_sibling (at))
    n += count_widgets (at);
  return n;
}

static void
drag_away (Fixture *fixture, double across_mm)
{
  const char *const ids[] = { hc_fitting_get_id (first_fitting (fixture)), NULL };
  g_autoptr (HcPlan) moved
      = hc_plan_move_fittings (hc_document_get_settled_plan (fixture->document), ids,
                               (HcPoint){ across_mm, 0 }, NULL);

  hc_document_preview (fixture->document, moved);
  hc_checker_update (fixture->checker);
  hc_document_commit_preview (fixture->document, "Move");
}

static void
drags_leave_no_widget_behind (Fixture *fixture, gconstpointer data)
{
  const char *const ids[] = { hc_fitting_get_id (first_fitting (fixture)), NULL };
  guint before;

  hc_document_select (fixture->document, ids);
  before = count_widgets (GTK_WIDGET (fixture->floor));
  for (guint i = 0; i < 200; i++)
    drag_away (fixture, i % 2 == 0 ? 5 : -5);
  g_assert_cmpuint (count_widgets (GTK_WIDGET (fixture->floor)), ==, before);
}

#define ADD(path, test) g_test_add (path, Fixture, NULL, set_up, test, tear_down)

static void
several_are_chosen_by_keys (Fixture *fixture, gconstpointer data)
{
  GtkWidget *floor = GTK_WIDGET (fixture->floor);
  const char *first = hc_fitting_get_id (first_fitting (fixture));
  HcCanvasItem *item = hc_canvas_get_item (HC_CANVAS (fixture->floor), first);
  GtkWidget *focus;
  const char *other;

  choose (fixture, first);
  gtk_widget_grab_focus (GTK_WIDGET (item));
  gtk_widget_activate_action (floor, "canvas.walk", "i", 1);
  focus = gtk_root_get_focus (gtk_widget_get_root (floor));
  g_assert_true (HC_IS_CANVAS_ITEM (focus));
  g_assert_cmpint (hc_canvas_item_get_kind (HC_CANVAS_ITEM (focus)), !=, HC_ITEM_HANDLE);
  other = hc_canvas_item_get_id (HC_CANVAS_ITEM (focus));
  g_assert_cmpstr (other, !=, first);
  g_assert_false (hc_document_is_selected (fixture->document, other));
  gtk_widget_activate_action (floor, "canvas.choose-too", NULL);
  g_assert_true (hc_document_is_selected (fixture->document, first));
  g_assert_true (hc_document_is_selected (fixture->document, other));
  gtk_test_accessible_assert_state (focus, GTK_ACCESSIBLE_STATE_SELECTED, TRUE);
  gtk_widget_activate_action (floor, "canvas.choose-too", NULL);
  g_assert_false (hc_document_is_selected (fixture->document, other));
  gtk_widget_activate_action (floor, "canvas.walk", "i", -1);
  g_assert_true (gtk_root_get_focus (gtk_widget_get_root (floor)) == GTK_WIDGET (item));
}

int
main (int argc, char *argv[])
{
  gtk_test_init (&argc, &argv, NULL);
  adw_init ();
  ADD ("/app/floor/items", every_part_has_an_item_with_a_name);
  ADD ("/app/floor/remove", what_is_removed_loses_its_item);
  ADD ("/app/floor/turn", turning_is_one_step);
  ADD ("/app/floor/duplicate", a_duplicate_is_selected);
  ADD ("/app/floor/pen-handles", a_pen_has_a_handle_for_every_corner_and_wall);
  ADD ("/app/floor/corner-steps", a_corner_takes_every_step_before_it_is_drawn);
  ADD ("/app/floor/next-wall", an_opening_goes_to_the_next_wall);
  ADD ("/app/floor/several-by-keys", several_are_chosen_by_keys);
  ADD ("/app/floor/drags", drags_leave_no_widget_behind);
  ADD ("/app/floor/edges", only_what_is_made_to_measure_has_edges_to_pull);
  return g_test_run ();
}
