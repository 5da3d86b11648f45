/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Where the keeper cannot get to. */
#include "config.h"

#include "words/sentences.h"

#include <glib/gi18n-lib.h>

const HcSentence hc_sentences_about_reach[] = {
  { .code = "reach.no-door",
    .fix = NG_ ("No door leads you into {what}", "No door leads you into {what}"),
    .todo = N_("Put a keeper door in one of its walls.") },
  { .code = "reach.shut-off",
    .fix = NG_ ("You cannot get into {what}", "You cannot get into {what}"),
    .todo = N_("Widen its door, or clear the way to it.") },
  { .code = "reach.blocked",
    .fix = NG_ ("You cannot get to {what}: {other} is in the way",
                "You cannot get to {what}: {other} is in the way"),
    .todo = N_("Move one of them, or turn its working side to the way.") },
  { .code = "reach.too-far",
    .fix = NG_ ("You cannot reach all of {what}", "You cannot reach all of {what}"),
    .todo = N_("Move it nearer to where you can stand, or give it a door of its own.") },
  { .code = "reach.squeeze-past",
    .worth = NG_ ("It is a squeeze past {other} to {what}", "It is a squeeze past {other} to {what}"),
    .todo = N_("Leave more room between them.") },
  { .code = "reach.squeeze",
    .worth = NG_ ("It is a stretch to {what}", "It is a stretch to {what}"),
    .todo = N_("Move it nearer to where you can stand.") },
  { .code = "reach.low-door",
    .worth = NG_ ("You stoop at {what}", "You stoop at {what}"),
    .todo = N_("Make it higher, or mark its top edge so that nobody is hurt."),
    .detail = N_("It is {have} high; {want} is asked for.") },
  { .code = "reach.no-barrow",
    .worth = NG_ ("A barrow does not get to {what}", "A barrow does not get to {what}"),
    .todo = N_("Widen the doors on the way, or clear the way to them.") },
  { NULL },
};
