/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Makes and removes folders for tests that write. */
#include "config.h"

#include "scratch.h"

#include <glib/gstdio.h>

char *
scratch_folder_new (void)
{
  g_autoptr (GError) error = NULL;
  char *folder = g_dir_make_tmp ("hencote-test-XXXXXX", &error);

  g_assert_no_error (error);
  return folder;
}

void
scratch_folder_remove (char *folder)
{
  g_autoptr (GDir) dir = g_dir_open (folder, 0, NULL);
  const char *name;

  while (dir != NULL && (name = g_dir_read_name (dir)) != NULL)
    {
      char *path = g_build_filename (folder, name, NULL);

      if (g_file_test (path, G_FILE_TEST_IS_DIR) && !g_file_test (path, G_FILE_TEST_IS_SYMLINK))
        scratch_folder_remove (path);
      else
        {
          g_assert_cmpint (g_unlink (path), ==, 0);
          g_free (path);
        }
    }
  g_assert_cmpint (g_rmdir (folder), ==, 0);
  g_free (folder);
}

guint
scratch_folder_count (const char *folder)
{
  g_autoptr (GDir) dir = g_dir_open (folder, 0, NULL);
  guint n = 0;

  while (g_dir_read_name (dir) != NULL)
    n++;
  return n;
}

char *
scratch_read (const char *path)
{
  char *text = NULL;
  g_autoptr (GError) error = NULL;

  g_file_get_contents (path, &text, NULL, &error);
  g_assert_no_error (error);
  return text;
}

void
scratch_write (const char *path,
               const char *text)
{
  g_autoptr (GError) error = NULL;

  g_file_set_contents (path, text, -1, &error);
  g_assert_no_error (error);
}
