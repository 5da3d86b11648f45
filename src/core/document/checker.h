/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Keeps the open plan judged: the newest answer, once a frame at most. */
#pragma once

#include "book/book.h"
#include "document/document.h"
#include "needs/check.h"
#include "needs/ladder.h"

G_BEGIN_DECLS

#define HC_TYPE_CHECKER (hc_checker_get_type ())
/**
 * HcChecker:
 *
 * Judges a document's plan. Properties: `document`, `condition`. Signal
 * `checked` when a newer answer for the condition is there; signal `counted`
 * when the headline and ladders, worked out on a worker thread, are.
 */
G_DECLARE_FINAL_TYPE (HcChecker, hc_checker, HC, CHECKER, GObject)

HcChecker *hc_checker_new (HcDocument *document, HcBook *book);
HcBook *hc_checker_get_book (HcChecker *self);
HcDocument *hc_checker_get_document (HcChecker *self);
HcCondition hc_checker_get_condition (HcChecker *self);
void hc_checker_set_condition (HcChecker *self, HcCondition condition);

/* Called by the window once a frame: checks again if the plan changed since. */
gboolean hc_checker_update (HcChecker *self);
HcCheck *hc_checker_get_check (HcChecker *self, HcCondition condition);
const HcHeadline *hc_checker_get_headline (HcChecker *self);

G_END_DECLS
