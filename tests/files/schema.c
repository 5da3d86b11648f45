/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The published JSON Schema and the page on plan files say what the tables of
 * members say. To publish the schema anew: ninja update-plan-schema. */
#include "config.h"

#include "plan-schema.h"
#include "plan/plan.h"

#include <string.h>

static char *
read_file (const char *name)
{
  g_autofree char *path = g_test_build_filename (G_TEST_DIST, "..", name, NULL);
  g_autoptr (GError) error = NULL;
  char *text = NULL;

  g_file_get_contents (path, &text, NULL, &error);
  g_assert_no_error (error);
  return text;
}

static void
the_published_schema_is_that_of_the_tables (void)
{
  g_autofree char *published = read_file ("data/schemas/plan.schema.json");
  g_autofree char *made = plan_schema_make ();

  g_assert_cmpstr (published, ==, made);
}

/* Finds the row of @name in the table that starts at @table. */
static const char *
row_of (const char *table,
        const char *name)
{
  g_autofree char *start = g_strdup_printf ("\n| `%s` |", name);
  const char *end = strstr (table, "\n#");
  const char *row = strstr (table, start);

  return row != NULL && (end == NULL || row < end) ? row + 1 : NULL;
}

static void
assert_row_says (const char *row,
                 const char *format,
                 ...)
{
  g_autofree char *line = g_strndup (row, strcspn (row, "\n"));
  g_autofree char *wanted = NULL;
  va_list list;

  va_start (list, format);
  wanted = g_strdup_vprintf (format, list);
  va_end (list);
  if (strstr (line, wanted) == NULL)
    g_test_fail_printf ("“%s” does not say “%s”", line, wanted);
}

static void
check_row (const char *row,
           const HcMember *member)
{
  if (member->required)
    assert_row_says (row, "*needed*");
  if (member->kind == HC_MEMBER_WORD)
    for (guint i = 0; member->words[i] != NULL; i++)
      assert_row_says (row, "`%s`", member->words[i]);
  if (member->kind == HC_MEMBER_WORD && !member->required)
    assert_row_says (row, "| `%s` |", member->words[(int) member->normal]);
  if (member->kind <= HC_MEMBER_COUNT && !member->required)
    assert_row_says (row, "| %.10g |", member->normal);
  if (member->kind == HC_MEMBER_FLAG)
    assert_row_says (row, "| %s |", member->normal != 0 ? "true" : "false");
}

static void
check_table (const char *page,
             const HcPartClass *klass,
             const char *heading)
{
  g_autofree char *line = g_strdup_printf ("\n%s\n", heading);
  const char *table = strstr (page, line);

  g_assert_nonnull (table);
  for (guint i = 0; i < klass->n_members; i++)
    {
      const char *row = row_of (table + strlen (line), klass->members[i].name);

      if (row == NULL)
        g_test_fail_printf ("“%s” is not under “%s”", klass->members[i].name, heading);
      else
        check_row (row, &klass->members[i]);
    }
}

static void
the_page_on_plan_files_has_every_member (void)
{
  static const struct
  {
    const HcPartClass *klass;
    const char *heading;
  } tables[] = {
    { &hc_plan_class, "## The plan" },        { &hc_site_class, "### `site`" },
    { &hc_rules_class, "### `rules`" },       { &hc_own_figure_class, "### `rules`" },
    { &hc_building_class, "### `buildings`" }, { &hc_layout_class, "### `variants`" },
    { &hc_corner_class, "### `corners`" },    { &hc_wall_class, "### `walls`" },
    { &hc_opening_class, "### `openings`" },  { &hc_pen_class, "### `pens`" },
    { &hc_fitting_class, "### `fittings`" },  { &hc_batch_class, "### `batches`" },
    { &hc_move_class, "### `moves`" },        { &hc_leaving_class, "### `leavings`" },
    { &hc_clutch_class, "### `clutches`" },   { &hc_step_class, "### `steps`" },
    { &hc_result_class, "### `results`" },    { &hc_chore_class, "### `chores`" },
    { &hc_keeping_class, "### `keeping`" },   { &hc_price_class, "### `prices`" },
    { &hc_stock_class, "### `stock`" },
  };
  g_autofree char *page = read_file ("docs/plan-format.md");

  for (guint i = 0; i < G_N_ELEMENTS (tables); i++)
    check_table (page, tables[i].klass, tables[i].heading);
}

int
main (int argc,
      char *argv[])
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/schema/published", the_published_schema_is_that_of_the_tables);
  g_test_add_func ("/schema/page", the_page_on_plan_files_has_every_member);
  return g_test_run ();
}
