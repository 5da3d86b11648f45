/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Keeps drafts in a folder of their own, one file for each open document. A
 * draft that cannot be read is set aside, never deleted. */
#include "config.h"

#include "files/drafts.h"

#include "base/error.h"
#include "base/ids.h"
#include "files/draft-text.h"
#include "files/save.h"

#include <errno.h>
#include <glib/gi18n-lib.h>
#include <glib/gstdio.h>
#include <string.h>

#define SUFFIX ".hencote-draft"
#define ASIDE ".set-aside"

G_DEFINE_BOXED_TYPE (HcDraft, hc_draft, hc_draft_copy, hc_draft_free)

/**
 * hc_draft_new:
 * @key: the draft's name, an id
 * @plan: the plan
 * @uri: (nullable): where its file is
 * @etag: (nullable): the file's etag
 *
 * Returns: (transfer full): a draft
 */
HcDraft *
hc_draft_new (const char *key,
              HcPlan *plan,
              const char *uri,
              const char *etag)
{
  HcDraft *self = g_new0 (HcDraft, 1);

  self->key = g_strdup (key);
  self->plan = hc_plan_ref (plan);
  self->uri = g_strdup (uri);
  self->etag = g_strdup (etag);
  return self;
}

/**
 * hc_draft_copy:
 * @self: a draft
 *
 * Returns: (transfer full): a copy that shares the plan
 */
HcDraft *
hc_draft_copy (const HcDraft *self)
{
  HcDraft *copy = hc_draft_new (self->key, self->plan, self->uri, self->etag);

  copy->written = self->written;
  return copy;
}

/**
 * hc_draft_free:
 * @self: (transfer full): a draft
 *
 * Frees it and lets go of its plan.
 */
void
hc_draft_free (HcDraft *self)
{
  hc_plan_unref (self->plan);
  g_free (self->key);
  g_free (self->uri);
  g_free (self->etag);
  g_free (self);
}

/**
 * hc_drafts_get_folder:
 *
 * Returns: (transfer full): the folder that drafts are kept in, which may not
 *   exist yet
 */
char *
hc_drafts_get_folder (void)
{
  return g_build_filename (g_get_user_state_dir (), "hencote", "drafts", NULL);
}

static char *
path_of (const char *folder,
         const char *key)
{
  g_autofree char *name = g_strconcat (key, SUFFIX, NULL);

  return g_build_filename (folder, name, NULL);
}

static gboolean
fail (const char *reason,
      GError **error)
{
  g_set_error (error, HC_ERROR, HC_ERROR_SAVE,
               _("Unsaved work could not be kept safe: %s. Save the plan soon."), reason);
  return FALSE;
}

/**
 * hc_drafts_write:
 * @folder: (type filename): the folder of drafts, made when it is not there
 * @draft: a draft; one with the same key is replaced
 * @error: where to put %HC_ERROR_SAVE
 *
 * Returns: whether the draft is safe
 */
gboolean
hc_drafts_write (const char *folder,
                 const HcDraft *draft,
                 GError **error)
{
  g_autofree char *text = NULL;
  g_autofree char *path = NULL;
  g_autoptr (GError) reason = NULL;

  g_return_val_if_fail (hc_id_is_valid (draft->key), FALSE);
  text = hc_draft_write (draft, error);
  if (text == NULL)
    return FALSE;
  if (g_mkdir_with_parents (folder, 0700) != 0)
    return fail (g_strerror (errno), error);
  path = path_of (folder, draft->key);
  return hc_save_local (path, text, strlen (text), &reason) || fail (reason->message, error);
}

static void
set_aside (const char *path)
{
  g_autofree char *aside = g_strconcat (path, ASIDE, NULL);

  for (guint i = 2; g_file_test (aside, G_FILE_TEST_EXISTS); i++)
    {
      g_free (aside);
      aside = g_strdup_printf ("%s%s-%u", path, ASIDE, i);
    }
  if (g_rename (path, aside) != 0)
    g_debug ("A draft could not be set aside: %s", g_strerror (errno));
}

static char *
key_of (const char *name)
{
  char *key;

  if (!g_str_has_suffix (name, SUFFIX))
    return NULL;
  key = g_strndup (name, strlen (name) - strlen (SUFFIX));
  if (!hc_id_is_valid (key))
    g_clear_pointer (&key, g_free);
  return key;
}

static gint64
time_of (const char *path)
{
  GStatBuf found;

  return g_stat (path, &found) == 0 ? (gint64) found.st_mtime : 0;
}

/* A draft of a newer version is that version's to offer. */
static void
add_draft (GPtrArray *drafts,
           const char *folder,
           const char *key,
           guint *n_set_aside)
{
  g_autofree char *path = path_of (folder, key);
  g_autofree char *text = NULL;
  g_autoptr (GError) error = NULL;
  HcDraft *draft;
  gsize length;

  if (!g_file_get_contents (path, &text, &length, NULL))
    return;
  draft = hc_draft_read (key, text, length, &error);
  if (draft != NULL)
    {
      draft->written = time_of (path);
      g_ptr_array_add (drafts, draft);
    }
  else if (!g_error_matches (error, HC_ERROR, HC_ERROR_NEWER))
    {
      set_aside (path);
      ++*n_set_aside;
    }
}

static int
compare_drafts (gconstpointer a,
                gconstpointer b)
{
  const HcDraft *one = *(HcDraft *const *) a, *other = *(HcDraft *const *) b;

  if (one->written != other->written)
    return one->written > other->written ? -1 : 1;
  return strcmp (one->key, other->key);
}

static void
free_draft (gpointer draft)
{
  hc_draft_free (draft);
}

/**
 * hc_drafts_list:
 * @folder: (type filename): the folder of drafts
 * @n_set_aside: (out) (optional): how many could not be read and were renamed
 *   just now, so that they are not asked for again
 *
 * Returns: (transfer full) (element-type HcDraft): the drafts, newest first;
 *   empty when there are none
 */
GPtrArray *
hc_drafts_list (const char *folder,
                guint *n_set_aside)
{
  GPtrArray *drafts = g_ptr_array_new_with_free_func (free_draft);
  g_autoptr (GDir) dir = g_dir_open (folder, 0, NULL);
  guint n_aside = 0;

  for (const char *name = NULL; dir != NULL && (name = g_dir_read_name (dir)) != NULL;)
    {
      g_autofree char *key = key_of (name);

      if (key != NULL)
        add_draft (drafts, folder, key, &n_aside);
    }
  g_ptr_array_sort (drafts, compare_drafts);
  if (n_set_aside != NULL)
    *n_set_aside = n_aside;
  return drafts;
}

/**
 * hc_drafts_remove:
 * @folder: (type filename): the folder of drafts
 * @key: the draft's name
 * @error: where to put %HC_ERROR_SAVE
 *
 * For when its document was really saved, or the keeper threw the work away.
 *
 * Returns: whether there is no such draft now
 */
gboolean
hc_drafts_remove (const char *folder,
                  const char *key,
                  GError **error)
{
  g_autofree char *path = NULL;

  g_return_val_if_fail (hc_id_is_valid (key), FALSE);
  path = path_of (folder, key);
  return g_unlink (path) == 0 || errno == ENOENT || fail (g_strerror (errno), error);
}
