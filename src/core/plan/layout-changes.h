/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What is new, gone or other in one layout than in another. */
#pragma once

#include "plan/layout.h"

G_BEGIN_DECLS

/**
 * HcLayoutChangeKind:
 * @HC_CHANGE_ADDED: it is only in the second layout
 * @HC_CHANGE_REMOVED: it is only in the first
 * @HC_CHANGE_MOVED: it stands elsewhere, or turned
 * @HC_CHANGE_ALTERED: it is other in some other way
 */
typedef enum
{
  HC_CHANGE_ADDED,
  HC_CHANGE_REMOVED,
  HC_CHANGE_MOVED,
  HC_CHANGE_ALTERED,
} HcLayoutChangeKind;

/**
 * HcLayoutChange: (skip)
 * @kind: what happened to it
 * @part: a pen, wall, opening or fitting, as it is in the second layout, or as
 *   it was in the first when it is gone
 */
typedef struct
{
  HcLayoutChangeKind kind;
  gpointer part;
} HcLayoutChange;

GArray *hc_layout_find_changes (const HcLayout *before,
                                const HcLayout *after) G_GNUC_WARN_UNUSED_RESULT;

G_END_DECLS
