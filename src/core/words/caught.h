/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What caught a thing while it was dragged, in a word or two. */
#pragma once

#include "plan/snap.h"
#include "supply/catch-height.h"

G_BEGIN_DECLS

const char *hc_words_caught (HcSnapKind kind);
const char *hc_words_height_caught (HcHeightKind kind);

G_END_DECLS
