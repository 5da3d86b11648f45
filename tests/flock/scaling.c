/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Flocks of other sizes are the same mix, and grow a bird at a time. */
#include "config.h"

#include "flock/apportion.h"
#include "flock/flock.h"

#define MOST_ROWS 12

static gint64
sum_of (const gint64 *shares, guint n)
{
  gint64 sum = 0;

  for (guint i = 0; i < n; i++)
    sum += shares[i];
  return sum;
}

static guint
make_random_weights (gint64 *weights)
{
  guint n = (guint) g_test_rand_int_range (1, MOST_ROWS + 1);

  for (guint i = 0; i < n; i++)
    weights[i] = g_test_rand_int_range (0, 40);
  weights[0]++;
  return n;
}

static void
test_shares_add_up (void)
{
  for (guint round = 0; round < 200; round++)
    {
      gint64 weights[MOST_ROWS], shares[MOST_ROWS];
      guint n = make_random_weights (weights);
      gint64 total = g_test_rand_int_range (0, 1000000);

      hc_apportion (weights, n, total, shares);
      g_assert_cmpint (sum_of (shares, n), ==, total);
    }
}

static void
test_its_own_size_is_itself (void)
{
  for (guint round = 0; round < 200; round++)
    {
      gint64 weights[MOST_ROWS], shares[MOST_ROWS];
      guint n = make_random_weights (weights);

      hc_apportion (weights, n, sum_of (weights, n), shares);
      for (guint i = 0; i < n; i++)
        g_assert_cmpint (shares[i], ==, weights[i]);
    }
}

static void
test_one_bird_more_takes_none_away (void)
{
  for (guint round = 0; round < 50; round++)
    {
      gint64 weights[MOST_ROWS], before[MOST_ROWS], after[MOST_ROWS];
      guint n = make_random_weights (weights);
      gint64 start = g_test_rand_int_range (0, 5000);

      hc_apportion (weights, n, start, before);
      for (gint64 total = start + 1; total < start + 100; total++)
        {
          hc_apportion (weights, n, total, after);
          for (guint i = 0; i < n; i++)
            {
              g_assert_cmpint (after[i], >=, before[i]);
              before[i] = after[i];
            }
        }
    }
}

/* 53, 24 and 23 votes for 7 seats: worked by hand with divisors 1, 3, 5, 7. */
static void
test_odd_divisors (void)
{
  const gint64 weights[] = { 53, 24, 23 };
  gint64 shares[3];

  hc_apportion (weights, 3, 7, shares);
  g_assert_cmpint (shares[0], ==, 3);
  g_assert_cmpint (shares[1], ==, 2);
  g_assert_cmpint (shares[2], ==, 2);
}

static void
test_nothing_gives_nothing (void)
{
  const gint64 weights[] = { 0, 0 };
  gint64 shares[2];

  hc_apportion (weights, 2, 10, shares);
  g_assert_cmpint (sum_of (shares, 2), ==, 0);
}

static HcBook *
load_book (void)
{
  g_autoptr (GError) error = NULL;
  HcBook *book = hc_book_load_default (&error);

  g_assert_no_error (error);
  return book;
}

static void
test_more_of_one_kind_keeps_the_rest (void)
{
  g_autoptr (HcBook) book = load_book ();
  const HcKind *bantam = hc_book_get_kind (book, "bantam");
  const HcKind *heavy = hc_book_get_kind (book, "heavy_breed");
  g_autoptr (HcFlock) bantams = hc_flock_of_kind (book, bantam, 10, "a");
  g_autoptr (HcFlock) both = hc_flock_with_hens (bantams, heavy, 4, "b");
  g_autoptr (HcFlock) more = hc_flock_with_hens (both, heavy, 9, "c");

  g_assert_cmpint (hc_flock_get_total (both), ==, 14);
  g_assert_cmpint (hc_flock_get_hens (more, bantam), ==, 10);
  g_assert_cmpint (hc_flock_get_hens (more, heavy), ==, 9);
  g_assert_cmpuint (hc_flock_get_n_rows (more), ==, 2);
  g_assert_cmpstr (hc_flock_get_row (more, 1)->pen, ==, "b");
}

static void
test_rows_of_some_pens (void)
{
  const char *const pens[] = { "b", NULL };
  g_autoptr (HcBook) book = load_book ();
  g_autoptr (HcFlock) bantams
      = hc_flock_of_kind (book, hc_book_get_kind (book, "bantam"), 10, "a");
  g_autoptr (HcFlock) both
      = hc_flock_with_hens (bantams, hc_book_get_kind (book, "duck"), 5, "b");
  g_autoptr (HcFlock) inside = hc_flock_in_pens (both, pens);

  g_assert_cmpint (hc_flock_get_total (inside), ==, 5);
  g_assert_cmpuint (hc_flock_get_n_bodies (inside), ==, 2);
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/scaling/adds-up", test_shares_add_up);
  g_test_add_func ("/scaling/own-size", test_its_own_size_is_itself);
  g_test_add_func ("/scaling/one-more", test_one_bird_more_takes_none_away);
  g_test_add_func ("/scaling/odd-divisors", test_odd_divisors);
  g_test_add_func ("/scaling/nothing", test_nothing_gives_nothing);
  g_test_add_func ("/scaling/more-of-one-kind", test_more_of_one_kind_keeps_the_rest);
  g_test_add_func ("/scaling/in-pens", test_rows_of_some_pens);
  return g_test_run ();
}
