/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What hencote-plan can be asked to do. */
#pragma once

#include "cli/call.h"

G_BEGIN_DECLS

/**
 * HcExit:
 * @HC_EXIT_ENOUGH: nothing is too little
 * @HC_EXIT_SHORT: something is too little
 * @HC_EXIT_WRONG: the file or the call is wrong
 */
typedef enum
{
  HC_EXIT_ENOUGH = 0,
  HC_EXIT_SHORT = 1,
  HC_EXIT_WRONG = 2,
} HcExit;

/**
 * HcVerb:
 * @name: the word it is called by
 * @summary: what it does, marked for translation
 * @argument: what comes after its options, marked for translation
 * @options: the options it takes besides those of every verb
 * @run: does it; an error means %HC_EXIT_WRONG
 */
typedef struct
{
  const char *name;
  const char *summary;
  const char *argument;
  HcCallOptions options;
  HcExit (*run) (HcCall *call, GString *out, GError **error);
} HcVerb;

extern const HcVerb hc_verb_check;
extern const HcVerb hc_verb_capacity;
extern const HcVerb hc_verb_draw;
extern const HcVerb hc_verb_rules;
extern const HcVerb hc_verb_describe;
extern const HcVerb hc_verb_night;
extern const HcVerb hc_verb_year;
extern const HcVerb hc_verb_forecast;
extern const HcVerb hc_verb_calendar;

G_END_DECLS
