/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Names found by any part of them that is typed. */
#pragma once

#include <glib.h>

G_BEGIN_DECLS

/**
 * HcNameRank:
 * @HC_NAME_BEGINS: the name begins with what is typed
 * @HC_NAME_WORD_BEGINS: a later word of the name does
 * @HC_NAME_HOLDS: it stands within a word of the name
 * @HC_NAME_TOLD: it stands in what is told of the name
 * @HC_NAME_OTHER: it stands nowhere
 *
 * How well a name answers what is typed, the best first.
 */
typedef enum
{
  HC_NAME_BEGINS,
  HC_NAME_WORD_BEGINS,
  HC_NAME_HOLDS,
  HC_NAME_TOLD,
  HC_NAME_OTHER,
} HcNameRank;

HcNameRank hc_name_search (const char *typed, const char *name, const char *about);

G_END_DECLS
