/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Loads the byre and judges it. */
#include "config.h"

#include "byre.h"

#include "files/store.h"

HcPlan *
test_byre_load (void)
{
  g_autoptr (GError) error = NULL;
  g_autoptr (GFile) file = g_file_new_for_path (
      g_test_get_filename (G_TEST_DIST, "data", "byre.hencote", NULL));
  g_autoptr (HcPlanFile) read = hc_plan_store_load (file, NULL, &error);

  g_assert_no_error (error);
  return hc_plan_ref (read->plan);
}

HcCheck *
test_byre_check (HcPlan *plan, HcCondition condition)
{
  g_autoptr (GError) error = NULL;
  g_autoptr (HcBook) book = hc_book_load_default (&error);
  g_autoptr (HcFlock) flock = NULL;
  g_autoptr (HcCheckCache) cache = hc_check_cache_new ();

  g_assert_no_error (error);
  flock = hc_flock_on (plan, book, hc_plan_get_day (plan));
  return hc_check_plan (cache, plan, book, condition, flock);
}
