/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Drawings on the command line. */
#include "config.h"

#include "plan-program.h"

#include <glib/gstdio.h>
#include <string.h>

typedef struct
{
  char *plan;
  char *folder;
  char *file;
} Fixture;

static void
set_up (Fixture *fixture, gconstpointer data)
{
  fixture->plan = test_plan_path ("byre.hencote");
  fixture->folder = g_dir_make_tmp ("hencote-XXXXXX", NULL);
  fixture->file = g_build_filename (fixture->folder, data, NULL);
}

static void
tear_down (Fixture *fixture, gconstpointer data)
{
  g_unlink (fixture->file);
  g_assert_cmpint (g_rmdir (fixture->folder), ==, 0);
  g_free (fixture->plan);
  g_free (fixture->folder);
  g_free (fixture->file);
}

static void
test_a_file_is_drawn (Fixture *fixture, gconstpointer data)
{
  static const char *const views[] = { "floor", "side", "sheet" };

  for (guint i = 0; i < G_N_ELEMENTS (views); i++)
    {
      g_auto (TestRun) run = test_run (NULL, "draw", fixture->plan, "--to", fixture->file,
                                       "--view", views[i], "--condition", "night", NULL);
      GStatBuf found;

      g_assert_cmpstr (run.err, ==, "");
      g_assert_cmpint (run.status, ==, 0);
      g_assert_cmpint (g_stat (fixture->file, &found), ==, 0);
      g_assert_cmpint (found.st_size, >, 1000);
    }
}

static void
test_drawn_twice_it_is_the_same (Fixture *fixture, gconstpointer data)
{
  g_autofree char *before = NULL;
  gsize length = 0;

  for (guint i = 0; i < 2; i++)
    {
      g_auto (TestRun) run
          = test_run (NULL, "draw", fixture->plan, "--to", fixture->file, NULL);
      g_autofree char *now = NULL;
      gsize length_now;

      g_assert_cmpint (run.status, ==, 0);
      g_assert_true (g_file_get_contents (fixture->file, &now, &length_now, NULL));
      if (i > 0)
        g_assert_cmpmem (now, length_now, before, length);
      g_free (before);
      before = g_steal_pointer (&now);
      length = length_now;
    }
}

static void
test_a_scale_that_does_not_fit_is_refused (Fixture *fixture, gconstpointer data)
{
  g_auto (TestRun) small = test_run (NULL, "draw", fixture->plan, "--to", fixture->file,
                                     "--scale", "1:10", NULL);
  g_auto (TestRun) odd
      = test_run (NULL, "draw", fixture->plan, "--to", fixture->file, "--scale", "20", NULL);
  g_auto (TestRun) paper
      = test_run (NULL, "draw", fixture->plan, "--to", fixture->file, "--paper", "a9", NULL);

  g_assert_cmpint (small.status, ==, 2);
  g_assert_nonnull (strstr (small.err, "1:50"));
  g_assert_cmpint (odd.status, ==, 2);
  g_assert_nonnull (strstr (odd.err, "1:20"));
  g_assert_cmpint (paper.status, ==, 2);
  g_assert_false (g_file_test (fixture->file, G_FILE_TEST_EXISTS));
}

static void
test_a_wall_that_is_not_there_is_refused (Fixture *fixture, gconstpointer data)
{
  g_auto (TestRun) run = test_run (NULL, "draw", fixture->plan, "--to", fixture->file, "--view",
                                   "side", "--wall", "nowhere", NULL);

  g_assert_cmpint (run.status, ==, 2);
  g_assert_nonnull (strstr (run.err, "nowhere"));
  g_assert_false (g_file_test (fixture->file, G_FILE_TEST_EXISTS));
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add ("/draw/pdf", Fixture, "a.pdf", set_up, test_a_file_is_drawn, tear_down);
  g_test_add ("/draw/svg", Fixture, "a.svg", set_up, test_a_file_is_drawn, tear_down);
  g_test_add ("/draw/png", Fixture, "a.png", set_up, test_a_file_is_drawn, tear_down);
  g_test_add ("/draw/same", Fixture, "a.svg", set_up, test_drawn_twice_it_is_the_same,
              tear_down);
  g_test_add ("/draw/refused", Fixture, "a.pdf", set_up,
              test_a_scale_that_does_not_fit_is_refused, tear_down);
  g_test_add ("/draw/no-wall", Fixture, "a.pdf", set_up,
              test_a_wall_that_is_not_there_is_refused, tear_down);
  return g_test_run ();
}
