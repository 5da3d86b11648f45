/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Private to core: what a document holds, for the file it is kept in. */
#pragma once

#include "document/document.h"
#include "document/history.h"

G_BEGIN_DECLS

/* What listeners were last told, so that each change is told once. */
typedef struct
{
  HcPlan *plan;
  char *title;
  char *undo_label;
  char *redo_label;
  char **selection;
  gboolean modified;
} HcDocumentNews;

struct _HcDocument
{
  GObject parent_instance;

  HcHistory *history;
  HcPlan *preview;
  HcDocumentNews told;

  GFile *file;
  char *etag;
  char *draft_key;
  gboolean read_only;
};

void hc_document_tell_news (HcDocument *self);
void hc_document_set_file (HcDocument *self, GFile *file);
void hc_document_set_read_only (HcDocument *self, gboolean read_only);

G_END_DECLS
