/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The side view keeps a child for everything seen, and sets heights through them. */
#include "config.h"

#include "panel-test.h"

#include "app/side/side.h"

static HcSide *
side_of (PanelFixture *fixture)
{
  gtk_window_set_default_size (GTK_WINDOW (fixture->window), 900, 700);
  gtk_widget_realize (fixture->window);
  return HC_SIDE (fixture->panel);
}

static HcLayout *
layout_of (PanelFixture *fixture)
{
  return hc_plan_get_layout (hc_document_get_plan (fixture->document));
}

static HcCanvasItem *
find_item (HcSide *side, HcItemKind kind)
{
  GtkWidget *child = gtk_widget_get_first_child (GTK_WIDGET (side));

  for (; child != NULL; child = gtk_widget_get_next_sibling (child))
    if (HC_IS_CANVAS_ITEM (child)
        && hc_canvas_item_get_kind (HC_CANVAS_ITEM (child)) == kind)
      return HC_CANVAS_ITEM (child);
  return NULL;
}

static void
choose (PanelFixture *fixture, const char *id)
{
  const char *const ids[] = { id, NULL };

  hc_document_select (fixture->document, ids);
}

static void
what_is_seen_has_an_item_with_a_name (PanelFixture *fixture, gconstpointer type)
{
  HcSide *side = side_of (fixture);
  static const HcItemKind kinds[] = { HC_ITEM_FITTING, HC_ITEM_OPENING, HC_ITEM_BEDDING };

  for (guint i = 0; i < G_N_ELEMENTS (kinds); i++)
    {
      HcCanvasItem *item = find_item (side, kinds[i]);

      g_assert_nonnull (item);
      gtk_test_accessible_assert_role (GTK_ACCESSIBLE (item), GTK_ACCESSIBLE_ROLE_BUTTON);
      g_assert_true (gtk_test_accessible_has_property (GTK_ACCESSIBLE (item),
                                                       GTK_ACCESSIBLE_PROPERTY_LABEL));
      g_assert_true (gtk_test_accessible_has_property (GTK_ACCESSIBLE (item),
                                                       GTK_ACCESSIBLE_PROPERTY_DESCRIPTION));
    }
}

static void
it_goes_round_the_walls_and_comes_back (PanelFixture *fixture, gconstpointer type)
{
  HcSide *side = side_of (fixture);
  g_autofree char *first = g_strdup (hc_side_get_wall (side));
  guint n = 0;

  do
    {
      hc_side_look_on (side, 1);
      n++;
    }
  while (g_strcmp0 (hc_side_get_wall (side), first) != 0 && n < 1000);
  g_assert_cmpuint (n, >, 4);
  g_assert_cmpuint (n, <=, hc_layout_get (layout_of (fixture))->walls->len);
  hc_side_look_on (side, -1);
  g_assert_cmpstr (hc_side_get_wall (side), !=, first);
}

static void
the_cut_is_as_far_from_the_wall_as_was_typed (PanelFixture *fixture, gconstpointer type)
{
  HcSide *side = side_of (fixture);

  hc_side_set_distance (side, 700);
  g_assert_cmpfloat_with_epsilon (hc_side_get_distance (side), 700, 0.01);
  hc_side_set_distance (side, -20);
  g_assert_cmpfloat (hc_side_get_distance (side), >, 0);
}

/* An arrow key raises by a centimetre; the same key again is the same step. */
static void
a_thing_is_raised_in_one_step (PanelFixture *fixture, gconstpointer type)
{
  HcSide *side = side_of (fixture);
  g_autofree char *id = g_strdup (hc_canvas_item_get_id (find_item (side, HC_ITEM_FITTING)));
  double before_mm
      = hc_fitting_get (hc_layout_get_fitting (layout_of (fixture), id, NULL))->base_mm;

  choose (fixture, id);
  for (guint i = 0; i < 3; i++)
    hc_canvas_nudge_item (HC_CANVAS (side), hc_canvas_get_item (HC_CANVAS (side), id),
                          hc_point (0, -10));
  g_assert_cmpfloat_with_epsilon (
      hc_fitting_get (hc_layout_get_fitting (layout_of (fixture), id, NULL))->base_mm,
      before_mm + 30, 0.01);
  g_assert_true (hc_document_undo (fixture->document));
  g_assert_cmpfloat_with_epsilon (
      hc_fitting_get (hc_layout_get_fitting (layout_of (fixture), id, NULL))->base_mm,
      before_mm, 0.01);
}

