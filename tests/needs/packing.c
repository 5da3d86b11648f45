/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Whole birds on bars, against a count that tries everything. */
#include "config.h"

#include "base/whole.h"
#include "needs/allot/packing.h"

#define BODIES 3

static gint64
count_seated (const HcPacking *packing, const gint64 *seats)
{
  gint64 seated = 0;

  for (guint body = 0; body < packing->n_bodies; body++)
    {
      gint64 of_body = 0;

      for (guint i = 0; i < packing->n_stretches; i++)
        of_body += seats[body * packing->n_stretches + i];
      g_assert_cmpint (of_body, <=, packing->counts[body]);
      seated += of_body;
    }
  return seated;
}

static gint64
pack (const HcPacking *packing, gboolean *exact)
{
  g_autofree gint64 *seats = hc_packing_seat (packing, exact);

  return count_seated (packing, seats);
}

static void
test_one_width_is_counted_bar_by_bar (void)
{
  const gint64 counts[] = { 100 };
  const double seats_mm[] = { 250 };
  const HcPackStretch stretches[] = { { 2400, 1 }, { 2400, 1 } };
  HcPacking packing = { 1, counts, seats_mm, 2, stretches, HC_PACKING_STEPS };
  gboolean exact;

  g_assert_cmpint (pack (&packing, &exact), ==, 18);
  g_assert_true (exact);
}

/* Two stretches of one metre: 60 + 40 on each seats four, first come first
 * seated would seat three. */
static void
test_mixed_widths_are_fitted_together (void)
{
  const gint64 counts[] = { 2, 2 };
  const double seats_mm[] = { 600, 400 };
  const HcPackStretch stretches[] = { { 1000, 3 }, { 1000, 3 } };
  HcPacking packing = { 2, counts, seats_mm, 2, stretches, HC_PACKING_STEPS };
  gboolean exact;

  g_assert_cmpint (pack (&packing, &exact), ==, 4);
  g_assert_true (exact);
}

static void
test_birds_sit_only_where_it_suits_them (void)
{
  const gint64 counts[] = { 5, 5 };
  const double seats_mm[] = { 200, 200 };
  const HcPackStretch stretches[] = { { 1000, 1 }, { 400, 3 } };
  HcPacking packing = { 2, counts, seats_mm, 2, stretches, HC_PACKING_STEPS };
  gboolean exact;
  g_autofree gint64 *seats = hc_packing_seat (&packing, &exact);

  g_assert_cmpint (count_seated (&packing, seats), ==, 7);
  g_assert_cmpint (seats[2], ==, 0);
}

static void
test_too_much_to_search_is_at_least (void)
{
  const gint64 counts[] = { 40, 41, 42 };
  const double seats_mm[] = { 310, 230, 170 };
  HcPackStretch stretches[20];
  HcPacking packing = { 3, counts, seats_mm, 20, stretches, 1000 };
  gboolean exact;

  for (guint i = 0; i < 20; i++)
    stretches[i] = (HcPackStretch) { 1000 + i * 7, 7 };
  g_assert_cmpint (pack (&packing, &exact), >=, 60);
  g_assert_false (exact);
}

/* Tries every number of every body on every stretch. */
static gint64
try_everything (const HcPacking *packing, guint stretch, guint body, double room_mm,
                gint64 *left)
{
  gint64 best = 0;
  gint64 most;

  if (stretch == packing->n_stretches)
    return 0;
  if (body == packing->n_bodies)
    return try_everything (packing, stretch + 1, 0,
                           stretch + 1 < packing->n_stretches
                               ? packing->stretches[stretch + 1].length_mm
                               : 0,
                           left);
  most = packing->stretches[stretch].suits >> body & 1
             ? MIN (left[body], hc_whole_fit (room_mm, packing->seats_mm[body]))
             : 0;
  for (gint64 here = 0; here <= most; here++)
    {
      gint64 seated;

      left[body] -= here;
      seated = here
               + try_everything (packing, stretch, body + 1,
                                 room_mm - (double) here * packing->seats_mm[body], left);
      left[body] += here;
      best = MAX (best, seated);
    }
  return best;
}

static void
test_no_packing_is_better (void)
{
  for (guint round = 0; round < 300; round++)
    {
      gint64 counts[BODIES];
      gint64 left[BODIES];
      double seats_mm[BODIES];
      HcPackStretch stretches[3];
      HcPacking packing = { BODIES, counts, seats_mm, 3, stretches, HC_PACKING_STEPS };
      gboolean exact;

      for (guint i = 0; i < BODIES; i++)
        {
          counts[i] = left[i] = g_test_rand_int_range (0, 5);
          seats_mm[i] = 10 * g_test_rand_int_range (12, 36);
        }
      for (guint i = 0; i < 3; i++)
        stretches[i] = (HcPackStretch) { g_test_rand_int_range (100, 900),
                                         (HcBodies) g_test_rand_int_range (0, 8) };
      g_assert_cmpint (pack (&packing, &exact), ==,
                       try_everything (&packing, 0, 0, stretches[0].length_mm, left));
      g_assert_true (exact);
    }
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/packing/one-width-is-counted-bar-by-bar",
                   test_one_width_is_counted_bar_by_bar);
  g_test_add_func ("/packing/mixed-widths-are-fitted-together",
                   test_mixed_widths_are_fitted_together);
  g_test_add_func ("/packing/birds-sit-only-where-it-suits-them",
                   test_birds_sit_only_where_it_suits_them);
  g_test_add_func ("/packing/too-much-to-search-is-at-least",
                   test_too_much_to_search_is_at_least);
  g_test_add_func ("/packing/no-packing-is-better", test_no_packing_is_better);
  return g_test_run ();
}
