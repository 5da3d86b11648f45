/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Groups of birds in words. */
#pragma once

#include "book/book.h"
#include "plan/batch.h"

G_BEGIN_DECLS

char *hc_words_batch (HcBook *book, const HcBatch *batch) G_GNUC_WARN_UNUSED_RESULT;

G_END_DECLS
