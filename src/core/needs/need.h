/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A need: one named comparison of what is offered with what is asked. */
#pragma once

#include "needs/allotment.h"
#include "needs/finding.h"
#include "supply/house.h"

G_BEGIN_DECLS

typedef enum
{
  HC_NEED_FLOOR,
  HC_NEED_RUN,
  HC_NEED_ROOST,
  HC_NEED_NESTS,
  HC_NEED_FEED,
  HC_NEED_WATER,
  HC_NEED_WARMTH,
  HC_NEED_WAY_OUT,
  HC_NEED_LITTER,
  HC_NEED_LIGHT,
  HC_NEED_AIR,
  HC_NEED_REACH,
  HC_NEED_CLIMB,
  HC_NEED_CLEARANCE,
  HC_NEED_PREDATORS,
  HC_NEED_COMPANY,
  HC_NEED_SITE_RULES,
  HC_N_NEEDS
} HcNeedId;

typedef enum
{
  HC_NEED_COUNTING,
  HC_NEED_CONDITION,
  HC_NEED_BALANCE,
} HcNeedSort;

typedef enum
{
  HC_SCOPE_DAY_SPACE,
  HC_SCOPE_NIGHT_ROOM,
  HC_SCOPE_AIR_SPACE,
  HC_SCOPE_LAYOUT,
} HcNeedScope;

typedef struct _HcNeed HcNeed;
typedef struct _HcNeedContext HcNeedContext;
typedef struct _HcAnswer HcAnswer;
typedef struct _HcServing HcServing;

/**
 * HcNeed: (skip)
 * @word: its word in code, files and help ("way-out")
 * @title: what the keeper reads, marked for translation ("Way out")
 * @question: the question it answers
 * @why: why it matters to the bird
 * @help: its help page
 * @settles: judged once a drag has ended; until then its last answer stands
 * @judge: fills an answer for one space
 * @serve: (nullable): of counting needs: how many birds of one space are
 *   served at a level, with reasons when details are asked for
 * @none: finding code when there is no place at all
 * @few: finding code when there are too few places, or too little of it
 * @kept: (nullable): finding code when there is enough of it, but places made for
 *   fewer birds
 * @confined: finding code when some birds can use only some of the places
 * @lifts: what could be added to serve more birds, ended by %HC_N_OFFER_KINDS
 */
struct _HcNeed
{
  HcNeedId id;
  const char *word;
  const char *title;
  const char *question;
  const char *why;
  const char *help;
  HcNeedSort sort;
  HcNeedScope scope;
  gboolean settles;
  void (*judge) (const HcNeedContext *context, HcAnswer *answer);
  void (*serve) (const HcNeedContext *context, HcLevel level, gboolean details,
                 HcServing *serving);
  const char *none;
  const char *few;
  const char *kept;
  const char *confined;
  HcOfferKind lifts[4];
};

const HcNeed *hc_need_get (HcNeedId id);
const HcNeed *hc_need_find (const char *word);

G_END_DECLS
