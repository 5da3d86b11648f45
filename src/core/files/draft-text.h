/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Drafts as text: a plan, and where its file is. */
#pragma once

#include "files/drafts.h"

G_BEGIN_DECLS

char *hc_draft_write (const HcDraft *draft,
                      GError **error) G_GNUC_WARN_UNUSED_RESULT;
HcDraft *hc_draft_read (const char *key,
                        const char *text,
                        gsize length,
                        GError **error) G_GNUC_WARN_UNUSED_RESULT;

G_END_DECLS
