/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Birds are where they were given a place, and inside. */
#include "config.h"

#include "drawing/bird-places.h"

#include "base/ring.h"

#include "byre.h"

static const char *
pen_at (const HcPlan *plan, HcPoint at)
{
  HcPen *pen = hc_layout_find_pen_at (hc_plan_get_layout (plan), at);

  return pen ? hc_pen_get_id (pen) : NULL;
}

static void
test_every_bird_is_inside (gconstpointer data)
{
  g_autoptr (HcPlan) plan = test_byre_load ();
  g_autoptr (HcCheck) check
      = test_byre_check (plan, (HcCondition) GPOINTER_TO_INT (data));
  g_autoptr (GArray) places = hc_bird_places (check);

  g_assert_cmpuint (places->len, ==, 40);
  for (guint i = 0; i < places->len; i++)
    g_assert_nonnull (pen_at (plan, g_array_index (places, HcBirdPlace, i).at));
}

static guint
count_in (const HcPlan *plan, const GArray *places, const char *pen)
{
  guint n = 0;

  for (guint i = 0; i < places->len; i++)
    n += g_strcmp0 (pen_at (plan, g_array_index (places, HcBirdPlace, i).at), pen) == 0;
  return n;
}

static guint
count_doing (const GArray *places, HcBirdDoing doing)
{
  guint n = 0;

  for (guint i = 0; i < places->len; i++)
    n += g_array_index (places, HcBirdPlace, i).doing == doing;
  return n;
}

static void
test_nobody_is_out_at_night (void)
{
  g_autoptr (HcPlan) plan = test_byre_load ();
  g_autoptr (HcCheck) night = test_byre_check (plan, HC_CONDITION_NIGHT);
  g_autoptr (HcCheck) shut_in = test_byre_check (plan, HC_CONDITION_SHUT_IN);
  g_autoptr (HcCheck) day = test_byre_check (plan, HC_CONDITION_DAY);
  g_autoptr (GArray) by_night = hc_bird_places (night);
  g_autoptr (GArray) indoors = hc_bird_places (shut_in);
  g_autoptr (GArray) by_day = hc_bird_places (day);

  g_assert_cmpuint (count_in (plan, by_night, "run"), ==, 0);
  g_assert_cmpuint (count_in (plan, indoors, "run"), ==, 0);
  g_assert_cmpuint (count_in (plan, by_day, "run"), >, 0);
}

/* 9 hens, a cock and 10 bantams have seats on the three bars; the ducks lie
 * on the floor and want no bar. */
static void
test_roosting_birds_sit_on_bars (void)
{
  g_autoptr (HcPlan) plan = test_byre_load ();
  g_autoptr (HcCheck) check = test_byre_check (plan, HC_CONDITION_NIGHT);
  g_autoptr (GArray) places = hc_bird_places (check);
  const HcFittingValues *roost
      = hc_fitting_get (hc_layout_get_fitting (hc_plan_get_layout (plan), "roost", NULL));
  guint on_bars = 0;

  for (guint i = 0; i < places->len; i++)
    {
      const HcBirdPlace *place = &g_array_index (places, HcBirdPlace, i);
      double across = ABS (place->at.y_mm - roost->y_mm);

      g_assert_false (place->wanting);
      if (ABS (place->at.x_mm - roost->x_mm) <= roost->width_mm / 2
          && across <= roost->depth_mm / 2)
        on_bars++;
    }
  g_assert_cmpuint (on_bars, ==, 20);
  g_assert_cmpuint (count_doing (places, HC_BIRD_WARMS), ==, 15);
}

static void
test_chicks_stay_by_their_heater (void)
{
  g_autoptr (HcPlan) plan = test_byre_load ();
  g_autoptr (HcCheck) check = test_byre_check (plan, HC_CONDITION_DAY);
  g_autoptr (GArray) places = hc_bird_places (check);

  for (guint i = 0; i < places->len; i++)
    {
      const HcBirdPlace *place = &g_array_index (places, HcBirdPlace, i);

      if (place->look.form == HC_BIRD_CHICK)
        g_assert_cmpstr (pen_at (plan, place->at), ==, "chicks");
    }
  g_assert_cmpuint (count_doing (places, HC_BIRD_WARMS), >, 0);
  g_assert_cmpuint (count_doing (places, HC_BIRD_EATS), >, 0);
}

static void
test_the_same_plan_gives_the_same_places (void)
{
  g_autoptr (HcPlan) plan = test_byre_load ();
  g_autoptr (HcCheck) one = test_byre_check (plan, HC_CONDITION_DAY);
  g_autoptr (HcCheck) other = test_byre_check (plan, HC_CONDITION_DAY);
  g_autoptr (GArray) a = hc_bird_places (one);
  g_autoptr (GArray) b = hc_bird_places (other);

  g_assert_cmpuint (a->len, ==, b->len);
  for (guint i = 0; i < a->len; i++)
    {
      const HcBirdPlace *left = &g_array_index (a, HcBirdPlace, i);
      const HcBirdPlace *right = &g_array_index (b, HcBirdPlace, i);

      g_assert_true (hc_point_equal (left->at, right->at));
      g_assert_cmpfloat (left->heading_deg, ==, right->heading_deg);
      g_assert_cmpuint (left->body, ==, right->body);
    }
}

int
main (int argc, char **argv)
{
  static const HcCondition conditions[]
      = { HC_CONDITION_DAY, HC_CONDITION_NIGHT, HC_CONDITION_SHUT_IN };

  g_test_init (&argc, &argv, NULL);
  for (guint i = 0; i < G_N_ELEMENTS (conditions); i++)
    {
      g_autofree char *path
          = g_strconcat ("/bird-places/inside/", hc_condition_to_string (conditions[i]), NULL);

      g_test_add_data_func (path, GINT_TO_POINTER (conditions[i]), test_every_bird_is_inside);
    }
  g_test_add_func ("/bird-places/nobody-is-out-at-night", test_nobody_is_out_at_night);
  g_test_add_func ("/bird-places/on-bars", test_roosting_birds_sit_on_bars);
  g_test_add_func ("/bird-places/chicks", test_chicks_stay_by_their_heater);
  g_test_add_func ("/bird-places/same", test_the_same_plan_gives_the_same_places);
  return g_test_run ();
}
