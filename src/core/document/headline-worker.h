/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Private to core: headlines worked out aside, one at a time. */
#pragma once

#include "needs/ladder.h"

#include <gio/gio.h>

G_BEGIN_DECLS

/* Keeps its own cache, so that the thread it works on shares none. Atomically
 * reference-counted: a job in hand outlives whoever asked. */
typedef struct _HcHeadlineWorker HcHeadlineWorker;

HcHeadlineWorker *hc_headline_worker_new (void) G_GNUC_WARN_UNUSED_RESULT;
HcHeadlineWorker *hc_headline_worker_ref (HcHeadlineWorker *self);
void hc_headline_worker_unref (HcHeadlineWorker *self);
void hc_headline_worker_ask (HcHeadlineWorker *self, HcPlan *plan, HcBook *book, HcFlock *flock,
                             GAsyncReadyCallback callback, gpointer data);
HcPlan *hc_headline_worker_finish (GAsyncResult *result, HcHeadline *headline)
    G_GNUC_WARN_UNUSED_RESULT;

G_DEFINE_AUTOPTR_CLEANUP_FUNC (HcHeadlineWorker, hc_headline_worker_unref)

G_END_DECLS