static void
bedding_is_made_deeper (PanelFixture *fixture, gconstpointer type)
{
  HcSide *side = side_of (fixture);
  HcCanvasItem *bedding = find_item (side, HC_ITEM_BEDDING);
  g_autofree char *pen = g_strdup (hc_canvas_item_get_id (bedding));
  double before_mm = hc_pen_get (hc_layout_get_pen (layout_of (fixture), pen))->bedding_mm;

  hc_canvas_nudge_item (HC_CANVAS (side), bedding, hc_point (0, -100));
  g_assert_cmpfloat_with_epsilon (
      hc_pen_get (hc_layout_get_pen (layout_of (fixture), pen))->bedding_mm, before_mm + 100,
      0.01);
}

/* A part that is not seen brings a wall before which it is. */
static void
every_part_can_be_shown (PanelFixture *fixture, gconstpointer type)
{
  HcSide *side = side_of (fixture);
  HcParts *pens = hc_layout_get (layout_of (fixture))->pens;
  HcParts *openings = hc_layout_get (layout_of (fixture))->openings;

  for (guint i = 0; i < openings->len; i++)
    {
      const char *const ids[] = { hc_part_get_id (openings->pdata[i]), NULL };

      g_assert_true (hc_side_show_parts (side, ids));
      g_assert_nonnull (hc_canvas_get_item (HC_CANVAS (side), ids[0]));
      g_assert_true (hc_document_is_selected (fixture->document, ids[0]));
    }
  for (guint i = 0; i < pens->len; i++)
    {
      const char *const ids[] = { hc_part_get_id (pens->pdata[i]), NULL };

      g_assert_true (hc_side_show_parts (side, ids));
    }
}

static void
an_empty_plan_shows_nothing_and_takes_keys (PanelFixture *fixture, gconstpointer type)
{
  HcSide *side = side_of (fixture);
  g_autoptr (HcPlan) empty = hc_plan_new_empty ("empty", "Empty");
  const char *const ids[] = { "nothing", NULL };

  hc_document_apply (fixture->document, empty, "Empty", NULL);
  hc_checker_update (fixture->checker);
  g_assert_null (find_item (side, HC_ITEM_FITTING));
  hc_side_look_on (side, 1);
  g_assert_null (hc_side_get_wall (side));
  g_assert_false (hc_side_show_parts (side, ids));
}

int
main (int argc, char **argv)
{
  static const struct
  {
    const char *path;
    void (*test) (PanelFixture *, gconstpointer);
  } tests[] = {
    { "/side/items", what_is_seen_has_an_item_with_a_name },
    { "/side/walls", it_goes_round_the_walls_and_comes_back },
    { "/side/cut", the_cut_is_as_far_from_the_wall_as_was_typed },
    { "/side/raised", a_thing_is_raised_in_one_step },
    { "/side/bedding", bedding_is_made_deeper },
    { "/side/shown", every_part_can_be_shown },
    { "/side/empty", an_empty_plan_shows_nothing_and_takes_keys },
  };

  gtk_test_init (&argc, &argv, NULL);
  adw_init ();
  for (guint i = 0; i < G_N_ELEMENTS (tests); i++)
    g_test_add (tests[i].path, PanelFixture, (gconstpointer) hc_side_get_type, panel_set_up,
                tests[i].test, panel_tear_down);
  return g_test_run ();
}
