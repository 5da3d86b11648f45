/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Tierschutz-Nutztierhaltungsverordnung, Federal Republic of Germany, 2021,
 * sections 13 to 19: laying hens and meat chickens. */
#include "config.h"

#include "barn.h"

#define HEN "medium_layer"
#define MEAT_CHICKEN "meat_fast" /* 3.3 kg */

static void
open_barn (House *barn)
{
  barn_init (barn, "de-ordinance", 8000, 5000);
}

static void
test_nine_hens_to_a_square_metre (void)
{
  House barn;

  g_test_summary ("Tierschutz-Nutztierhaltungsverordnung, § 13a (2): at most 9 hens to 1 m² of "
                  "usable area; 40 m² are for 360");
  open_barn (&barn);
  barn_assert_carries (&barn, HC_NEED_FLOOR, HEN, BARN_GROWN, 360);
  barn_clear (&barn);
}

static void
test_no_enclosure_under_two_and_a_half_square_metres (void)
{
  House barn;

  g_test_summary ("Tierschutz-Nutztierhaltungsverordnung, § 13 (2): 2.5 m² however few hens");
  barn_init (&barn, "de-ordinance", 2500, 1000);
  g_assert_true (barn_holds (&barn, HC_NEED_FLOOR, HEN, BARN_GROWN, 1));
  barn_assert_carries (&barn, HC_NEED_FLOOR, HEN, BARN_GROWN, 22);
  barn_clear (&barn);
  barn_init (&barn, "de-ordinance", 2490, 1000);
  g_assert_false (barn_holds (&barn, HC_NEED_FLOOR, HEN, BARN_GROWN, 1));
  barn_clear (&barn);
}

static void
test_nipples_by_tens (void)
{
  static const int carried[] = { 0, 0, 10, 20, 30, 40 };

  g_test_summary ("Tierschutz-Nutztierhaltungsverordnung, § 13 (5) 3: 2 nipples for the first "
                  "10 hens, 1 more for each further 10");
  for (int nipples = 1; nipples < (int) G_N_ELEMENTS (carried); nipples++)
    {
      House barn;

      open_barn (&barn);
      barn_add_nipples (&barn, nipples);
      if (carried[nipples] > 0)
        barn_assert_carries (&barn, HC_NEED_WATER, HEN, BARN_GROWN, carried[nipples]);
      else
        g_assert_false (barn_holds (&barn, HC_NEED_WATER, HEN, BARN_GROWN, 1));
      barn_clear (&barn);
    }
}

static void
test_nest_of_35_by_25_centimetres (void)
{
  static const double smaller[][2] = { { 249, 350 }, { 250, 349 } };
  House barn;

  g_test_summary ("Tierschutz-Nutztierhaltungsverordnung, § 13a (4): a nest of 35 × 25 cm for "
                  "at most 7 hens");
  open_barn (&barn);
  barn_add_nests (&barn, 4, 250, 350);
  barn_assert_carries (&barn, HC_NEED_NESTS, HEN, BARN_GROWN, 28);
  barn_clear (&barn);
  for (guint i = 0; i < G_N_ELEMENTS (smaller); i++)
    {
      open_barn (&barn);
      barn_add_nests (&barn, 4, smaller[i][0], smaller[i][1]);
      g_assert_false (barn_holds (&barn, HC_NEED_NESTS, HEN, BARN_GROWN, 1));
      barn_clear (&barn);
    }
}

static void
test_a_metre_of_pop_hole_for_five_hundred (void)
{
  House barn;

  g_test_summary ("Tierschutz-Nutztierhaltungsverordnung, § 13a (8): 1 m of pop hole for 500 "
                  "hens");
  open_barn (&barn);
  barn_add_pop_holes (&barn, 5, 400, 350);
  barn_assert_carries (&barn, HC_NEED_WAY_OUT, HEN, BARN_GROWN, 1000);
  barn_clear (&barn);
}

static void
test_windows_of_three_per_cent (void)
{
  static const struct
  {
    double height_mm;
    gboolean enough;
  } windows[] = { { 600, TRUE }, { 599, FALSE } };

  g_test_summary ("Tierschutz-Nutztierhaltungsverordnung, § 13 (3): openings for light of 3 % "
                  "of the floor; 0.36 m² for 12 m²");
  for (guint i = 0; i < G_N_ELEMENTS (windows); i++)
    {
      House barn;

      barn_init (&barn, "de-ordinance", 4000, 3000);
      house_add_opening (&barn, HC_OPENING_WINDOW, "p-n", 2000, 600, windows[i].height_mm);
      g_assert_cmpint (barn_holds (&barn, HC_NEED_LIGHT, HEN, BARN_GROWN, 10), ==,
                       windows[i].enough);
      barn_clear (&barn);
    }
}

static void
test_39_kilograms_to_a_square_metre (void)
{
  House barn;

  g_test_summary ("Tierschutz-Nutztierhaltungsverordnung, § 19 (3): at most 39 kg of meat "
                  "chickens to 1 m²; 118 of 3.3 kg on 10 m²");
  barn_init (&barn, "de-ordinance", 5000, 2000);
  barn_assert_carries (&barn, HC_NEED_FLOOR, MEAT_CHICKEN, BARN_GROWN, 118);
  barn_clear (&barn);
}

static void
test_trough_by_the_kilogram (void)
{
  static const struct
  {
    double trough_mm;
    int carried;
  } troughs[] = { { 495, 20 }, { 494, 19 } };

  g_test_summary ("Tierschutz-Nutztierhaltungsverordnung, § 18 (2): 1.5 cm of long feeder for "
                  "1 kg of meat chickens; 99 cm for 20 of 3.3 kg");
  for (guint i = 0; i < G_N_ELEMENTS (troughs); i++)
    {
      House barn;

      open_barn (&barn);
      barn_add_edges (&barn, HC_FITTING_FEEDER, HC_FORM_LONG, 1, troughs[i].trough_mm);
      barn_assert_carries (&barn, HC_NEED_FEED, MEAT_CHICKEN, BARN_GROWN, troughs[i].carried);
      barn_clear (&barn);
    }
}

static void
test_fifteen_meat_chickens_to_a_nipple (void)
{
  House barn;

  g_test_summary ("Tierschutz-Nutztierhaltungsverordnung, § 18 (1): at most 15 meat chickens to "
                  "a nipple");
  open_barn (&barn);
  barn_add_nipples (&barn, 4);
  barn_assert_carries (&barn, HC_NEED_WATER, MEAT_CHICKEN, BARN_GROWN, 60);
  barn_clear (&barn);
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
#define ADD(name) g_test_add_func ("/published/livestock-ordinance/" #name, test_##name)
  ADD (nine_hens_to_a_square_metre);
  ADD (no_enclosure_under_two_and_a_half_square_metres);
  ADD (nipples_by_tens);
  ADD (nest_of_35_by_25_centimetres);
  ADD (a_metre_of_pop_hole_for_five_hundred);
  ADD (windows_of_three_per_cent);
  ADD (39_kilograms_to_a_square_metre);
  ADD (trough_by_the_kilogram);
  ADD (fifteen_meat_chickens_to_a_nipple);
#undef ADD
  return g_test_run ();
}
