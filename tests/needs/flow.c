/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Birds at shared places, against the bounds of all sets of birds. */
#include "config.h"

#include "needs/allot/flow.h"

#include <string.h>

#define BODIES 3
#define PLACES 3

static void
test_all_share_one_floor (void)
{
  const gint64 counts[] = { 360 };
  const gint64 one_more[] = { 361 };
  const double each[][HC_FLOW_SORTS] = { { 1e6 / 9, -1, -1 } };
  const HcFlowPlace place = { 0, 40e6, 1 };
  HcFlow flow = { 1, counts, each, 1, &place };

  g_assert_true (hc_flow_serves_all (&flow));
  flow.counts = one_more;
  g_assert_false (hc_flow_serves_all (&flow));
}

/* 12 hens at 100 mm of trough and 40 mm of round edge: 600 mm and 240 mm. */
static void
test_long_and_round_edges_share_the_birds (void)
{
  const gint64 counts[] = { 12 };
  const double each[][HC_FLOW_SORTS] = { { 100, 40, -1 } };
  HcFlowPlace places[] = { { 0, 600, 1 }, { 1, 240, 1 } };
  HcFlow flow = { 1, counts, each, 2, places };

  g_assert_true (hc_flow_serves_all (&flow));
  places[1].amount = 239;
  g_assert_false (hc_flow_serves_all (&flow));
}

/* Hens gain more from the round feeder than ducks, and the two swap. */
static void
test_birds_go_where_they_ask_least (void)
{
  const gint64 counts[] = { 5, 5 };
  const double each[][HC_FLOW_SORTS] = { { 100, 20, -1 }, { 100, 100, -1 } };
  const HcFlowPlace places[] = { { 0, 500, 3 }, { 1, 100, 3 } };
  HcFlow flow = { 2, counts, each, 2, places };

  g_assert_true (hc_flow_serves_all (&flow));
}

static void
test_those_left_over_name_their_places (void)
{
  const gint64 counts[] = { 4, 4 };
  const double each[][HC_FLOW_SORTS] = { { 10, -1, -1 }, { 10, -1, -1 } };
  const HcFlowPlace places[] = { { 0, 100, 1 }, { 0, 20, 2 } };
  HcFlow flow = { 2, counts, each, 2, places };
  g_autofree double *shares = hc_flow_share_out (&flow);
  gboolean within[2] = { FALSE, FALSE };

  g_assert_cmpuint (hc_flow_find_cut (&flow, shares, 2, within), ==, 2);
  g_assert_false (within[0]);
  g_assert_true (within[1]);
}

/* Where all ask alike, the most that can be served is bounded by every set of
 * bodies, and one of the bounds is reached (Hall; Ford and Fulkerson). */
static gint64
hall_bound (const HcFlow *flow)
{
  gint64 shortest = G_MAXINT64;

  for (guint set = 0; set < 1u << BODIES; set++)
    {
      gint64 room = 0;
      gint64 outside = 0;

      for (guint i = 0; i < PLACES; i++)
        if (flow->places[i].suits & set)
          room += (gint64) flow->places[i].amount;
      for (guint body = 0; body < BODIES; body++)
        if ((set >> body & 1) == 0)
          outside += flow->counts[body];
      shortest = MIN (shortest, room + outside);
    }
  return shortest;
}

static void
test_the_flow_is_the_smallest_cut (void)
{
  const double each[BODIES][HC_FLOW_SORTS] = { { 1, -1, -1 }, { 1, -1, -1 }, { 1, -1, -1 } };

  for (guint round = 0; round < 500; round++)
    {
      gint64 counts[BODIES];
      HcFlowPlace places[PLACES];
      HcFlow flow = { BODIES, counts, each, PLACES, places };
      g_autofree double *shares = NULL;
      double served = 0;

      for (guint i = 0; i < BODIES; i++)
        counts[i] = g_test_rand_int_range (0, 9);
      for (guint i = 0; i < PLACES; i++)
        places[i] = (HcFlowPlace) { 0, g_test_rand_int_range (0, 9),
                                    (HcBodies) g_test_rand_int_range (0, 8) };
      shares = hc_flow_share_out (&flow);
      for (guint i = 0; i < BODIES * PLACES; i++)
        served += shares[i];
      g_assert_cmpfloat_with_epsilon (served, (double) hall_bound (&flow), 1e-6);
      g_assert_cmpint (hc_flow_serves_all (&flow), ==,
                       hall_bound (&flow) == counts[0] + counts[1] + counts[2]);
    }
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/flow/all-share-one-floor", test_all_share_one_floor);
  g_test_add_func ("/flow/long-and-round-edges-share-the-birds",
                   test_long_and_round_edges_share_the_birds);
  g_test_add_func ("/flow/birds-go-where-they-ask-least", test_birds_go_where_they_ask_least);
  g_test_add_func ("/flow/those-left-over-name-their-places",
                   test_those_left_over_name_their_places);
  g_test_add_func ("/flow/the-flow-is-the-smallest-cut", test_the_flow_is_the_smallest_cut);
  return g_test_run ();
}
