/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Commission Regulation (EC) No 589/2008 on marketing standards for eggs,
 * annex II (1)(c): what a free-range hen has outside. */
#include "config.h"

#include "barn.h"

static void
test_four_square_metres_of_run_a_hen (void)
{
  House barn;

  g_test_summary ("Regulation (EC) No 589/2008, annex II (1)(c): 4 m² of run a hen; 200 m² for "
                  "50");
  barn_init (&barn, "eu-organic", 5000, 10000);
  barn_add_run (&barn, 20000, 10000);
  barn_assert_carries (&barn, HC_NEED_RUN, "medium_layer", BARN_GROWN, 50);
  barn_clear (&barn);
}

/* Where runs are used in turn there are 10 m² a hen, 2.5 m² of them at a time.
 * A plan has no turns: the whole and one paddock are asked by own figures. */
static void
test_runs_used_in_turn (void)
{
  static const struct
  {
    double run_mm, figure_m2;
  } runs[] = { { 50000, 10 }, { 12500, 2.5 } };

  g_test_summary ("Regulation (EC) No 589/2008, annex II (1)(c): with runs in turn 10 m² a hen, "
                  "2.5 m² in each; 500 m² and 125 m² for 50");
  for (guint i = 0; i < G_N_ELEMENTS (runs); i++)
    {
      House barn;

      barn_init (&barn, "eu-organic", 5000, 10000);
      barn_set_own_figure (&barn, "run.hens", runs[i].figure_m2, "runs used in turn");
      barn_add_run (&barn, runs[i].run_mm, 10000);
      barn_assert_carries (&barn, HC_NEED_RUN, "medium_layer", BARN_GROWN, 50);
      barn_clear (&barn);
    }
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/published/regulation-589-2008/four_square_metres_of_run_a_hen",
                   test_four_square_metres_of_run_a_hen);
  g_test_add_func ("/published/regulation-589-2008/runs_used_in_turn", test_runs_used_in_turn);
  return g_test_run ();
}
