/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Loads plans from files and saves them there. */
#include "config.h"

#include "files/store.h"

#include "base/error.h"
#include "base/json-guard.h"
#include "files/save.h"
#include "files/write.h"

#include <glib/gi18n-lib.h>

static char *
name_of (GFile *file)
{
  g_autofree char *base = g_file_get_basename (file);

  return base != NULL ? g_filename_display_name (base) : g_file_get_uri (file);
}

static gboolean
fail_open (GFile *file,
           const char *reason,
           GError **error)
{
  g_autofree char *name = name_of (file);

  g_set_error (error, HC_ERROR, HC_ERROR_FILE, _("“%s” could not be opened: %s"), name, reason);
  return FALSE;
}

static gboolean
fail_save (GFile *file,
           const GError *reason,
           GError **error)
{
  g_autofree char *name = name_of (file);

  if (g_error_matches (reason, G_IO_ERROR, G_IO_ERROR_WRONG_ETAG))
    g_set_error (error, HC_ERROR, HC_ERROR_CHANGED,
                 _("“%s” was changed by another program since it was opened. Save the plan "
                   "under another name, or save over those changes."),
                 name);
  else
    g_set_error (error, HC_ERROR, HC_ERROR_SAVE,
                 _("“%s” could not be saved; the file is as it was. Save the plan in another "
                   "place. (%s)"),
                 name, reason->message);
  return FALSE;
}

/* Opening a pipe would wait for its other end. */
static gboolean
check_is_file (GFile *file,
               GError **error)
{
  g_autoptr (GError) reason = NULL;
  g_autoptr (GFileInfo) info = g_file_query_info (file, G_FILE_ATTRIBUTE_STANDARD_TYPE,
                                                  G_FILE_QUERY_INFO_NONE, NULL, &reason);

  if (info == NULL)
    return fail_open (file, reason->message, error);
  if (g_file_info_get_file_type (info) != G_FILE_TYPE_REGULAR)
    return fail_open (file, _("it is not a file."), error);
  return TRUE;
}

#define STATE_ATTRIBUTES                                                        \
  G_FILE_ATTRIBUTE_ETAG_VALUE "," G_FILE_ATTRIBUTE_UNIX_INODE                   \
                              "," G_FILE_ATTRIBUTE_STANDARD_SIZE

/* The etag of a file on disk is the time it was changed, and the clock of a
 * file system ticks slowly: two programs that save within one tick leave the
 * same etag. Every save puts a new inode in the file's place, so that tells. */
static char *
etag_of_info (GFileInfo *info)
{
  if (info == NULL)
    return NULL;
  if (!g_file_info_has_attribute (info, G_FILE_ATTRIBUTE_UNIX_INODE))
    return g_strdup (g_file_info_get_etag (info));
  return g_strdup_printf (
      "%s %" G_GUINT64_FORMAT " %" G_GOFFSET_FORMAT, g_file_info_get_etag (info),
      g_file_info_get_attribute_uint64 (info, G_FILE_ATTRIBUTE_UNIX_INODE),
      g_file_info_get_size (info));
}

static char *
query_etag (GFile *file)
{
  g_autoptr (GFileInfo) info
      = g_file_query_info (file, STATE_ATTRIBUTES, G_FILE_QUERY_INFO_NONE, NULL, NULL);

  return etag_of_info (info);
}

/* The etag of what is being read, not of what another program puts there
 * meanwhile. */
static char *
query_etag_of_stream (GFileInputStream *stream)
{
  g_autoptr (GFileInfo) info
      = g_file_input_stream_query_info (stream, STATE_ATTRIBUTES, NULL, NULL);

  return etag_of_info (info);
}

