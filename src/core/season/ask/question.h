/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Questions about the year, each answered by trying it. */
#pragma once

#include "flock/hatch.h"
#include "season/in-hand.h"
#include "season/shortfall.h"

G_BEGIN_DECLS

/**
 * HcAsk:
 * @HC_ASK_HATCH: the largest hatch the house carries
 * @HC_ASK_GONE: the day by which birds must be gone
 * @HC_ASK_WINTER: hens that can stay over the dark half of the year
 * @HC_ASK_WARMTH: the day from which there are too few warm places
 * @HC_ASK_EGGS: eggs to set for so many chicks
 */
typedef enum
{
  HC_ASK_HATCH,
  HC_ASK_GONE,
  HC_ASK_WINTER,
  HC_ASK_WARMTH,
  HC_ASK_EGGS,
} HcAsk;

/**
 * HcYearQuestion:
 * @ask: what is asked
 * @from: the first day that matters
 * @weeks: how many weeks matter
 * @of: (nullable): id of the group or the eggs it is about
 * @kind: (nullable): the kind of bird, where @of does not tell
 * @pen: (nullable): id of the pen chicks or hens live in, where nothing tells
 * @wanted: chicks wanted
 * @who: which chicks are wanted
 * @chance: with what chance, below 1
 */
typedef struct
{
  HcAsk ask;
  guint32 from;
  guint weeks;
  const char *of;
  const HcKind *kind;
  const char *pen;
  guint wanted;
  HcClutchWho who;
  double chance;
} HcYearQuestion;

/**
 * HcYearAnswer:
 * @question: what was asked
 * @kind: (nullable): the kind of bird it is about
 * @limited: there is a limit at all, within the weeks asked about
 * @number: eggs, hens, or heaters; one more fails
 * @birds: chicks of that many eggs, hens there are, or chicks left cold
 * @day: the day asked for
 * @until: the day after the last, where it is about a time
 * @shortfall: who goes short with one more, or a day later
 * @chance: the chance with @number
 * @chance_before: the chance with one fewer
 * @in_hand: eggs the flock gives by the first day, and room in the incubators
 */
typedef struct
{
  HcYearQuestion question;
  const HcKind *kind;
  gboolean limited;
  gint64 number;
  gint64 birds;
  guint32 day;
  guint32 until;
  HcShortfall shortfall;
  double chance;
  double chance_before;
  HcInHand in_hand;
} HcYearAnswer;

#define HC_ASK_MOST 4000

gboolean hc_year_question_answer (const HcYearQuestion *self, HcTallier *tallier, HcPlan *plan,
                             HcYearAnswer *answer, GError **error);

G_END_DECLS
