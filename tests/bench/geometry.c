/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What the floor that counts costs, in Y. */
#include "config.h"

#include "base/shape-ops.h"
#include "yardstick.h"

#define N_FOOTPRINTS 30
#define N_RUNS 50

static void
place_fittings (HcShape **fittings)
{
  for (guint i = 0; i < N_FOOTPRINTS; i++)
    fittings[i] = hc_shape_new_rectangle (hc_point (600 + i % 6 * 1300, 500 + i / 6 * 900), 400,
                                          300, i * 7);
}

static double
free_floor_ms (HcShape *room,
               HcShape **fittings)
{
  double start_ms = hc_processor_ms ();

  for (guint i = 0; i < N_RUNS; i++)
    {
      g_autoptr (HcShape) floor = hc_shape_free_floor (room, fittings, N_FOOTPRINTS, 300);

      g_assert_false (hc_shape_is_empty (floor));
    }
  return (hc_processor_ms () - start_ms) / N_RUNS;
}

int
main (void)
{
  double y_ms = hc_yardstick_ms ();
  g_autoptr (HcShape) room = hc_shape_new_box ((HcBox){ 0, 0, 8000, 5000 });
  HcShape *fittings[N_FOOTPRINTS];
  double floor_ms;

  place_fittings (fittings);
  floor_ms = free_floor_ms (room, fittings);
  g_print ("Y %.3f ms\n", y_ms);
  g_print ("floor that counts, 30 footprints: %.3f ms, %.2f Y\n", floor_ms, floor_ms / y_ms);
  for (guint i = 0; i < N_FOOTPRINTS; i++)
    hc_shape_unref (fittings[i]);
  return 0;
}
