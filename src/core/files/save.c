/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Writes files so that a crash, a full disk or a power cut leaves either the
 * old file or the new one. */
#include "config.h"

#include "files/save.h"

#include <errno.h>
#include <glib/gstdio.h>
#include <stdlib.h>
#include <sys/stat.h>
#include <unistd.h>

/* What the kernel follows before it calls links a loop. */
#define MOST_LINKS 40
#define NEW_FILE_MODE 0666

static char *
follow_one_link (const char *path)
{
  g_autofree char *target = g_file_read_link (path, NULL);
  g_autofree char *folder = g_path_get_dirname (path);

  if (target == NULL)
    return NULL;
  return g_path_is_absolute (target) ? g_steal_pointer (&target)
                                     : g_build_filename (folder, target, NULL);
}

/* A rename over a link would put a file in its place, so the file the link
 * leads to is found first, even when it is not there yet. */
static char *
resolve_links (const char *path)
{
  char *resolved = g_strdup (path);

  for (guint i = 0; i < MOST_LINKS; i++)
    {
      char *next = follow_one_link (resolved);

      if (next == NULL)
        break;
      g_free (resolved);
      resolved = next;
    }
  return resolved;
}

static gboolean
fail (const char *path,
      int number,
      GError **error)
{
  g_autofree char *name = g_filename_display_name (path);

  g_set_error (error, G_FILE_ERROR, g_file_error_from_errno (number), "%s: %s", name,
               g_strerror (number));
  return FALSE;
}

/* A rename asks nothing of the old file: what is read-only is left alone. */
static gboolean
find_mode (const char *path,
           int *mode,
           gboolean *exists,
           GError **error)
{
  struct stat found;

  *exists = stat (path, &found) == 0;
  *mode = NEW_FILE_MODE;
  if (!*exists)
    return errno == ENOENT || fail (path, errno, error);
  if (S_ISDIR (found.st_mode))
    return fail (path, EISDIR, error);
  if (!S_ISREG (found.st_mode))
    return fail (path, EINVAL, error);
  if (access (path, W_OK) != 0)
    return fail (path, errno, error);
  *mode = found.st_mode & 07777;
  return TRUE;
}

/**
 * hc_save_local: (skip)
 * @path: the file's path; a link is followed, not replaced
 * @text: what to put in it
 * @length: its length in bytes
 * @error: where to put a file error
 *
 * Writes beside the file, syncs, and renames; the folder is synced too. The
 * mode of a file that exists is kept.
 *
 * Returns: whether the file holds @text now
 */
gboolean
hc_save_local (const char *path,
               const char *text,
               gsize length,
               GError **error)
{
  g_autofree char *resolved = resolve_links (path);
  gboolean exists;
  int mode;

  if (!find_mode (resolved, &mode, &exists, error))
    return FALSE;
  if (!g_file_set_contents_full (resolved, text, (gssize) length,
                                 G_FILE_SET_CONTENTS_CONSISTENT | G_FILE_SET_CONTENTS_DURABLE,
                                 mode, error))
    return FALSE;
  /* The umask took its share of the mode; only a file that was there has one
   * to keep. That it cannot be given back loses nothing. */
  if (exists && g_chmod (resolved, mode) != 0)
    g_debug ("The mode of a saved file could not be kept: %s", g_strerror (errno));
  return TRUE;
}

/**
 * hc_save_remote: (skip)
 * @file: a file, usually one no path leads to
 * @text: what to put in it
 * @length: its length in bytes
 * @etag: (nullable): the etag it must still have
 * @error: where to put an I/O error
 *
 * Leaves it to the file's own file system how safely it is replaced.
 *
 * Returns: whether the file holds @text now
 */
gboolean
hc_save_remote (GFile *file,
                const char *text,
                gsize length,
                const char *etag,
                GError **error)
{
  return g_file_replace_contents (file, text, length, etag, FALSE, G_FILE_CREATE_NONE, NULL, NULL,
                                  error);
}
