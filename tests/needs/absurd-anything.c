/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Makes plans that hold anything, the same ones from the same seed. */
#include "config.h"

#include "absurd-plans.h"

static double
pick (GRand *chance, double least, double most)
{
  switch (g_rand_int_range (chance, 0, 4))
    {
    case 0:
      return least;
    case 1:
      return most;
    default:
      return g_rand_double_range (chance, least, most);
    }
}

static void
add_any_fitting (House *house, GRand *chance, const char *pen)
{
  HcFittingValues *thing
      = house_add (house, pen, g_rand_int_range (chance, 0, HC_N_FITTING_KINDS),
                   pick (chance, -500, 9000), pick (chance, -500, 4000), pick (chance, 1, 5000),
                   pick (chance, 1, 2000));

  thing->form = g_rand_int_range (chance, 0, HC_FORM_RUNGS + 1);
  thing->turn_deg = pick (chance, -360, 360);
  thing->height_mm = pick (chance, 0, 3000);
  thing->base_mm = pick (chance, 0, 3000);
  thing->bars = (int) pick (chance, 1, 20);
  thing->bar_width_mm = pick (chance, 1, 1000);
  thing->rise_mm = pick (chance, 0, 2000);
  thing->columns = (int) pick (chance, 1, 50);
  thing->rows = (int) pick (chance, 1, 20);
  thing->places = (int) pick (chance, 0, 200);
  thing->water_mm = pick (chance, 0, 2000);
  thing->watts = pick (chance, 0, 10000);
}

static void
add_any_birds (House *house, GRand *chance, const char *pen)
{
  guint kind = (guint) g_rand_int_range (chance, 0, (gint32) hc_book_get_n_kinds (house->book));

  house_add_birds (house, hc_book_get_kind_at (house->book, kind)->id, pen,
                   (int) pick (chance, 0, 300), (int) pick (chance, 0, 30),
                   (int) pick (chance, -1, ABSURD_WEEKS_OF_30_YEARS));
}

void
absurd_build_anything (House *house, guint32 seed)
{
  static const char *const pens[] = { "p", "q", "r" };
  GRand *chance = g_rand_new_with_seed (seed);
  double depth_mm = pick (chance, 100, 4000);

  house->site.birds_go_out = g_rand_boolean (chance);
  house->site.coldest_night_c = pick (chance, -40, 20);
  for (guint i = 0; i < G_N_ELEMENTS (pens); i++)
    {
      double width_mm = pick (chance, 100, 4000);
      g_autofree char *wall = g_strconcat (pens[i], g_rand_boolean (chance) ? "-n" : "-e", NULL);
      double length_mm = g_str_has_suffix (wall, "-n") ? width_mm : depth_mm;

      house_add_pen (house, pens[i], g_rand_int_range (chance, 0, 2), width_mm, depth_mm);
      house_add_opening (house, g_rand_int_range (chance, 0, HC_N_OPENING_KINDS), wall,
                         length_mm / 2, pick (chance, 10, length_mm), pick (chance, 10, 20000));
      for (int n = g_rand_int_range (chance, 0, 12); n > 0; n--)
        add_any_fitting (house, chance, pens[i]);
      add_any_birds (house, chance, pens[i]);
    }
  g_rand_free (chance);
}
