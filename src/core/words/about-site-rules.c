/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What local rules do not allow. */
#include "config.h"

#include "words/sentences.h"

#include <glib/gi18n-lib.h>

const HcSentence hc_sentences_about_site_rules[] = {
  { .code = "site-rules.too-many-birds",
    .fix = NG_ ("{birds} more than your local rules allow", "{birds} more than your local rules allow"),
    .todo = N_("Keep fewer, or ask the council: its word counts."),
    .detail = N_("There are {have}; you entered that {want} are allowed.") },
  { .code = "site-rules.too-many-males",
    .fix = NG_ ("{birds} more than your local rules allow", "{birds} more than your local rules allow"),
    .todo = N_("Keep fewer males, or ask the council: its word counts."),
    .detail = N_("There are {have} males; you entered that {want} are allowed.") },
  { NULL },
};
