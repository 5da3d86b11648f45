/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A plan told to somebody who hears it. */
#include "config.h"

#include "plan-program.h"

#include <string.h>

static void
assert_told (const TestRun *run, const char *part)
{
  if (strstr (run->out, part) == NULL)
    g_error ("‘%s’ is not told in:\n%s", part, run->out);
}

/* The door is in the upper wall at 900 mm; the roost stands at 3290, 560, so
 * 2455 mm away and, looking in, to the left: 9 o'clock. The nest boxes are to
 * the right. */
static void
test_things_are_told_from_the_doorway (void)
{
  g_autofree char *plan = test_plan_path ("byre.hencote");
  g_auto (TestRun) run = test_run (NULL, "describe", plan, NULL);

  g_assert_cmpint (run.status, ==, 0);
  assert_told (&run, "keeper door, 85 cm wide, where you stand");
  assert_told (&run, "at 9 o'clock, 2.45 m away, 60 cm above the floor");
  assert_told (&run, "at 1 o'clock, 1.57 m away, 45 cm above the floor");
}

static void
test_pens_and_birds_are_told (void)
{
  g_autofree char *plan = test_plan_path ("byre.hencote");
  g_auto (TestRun) run = test_run (NULL, "describe", plan, NULL);

  assert_told (&run, "The byre end\n");
  assert_told (&run, "there are 40 birds");
  assert_told (&run, "4.2 m by 2.4 m inside, 9.99 m² of floor, 2.2 m high");
  assert_told (&run, "pop hole to Burn run, 35 cm wide");
  assert_told (&run, "15 medium layers, 1 week old");
  assert_told (&run, "5 ducks");
  assert_told (&run, "No birds live here.");
}

static void
test_feet_are_told_to_who_measures_in_feet (void)
{
  g_autofree char *plan = test_plan_path ("byre.hencote");
  g_auto (TestRun) run = test_run (NULL, "describe", plan, "--units", "feet", NULL);

  assert_told (&run, "13′ 9 3/8″ by 7′ 10 1/2″ inside");
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/describe/from-the-doorway", test_things_are_told_from_the_doorway);
  g_test_add_func ("/describe/pens-and-birds", test_pens_and_birds_are_told);
  g_test_add_func ("/describe/feet", test_feet_are_told_to_who_measures_in_feet);
  return g_test_run ();
}
