/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * How well a place serves its birds, and the times it is judged for. */
#pragma once

#include <glib.h>

G_BEGIN_DECLS

/**
 * HcLevel:
 * @HC_LEVEL_SHORT: too little: the least is not reached
 * @HC_LEVEL_TIGHT: just enough: the least is reached
 * @HC_LEVEL_GOOD: the usual aim
 * @HC_LEVEL_PLENTY: generous
 *
 * A level reached, or, but for @HC_LEVEL_SHORT, a level asked for.
 */
typedef enum
{
  HC_LEVEL_SHORT,
  HC_LEVEL_TIGHT,
  HC_LEVEL_GOOD,
  HC_LEVEL_PLENTY,
} HcLevel;

/**
 * HC_N_ASKED_LEVELS:
 *
 * How many levels can be asked for.
 */
#define HC_N_ASKED_LEVELS 3

/**
 * HcCondition:
 * @HC_CONDITION_DAY: an ordinary day: birds go out
 * @HC_CONDITION_NIGHT: pop holes are shut and birds sleep
 * @HC_CONDITION_SHUT_IN: bad weather or a housing order keeps birds in
 *
 * When a house is judged.
 */
typedef enum
{
  HC_CONDITION_DAY,
  HC_CONDITION_NIGHT,
  HC_CONDITION_SHUT_IN,
} HcCondition;

const char *hc_level_to_string (HcLevel level);
const char *hc_condition_to_string (HcCondition condition);
gboolean hc_condition_from_string (const char *text, HcCondition *condition);

G_END_DECLS
