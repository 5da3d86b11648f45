/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Prints fitted shares and chances of counts, for another library to judge. */
#include "config.h"

#include "base/chance.h"

static void
print_odds (HcOdds *odds)
{
  for (guint count = 0; count <= hc_odds_get_most (odds); count++)
    g_print ("%.15g\n", hc_odds_get (odds, count));
  hc_odds_unref (odds);
}

static double
number_in (const char *word)
{
  return g_ascii_strtod (word, NULL);
}

int
main (int argc, char *argv[])
{
  g_autoptr (HcOdds) all = NULL;
  HcBeta share;

  g_assert_cmpint (argc, >=, 4);
  if (g_str_equal (argv[1], "fit"))
    {
      hc_beta_fit (number_in (argv[2]), number_in (argv[3]), &share);
      g_print ("%.15g %.15g\n", share.a, share.b);
      return 0;
    }
  all = hc_odds_new_sure ((guint) number_in (argv[2]));
  share = (HcBeta) { number_in (argv[3]), argc > 4 ? number_in (argv[4]) : 0 };
  print_odds (argc > 4 ? hc_odds_thin (all, &share) : hc_odds_thin_evenly (all, share.a));
  return 0;
}
