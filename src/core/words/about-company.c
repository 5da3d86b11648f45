/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Who lives together. */
#include "config.h"

#include "words/sentences.h"

#include <glib/gi18n-lib.h>

const HcSentence hc_sentences_about_company[] = {
  { .code = "company.no-home",
    .fix = NG_ ("{birds} has no pen yet", "{birds} have no pen yet"),
    .todo = N_("Choose a pen for them.") },
  { .code = "company.lonely",
    .fix = NG_ ("{birds} lives without others of its kind",
                "{birds} live without others of their kind"),
    .worth = NG_ ("{birds} has few others of its kind for company",
                  "{birds} have few others of their kind for company"),
    .todo = N_("Keep at least {want} together."),
    .detail = N_("There are {have} of them in this space; {want} is better.") },
  { .code = "company.too-young",
    .fix = NG_ ("{birds} is too young to live with grown birds",
                "{birds} are too young to live with grown birds"),
    .worth = NG_ ("{birds} is still young to live with grown birds",
                  "{birds} are still young to live with grown birds"),
    .todo = N_("Keep them in a pen of their own, in sight of the others, until they are older."),
    .detail = N_("The youngest is {have} old; {want} is asked for.") },
  { .code = "company.too-many-males",
    .fix = NG_ ("The females are worn out by too many males",
                "The females are worn out by too many males"),
    .worth = NG_ ("There are few females for so many males",
                  "There are few females for so many males"),
    .todo = N_("Keep fewer males with them."),
    .detail = N_("There are {have} females to each male; at least {want} is better.") },
  { .code = "company.too-few-males",
    .fix = NG_ ("Too few males for every egg to hatch", "Too few males for every egg to hatch"),
    .todo = N_("Add a male if you mean to set eggs; the birds do not mind."),
    .detail = N_("There are {have} females to each male; at most {want} is usual.") },
  { .code = "company.new-birds",
    .fix = NG_ ("{birds} is new and not kept apart from the others",
                "{birds} are new and not kept apart from the others"),
    .todo = N_("Keep them in a pen with its own feed, water and air for {want}, and ask a vet "
               "first where a bird looks ill."),
    .detail = N_("They have been here for {have}; {want} apart is advised.") },
  { .code = "company.new-birds-beside-a-free-pen",
    .fix = NG_ ("{birds} is new and not kept apart from the others",
                "{birds} are new and not kept apart from the others"),
    .todo = N_("{other} is free and has feed, water and air of its own: keep them there for "
               "{want}, and ask a vet first where a bird looks ill."),
    .detail = N_("They have been here for {have}; {want} apart is advised.") },
  { .code = "company.drakes-with-hens",
    .fix = NG_ ("{birds} without ducks of its own lives with hens",
                "{birds} without ducks of their own live with hens"),
    .todo = N_("Give them ducks, or a pen of their own: drakes can hurt hens.") },
  { .code = "company.ducks-splash",
    .fix = NG_ ("{birds} will keep the hens' bedding wet", "{birds} will keep the hens' bedding wet"),
    .todo = N_("Give the ducks a pen of their own, or keep their water outside.") },
  { NULL },
};
