/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Puts the flock of every week and every event to the house. */
#include "config.h"

#include "season/year.h"

#include "base/day.h"
#include "flock/flock-on.h"
#include "flock/own-standard.h"

/* What the tallies of a day are of. */
static const HcCondition conditions[2] = { HC_CONDITION_DAY, HC_CONDITION_SHUT_IN };

struct _HcYear
{
  gatomicrefcount refs;
  HcPlan *plan;
  HcBook *book;
  HcStandard *standard;
  HcTimeline *timeline;
  GArray *bands;
  GArray *events;
  guint32 from;
  guint32 until;
  GArray *days;
};

static void
clear_day (gpointer day)
{
  hc_flock_unref (((HcYearDay *) day)->flock);
}

static void
add_if_within (const HcYear *self, GArray *dates, guint32 day)
{
  if (day >= self->from && day < self->until)
    g_array_append_val (dates, day);
}

static int
compare_dates (gconstpointer a, gconstpointer b)
{
  guint32 one = *(const guint32 *) a;
  guint32 other = *(const guint32 *) b;

  return (one > other) - (one < other);
}

/* The first day of every week, and every day birds change what or where they
 * are; some twice. */
static GArray *
list_dates (const HcYear *self, HcYearScope scope)
{
  GArray *dates = g_array_new (FALSE, FALSE, sizeof (guint32));
  guint32 step = scope == HC_YEAR_EVERY_DAY ? 1 : HC_DAYS_IN_WEEK;

  for (guint32 day = self->from; day < self->until; day += step)
    g_array_append_val (dates, day);
  for (guint i = 0; i < self->bands->len; i++)
    {
      add_if_within (self, dates, g_array_index (self->bands, HcBand, i).from);
      add_if_within (self, dates, g_array_index (self->bands, HcBand, i).until);
    }
  g_array_sort (dates, compare_dates);
  return dates;
}

static double
weigh (const HcFlock *flock)
{
  double kg = 0;

  for (guint i = 0; i < hc_flock_get_n_rows (flock); i++)
    {
      const HcFlockRow *row = hc_flock_get_row (flock, i);

      kg += (double) row->count * hc_flock_get_body (flock, row->body)->mass_kg;
    }
  return kg;
}

static void
judge (HcTallier *tallier, HcYearDay *day, HcYearScope scope)
{
  for (guint i = 0; i < G_N_ELEMENTS (conditions); i++)
    {
      hc_tallier_count (tallier, day->flock, conditions[i], &day->tallies[i]);
      if (scope == HC_YEAR_EVERY_NEED)
        hc_tallier_judge (tallier, day->flock, conditions[i], &day->tallies[i]);
    }
}

static void
add_days (HcYear *self, HcTallier *tallier, HcYearScope scope)
{
  g_autoptr (GArray) dates = list_dates (self, scope);

  for (guint i = 0; i < dates->len; i++)
    {
      HcYearDay day = { g_array_index (dates, guint32, i) };

      if (i > 0 && day.day == g_array_index (dates, guint32, i - 1))
        continue;
      day.flock = hc_flock_on_timeline (self->timeline, self->standard,
                                        hc_plan_get_site (self->plan), day.day);
      day.kg = weigh (day.flock);
      judge (tallier, &day, scope);
      g_array_append_val (self->days, day);
    }
}

/**
 * hc_year_work_out: (skip)
 * @tallier: what was worked out of the house before
 * @plan: a plan
 * @from: the first day
 * @weeks: how many weeks, at most %HC_YEAR_MOST_WEEKS
 * @scope: which needs
 *
 * Eggs that are set count as the chicks the keeper wants the house to carry.
 *
 * Returns: (transfer full): the flock from @from on, and how it is served
 */
HcYear *
hc_year_work_out (HcTallier *tallier, HcPlan *plan, guint32 from, guint weeks,
                  HcYearScope scope)
{
  HcYear *self = g_new0 (HcYear, 1);
  HcBook *book = hc_tallier_get_book (tallier);

  g_atomic_ref_count_init (&self->refs);
  self->plan = hc_plan_ref (plan);
  self->book = hc_book_ref (book);
  self->standard = hc_plan_get_own_standard (plan, book);
  self->timeline = hc_timeline_of (plan, book);
  self->bands = hc_bands_of (self->timeline, self->standard, hc_plan_get_site (plan));
  self->events = hc_events_of (self->timeline, self->bands);
  self->from = from;
  self->until = from + CLAMP (weeks, 1, HC_YEAR_MOST_WEEKS) * HC_DAYS_IN_WEEK;
  self->days = g_array_new (FALSE, FALSE, sizeof (HcYearDay));
  g_array_set_clear_func (self->days, clear_day);
  hc_tallier_look_at (tallier, plan);
  add_days (self, tallier, scope);
  return self;
}

HcYear *
hc_year_ref (HcYear *self)
{
  g_return_val_if_fail (self != NULL, NULL);
  g_atomic_ref_count_inc (&self->refs);
  return self;
}

void
hc_year_unref (HcYear *self)
{
  g_return_if_fail (self != NULL);
  if (!g_atomic_ref_count_dec (&self->refs))
    return;
  g_array_unref (self->days);
  g_array_unref (self->events);
  g_array_unref (self->bands);
  hc_timeline_unref (self->timeline);
  hc_standard_unref (self->standard);
  hc_book_unref (self->book);
  hc_plan_unref (self->plan);
  g_free (self);
}

