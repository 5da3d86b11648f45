/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Council Directive 2007/43/EC on chickens kept for meat production. */
#include "config.h"

#include "barn.h"

static void
test_33_kilograms_to_a_square_metre (void)
{
  House barn;

  g_test_summary ("Directive 2007/43/EC, article 3 (2): at most 33 kg of chickens to 1 m²; 100 "
                  "of 3.3 kg on 10 m²");
  barn_init (&barn, "eu-meat-chickens", 5000, 2000);
  barn_assert_carries (&barn, HC_NEED_FLOOR, "meat_fast", BARN_GROWN, 100);
  barn_clear (&barn);
}

/* The mass of young birds is from memory. */
static void
test_kilograms_and_not_heads_are_counted (void)
{
  House barn;

  g_test_summary ("Directive 2007/43/EC, article 3 (2): live weight counts; 219 pullets of "
                  "four weeks and 1.502 kg (from memory) on 10 m²");
  barn_init (&barn, "eu-meat-chickens", 5000, 2000);
  barn_assert_carries (&barn, HC_NEED_FLOOR, "meat_fast", 4, 219);
  barn_clear (&barn);
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/published/directive-2007-43/33_kilograms_to_a_square_metre",
                   test_33_kilograms_to_a_square_metre);
  g_test_add_func ("/published/directive-2007-43/kilograms_and_not_heads_are_counted",
                   test_kilograms_and_not_heads_are_counted);
  return g_test_run ();
}
