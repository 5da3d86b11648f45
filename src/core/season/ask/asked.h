/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * One question while it is being answered. */
#pragma once

#include "season/ask/question.h"

G_BEGIN_DECLS

/* Private to season/ask/. */
typedef struct
{
  const HcYearQuestion *question;
  HcTallier *tallier;
  HcPlan *plan;
  HcYearAnswer *answer;
} HcAsked;

/* Whether so many can be; when not, the answer gets who goes short. */
typedef gboolean (*HcTrial) (HcAsked *asked, gint64 number, gpointer data);

void hc_asked_find_most (HcAsked *asked, HcTrial passes, gpointer data);
gboolean hc_asked_refuse (GError **error, const char *sentence);

gboolean hc_ask_hatch (HcAsked *asked, GError **error);
gboolean hc_ask_gone (HcAsked *asked, GError **error);
gboolean hc_ask_winter (HcAsked *asked, GError **error);
gboolean hc_ask_warmth (HcAsked *asked, GError **error);
gboolean hc_ask_eggs (HcAsked *asked, GError **error);

G_END_DECLS
