/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Drafts: unsaved work kept apart from the keeper's own files. */
#pragma once

#include "plan/plan.h"

G_BEGIN_DECLS

#define HC_TYPE_DRAFT (hc_draft_get_type ())

/**
 * HcDraft:
 * @key: names the draft: one for each open document, a new id
 * @plan: the plan as last worked on
 * @uri: (nullable): where its file is; %NULL when it was never saved
 * @etag: (nullable): the etag of that file when it was last read or saved
 * @written: when it was written, in seconds since 1970 UTC; set by
 *   hc_drafts_list()
 *
 * The work of one open document.
 */
typedef struct
{
  char *key;
  HcPlan *plan;
  char *uri;
  char *etag;
  gint64 written;
} HcDraft;

GType hc_draft_get_type (void);

HcDraft *hc_draft_new (const char *key,
                       HcPlan *plan,
                       const char *uri,
                       const char *etag) G_GNUC_WARN_UNUSED_RESULT;
HcDraft *hc_draft_copy (const HcDraft *self) G_GNUC_WARN_UNUSED_RESULT;
void hc_draft_free (HcDraft *self);

G_DEFINE_AUTOPTR_CLEANUP_FUNC (HcDraft, hc_draft_free)

char *hc_drafts_get_folder (void) G_GNUC_WARN_UNUSED_RESULT;
gboolean hc_drafts_write (const char *folder,
                          const HcDraft *draft,
                          GError **error);
GPtrArray *hc_drafts_list (const char *folder,
                           guint *n_set_aside) G_GNUC_WARN_UNUSED_RESULT;
gboolean hc_drafts_remove (const char *folder,
                           const char *key,
                           GError **error);

G_END_DECLS
