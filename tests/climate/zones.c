/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Plant hardiness zones, against the published scale of the United States Department of
 * Agriculture (map of 2023): lower ends of half zones in degrees Celsius. */
#include "config.h"

#include "climate/hardiness-zone.h"

static void
test_lower_ends_are_as_published (void)
{
  static const struct
  {
    const char *name;
    double coldest_c;
  } rows[] = { { "1a", -51.1 }, { "4a", -34.4 }, { "5b", -26.1 }, { "6a", -23.3 },
               { "7b", -15.0 }, { "9a", -6.7 },  { "10b", 1.7 },  { "13b", 18.3 } };

  for (guint row = 0; row < G_N_ELEMENTS (rows); row++)
    for (guint zone = 0; zone < HC_N_HARDINESS_ZONES; zone++)
      {
        g_autofree char *name = hc_hardiness_zone_get_name (zone);

        if (g_str_equal (name, rows[row].name))
          g_assert_cmpfloat_with_epsilon (hc_hardiness_zone_get_coldest_c (zone),
                                          rows[row].coldest_c, 0.051);
      }
}

static void
test_every_zone_is_found_again (void)
{
  guint found;

  for (guint zone = 0; zone < HC_N_HARDINESS_ZONES; zone++)
    {
      g_assert_true (hc_hardiness_zone_find (hc_hardiness_zone_get_coldest_c (zone), &found));
      g_assert_cmpuint (found, ==, zone);
    }
  g_assert_false (hc_hardiness_zone_find (-10, &found));
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/zones/published", test_lower_ends_are_as_published);
  g_test_add_func ("/zones/again", test_every_zone_is_found_again);
  return g_test_run ();
}
