/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Plans in files: loaded, saved, and kept from being written over. */
#include "config.h"

#include "base/error.h"
#include "files/save.h"
#include "files/store.h"
#include "scratch.h"

#include <fcntl.h>
#include <glib/gstdio.h>
#include <string.h>
#include <sys/stat.h>
#include <unistd.h>

typedef struct
{
  char *folder;
  char *path;
  GFile *file;
  HcPlan *plan;
} Fixture;

static void
set_up (Fixture *fixture,
        gconstpointer data)
{
  fixture->folder = scratch_folder_new ();
  fixture->path = g_build_filename (fixture->folder, "croft.hencote", NULL);
  fixture->file = g_file_new_for_path (fixture->path);
  fixture->plan = hc_plan_new_empty ("croft", "Skerry Croft");
}

static void
tear_down (Fixture *fixture,
           gconstpointer data)
{
  scratch_folder_remove (fixture->folder);
  g_free (fixture->path);
  g_object_unref (fixture->file);
  hc_plan_unref (fixture->plan);
}

static void
save (Fixture *fixture,
      GFile *file,
      char **etag)
{
  g_autoptr (GError) error = NULL;

  hc_plan_store_save (file, fixture->plan, NULL, etag, &error);
  g_assert_no_error (error);
}

static void
what_is_saved_is_loaded (Fixture *fixture,
                         gconstpointer data)
{
  g_autofree char *saved = NULL;
  g_autofree char *loaded = NULL;
  g_autoptr (HcPlanFile) file = NULL;
  g_autoptr (GError) error = NULL;

  save (fixture, fixture->file, &saved);
  file = hc_plan_store_load (fixture->file, &loaded, &error);
  g_assert_no_error (error);
  g_assert_true (hc_plan_equal (file->plan, fixture->plan));
  g_assert_cmpstr (loaded, ==, saved);
  g_assert_nonnull (loaded);
  g_assert_cmpuint (scratch_folder_count (fixture->folder), ==, 1);
}

static void
changes_of_others_are_not_written_over (Fixture *fixture,
                                        gconstpointer data)
{
  g_autofree char *etag = NULL;
  g_autofree char *text = NULL;
  g_autoptr (GError) error = NULL;
  struct stat before;

  save (fixture, fixture->file, &etag);
  g_assert_false (hc_plan_store_has_changed (fixture->file, etag));
  g_assert_cmpint (stat (fixture->path, &before), ==, 0);
  scratch_write (fixture->path, "somebody else's");
  g_assert_cmpint (utimensat (AT_FDCWD, fixture->path,
                              (struct timespec[]){ { 0, 0 }, { before.st_mtime + 5, 0 } }, 0),
                   ==, 0);
  g_assert_true (hc_plan_store_has_changed (fixture->file, etag));
  g_assert_false (hc_plan_store_save (fixture->file, fixture->plan, etag, NULL, &error));
  g_assert_error (error, HC_ERROR, HC_ERROR_CHANGED);
  text = scratch_read (fixture->path);
  g_assert_cmpstr (text, ==, "somebody else's");
}

static void
saving_again_goes_on_from_the_new_etag (Fixture *fixture,
                                        gconstpointer data)
{
  g_autofree char *first = NULL;
  g_autofree char *second = NULL;
  g_autoptr (GError) error = NULL;

  save (fixture, fixture->file, &first);
  hc_plan_store_save (fixture->file, fixture->plan, first, &second, &error);
  g_assert_no_error (error);
  hc_plan_store_save (fixture->file, fixture->plan, second, NULL, &error);
  g_assert_no_error (error);
}

static void
a_file_that_is_gone_is_written_anew (Fixture *fixture,
                                     gconstpointer data)
{
  g_autofree char *etag = NULL;
  g_autoptr (GError) error = NULL;

  save (fixture, fixture->file, &etag);
  g_assert_cmpint (g_unlink (fixture->path), ==, 0);
  g_assert_false (hc_plan_store_has_changed (fixture->file, etag));
  hc_plan_store_save (fixture->file, fixture->plan, etag, NULL, &error);
  g_assert_no_error (error);
  g_assert_true (g_file_test (fixture->path, G_FILE_TEST_EXISTS));
}

