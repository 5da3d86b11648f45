/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Reading a standard from its file. */
#pragma once

#include "book/record.h"
#include "book/standard.h"

G_BEGIN_DECLS

/* Private to book/. What a standard may speak of, and whether it is a keeper's
 * own, which may measure only what the program's standards measure. */
typedef struct
{
  const HcKind *kinds;
  guint n_kinds;
  GPtrArray *standards;
  gboolean keepers;
} HcStandardContext;

HcStandard *hc_standard_read (const char *file, const char *text, gsize length, HcKeep *keep,
                              const HcStandardContext *context,
                              GError **error) G_GNUC_WARN_UNUSED_RESULT;

G_END_DECLS
