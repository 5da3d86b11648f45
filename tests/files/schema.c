/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The published JSON Schema says what the tables of members say. To publish it
 * anew: ninja update-plan-schema. */
#include "config.h"

#include "plan-schema.h"

static void
the_published_schema_is_that_of_the_tables (void)
{
  g_autofree char *path
      = g_test_build_filename (G_TEST_DIST, "..", "data", "schemas", "plan.schema.json", NULL);
  g_autofree char *published = NULL;
  g_autofree char *made = plan_schema_make ();
  g_autoptr (GError) error = NULL;

  g_file_get_contents (path, &published, NULL, &error);
  g_assert_no_error (error);
  g_assert_cmpstr (published, ==, made);
}

int
main (int argc,
      char *argv[])
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/schema/published", the_published_schema_is_that_of_the_tables);
  return g_test_run ();
}
