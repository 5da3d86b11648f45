/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The file a document is kept in, and the draft that guards unsaved work. */
#include "config.h"

#include "base/error.h"
#include "base/ids.h"
#include "document/document-private.h"
#include "files/store.h"

#include <glib/gi18n-lib.h>

/**
 * hc_document_load:
 * @file: a plan file
 * @error: says what is wrong with it
 *
 * A file from a newer version comes read-only, without what is not known here.
 *
 * Returns: (transfer full): the document, or %NULL and an error
 */
HcDocument *
hc_document_load (GFile *file, GError **error)
{
  g_autofree char *etag = NULL;
  g_autoptr (HcPlanFile) read = NULL;
  HcDocument *self;

  g_return_val_if_fail (G_IS_FILE (file), NULL);
  read = hc_plan_store_load (file, &etag, error);
  if (read == NULL)
    return NULL;
  self = hc_document_new (read->plan);
  self->etag = g_steal_pointer (&etag);
  hc_document_set_file (self, file);
  hc_document_set_read_only (self, read->read_only);
  return self;
}

/**
 * hc_document_get_file:
 * @self: a document
 *
 * Returns: (nullable) (transfer none): the file it is kept in
 */
GFile *
hc_document_get_file (HcDocument *self)
{
  g_return_val_if_fail (HC_IS_DOCUMENT (self), NULL);
  return self->file;
}

/**
 * hc_document_is_read_only:
 * @self: a document
 *
 * Returns: whether its file comes from a newer version and must not be
 *   saved over
 */
gboolean
hc_document_is_read_only (HcDocument *self)
{
  g_return_val_if_fail (HC_IS_DOCUMENT (self), FALSE);
  return self->read_only;
}

static gboolean
is_own_file (HcDocument *self, GFile *file)
{
  return self->file != NULL && g_file_equal (self->file, file);
}

static gboolean
may_save (HcDocument *self, GFile *file, GError **error)
{
  if (!self->read_only || !is_own_file (self, file))
    return TRUE;
  g_set_error_literal (error, HC_ERROR, HC_ERROR_SAVE,
                       _("This plan comes from a newer version of Hencote, and saving it here "
                         "would lose parts of it. Save it under another name."));
  return FALSE;
}

/**
 * hc_document_save:
 * @self: a document
 * @file: (nullable): where; %NULL for the file it is kept in
 * @over_changes: save even when somebody else changed the file meanwhile
 * @error: says why it was not saved
 *
 * Saves the settled plan, never a preview. The document is kept in @file from
 * then on and is not modified any more; its draft goes.
 *
 * Returns: whether it was saved
 */
gboolean
hc_document_save (HcDocument *self, GFile *file, gboolean over_changes, GError **error)
{
  g_autofree char *new_etag = NULL;
  const char *etag = NULL;

  g_return_val_if_fail (HC_IS_DOCUMENT (self), FALSE);
  if (file == NULL)
    file = self->file;
  g_return_val_if_fail (G_IS_FILE (file), FALSE);
  if (is_own_file (self, file) && !over_changes)
    etag = self->etag;
  if (!may_save (self, file, error)
      || !hc_plan_store_save (file, hc_document_get_settled_plan (self), etag, &new_etag, error))
    return FALSE;
  g_free (self->etag);
  self->etag = g_steal_pointer (&new_etag);
  hc_document_set_file (self, file);
  hc_document_set_read_only (self, FALSE);
  hc_history_mark_saved (self->history);
  hc_document_tell_news (self);
  hc_document_drop_draft (self);
  return TRUE;
}

/**
 * hc_document_changed_on_disk:
 * @self: a document
 *
 * Returns: whether its file is no longer the one it was loaded from or saved
 *   to
 */
gboolean
hc_document_changed_on_disk (HcDocument *self)
{
  g_return_val_if_fail (HC_IS_DOCUMENT (self), FALSE);
  return self->file != NULL && self->etag != NULL
         && hc_plan_store_has_changed (self->file, self->etag);
}

/**
 * hc_document_new_from_draft:
 * @draft: a draft found after unsaved work was lost
 *
 * Returns: (transfer full): its work as a modified document, which goes on
 *   guarding itself with that draft
 */
HcDocument *
hc_document_new_from_draft (const HcDraft *draft)
{
  HcDocument *self = hc_document_new (draft->plan);
  g_autoptr (GFile) file = draft->uri != NULL ? g_file_new_for_uri (draft->uri) : NULL;

  self->draft_key = g_strdup (draft->key);
  self->etag = g_strdup (draft->etag);
  hc_document_set_file (self, file);
  hc_history_mark_unsaved (self->history);
  hc_document_tell_news (self);
  return self;
}

/**
 * hc_document_write_draft:
 * @self: a document
 * @error: says why it could not be written
 *
 * Puts the settled plan aside as a draft, apart from the keeper's file. It
 * stays modified.
 *
 * Returns: whether it was written
 */
gboolean
hc_document_write_draft (HcDocument *self, GError **error)
{
  g_autofree char *folder = hc_drafts_get_folder ();
  g_autofree char *uri = NULL;
  g_autoptr (HcDraft) draft = NULL;

  g_return_val_if_fail (HC_IS_DOCUMENT (self), FALSE);
  if (self->draft_key == NULL)
    self->draft_key = hc_id_new ();
  if (self->file != NULL)
    uri = g_file_get_uri (self->file);
  draft = hc_draft_new (self->draft_key, hc_document_get_settled_plan (self), uri, self->etag);
  return hc_drafts_write (folder, draft, error);
}

/**
 * hc_document_drop_draft:
 * @self: a document
 *
 * Removes its draft, if it has one: the work is saved, or not wanted. A draft
 * that cannot be removed is offered again at the next start.
 */
void
hc_document_drop_draft (HcDocument *self)
{
  g_autofree char *folder = hc_drafts_get_folder ();
  g_autofree char *key = NULL;

  g_return_if_fail (HC_IS_DOCUMENT (self));
  key = g_steal_pointer (&self->draft_key);
  if (key != NULL)
    hc_drafts_remove (folder, key, NULL);
}
