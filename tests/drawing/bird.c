/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Birds are drawn true to scale. */
#include "config.h"

#include "drawing/bird.h"

#include "drawing-test.h"

#define REACH_MM 300

/* The tip of a beak is too fine to count as ink. */
#define TIP_MM 18

static const HcKind hen = {
  .species = HC_SPECIES_CHICKEN,
  .hen_kg = 2,
  .cock_kg = 2.7,
  .length_mm = 400,
  .width_mm = 180,
  .comb = HC_COMB_SINGLE,
  .feathered_week = 8,
};

static HcBody
body_of (gboolean female, int weeks, double kg)
{
  return (HcBody){ .kind = &hen, .female = female, .age_weeks = weeks, .mass_kg = kg };
}

static TestExtents
draw (const HcBirdLook *look, double scale)
{
  HcInk ink;
  cairo_surface_t *paper = test_paper_new (REACH_MM, scale, &ink);
  TestExtents extents;

  hc_draw_bird (&ink, look);
  extents = test_paper_get_extents (paper);
  test_paper_free (paper, &ink);
  return extents;
}

static void
test_a_grown_hen_has_her_kinds_size (void)
{
  HcBody body = body_of (TRUE, 60, 2);
  HcBirdLook look = hc_bird_look (&body, 0);

  g_assert_cmpint (look.form, ==, HC_BIRD_HEN);
  g_assert_cmpfloat (look.length_mm, ==, 400);
  g_assert_cmpfloat (look.width_mm, ==, 180);
}

static void
test_every_form_is_drawn_to_scale (gconstpointer data)
{
  HcBirdLook look = { (HcBirdForm) GPOINTER_TO_INT (data), 400, 180, 0.7, 2 };
  TestExtents large = draw (&look, 0.5), small = draw (&look, 0.03);

  g_assert_cmpfloat_with_epsilon (large.right - large.left, 400, TIP_MM);
  g_assert_cmpfloat_with_epsilon (large.bottom - large.top, 180, 3);
  g_assert_cmpfloat (small.right - small.left, >=, 350);
  g_assert_cmpfloat (small.right - small.left, <=, 470);
}

static void
test_a_chick_is_small_and_in_down (void)
{
  HcBody body = body_of (TRUE, 0, 0.04);
  HcBirdLook look = hc_bird_look (&body, 0);

  g_assert_cmpint (look.form, ==, HC_BIRD_CHICK);
  g_assert_cmpfloat (look.length_mm, <, 130);
  g_assert_cmpfloat (look.length_mm, >, 60);
}

static void
test_a_cock_has_the_larger_comb (void)
{
  HcBody cock = body_of (FALSE, 60, 2.7), pullet = body_of (TRUE, 60, 2);
  HcBirdLook his = hc_bird_look (&cock, 0), hers = hc_bird_look (&pullet, 0);

  g_assert_cmpint (his.form, ==, HC_BIRD_COCK);
  g_assert_cmpfloat (his.comb, >, hers.comb);
  g_assert_cmpfloat (his.length_mm, >, hers.length_mm);
}

int
main (int argc, char **argv)
{
  static const char *const forms[HC_N_BIRD_FORMS]
      = { "hen", "cock", "duck", "goose", "chick" };

  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/bird/grown-hen", test_a_grown_hen_has_her_kinds_size);
  g_test_add_func ("/bird/chick", test_a_chick_is_small_and_in_down);
  g_test_add_func ("/bird/cock", test_a_cock_has_the_larger_comb);
  for (int form = 0; form < HC_N_BIRD_FORMS; form++)
    {
      g_autofree char *path = g_strconcat ("/bird/to-scale/", forms[form], NULL);

      g_test_add_data_func (path, GINT_TO_POINTER (form), test_every_form_is_drawn_to_scale);
    }
  return g_test_run ();
}
