/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Numbers worked out for small farms: a guide of the Food and Agriculture
 * Organization read in a reprint of 2020 (Mkulima Today), the Cyclopedia of
 * Farm Animals, figure 559, and seats by the width of a bird. */
#include "config.h"

#include "barn.h"

/* The guide rounds 198 to 200. */
static void
test_deep_litter_house_of_6_by_11_metres (void)
{
  House barn;

  g_test_summary ("Small-scale poultry production, FAO text, Mkulima Today, 2020: 3 hens to "
                  "1 m²; 198 in 6 × 11 m");
  barn_init (&barn, "small-scale", 11000, 6000);
  barn_assert_carries (&barn, HC_NEED_FLOOR, "light_layer", BARN_GROWN, 198);
  barn_clear (&barn);
}

/* 3 hens to a square metre, printed there as 3.6 ft² a hen too. */
static void
test_three_and_six_tenths_square_feet_a_hen (void)
{
  House barn;

  g_test_summary ("Small-scale poultry production, FAO text, Mkulima Today, 2020: 3.6 ft² a "
                  "hen; 100 on 360 ft²");
  barn_init (&barn, "small-scale", 20 * BARN_FOOT_MM, 18 * BARN_FOOT_MM);
  barn_assert_carries (&barn, HC_NEED_FLOOR, "light_layer", BARN_GROWN, 100);
  barn_clear (&barn);
}

static void
test_64_hens_of_four_pounds (void)
{
  House barn;

  g_test_summary ("Cyclopedia of Farm Animals, figure 559: 64 hens of 4 lb, 4 ft² each, in a "
                  "pen of 16 × 16 ft");
  barn_init (&barn, "farm-animals", 16 * BARN_FOOT_MM, 16 * BARN_FOOT_MM);
  barn_assert_carries (&barn, HC_NEED_FLOOR, "light_layer", BARN_GROWN, 64);
  barn_clear (&barn);
}

static void
test_64_hens_by_an_own_figure (void)
{
  House barn;

  g_test_summary ("Cyclopedia of Farm Animals, figure 559: 4 ft² a hen, set as one's own figure "
                  "in m²; 64 on 256 ft²");
  barn_init (&barn, "home-cold", 16 * BARN_FOOT_MM, 16 * BARN_FOOT_MM);
  barn_set_own_figure (&barn, "floor.light", 4 * BARN_FOOT_MM * BARN_FOOT_MM / 1e6, "4 ft²");
  barn_assert_carries (&barn, HC_NEED_FLOOR, "light_layer", BARN_GROWN, 64);
  barn_clear (&barn);
}

/* Hens of 2.7 and 3.8 kg are of 5.95 and 8.38 lb. */
static void
test_a_square_foot_a_pound (void)
{
  House barn;

  g_test_summary ("Cyclopedia of Farm Animals, figure 559: 1 ft² of floor a pound of hen; 256 "
                  "ft² are for 43 of 2.7 kg or 30 of 3.8 kg");
  barn_init (&barn, "farm-animals", 16 * BARN_FOOT_MM, 16 * BARN_FOOT_MM);
  barn_assert_carries (&barn, HC_NEED_FLOOR, "medium_layer", BARN_GROWN, 43);
  barn_assert_carries (&barn, HC_NEED_FLOOR, "heavy_breed", BARN_GROWN, 30);
  barn_clear (&barn);
}

typedef struct
{
  double seat_cm;
  int carried;
  const char *name;
} Seats;

/* 15 by law, 18 by organic rules, 20 by the Austrian inspection sheet IS 23/1
 * of 2010, 25 by the Kenyan 'Poultry equipment'; 30 is arithmetic alone. */
static const Seats seats[] = {
  { 15, 32, "15" }, { 18, 26, "18" }, { 20, 24, "20" }, { 25, 18, "25" }, { 30, 16, "30" },
};

static void
test_two_bars_of_240_centimetres (gconstpointer data)
{
  const Seats *seat = data;
  House barn;

  g_test_summary ("French order of 1 February 2002 and Tierschutz-Nutztierhaltungsverordnung "
                  "(bars 30 cm apart, 20 cm from the wall): whole birds a bar, on two of 2.4 m");
  barn_init (&barn, "home-cold", 4000, 3000);
  barn_set_own_figure (&barn, "roost.seat-light", seat->seat_cm, "width of a seat");
  barn_add_roost (&barn, 2400, 2, 300, 200);
  barn_assert_carries (&barn, HC_NEED_ROOST, "light_layer", BARN_GROWN, seat->carried);
  barn_clear (&barn);
}

/* Nothing else runs out before the perches. */
static void
test_a_headline_of_24_and_32 (void)
{
  House barn;
  g_autoptr (HcCheckCache) cache = hc_check_cache_new ();
  g_autoptr (HcPlan) plan = NULL;
  g_autoptr (HcFlock) flock = NULL;
  HcHeadline headline;

  g_test_summary ("Small-scale poultry production, FAO text, Mkulima Today, 2020: 15 to 20 cm of "
                  "perch; two bars of 2.4 m are for 24 in comfort and 32 at most");
  barn_init (&barn, "small-scale", 8000, 5000);
  house_add_roost (&barn, "p", 4000, 4000, 2400, 700, 2);
  barn_add_nests (&barn, 8, 300, 350);
  barn_add_edges (&barn, HC_FITTING_FEEDER, HC_FORM_LONG, 2, 2000);
  barn_add_nipples (&barn, 12);
  house_add_birds (&barn, "light_layer", "p", 10, 0, BARN_GROWN);
  plan = house_make_plan (&barn);
  flock = hc_flock_on (plan, barn.book, hc_plan_get (plan)->as_of);
  hc_headline_work_out (cache, plan, barn.book, flock, &headline);
  g_assert_cmpint (headline.need, ==, HC_NEED_ROOST);
  g_assert_cmpint (headline.good, ==, 24);
  g_assert_cmpint (headline.least, ==, 32);
  barn_clear (&barn);
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
#define ADD(name) g_test_add_func ("/published/small-farm/" #name, test_##name)
  ADD (deep_litter_house_of_6_by_11_metres);
  ADD (three_and_six_tenths_square_feet_a_hen);
  ADD (64_hens_of_four_pounds);
  ADD (64_hens_by_an_own_figure);
  ADD (a_square_foot_a_pound);
  ADD (a_headline_of_24_and_32);
#undef ADD
  for (guint i = 0; i < G_N_ELEMENTS (seats); i++)
    {
      g_autofree char *name
          = g_strconcat ("/published/small-farm/two-bars/", seats[i].name, "-cm", NULL);

      g_test_add_data_func (name, &seats[i], test_two_bars_of_240_centimetres);
    }
  return g_test_run ();
}
