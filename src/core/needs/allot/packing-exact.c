/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The exact search: which pattern of birds on which stretch seats the most.
 *
 * Stretch after stretch, for each number of birds of every class but the most
 * numerous one, it keeps how many of that last class can be seated beside
 * them. All that could matter is looked at, so the answer is exact. */
#include "config.h"

#include "needs/allot/packing.h"

#include "base/whole.h"

#define MOST_CLASSES 6

/* Birds of each class on one stretch. */
typedef struct
{
  gint64 counts[MOST_CLASSES];
} Pattern;

/* @n_states counts the ways to have seated the classes but the last, and
 * @stride what one more bird of a class adds to a state's number. */
typedef struct
{
  const HcPacking *packing;
  HcPackClass classes[MOST_CLASSES];
  guint order[MOST_CLASSES];
  guint n_classes;
  guint64 stride[MOST_CLASSES];
  guint64 n_states;
  GPtrArray *patterns;
  guint32 *chosen;
  gint64 *most;
} Search;

static void
put_most_numerous_last (Search *search, const HcPackClass *classes, guint n_classes)
{
  guint most = 0;

  for (guint i = 1; i < n_classes; i++)
    if (classes[i].count > classes[most].count)
      most = i;
  for (guint i = 0; i < n_classes; i++)
    search->order[i] = i;
  search->order[most] = n_classes - 1;
  search->order[n_classes - 1] = most;
  for (guint i = 0; i < n_classes; i++)
    search->classes[i] = classes[search->order[i]];
  search->n_classes = n_classes;
}

static gboolean
count_states (Search *search)
{
  search->n_states = 1;
  for (guint i = 0; i + 1 < search->n_classes; i++)
    {
      search->stride[i] = search->n_states;
      search->n_states *= (guint64) search->classes[i].count + 1;
      if (search->n_states > search->packing->most_steps)
        return FALSE;
    }
  return TRUE;
}

static gint64
most_on (Search *search, guint at, double room_mm, const HcPackStretch *stretch)
{
  const HcPackClass *klass = &search->classes[at];

  if (!hc_pack_class_suits (klass, stretch))
    return 0;
  return MIN (klass->count, hc_whole_fit (room_mm, klass->width_mm));
}

static void
list_patterns (Search *search, guint at, double room_mm, const HcPackStretch *stretch,
               Pattern *so_far, GArray *patterns)
{
  gint64 most = most_on (search, at, room_mm, stretch);

  if (at + 1 == search->n_classes)
    {
      so_far->counts[at] = most;
      g_array_append_vals (patterns, so_far, 1);
      return;
    }
  for (gint64 here = 0; here <= most; here++)
    {
      so_far->counts[at] = here;
      list_patterns (search, at + 1,
                     MAX (0, room_mm - (double) here * search->classes[at].width_mm), stretch,
                     so_far, patterns);
    }
}

static gboolean
list_all_patterns (Search *search)
{
  guint64 steps = 0;

  for (guint i = 0; i < search->packing->n_stretches; i++)
    {
      const HcPackStretch *stretch = &search->packing->stretches[i];
      GArray *patterns = g_array_new (FALSE, FALSE, sizeof (Pattern));
      guint64 upper = 1;
      Pattern empty = { { 0 } };

      g_ptr_array_add (search->patterns, patterns);
      for (guint at = 0; at + 1 < search->n_classes; at++)
        upper *= (guint64) most_on (search, at, stretch->length_mm, stretch) + 1;
      if (upper > search->packing->most_steps)
        return FALSE;
      list_patterns (search, 0, stretch->length_mm, stretch, &empty, patterns);
      steps += patterns->len * search->n_states;
      if (steps > search->packing->most_steps)
        return FALSE;
    }
  return TRUE;
}

