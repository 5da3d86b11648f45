/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Organic rules: Commission Implementing Regulation (EU) 2020/464; 'Organic
 * egg', egg information service of the United Kingdom; and the worked numbers
 * of a German leaflet, 'Merkblatt Geflügelhaltung', March 2012. */
#include "config.h"

#include "barn.h"

#define HEN "medium_layer"

static void
test_six_hens_to_a_square_metre (void)
{
  House barn;

  g_test_summary ("'Organic egg', egg information service: at most 6 hens to 1 m²; 100 m² are "
                  "for 600");
  barn_init (&barn, "eu-organic", 12500, 8000);
  barn_assert_carries (&barn, HC_NEED_FLOOR, HEN, BARN_GROWN, 600);
  barn_clear (&barn);
}

/* Worked out in the leaflet: 600 hens, 100 m², 4 m of pop hole. */
static void
test_four_metres_of_pop_hole_for_600_hens (void)
{
  House barn;

  g_test_summary ("Merkblatt Geflügelhaltung, March 2012; Regulation (EU) 2020/464, article 15 "
                  "(1)(d): 4 m of pop hole for 100 m², which 600 hens need");
  barn_init (&barn, "eu-organic", 12500, 8000);
  barn_add_pop_holes (&barn, 10, 400, 350);
  barn_assert_carries (&barn, HC_NEED_WAY_OUT, HEN, BARN_GROWN, 600);
  barn_clear (&barn);
}

/* Worked out in the leaflet: 3,000 hens, 500 m², 20 m of pop hole. */
static void
test_twenty_metres_of_pop_hole_for_3000_hens (void)
{
  House barn;

  g_test_summary ("Merkblatt Geflügelhaltung, March 2012; Regulation (EU) 2020/464, article 15 "
                  "(1)(d): 20 m of pop hole for 500 m², which 3,000 hens need");
  barn_init (&barn, "eu-organic", 25000, 20000);
  barn_add_pop_holes (&barn, 10, 2000, 400);
  barn_assert_carries (&barn, HC_NEED_WAY_OUT, HEN, BARN_GROWN, 3000);
  barn_clear (&barn);
}

static void
test_eighteen_centimetres_of_perch (void)
{
  House barn;

  g_test_summary ("'Organic egg', egg information service: 18 cm of perch a hen; two bars of "
                  "2.4 m seat 26");
  barn_init (&barn, "eu-organic", 4000, 3000);
  barn_add_roost (&barn, 2400, 2, 300, 200);
  barn_assert_carries (&barn, HC_NEED_ROOST, HEN, BARN_GROWN, 26);
  barn_clear (&barn);
}

static void
test_120_square_centimetres_of_group_nest (void)
{
  House barn;

  g_test_summary ("'Organic egg', egg information service: 120 cm² of group nest a hen; 0.6 m² "
                  "for 50");
  barn_init (&barn, "eu-organic", 4000, 3000);
  barn_add_group_nest (&barn, 0.6);
  barn_assert_carries (&barn, HC_NEED_NESTS, HEN, BARN_GROWN, 50);
  barn_clear (&barn);
}

static void
test_21_kilograms_of_ducks_to_a_square_metre (void)
{
  House barn;

  g_test_summary ("Regulation (EU) 2020/464, annex I part IV, 8: at most 21 kg of ducks to "
                  "1 m²; 84 of 2.5 kg on 10 m²");
  barn_init (&barn, "eu-organic", 5000, 2000);
  barn_assert_carries (&barn, HC_NEED_FLOOR, "duck", BARN_GROWN, 84);
  barn_clear (&barn);
}

static void
test_21_kilograms_of_meat_chickens_to_a_square_metre (void)
{
  House barn;

  g_test_summary ("Regulation (EU) 2020/464, annex I part IV, from memory: at most 21 kg of "
                  "meat chickens to 1 m²; 63 of 3.3 kg on 10 m²");
  barn_init (&barn, "eu-organic", 5000, 2000);
  barn_assert_carries (&barn, HC_NEED_FLOOR, "meat_fast", BARN_GROWN, 63);
  barn_clear (&barn);
}

static void
test_run_of_four_and_a_half_square_metres_a_duck (void)
{
  House barn;

  g_test_summary ("Regulation (EU) 2020/464, annex I part IV, 8: 4.5 m² of run a duck; 90 m² "
                  "for 20");
  barn_init (&barn, "eu-organic", 5000, 6000);
  barn_add_run (&barn, 15000, 6000);
  barn_assert_carries (&barn, HC_NEED_RUN, "duck", BARN_GROWN, 20);
  barn_clear (&barn);
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
#define ADD(name) g_test_add_func ("/published/organic/" #name, test_##name)
  ADD (six_hens_to_a_square_metre);
  ADD (four_metres_of_pop_hole_for_600_hens);
  ADD (twenty_metres_of_pop_hole_for_3000_hens);
  ADD (eighteen_centimetres_of_perch);
  ADD (120_square_centimetres_of_group_nest);
  ADD (21_kilograms_of_ducks_to_a_square_metre);
  ADD (21_kilograms_of_meat_chickens_to_a_square_metre);
  ADD (run_of_four_and_a_half_square_metres_a_duck);
#undef ADD
  return g_test_run ();
}
