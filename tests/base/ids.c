/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Ids are short, valid, and the same again from the same seed. */
#include "config.h"

#include "base/ids.h"

#include <string.h>

static void
a_new_id_is_valid_and_short (void)
{
  for (guint i = 0; i < 1000; i++)
    {
      g_autofree char *id = hc_id_new ();

      g_assert_cmpuint (strlen (id), ==, HC_ID_LENGTH);
      g_assert_true (hc_id_is_valid (id));
    }
}

static void
ten_thousand_ids_are_all_different (void)
{
  g_autoptr (GHashTable) seen = g_hash_table_new_full (g_str_hash, g_str_equal, g_free, NULL);

  for (guint i = 0; i < 10000; i++)
    g_assert_true (g_hash_table_add (seen, hc_id_new ()));
}

static void
a_seed_gives_the_same_ids_again (void)
{
  g_autoptr (HcIdSource) one = hc_id_source_new_seeded (7);
  g_autoptr (HcIdSource) same = hc_id_source_new_seeded (7);
  g_autoptr (HcIdSource) other = hc_id_source_new_seeded (8);

  for (guint i = 0; i < 20; i++)
    {
      g_autofree char *a = hc_id_source_next (one);
      g_autofree char *b = hc_id_source_next (same);
      g_autofree char *c = hc_id_source_next (other);

      g_assert_cmpstr (a, ==, b);
      g_assert_cmpstr (a, !=, c);
    }
}

static void
chance_gives_other_ids_each_time (void)
{
  g_autoptr (HcIdSource) one = hc_id_source_new ();
  g_autoptr (HcIdSource) other = hc_id_source_new ();
  g_autofree char *a = hc_id_source_next (one);
  g_autofree char *b = hc_id_source_next (other);

  g_assert_cmpstr (a, !=, b);
}

static void
ids_written_by_hand_are_checked (void)
{
  g_autofree char *longest = g_strnfill (64, 'a');
  g_autofree char *too_long = g_strnfill (65, 'a');

  g_assert_true (hc_id_is_valid ("west-wall_2"));
  g_assert_true (hc_id_is_valid (longest));
  g_assert_false (hc_id_is_valid (too_long));
  g_assert_false (hc_id_is_valid (NULL));
  g_assert_false (hc_id_is_valid (""));
  g_assert_false (hc_id_is_valid ("2nd"));
  g_assert_false (hc_id_is_valid ("Wall"));
  g_assert_false (hc_id_is_valid ("a b"));
  g_assert_false (hc_id_is_valid ("ä"));
}

int
main (int argc,
      char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/ids/new", a_new_id_is_valid_and_short);
  g_test_add_func ("/ids/different", ten_thousand_ids_are_all_different);
  g_test_add_func ("/ids/seed", a_seed_gives_the_same_ids_again);
  g_test_add_func ("/ids/chance", chance_gives_other_ids_each_time);
  g_test_add_func ("/ids/by-hand", ids_written_by_hand_are_checked);
  return g_test_run ();
}
