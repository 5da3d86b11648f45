/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Writes plans of every sort into a folder, for validators of other makers. */
#include "config.h"

#include "files/write.h"
#include "plan-maker.h"
#include "scratch.h"

#define N_SAMPLES 60

static void
write_sample (const char *folder,
              const char *name,
              HcPlan *plan)
{
  g_autofree char *path = g_build_filename (folder, name, NULL);
  g_autoptr (GError) error = NULL;
  g_autofree char *text = hc_plan_write (plan, NULL, &error);

  g_assert_no_error (error);
  scratch_write (path, text);
  hc_plan_unref (plan);
}

int
main (int argc,
      char *argv[])
{
  g_assert_cmpint (argc, ==, 2);
  write_sample (argv[1], "empty.hencote", hc_plan_new_empty ("croft", "Skerry Croft"));
  write_sample (argv[1], "many.hencote", plan_maker_make (1, 10, 300));
  for (guint seed = 0; seed < N_SAMPLES; seed++)
    {
      g_autofree char *name = g_strdup_printf ("wild-%u.hencote", seed);

      write_sample (argv[1], name, plan_maker_make_wild (seed, 1 + seed % 4, seed % 9));
    }
  return 0;
}
