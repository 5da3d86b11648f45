/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Daylight and vents. */
#include "config.h"

#include "words/sentences.h"

#include <glib/gi18n-lib.h>

const HcSentence hc_sentences_about_air[] = {
  { .code = "light.too-little",
    .fix = NG_ ("{birds} lives in the dark by day", "{birds} live in the dark by day"),
    .worth = NG_ ("{birds} would be better for more daylight",
                  "{birds} would be better for more daylight"),
    .todo = N_("Add {lack} of window.") },
  { .code = "air.winter-vents",
    .fix = NG_ ("Damp air cannot get away from {birds} in the cold",
                "Damp air cannot get away from {birds} in the cold"),
    .worth = NG_ ("Damp air gets away slowly from {birds} in the cold",
                  "Damp air gets away slowly from {birds} in the cold"),
    .todo = N_("Leave {lack} more of vent open in winter, high above the birds.") },
  { .code = "air.summer-vents",
    .fix = NG_ ("{birds} has too little air in the heat", "{birds} have too little air in the heat"),
    .worth = NG_ ("{birds} would be better for more air in the heat",
                  "{birds} would be better for more air in the heat"),
    .todo = N_("Add {lack} of vent or window that can be opened in summer.") },
  { .code = "air.vent-too-low",
    .fix = NG_ ("{what} blows on sleeping birds", "{what} blows on sleeping birds"),
    .todo = N_("Move it higher, or shut it in the cold.") },
  { NULL },
};