static void
save_through_link (Fixture *fixture,
                   const char *target)
{
  g_autofree char *path = g_build_filename (fixture->folder, "link.hencote", NULL);
  g_autoptr (GFile) link = g_file_new_for_path (path);
  g_autoptr (HcPlanFile) file = NULL;

  g_assert_cmpint (symlink (target, path), ==, 0);
  save (fixture, link, NULL);
  g_assert_true (g_file_test (path, G_FILE_TEST_IS_SYMLINK));
  file = hc_plan_store_load (fixture->file, NULL, NULL);
  g_assert_nonnull (file);
}

static void
links_are_followed_not_replaced (Fixture *fixture,
                                 gconstpointer data)
{
  scratch_write (fixture->path, "old");
  save_through_link (fixture, fixture->path);
}

static void
links_to_files_not_there_yet_are_followed (Fixture *fixture,
                                           gconstpointer data)
{
  save_through_link (fixture, "croft.hencote");
}

static void
links_in_a_ring_are_an_error (Fixture *fixture,
                              gconstpointer data)
{
  g_autoptr (GError) error = NULL;

  g_assert_cmpint (symlink ("croft.hencote", fixture->path), ==, 0);
  g_assert_false (hc_plan_store_save (fixture->file, fixture->plan, NULL, NULL, &error));
  g_assert_error (error, HC_ERROR, HC_ERROR_SAVE);
  g_assert_true (g_file_test (fixture->path, G_FILE_TEST_IS_SYMLINK));
}

static void
the_mode_is_kept (Fixture *fixture,
                  gconstpointer data)
{
  const mode_t modes[] = { 0600, 0664, 0666, 0640 };

  scratch_write (fixture->path, "old");
  for (guint i = 0; i < G_N_ELEMENTS (modes); i++)
    {
      struct stat found;

      g_assert_cmpint (chmod (fixture->path, modes[i]), ==, 0);
      save (fixture, fixture->file, NULL);
      g_assert_cmpint (stat (fixture->path, &found), ==, 0);
      g_assert_cmpuint (found.st_mode & 07777, ==, modes[i]);
    }
}

static void
new_files_have_the_mode_of_the_umask (Fixture *fixture,
                                      gconstpointer data)
{
  mode_t before = umask (0027);
  struct stat found;

  save (fixture, fixture->file, NULL);
  umask (before);
  g_assert_cmpint (stat (fixture->path, &found), ==, 0);
  g_assert_cmpuint (found.st_mode & 07777, ==, 0640);
}

static void
read_only_files_are_left_alone (Fixture *fixture,
                                gconstpointer data)
{
  g_autoptr (GError) error = NULL;
  g_autofree char *text = NULL;

  if (geteuid () == 0)
    {
      g_test_skip ("nothing is read-only for the superuser");
      return;
    }
  scratch_write (fixture->path, "old");
  g_assert_cmpint (chmod (fixture->path, 0444), ==, 0);
  g_assert_false (hc_plan_store_save (fixture->file, fixture->plan, NULL, NULL, &error));
  g_assert_error (error, HC_ERROR, HC_ERROR_SAVE);
  text = scratch_read (fixture->path);
  g_assert_cmpstr (text, ==, "old");
}

static void
assert_not_loaded (GFile *file,
                   const char *words)
{
  g_autoptr (GError) error = NULL;
  g_autofree char *etag = NULL;

  g_assert_null (hc_plan_store_load (file, &etag, &error));
  g_assert_error (error, HC_ERROR, HC_ERROR_FILE);
  g_assert_null (etag);
  g_assert_nonnull (strstr (error->message, words));
}