/* The state after @pattern, or n_states when it seats more than there are. */
static guint64
state_after (Search *search, guint64 state, const Pattern *pattern)
{
  guint64 after = state;

  for (guint i = 0; i + 1 < search->n_classes; i++)
    {
      guint64 size = (guint64) search->classes[i].count + 1;
      guint64 seated = state / search->stride[i] % size;

      if (seated + (guint64) pattern->counts[i] >= size)
        return search->n_states;
      after += (guint64) pattern->counts[i] * search->stride[i];
    }
  return after;
}

static void
step_over_stretch (Search *search, guint at, const gint64 *before, gint64 *after)
{
  GArray *patterns = g_ptr_array_index (search->patterns, at);
  guint32 *chosen = search->chosen + at * search->n_states;

  for (guint64 state = 0; state < search->n_states; state++)
    after[state] = -1;
  for (guint64 state = 0; state < search->n_states; state++)
    for (guint i = 0; before[state] >= 0 && i < patterns->len; i++)
      {
        const Pattern *pattern = &g_array_index (patterns, Pattern, i);
        guint64 next = state_after (search, state, pattern);
        gint64 seated = before[state] + pattern->counts[search->n_classes - 1];

        if (next == search->n_states || seated <= after[next])
          continue;
        after[next] = seated;
        chosen[next] = i;
      }
}

static void
step_over_all (Search *search)
{
  gint64 *before = g_new (gint64, search->n_states);

  search->most = g_new (gint64, search->n_states);
  for (guint64 state = 0; state < search->n_states; state++)
    search->most[state] = state == 0 ? 0 : -1;
  for (guint i = 0; i < search->packing->n_stretches; i++)
    {
      gint64 *swap = before;

      before = search->most;
      search->most = swap;
      step_over_stretch (search, i, before, search->most);
    }
  g_free (before);
}

static guint64
find_fullest (Search *search)
{
  const HcPackClass *last = &search->classes[search->n_classes - 1];
  gint64 fullest = -1;
  guint64 found = 0;

  for (guint64 state = 0; state < search->n_states; state++)
    {
      gint64 seated = MIN (search->most[state], last->count);

      if (search->most[state] < 0)
        continue;
      for (guint i = 0; i + 1 < search->n_classes; i++)
        seated += (gint64) (state / search->stride[i]
                            % ((guint64) search->classes[i].count + 1));
      if (seated > fullest)
        {
          fullest = seated;
          found = state;
        }
    }
  return found;
}

static gint64 *
trace_back (Search *search, guint64 state)
{
  guint n_stretches = search->packing->n_stretches;
  guint last = search->n_classes - 1;
  gint64 left = search->classes[last].count;
  gint64 *seats = g_new0 (gint64, search->n_classes * n_stretches + 1);

  for (guint i = n_stretches; i-- > 0;)
    {
      GArray *patterns = g_ptr_array_index (search->patterns, i);
      const Pattern *pattern
          = &g_array_index (patterns, Pattern, search->chosen[i * search->n_states + state]);
      gint64 of_last = MIN (left, pattern->counts[last]);

      for (guint at = 0; at < last; at++)
        {
          seats[search->order[at] * n_stretches + i] = pattern->counts[at];
          state -= (guint64) pattern->counts[at] * search->stride[at];
        }
      seats[search->order[last] * n_stretches + i] = of_last;
      left -= of_last;
    }
  return seats;
}

/* Returns %NULL when there is more to search than @self allows. */
gint64 *
hc_packing_search (const HcPacking *self, const HcPackClass *classes, guint n_classes)
{
  Search search = { .packing = self };
  gint64 *seats = NULL;

  if (n_classes == 0 || n_classes > MOST_CLASSES)
    return NULL;
  search.patterns = g_ptr_array_new_with_free_func ((GDestroyNotify) g_array_unref);
  put_most_numerous_last (&search, classes, n_classes);
  if (count_states (&search) && list_all_patterns (&search))
    {
      search.chosen = g_new (guint32, self->n_stretches * search.n_states + 1);
      step_over_all (&search);
      seats = trace_back (&search, find_fullest (&search));
    }
  g_ptr_array_unref (search.patterns);
  g_free (search.chosen);
  g_free (search.most);
  return seats;
}
