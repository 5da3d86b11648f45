/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The rungs of all counting needs, the lowest first. */
#include "config.h"

#include "needs/ladder.h"

#include "needs/capacity/alone.h"
#include "needs/capacity/ladder-private.h"

struct _HcLadder
{
  gatomicrefcount refs;
  GArray *rungs;
  gint64 most;
  gint64 there;
};

static int
compare_rungs (gconstpointer a, gconstpointer b)
{
  const HcRung *one = a;
  const HcRung *other = b;

  if (one->most != other->most)
    return one->most < other->most ? -1 : 1;
  return (int) one->need - (int) other->need;
}

static GArray *
start_searches (HcCase *about, const HcQuestion *question, HcLevel aim)
{
  GArray *searches = g_array_new (FALSE, TRUE, sizeof (HcRungSearch));

  for (guint id = 0; id < HC_N_NEEDS; id++)
    {
      const HcNeed *need = hc_need_get (id);
      HcRungSearch search;

      if (need->sort != HC_NEED_COUNTING || !hc_case_judges (about, need))
        continue;
      hc_rung_search_init (&search, about, question, need, aim);
      g_array_append_val (searches, search);
    }
  return searches;
}

static void
add_rung (HcLadder *ladder, const HcRungSearch *search, gboolean lifts)
{
  HcRung rung = { .need = search->need->id, .lift_unit = "" };

  gboolean alone = search->question->question == HC_LADDER_ONE_KIND;

  if (alone)
    rung.most = hc_alone_sum_rung (search);
  else
    rung.most = hc_rung_search_find_most (search);
  rung.lift_to = rung.most;
  if (rung.most == G_MAXINT64)
    return;
  if (lifts && alone)
    hc_alone_find_lift (search, &rung);
  else if (lifts)
    hc_rung_search_find_lift (search, &rung);
  g_array_append_val (ladder->rungs, rung);
}

static void
climb (HcLadder *ladder, HcCase *about, const HcQuestion *question, HcLevel aim, gboolean lifts)
{
  g_autoptr (GArray) searches = start_searches (about, question, aim);

  g_array_set_clear_func (searches, (GDestroyNotify) hc_rung_search_clear);
  for (guint i = 0; i < searches->len; i++)
    add_rung (ladder, &g_array_index (searches, HcRungSearch, i), lifts);
  g_array_sort (ladder->rungs, compare_rungs);
  if (question->question == HC_LADDER_ONE_KIND)
    ladder->most = hc_alone_count_birds (about, (const HcRungSearch *) searches->data,
                                         searches->len);
  else if (ladder->rungs->len > 0)
    ladder->most = g_array_index (ladder->rungs, HcRung, 0).most;
}

/* Lifts take longer than the rungs themselves; the headline does without. */
HcLadder *
hc_ladder_climb_only (HcCheckCache *cache, HcPlan *plan, HcBook *book, HcFlock *flock,
                      HcLadderQuestion question, const char *kind, HcCondition condition,
                      HcLevel aim, gboolean lifts)
{
  HcLadder *ladder = g_new0 (HcLadder, 1);
  const HcKind *of = kind != NULL ? hc_book_get_kind (book, kind) : NULL;
  HcQuestion asked;
  HcCase about;

  g_atomic_ref_count_init (&ladder->refs);
  ladder->rungs = g_array_new (FALSE, FALSE, sizeof (HcRung));
  ladder->most = G_MAXINT64;
  if (question != HC_LADDER_THIS_MIX && of == NULL)
    return ladder;
  hc_question_init (&asked, question, book, hc_plan_get_layout (plan), flock, of);
  hc_case_init (&about, cache, plan, book, condition, asked.base);
  ladder->there = asked.there;
  climb (ladder, &about, &asked, aim, lifts);
  hc_case_clear (&about);
  hc_question_clear (&asked);
  return ladder;
}

/**
 * hc_ladder_climb: (skip)
 * @cache: what earlier checks worked out
 * @plan: a plan
 * @book: the book
 * @flock: the birds of the day
 * @question: how the flock grows
 * @kind: (nullable): id of the kind asked about, for all questions but this mix
 * @condition: when
 * @aim: the level to keep, not %HC_LEVEL_SHORT
 *
 * For every counting need: the most birds for which it reaches @aim, and the
 * smallest addition that would let it carry more, tried out. A kind the book
 * does not know gets a ladder without rungs.
 *
 * Returns: (transfer full): the ladder
 */
HcLadder *
hc_ladder_climb (HcCheckCache *cache, HcPlan *plan, HcBook *book, HcFlock *flock,
                 HcLadderQuestion question, const char *kind, HcCondition condition,
                 HcLevel aim)
{
  return hc_ladder_climb_only (cache, plan, book, flock, question, kind, condition, aim, TRUE);
}

HcLadder *
hc_ladder_ref (HcLadder *ladder)
{
  g_return_val_if_fail (ladder != NULL, NULL);
  g_atomic_ref_count_inc (&ladder->refs);
  return ladder;
}

void
hc_ladder_unref (HcLadder *ladder)
{
  g_return_if_fail (ladder != NULL);
  if (!g_atomic_ref_count_dec (&ladder->refs))
    return;
  g_array_unref (ladder->rungs);
  g_free (ladder);
}

/**
 * hc_ladder_get_most: (skip)
 * @ladder: a ladder
 *
 * Returns: birds carried by all needs together; -1 when one of them is too
 *   little even without any of the birds asked for, %G_MAXINT64 when nothing
 *   runs out
 */
gint64
hc_ladder_get_most (const HcLadder *ladder)
{
  return ladder->most;
}

/**
 * hc_ladder_get_there: (skip)
 * @ladder: a ladder
 *
 * Returns: birds there are: of the mix, or hens of the kind asked about
 */
gint64
hc_ladder_get_there (const HcLadder *ladder)
{
  return ladder->there;
}

guint
hc_ladder_get_n_rungs (const HcLadder *ladder)
{
  return ladder->rungs->len;
}

/**
 * hc_ladder_get_rung: (skip)
 * @ladder: a ladder
 * @rung: index, what runs out first being 0; needs that never run out have none
 *
 * Returns: (transfer none): the rung
 */
const HcRung *
hc_ladder_get_rung (const HcLadder *ladder, guint rung)
{
  g_return_val_if_fail (rung < ladder->rungs->len, NULL);
  return &g_array_index (ladder->rungs, HcRung, rung);
}
