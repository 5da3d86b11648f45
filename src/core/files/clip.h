/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What is copied from one plan and pasted into another, as text. */
#pragma once

#include "plan/plan.h"

G_BEGIN_DECLS

/**
 * HC_CLIP_MIME_TYPE:
 *
 * What sort of text copied fittings are to other programs.
 */
#define HC_CLIP_MIME_TYPE "application/vnd.hencote.things+json"

char *hc_clip_write (HcPlan *plan, const char *const *ids,
                     GError **error) G_GNUC_WARN_UNUSED_RESULT;
HcPlan *hc_clip_paste (HcPlan *plan, const char *text, gsize length, HcPoint middle,
                       const char *const *new_ids, GError **error) G_GNUC_WARN_UNUSED_RESULT;
guint hc_clip_count (const char *text, gsize length, GError **error);

G_END_DECLS
