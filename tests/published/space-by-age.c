/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Chicks and ducklings, by the week: 'Space should increase as birds grow',
 * Poultry Producer; a duck breeder's article on space, 2018; 'Ducks and geese:
 * environment', New South Wales Department of Education; and figure 24 of
 * 'Poultry your way', University of Wisconsin, for heat. */
#include "config.h"

#include "barn.h"

typedef struct
{
  int weeks;
  double width_ft, depth_ft;
  int carried;
} Space;

/* Week 3 stands in two rows of the source: the program takes the lower. */
static const Space chicks[] = {
  { 0, 2.5, 2.5, 25 },
  { 1, 5, 2.5, 25 },
  { 2, 5, 2.5, 25 },
  { 3, 5, 3.75, 25 },
  { 4, 5, 3.75, 25 },
  { 5, 5, 5, 25 },
  { 7, 5, 5, 25 },
};

static const Space ducklings[] = {
  { 1, 2.5, 2, 5 },
  { 1, 5, 2, 10 },
  { 2, 10, 10, 100 },
};

static void
assert_carried (const Space *space, const char *kind)
{
  House barn;

  barn_init (&barn, "home-cold", space->width_ft * BARN_FOOT_MM,
             space->depth_ft * BARN_FOOT_MM);
  barn_assert_carries (&barn, HC_NEED_FLOOR, kind, space->weeks, space->carried);
  barn_clear (&barn);
}

static void
test_25_chicks (gconstpointer space)
{
  g_test_summary ("'Space should increase as birds grow', Poultry Producer: 25 chicks want "
                  "6.25 ft² in week 1, 12.5 in weeks 2 and 3, 18.75 to week 5, 25 to week 8");
  assert_carried (space, "light_layer");
}

static void
test_ducklings (gconstpointer space)
{
  g_test_summary ("A duck breeder's article on space, 2018: 1 ft² a duckling to week 3, a pen of "
                  "5 ft² at least");
  assert_carried (space, "duck");
}

/* The article's first number: 4 ducklings want 5 ft² all the same. */
static void
test_few_ducklings_want_a_whole_pen (void)
{
  House barn;

  g_test_summary ("A duck breeder's article on space, 2018: 4 ducklings want the least pen of "
                  "5 ft² and not 4 ft²");
  barn_init (&barn, "home-cold", 2.5 * BARN_FOOT_MM, 2 * BARN_FOOT_MM);
  g_assert_true (barn_holds (&barn, HC_NEED_FLOOR, "duck", 1, 4));
  barn_clear (&barn);
  barn_init (&barn, "home-cold", 2.5 * BARN_FOOT_MM, 2 * BARN_FOOT_MM - 1);
  g_assert_false (barn_holds (&barn, HC_NEED_FLOOR, "duck", 1, 4));
  barn_clear (&barn);
}

static void
test_ducks_by_the_square_metre (void)
{
  House barn;

  g_test_summary ("'Ducks and geese: environment', New South Wales Department of Education: 50 "
                  "ducklings to 1 m² at first, 8 to eight weeks, 5 breeding ducks");
  barn_init (&barn, "school", 5000, 2000);
  barn_assert_carries (&barn, HC_NEED_FLOOR, "duck", 0, 500);
  barn_assert_carries (&barn, HC_NEED_FLOOR, "duck", 5, 80);
  barn_assert_carries (&barn, HC_NEED_FLOOR, "duck", BARN_GROWN, 50);
  barn_clear (&barn);
}

static void
test_twelve_centimetres_of_trough_a_duck (void)
{
  House barn;

  g_test_summary ("'Ducks and geese: environment', New South Wales Department of Education: "
                  "12 cm of feeder; 20 ducks on both sides of 1.2 m");
  barn_init (&barn, "school", 5000, 3000);
  barn_add_edges (&barn, HC_FITTING_FEEDER, HC_FORM_LONG, 1, 1200);
  barn_assert_carries (&barn, HC_NEED_FEED, "duck", BARN_GROWN, 20);
  barn_clear (&barn);
}

static void
test_4000_breeding_ducks_to_a_hectare (void)
{
  House barn;

  g_test_summary ("'Ducks and geese: environment', New South Wales Department of Education: "
                  "4,000 breeding ducks to 1 ha; 40 on 100 m²");
  barn_init (&barn, "school", 5000, 10000);
  barn_add_run (&barn, 10000, 10000);
  barn_assert_carries (&barn, HC_NEED_RUN, "duck", BARN_GROWN, 40);
  barn_clear (&barn);
}

static void
test_700_square_inches_of_hover (void)
{
  House barn;
  HcFittingValues *plate;

  g_test_summary ("'Poultry your way', figure 24, University of Wisconsin: 700 in² of hover for "
                  "100 chicks");
  barn_init (&barn, "home-cold", 4000, 3000);
  plate = house_add (&barn, "p", HC_FITTING_HEAT_PLATE, 2000, 1500, 28 * BARN_INCH_MM,
                     25 * BARN_INCH_MM);
  plate->base_mm = 100;
  barn_assert_carries (&barn, HC_NEED_WARMTH, "light_layer", 0, 100);
  barn_clear (&barn);
}

static void
add_rows (const char *path, const Space *spaces, guint n, GTestDataFunc test)
{
  for (guint i = 0; i < n; i++)
    {
      g_autofree char *name = g_strdup_printf ("/published/space-by-age/%s/%u", path, i + 1);

      g_test_add_data_func (name, &spaces[i], test);
    }
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  add_rows ("chicks", chicks, G_N_ELEMENTS (chicks), test_25_chicks);
  add_rows ("ducklings", ducklings, G_N_ELEMENTS (ducklings), test_ducklings);
#define ADD(name) g_test_add_func ("/published/space-by-age/" #name, test_##name)
  ADD (few_ducklings_want_a_whole_pen);
  ADD (ducks_by_the_square_metre);
  ADD (twelve_centimetres_of_trough_a_duck);
  ADD (4000_breeding_ducks_to_a_hectare);
  ADD (700_square_inches_of_hover);
#undef ADD
  return g_test_run ();
}
