/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The coldest night of a plant hardiness zone, by the definition of the United States
 * Department of Agriculture: 13 zones of 10 °F each, in halves, from -60 °F. */
#include "config.h"

#include "climate/hardiness-zone.h"

#include <math.h>

#define COLDEST_F (-60.0)
#define HALF_F 5.0

/* Coldest nights are typed to a tenth. */
#define SAME_C 0.06

/**
 * hc_hardiness_zone_get_name: (skip)
 * @zone: half of a zone, counted from 0
 *
 * Returns: (transfer full): what it is called: "7b"
 */
char *
hc_hardiness_zone_get_name (guint zone)
{
  return g_strdup_printf ("%u%c", zone / 2 + 1, zone % 2 == 0 ? 'a' : 'b');
}

/**
 * hc_hardiness_zone_get_coldest_c: (skip)
 * @zone: half of a zone, counted from 0
 *
 * The zone is the mean of the coldest nights of thirty years, so that half of all
 * winters are colder: the lower end of the half zone is what to plan for.
 *
 * Returns: its lower end, °C, to a tenth
 */
double
hc_hardiness_zone_get_coldest_c (guint zone)
{
  double fahrenheit = COLDEST_F + HALF_F * MIN (zone, HC_N_HARDINESS_ZONES - 1);

  return round ((fahrenheit - 32) / 1.8 * 10) / 10;
}

/**
 * hc_hardiness_zone_find: (skip)
 * @coldest_c: a coldest night, °C
 * @zone: (out): the half zone it is the lower end of
 *
 * Returns: whether there is one
 */
gboolean
hc_hardiness_zone_find (double coldest_c, guint *zone)
{
  for (guint i = 0; i < HC_N_HARDINESS_ZONES; i++)
    if (fabs (hc_hardiness_zone_get_coldest_c (i) - coldest_c) < SAME_C)
      {
        *zone = i;
        return TRUE;
      }
  return FALSE;
}
