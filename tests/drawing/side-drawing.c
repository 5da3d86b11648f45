/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * From the side: which way it is looked, how high birds sit, every palette. */
#include "config.h"

#include "drawing/side-bird.h"
#include "drawing/side-drawing.h"
#include "drawing/side-wall.h"

#include "supply/stand.h"

#include "byre.h"

#define SCALE 0.1

typedef struct
{
  HcPlan *plan;
  HcCheck *check;
  HcHouse *house;
} Fixture;

static void
set_up (Fixture *fixture, gconstpointer data)
{
  fixture->plan = test_byre_load ();
  fixture->check = test_byre_check (fixture->plan, HC_CONDITION_NIGHT);
  fixture->house = hc_check_get_house (fixture->check);
}

static void
tear_down (Fixture *fixture, gconstpointer data)
{
  hc_check_unref (fixture->check);
  hc_plan_unref (fixture->plan);
}

static void
test_it_looks_at_the_wall_that_was_named (Fixture *fixture, gconstpointer data)
{
  const HcRoom *room = hc_house_get_room (fixture->house, 0);

  for (guint i = 0; i < hc_room_get_n_walls (room); i++)
    {
      const HcRoomWall *wall = hc_room_get_wall (room, i);
      HcSideCut cut;
      HcPoint from, to;

      g_assert_true (hc_side_cut_find (fixture->house, hc_wall_get_id (wall->wall), &cut));
      from = hc_side_cut_project (&cut, wall->from);
      to = hc_side_cut_project (&cut, wall->to);
      g_assert_cmpfloat (from.y_mm, >, 0);
      g_assert_cmpfloat_with_epsilon (from.y_mm, to.y_mm, 0.01);
      g_assert_cmpfloat (MIN (from.x_mm, to.x_mm), >, 0);
      g_assert_cmpfloat (MAX (from.x_mm, to.x_mm), <, hc_point_distance (cut.from, cut.to));
    }
}

static void
test_a_wall_that_is_not_there_is_not_found (Fixture *fixture, gconstpointer data)
{
  HcSideCut cut;

  g_assert_false (hc_side_cut_find (fixture->house, "nowhere", &cut));
  g_assert_true (hc_side_cut_find (fixture->house, NULL, &cut));
}

/* Lengths of a room are taken inside: its walls stand outside of them. */
static void
test_walls_that_are_cut_leave_the_inside_free (Fixture *fixture, gconstpointer data)
{
  g_autoptr (GArray) items = NULL;
  HcSideCut cut;
  HcBox roof = hc_box_empty ();
  guint n_cut = 0;

  g_assert_true (hc_side_cut_find (fixture->house, NULL, &cut));
  items = hc_side_cut_look (&cut, fixture->house);
  for (guint i = 0; i < items->len; i++)
    {
      const HcSectionItem *item = &g_array_index (items, HcSectionItem, i);

      if (item->kind == HC_SECTION_ROOF)
        roof = hc_side_item_get_box (item);
    }
  for (guint i = 0; i < items->len; i++)
    {
      const HcSectionItem *item = &g_array_index (items, HcSectionItem, i);
      HcBox wall = hc_side_item_get_box (item);

      if (item->kind != HC_SECTION_WALL || !item->cut)
        continue;
      n_cut++;
      g_assert_true (wall.x_mm + wall.width_mm <= roof.x_mm + 0.01
                     || wall.x_mm >= roof.x_mm + roof.width_mm - 0.01);
    }
  g_assert_cmpuint (n_cut, >=, 2);
}

/* Painting from far to near would hide it all the same: what is not shown can
 * neither be pointed at. */
static void
test_what_a_solid_wall_hides_is_not_shown (Fixture *fixture, gconstpointer data)
{
  g_autoptr (HcSideScene) scene = NULL;
  HcSideCut cut;
  guint n_hidden = 0;

  g_assert_true (hc_side_cut_find (fixture->house, NULL, &cut));
  scene = hc_side_scene_new (fixture->house, NULL, &cut);
  for (guint i = 0; i < scene->items->len; i++)
    {
      const HcSectionItem *item = hc_side_scene_get_item (scene, i);
      HcPoint middle = hc_box_centre (hc_side_item_get_box (item));

      if (item->kind != HC_SECTION_FITTING && item->kind != HC_SECTION_BAR)
        continue;
      if (item->cut)
        g_assert_true (hc_side_scene_shows (scene, i));
      if (hc_side_scene_shows (scene, i))
        continue;
      n_hidden++;
      g_assert_true (
          hc_side_scene_hides (scene, hc_point (middle.x_mm, -middle.y_mm), item->depth_mm));
    }
  g_assert_false (hc_side_scene_hides (scene, hc_point (100, 100), 0));
  g_test_message ("%u hidden", n_hidden);
}

static void
test_the_cut_moves_as_far_as_it_is_told (Fixture *fixture, gconstpointer data)
{
  HcSideCut cut;
  double before_mm, after_mm;

  g_assert_true (hc_side_cut_find (fixture->house, NULL, &cut));
  g_assert_true (hc_side_cut_measure (fixture->house, NULL, &cut, &before_mm));
  hc_side_cut_move (&cut, 300);
  g_assert_true (hc_side_cut_measure (fixture->house, NULL, &cut, &after_mm));
  g_assert_cmpfloat (before_mm, >, 0);
  g_assert_cmpfloat_with_epsilon (after_mm, before_mm - 300, 0.01);
}