HcPlan *
hc_year_get_plan (const HcYear *self)
{
  return self->plan;
}

guint32
hc_year_get_from (const HcYear *self)
{
  return self->from;
}

/**
 * hc_year_get_until: (skip)
 * @self: a year
 *
 * Returns: the day after its last
 */
guint32
hc_year_get_until (const HcYear *self)
{
  return self->until;
}

/**
 * hc_year_get_timeline: (skip)
 * @self: a year
 *
 * Returns: (transfer none): the groups and settings that bands and events name
 */
const HcTimeline *
hc_year_get_timeline (const HcYear *self)
{
  return self->timeline;
}

/**
 * hc_year_get_bands: (skip)
 * @self: a year
 *
 * Returns: (transfer none) (element-type HcBand): everyone, before and after
 *   the year too
 */
const GArray *
hc_year_get_bands (const HcYear *self)
{
  return self->bands;
}

/**
 * hc_year_get_events: (skip)
 * @self: a year
 *
 * Returns: (transfer none) (element-type HcEvent): what happens, by day,
 *   before and after the year too
 */
const GArray *
hc_year_get_events (const HcYear *self)
{
  return self->events;
}

/**
 * hc_year_get_n_days: (skip)
 * @self: a year
 *
 * Returns: how many days are looked at: one a week and more
 */
guint
hc_year_get_n_days (const HcYear *self)
{
  return self->days->len;
}

/**
 * hc_year_get_day: (skip)
 * @self: a year
 * @index: which of the days that are looked at
 *
 * Returns: (transfer none): that day, good as long as @self
 */
const HcYearDay *
hc_year_get_day (const HcYear *self, guint index)
{
  g_return_val_if_fail (index < self->days->len, NULL);
  return &g_array_index (self->days, HcYearDay, index);
}

/**
 * hc_year_find_day: (skip)
 * @self: a year
 * @day: a Julian day
 *
 * Returns: the index of the day that tells of @day: the last not after it, the
 *   first one for days before
 */
guint
hc_year_find_day (const HcYear *self, guint32 day)
{
  guint low = 0;
  guint beyond = self->days->len;

  while (beyond - low > 1)
    {
      guint middle = low + (beyond - low) / 2;

      if (hc_year_get_day (self, middle)->day <= day)
        low = middle;
      else
        beyond = middle;
    }
  return low;
}

/**
 * hc_year_day_get_worse: (skip)
 * @self: a day
 * @condition: (out) (optional): the condition that is worse
 *
 * Returns: (transfer none): what the needs come to on an ordinary day, or shut
 *   in where that is worse
 */
const HcTally *
hc_year_day_get_worse (const HcYearDay *self, HcCondition *condition)
{
  guint worse = hc_tally_is_worse (&self->tallies[1], &self->tallies[0]);

  if (condition != NULL)
    *condition = conditions[worse];
  return &self->tallies[worse];
}

/**
 * hc_year_find_worst: (skip)
 * @self: a year
 * @index: (out): the worst day, the first of equal ones
 * @condition: (out): whether on an ordinary day or shut in
 *
 * Returns: whether there are birds at all
 */
gboolean
hc_year_find_worst (const HcYear *self, guint *index, HcCondition *condition)
{
  const HcTally *worst = NULL;

  for (guint i = 0; i < self->days->len; i++)
    {
      HcCondition here;
      const HcTally *tally = hc_year_day_get_worse (hc_year_get_day (self, i), &here);

      if (tally->worst == HC_N_NEEDS || (worst != NULL && !hc_tally_is_worse (tally, worst)))
        continue;
      worst = tally;
      *index = i;
      *condition = here;
    }
  return worst != NULL;
}

/**
 * hc_year_find_worst_of: (skip)
 * @self: a year
 * @need: a need
 * @index: (out): the day @need is worst on, the first of equal ones
 * @condition: (out): whether on an ordinary day or shut in
 *
 * Returns: whether @need ever applies
 */
gboolean
hc_year_find_worst_of (const HcYear *self, HcNeedId need, guint *index, HcCondition *condition)
{
  const HcTallied *worst = NULL;

  for (guint i = 0; i < self->days->len; i++)
    for (guint j = 0; j < G_N_ELEMENTS (conditions); j++)
      {
        const HcTallied *here = &hc_year_get_day (self, i)->tallies[j].needs[need];

        if (!here->applies || (worst != NULL && !hc_tallied_is_worse (here, worst)))
          continue;
        worst = here;
        *index = i;
        *condition = conditions[j];
      }
  return worst != NULL;
}

/**
 * hc_year_find_most_birds: (skip)
 * @self: a year
 *
 * Returns: the index of the first day with the most birds
 */
guint
hc_year_find_most_birds (const HcYear *self)
{
  guint most = 0;

  for (guint i = 1; i < self->days->len; i++)
    if (hc_flock_get_total (hc_year_get_day (self, i)->flock)
        > hc_flock_get_total (hc_year_get_day (self, most)->flock))
      most = i;
  return most;
}

/**
 * hc_year_check: (skip)
 * @self: a year
 * @cache: what earlier checks worked out, of this thread
 * @index: which of the days that are looked at
 * @condition: when
 *
 * Returns: (transfer full): the plan judged with the birds of that day, with
 *   every finding
 */
HcCheck *
hc_year_check (const HcYear *self, HcCheckCache *cache, guint index, HcCondition condition)
{
  return hc_check_plan (cache, self->plan, self->book, condition,
                        hc_year_get_day (self, index)->flock);
}
