/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Reads the demo plan and puts eggs into it. */
#include "config.h"

#include "demo.h"

#include "files/read.h"
#include "plan/edit-season.h"

static HcPlan *
read_demo (void)
{
  g_autofree char *path
      = g_build_filename (TEST_DATA, "demo", "skerry-croft.hencote", NULL);
  g_autofree char *text = NULL;
  g_autoptr (HcPlanFile) file = NULL;
  g_autoptr (GError) error = NULL;
  gsize length;

  g_file_get_contents (path, &text, &length, &error);
  g_assert_no_error (error);
  file = hc_plan_file_read (text, length, &error);
  g_assert_no_error (error);
  return hc_plan_ref (file->plan);
}

void
demo_set_up (Demo *demo, gconstpointer data)
{
  g_autoptr (GError) error = NULL;

  demo->book = hc_book_load_default (&error);
  g_assert_no_error (error);
  demo->plan = read_demo ();
  demo->cache = hc_check_cache_new ();
  demo->tallier = hc_tallier_new (demo->cache, demo->book);
}

void
demo_tear_down (Demo *demo, gconstpointer data)
{
  hc_tallier_free (demo->tallier);
  hc_check_cache_free (demo->cache);
  hc_plan_unref (demo->plan);
  hc_book_unref (demo->book);
}

HcPlan *
demo_with_clutch (HcPlan *plan, const char *kind, const char *pen, int eggs, guint32 set_on)
{
  HcClutchValues values;
  g_autoptr (HcClutch) clutch = NULL;
  g_autoptr (GError) error = NULL;
  HcPlan *with;

  hc_clutch_values_init (&values);
  values.kind = (char *) kind;
  values.pen = (char *) pen;
  values.eggs = eggs;
  values.set_on = set_on;
  clutch = hc_clutch_new (kind, &values);
  with = hc_plan_put_clutch (plan, clutch, &error);
  g_assert_no_error (error);
  return with;
}

const char *
demo_some_kind (void)
{
  static const char *const kinds[] = { "medium_layer", "bantam", "duck", "meat_fast", "goose" };

  return kinds[g_test_rand_int_range (0, G_N_ELEMENTS (kinds))];
}

const char *
demo_some_pen (void)
{
  static const char *const pens[] = { "hens", "brooder", "ducks", "ark-house" };

  return pens[g_test_rand_int_range (0, G_N_ELEMENTS (pens))];
}