static gboolean
is_height_of_a_bar (const HcHouse *house, double height_mm)
{
  for (guint i = 0; i < hc_house_get_n_rooms (house); i++)
    {
      HcParts *fittings = hc_room_get (hc_house_get_room (house, i))->fittings;

      for (guint j = 0; j < fittings->len; j++)
        for (int bar = 0; bar < hc_fitting_get (fittings->pdata[j])->bars; bar++)
          {
            HcBar found;

            hc_stand_get_bar (fittings->pdata[j], (guint) bar, &found);
            if (ABS (found.height_mm - height_mm) < 0.01)
              return TRUE;
          }
    }
  return FALSE;
}

static void
test_at_night_birds_sit_as_high_as_their_bars (Fixture *fixture, gconstpointer data)
{
  g_autoptr (GArray) places = hc_bird_places (fixture->check);
  guint on_bars = 0;

  for (guint i = 0; i < hc_room_get_n_walls (hc_house_get_room (fixture->house, 0)); i++)
    {
      const HcRoomWall *wall = hc_room_get_wall (hc_house_get_room (fixture->house, 0), i);
      g_autoptr (GArray) birds = NULL;
      HcSideCut cut;

      g_assert_true (hc_side_cut_find (fixture->house, hc_wall_get_id (wall->wall), &cut));
      birds = hc_side_birds_find (fixture->house, &cut, places);
      for (guint j = 0; j < birds->len; j++)
        {
          const HcSideBird *bird = &g_array_index (birds, HcSideBird, j);

          g_assert_cmpfloat (bird->depth_mm, >=, 0);
          if (bird->place->doing == HC_BIRD_SLEEPS && !bird->place->wanting
              && is_height_of_a_bar (fixture->house, bird->at.y_mm))
            on_bars++;
        }
    }
  g_assert_cmpuint (on_bars, >, 0);
}

static GBytes *
draw (const Fixture *fixture, HcPaletteKind palette)
{
  HcInk ink = { .palette = hc_palette_get (palette), .scale = SCALE, .text_as_boxes = TRUE };
  cairo_surface_t *surface;
  HcSideCut cut;
  g_autoptr (HcSideScene) scene = NULL;
  HcBox bounds;
  GBytes *pixels;

  g_assert_true (hc_side_cut_find (fixture->house, NULL, &cut));
  scene = hc_side_scene_new (fixture->house, NULL, &cut);
  bounds = hc_side_scene_get_bounds (scene);
  surface = cairo_image_surface_create (CAIRO_FORMAT_RGB24, (int) (bounds.width_mm * SCALE),
                                        (int) (bounds.depth_mm * SCALE));
  ink.cr = cairo_create (surface);
  cairo_scale (ink.cr, SCALE, SCALE);
  cairo_translate (ink.cr, -bounds.x_mm, -bounds.y_mm);
  hc_draw_side (&ink, fixture->check, scene);
  g_assert_cmpint (cairo_status (ink.cr), ==, CAIRO_STATUS_SUCCESS);
  cairo_destroy (ink.cr);
  cairo_surface_flush (surface);
  pixels = g_bytes_new (cairo_image_surface_get_data (surface),
                        (gsize) cairo_image_surface_get_stride (surface)
                            * (gsize) cairo_image_surface_get_height (surface));
  cairo_surface_destroy (surface);
  return pixels;
}

static void
test_every_palette_has_its_own_picture (Fixture *fixture, gconstpointer data)
{
  g_autoptr (GBytes) light = draw (fixture, HC_PALETTE_LIGHT);
  g_autoptr (GBytes) again = draw (fixture, HC_PALETTE_LIGHT);
  g_autoptr (GBytes) dark = draw (fixture, HC_PALETTE_DARK);
  g_autoptr (GBytes) print = draw (fixture, HC_PALETTE_PRINT);

  g_assert_true (g_bytes_equal (light, again));
  g_assert_false (g_bytes_equal (light, dark));
  g_assert_false (g_bytes_equal (light, print));
}

int
main (int argc, char **argv)
{
  static const struct
  {
    const char *path;
    void (*test) (Fixture *, gconstpointer);
  } tests[] = {
    { "/side-drawing/wall", test_it_looks_at_the_wall_that_was_named },
    { "/side-drawing/no-wall", test_a_wall_that_is_not_there_is_not_found },
    { "/side-drawing/inside", test_walls_that_are_cut_leave_the_inside_free },
    { "/side-drawing/hidden", test_what_a_solid_wall_hides_is_not_shown },
    { "/side-drawing/moved", test_the_cut_moves_as_far_as_it_is_told },
    { "/side-drawing/bars", test_at_night_birds_sit_as_high_as_their_bars },
    { "/side-drawing/palettes", test_every_palette_has_its_own_picture },
  };

  g_test_init (&argc, &argv, NULL);
  for (guint i = 0; i < G_N_ELEMENTS (tests); i++)
    g_test_add (tests[i].path, Fixture, NULL, set_up, tests[i].test, tear_down);
  return g_test_run ();
}
