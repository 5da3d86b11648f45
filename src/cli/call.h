/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * One call of hencote-plan: its words, and what they lead to. */
#pragma once

#include "base/units.h"
#include "book/book.h"
#include "needs/check.h"
#include "plan/plan.h"

G_BEGIN_DECLS

/**
 * HcCallOptions:
 * @HC_CALL_ON: --on
 * @HC_CALL_CONDITION: --condition
 * @HC_CALL_RULES: --rules
 * @HC_CALL_KIND: --kind and --empty
 * @HC_CALL_DRAWING: --to, --view, --wall, --scale and --paper
 * @HC_CALL_WEATHER: --outside, --humidity, --wind and --chart
 * @HC_CALL_WEEKS: --weeks and --csv
 * @HC_CALL_CALENDAR: --to and --weeks
 * @HC_CALL_ASK: --ask, --of, --kind, --pen, --wanted, --who and --chance
 * @HC_CALL_MEND: --mend
 */
typedef enum
{
  HC_CALL_ON = 1 << 0,
  HC_CALL_CONDITION = 1 << 1,
  HC_CALL_RULES = 1 << 2,
  HC_CALL_KIND = 1 << 3,
  HC_CALL_DRAWING = 1 << 4,
  HC_CALL_WEATHER = 1 << 5,
  HC_CALL_WEEKS = 1 << 6,
  HC_CALL_ASK = 1 << 7,
  HC_CALL_MEND = 1 << 8,
  HC_CALL_CALENDAR = 1 << 9,
} HcCallOptions;

/**
 * HcCall:
 * @argument: (nullable): the file, or what stands in its place
 * @json: --json
 * @units_word: (nullable): --units
 * @on: (nullable): --on
 * @condition_word: (nullable): --condition
 * @rules: (nullable): --rules
 * @kind: (nullable): --kind
 * @empty: --empty
 * @to: (nullable): --to
 * @view: (nullable): --view
 * @wall: (nullable): --wall
 * @scale: (nullable): --scale
 * @paper: (nullable): --paper
 * @outside: (nullable): --outside
 * @humidity: (nullable): --humidity
 * @wind: (nullable): --wind
 * @chart: (nullable): --chart
 * @weeks_word: (nullable): --weeks
 * @csv: --csv
 * @ask: (nullable): --ask
 * @of: (nullable): --of
 * @pen: (nullable): --pen
 * @wanted: (nullable): --wanted
 * @who: (nullable): --who
 * @chance: (nullable): --chance
 * @mend: --mend
 * @book: the book
 * @plan: the plan, on the day and by the rules asked for
 * @flock: its birds on that day
 * @units: the units to write in
 * @condition: the condition to judge
 * @weeks: how many weeks to look at
 * @cache: for checking
 */
typedef struct
{
  char *argument;
  gboolean json;
  char *units_word;
  char *on;
  char *condition_word;
  char *rules;
  char *kind;
  gboolean empty;
  char *to;
  char *view;
  char *wall;
  char *scale;
  char *paper;
  char *outside;
  char *humidity;
  char *wind;
  char *chart;
  char *weeks_word;
  gboolean csv;
  char *ask;
  char *of;
  char *pen;
  char *wanted;
  char *who;
  char *chance;
  gboolean mend;

  HcBook *book;
  HcPlan *plan;
  HcFlock *flock;
  HcUnits units;
  HcCondition condition;
  guint weeks;
  HcCheckCache *cache;
} HcCall;

/**
 * HcCallError:
 * @HC_CALL_ERROR_WORDS: the words of the call are wrong
 */
typedef enum
{
  HC_CALL_ERROR_WORDS,
} HcCallError;

#define HC_CALL_ERROR (hc_call_error_quark ())
GQuark hc_call_error_quark (void);

void hc_call_clear (HcCall *call);
gboolean hc_call_parse (HcCall *call, HcCallOptions options, const char *summary,
                        const char *argument, char **words, GError **error);
gboolean hc_call_open_book (HcCall *call, GError **error);
gboolean hc_call_open_plan (HcCall *call, GError **error);
HcStandard *hc_call_find_rules (const HcCall *call, const char *id, GError **error);
HcCheck *hc_call_check (const HcCall *call) G_GNUC_WARN_UNUSED_RESULT;
char *hc_call_format_day (const HcCall *call) G_GNUC_WARN_UNUSED_RESULT;

G_DEFINE_AUTO_CLEANUP_CLEAR_FUNC (HcCall, hc_call_clear)

G_END_DECLS