static void
what_is_no_file_is_not_opened (Fixture *fixture,
                               gconstpointer data)
{
  g_autoptr (GFile) folder = g_file_new_for_path (fixture->folder);
  g_autoptr (GError) error = NULL;

  assert_not_loaded (folder, "not a file");
  assert_not_loaded (fixture->file, "could not be opened");
  g_assert_cmpint (mkfifo (fixture->path, 0600), ==, 0);
  assert_not_loaded (fixture->file, "not a file");
  g_assert_false (hc_plan_store_save (fixture->file, fixture->plan, NULL, NULL, &error));
  g_assert_error (error, HC_ERROR, HC_ERROR_SAVE);
}

static void
errors_name_the_file (Fixture *fixture,
                      gconstpointer data)
{
  scratch_write (fixture->path, "{\n  \"format\": 3\n}");
  assert_not_loaded (fixture->file, "croft.hencote: Line 2, column 13, format:");
}

static void
files_too_large_are_not_read_whole (Fixture *fixture,
                                    gconstpointer data)
{
  scratch_write (fixture->path, "");
  g_assert_cmpint (truncate (fixture->path, 1 << 30), ==, 0);
  assert_not_loaded (fixture->file, "too large");
}

static void
unsound_plans_are_not_saved (Fixture *fixture,
                             gconstpointer data)
{
  HcPlanValues values = *hc_plan_get (fixture->plan);
  g_autoptr (HcPlan) unsound = NULL;
  g_autoptr (GError) error = NULL;

  values.variant = (char *) "nowhere";
  unsound = hc_plan_with (fixture->plan, &values);
  save (fixture, fixture->file, NULL);
  g_assert_false (hc_plan_store_save (fixture->file, unsound, NULL, NULL, &error));
  g_assert_error (error, HC_ERROR, HC_ERROR_SAVE);
  g_clear_error (&error);
  hc_plan_file_free (hc_plan_store_load (fixture->file, NULL, &error));
  g_assert_no_error (error);
}

/* Any file system will do to see that etags are handed on. */
static void
remote_files_are_replaced_by_their_file_system (Fixture *fixture,
                                                gconstpointer data)
{
  g_autoptr (GError) error = NULL;
  g_autofree char *text = NULL;

  g_assert_true (hc_save_remote (fixture->file, "new", 3, NULL, NULL));
  text = scratch_read (fixture->path);
  g_assert_cmpstr (text, ==, "new");
  g_assert_false (hc_save_remote (fixture->file, "newer", 5, "1:2", &error));
  g_assert_error (error, G_IO_ERROR, G_IO_ERROR_WRONG_ETAG);
}

static void
add (const char *path,
     void (*test) (Fixture *, gconstpointer))
{
  g_test_add (path, Fixture, NULL, set_up, test, tear_down);
}

int
main (int argc,
      char *argv[])
{
  g_test_init (&argc, &argv, NULL);
  add ("/store/round-trip", what_is_saved_is_loaded);
  add ("/store/changed", changes_of_others_are_not_written_over);
  add ("/store/again", saving_again_goes_on_from_the_new_etag);
  add ("/store/gone", a_file_that_is_gone_is_written_anew);
  add ("/store/link", links_are_followed_not_replaced);
  add ("/store/dangling-link", links_to_files_not_there_yet_are_followed);
  add ("/store/link-ring", links_in_a_ring_are_an_error);
  add ("/store/mode", the_mode_is_kept);
  add ("/store/umask", new_files_have_the_mode_of_the_umask);
  add ("/store/read-only", read_only_files_are_left_alone);
  add ("/store/no-file", what_is_no_file_is_not_opened);
  add ("/store/errors", errors_name_the_file);
  add ("/store/too-large", files_too_large_are_not_read_whole);
  add ("/store/unsound", unsound_plans_are_not_saved);
  add ("/store/remote", remote_files_are_replaced_by_their_file_system);
  return g_test_run ();
}
