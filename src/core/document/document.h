/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The open plan: what the window shows, edits, saves and undoes. */
#pragma once

#include "files/drafts.h"

#include <gio/gio.h>

G_BEGIN_DECLS

#define HC_TYPE_DOCUMENT (hc_document_get_type ())
/**
 * HcDocument:
 *
 * Holds one plan after another. Properties: `plan` (what is shown: the
 * preview while a drag lasts, else the plan), `title`, `modified`,
 * `can-undo`, `can-redo`, `undo-label`, `redo-label`, `file`, `read-only`,
 * `selection` (ids, a #GStrv). Each notifies once for each change.
 */
G_DECLARE_FINAL_TYPE (HcDocument, hc_document, HC, DOCUMENT, GObject)

HcDocument *hc_document_new (HcPlan *plan) G_GNUC_WARN_UNUSED_RESULT;
HcPlan *hc_document_get_plan (HcDocument *self);
HcPlan *hc_document_get_settled_plan (HcDocument *self);

/* Edits. @label is the step's name in the undo menu, translated. @merge is
 * NULL, or a key: steps with the same key that follow each other at once are
 * one step (an arrow key held down, typing in one field). */
void hc_document_apply (HcDocument *self, HcPlan *plan, const char *label, const char *merge);
void hc_document_preview (HcDocument *self, HcPlan *plan);
void hc_document_commit_preview (HcDocument *self, const char *label);
void hc_document_cancel_preview (HcDocument *self);
gboolean hc_document_is_previewing (HcDocument *self);

gboolean hc_document_undo (HcDocument *self);
gboolean hc_document_redo (HcDocument *self);

const char *const *hc_document_get_selection (HcDocument *self);
void hc_document_select (HcDocument *self, const char *const *ids);
gboolean hc_document_is_selected (HcDocument *self, const char *id);

/* Files. A draft is unsaved work: what comes back from one is modified. */
HcDocument *hc_document_load (GFile *file, GError **error) G_GNUC_WARN_UNUSED_RESULT;
HcDocument *hc_document_new_from_draft (const HcDraft *draft) G_GNUC_WARN_UNUSED_RESULT;
gboolean hc_document_save (HcDocument *self, GFile *file, gboolean over_changes, GError **error);
GFile *hc_document_get_file (HcDocument *self);
gboolean hc_document_is_modified (HcDocument *self);
gboolean hc_document_is_read_only (HcDocument *self);
gboolean hc_document_changed_on_disk (HcDocument *self);
gboolean hc_document_write_draft (HcDocument *self, GError **error);
void hc_document_drop_draft (HcDocument *self);

G_END_DECLS