/* Reads one byte more than the guard takes, and no more. */
static char *
read_text (GFile *file,
           gsize *length,
           char **etag,
           GError **error)
{
  gsize most = hc_json_usual_limits.most_bytes + 1;
  g_autofree char *text = g_malloc (most);
  g_autoptr (GError) reason = NULL;
  g_autoptr (GFileInputStream) stream = g_file_read (file, NULL, &reason);

  if (stream == NULL
      || !g_input_stream_read_all (G_INPUT_STREAM (stream), text, most, length, NULL, &reason))
    {
      fail_open (file, reason->message, error);
      return NULL;
    }
  *etag = query_etag_of_stream (stream);
  return g_realloc (g_steal_pointer (&text), *length + 1);
}

static void
name_file_in_error (GFile *file,
                    GError **error)
{
  g_autofree char *name = name_of (file);

  g_prefix_error (error, "%s: ", name);
}

/**
 * hc_plan_store_load:
 * @file: a plan file
 * @etag: (out) (optional) (nullable): what tells this state of the file from
 *   later ones; %NULL where the file system has no such thing
 * @error: where to put %HC_ERROR_FILE or %HC_ERROR_NEWER
 *
 * Returns: (transfer full) (nullable): the plan in the file
 */
HcPlanFile *
hc_plan_store_load (GFile *file,
                    char **etag,
                    GError **error)
{
  g_autofree char *text = NULL;
  g_autofree char *found = NULL;
  HcPlanFile *read;
  gsize length;

  g_return_val_if_fail (G_IS_FILE (file), NULL);
  if (!check_is_file (file, error))
    return NULL;
  text = read_text (file, &length, &found, error);
  if (text == NULL)
    return NULL;
  read = hc_plan_file_read (text, length, error);
  if (read == NULL)
    name_file_in_error (file, error);
  else if (etag != NULL)
    *etag = g_steal_pointer (&found);
  return read;
}

static gboolean
save_text (GFile *file,
           const char *text,
           gsize length,
           const char *etag,
           GError **error)
{
  g_autofree char *path = g_file_get_path (file);

  if (path == NULL || !g_file_is_native (file))
    return hc_save_remote (file, text, length, etag, error);
  if (!hc_plan_store_has_changed (file, etag))
    return hc_save_local (path, text, length, error);
  g_set_error_literal (error, G_IO_ERROR, G_IO_ERROR_WRONG_ETAG, "");
  return FALSE;
}

/**
 * hc_plan_store_save:
 * @file: where to save
 * @plan: a plan
 * @etag: (nullable): the etag @file must still have; %NULL to save over
 *   whatever is there
 * @new_etag: (out) (optional) (nullable): its etag once saved
 * @error: where to put %HC_ERROR_SAVE or %HC_ERROR_CHANGED
 *
 * Whatever goes wrong, @file is whole: as it was, or as saved. A file that is
 * gone is written anew. A copy that is to live beside its original needs a new
 * id first.
 *
 * Returns: whether the plan is saved
 */
gboolean
hc_plan_store_save (GFile *file,
                    const HcPlan *plan,
                    const char *etag,
                    char **new_etag,
                    GError **error)
{
  g_autoptr (GError) reason = NULL;
  g_autofree char *text = NULL;
  gsize length;

  g_return_val_if_fail (G_IS_FILE (file) && plan != NULL, FALSE);
  text = hc_plan_write (plan, &length, error);
  if (text == NULL)
    return FALSE;
  if (!save_text (file, text, length, etag, &reason))
    return fail_save (file, reason, error);
  if (new_etag != NULL)
    *new_etag = query_etag (file);
  return TRUE;
}

/**
 * hc_plan_store_has_changed:
 * @file: a plan file
 * @etag: (nullable): its etag when it was read or saved last
 *
 * Returns: whether another program changed the file since; a file that is gone
 *   has not changed
 */
gboolean
hc_plan_store_has_changed (GFile *file,
                           const char *etag)
{
  g_autofree char *now = NULL;

  g_return_val_if_fail (G_IS_FILE (file), FALSE);
  if (etag == NULL)
    return FALSE;
  now = query_etag (file);
  return now != NULL && !g_str_equal (now, etag);
}
