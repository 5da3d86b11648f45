/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * How the program ends, and what it says when the call is wrong. */
#include "config.h"

#include "plan-program.h"

#include <string.h>
#include <sys/wait.h>
#include <unistd.h>

static void
assert_says (const char *text, const char *part)
{
  if (strstr (text, part) == NULL)
    g_error ("‘%s’ is not in:\n%s", part, text);
}

static void
assert_wrong (const TestRun *run, const char *part)
{
  g_assert_cmpint (run->status, ==, 2);
  g_assert_cmpstr (run->out, ==, "");
  assert_says (run->err, part);
}

static void
test_nothing_too_little_ends_with_0 (void)
{
  g_autofree char *plan = test_plan_path ("shed.hencote");
  g_auto (TestRun) check = test_run (NULL, "check", plan, NULL);
  g_auto (TestRun) capacity = test_run (NULL, "capacity", plan, NULL);

  g_assert_cmpint (check.status, ==, 0);
  g_assert_cmpint (capacity.status, ==, 0);
  g_assert_cmpstr (check.err, ==, "");
  assert_says (check.out, "A roomy shed");
}

static void
test_too_little_ends_with_1 (void)
{
  g_autofree char *plan = test_plan_path ("byre.hencote");
  g_auto (TestRun) check = test_run (NULL, "check", plan, NULL);
  g_auto (TestRun) capacity = test_run (NULL, "capacity", plan, NULL);

  g_assert_cmpint (check.status, ==, 1);
  g_assert_cmpint (capacity.status, ==, 1);
  assert_says (check.out, "Fix now");
}

static void
test_a_call_without_words_tells_the_verbs (void)
{
  g_auto (TestRun) bare = test_run (NULL, NULL);
  g_auto (TestRun) help = test_run (NULL, "--help", NULL);
  g_auto (TestRun) version = test_run (NULL, "--version", NULL);

  assert_wrong (&bare, "Verbs:");
  g_assert_cmpint (help.status, ==, 0);
  assert_says (help.out, "describe");
  g_assert_cmpint (version.status, ==, 0);
  assert_says (version.out, HC_VERSION);
}

static void
test_every_verb_has_help (void)
{
  static const char *const verbs[] = { "check", "capacity", "draw", "rules", "describe", "year" };

  for (guint i = 0; i < G_N_ELEMENTS (verbs); i++)
    {
      g_auto (TestRun) run = test_run (NULL, verbs[i], "--help", NULL);

      g_assert_cmpint (run.status, ==, 0);
      assert_says (run.out, "--json");
      assert_says (run.out, verbs[i]);
    }
}

static void
test_wrong_words_end_with_2 (void)
{
  g_autofree char *plan = test_plan_path ("shed.hencote");
  const struct
  {
    const char *words[5];
    const char *says;
  } calls[] = {
    { { "hatch", plan }, "there is no verb ‘hatch’" },
    { { "check" }, "Say which plan" },
    { { "check", plan, plan }, "one word too many" },
    { { "check", plan, "--scale", "1:20" }, "--scale" },
    { { "check", plan, "--condition", "dusk" }, "‘shut-in’" },
    { { "check", plan, "--units", "cubits" }, "‘metric’ or ‘feet’" },
    { { "check", plan, "--on", "2026-02-30" }, "2026-11-25" },
    { { "check", plan, "--on", "tomorrow" }, "2026-11-25" },
    { { "check", plan, "--rules", "nobody" }, "home-cold" },
    { { "capacity", plan, "--kind", "dodo" }, "bantam" },
    { { "capacity", plan, "--empty" }, "--kind" },
    { { "draw", plan }, "--to" },
    { { "draw", plan, "--to", "x.gif" }, ".svg" },
    { { "check", "/no/such/plan.hencote" }, "plan.hencote" },
    { { "rules", "nobody" }, "nobody" },
  };

  for (guint i = 0; i < G_N_ELEMENTS (calls); i++)
    {
      const char *const *w = calls[i].words;
      g_auto (TestRun) run = test_run (NULL, w[0], w[1], w[2], w[3], w[4], NULL);

      assert_wrong (&run, calls[i].says);
    }
}

static void
test_bad_files_are_named_with_line_and_column (void)
{
  g_autofree char *folder = g_dir_make_tmp ("hencote-XXXXXX", NULL);
  g_autofree char *path = g_build_filename (folder, "torn.hencote", NULL);
  const char *torn = "{\n  \"format\": \"hencote-plan\",\n  \"version\" 1\n}\n";

  g_assert_true (g_file_set_contents (path, torn, -1, NULL));
  {
    g_auto (TestRun) file = test_run (NULL, "check", path, NULL);
    g_auto (TestRun) input = test_run (torn, "check", "-", NULL);

    assert_wrong (&file, "torn.hencote");
    assert_says (file.err, "Line 3, column 13");
    assert_wrong (&input, "Standard input: Line 3, column 13");
  }
  g_assert_cmpint (unlink (path), ==, 0);
  g_assert_cmpint (rmdir (folder), ==, 0);
}

static void
test_standard_input_is_read (void)
{
  g_autofree char *path = test_plan_path ("shed.hencote");
  g_autofree char *text = NULL;

  g_assert_true (g_file_get_contents (path, &text, NULL, NULL));
  {
    g_auto (TestRun) file = test_run (NULL, "check", path, NULL);
    g_auto (TestRun) input = test_run (text, "check", "-", NULL);
    g_auto (TestRun) nothing = test_run (NULL, "check", "-", NULL);

    g_assert_cmpstr (input.out, ==, file.out);
    g_assert_cmpint (input.status, ==, 0);
    assert_wrong (&nothing, "Standard input");
  }
}

static void
test_the_day_and_rules_can_be_asked_for (void)
{
  g_autofree char *plan = test_plan_path ("byre.hencote");
  g_auto (TestRun) young = test_run (NULL, "describe", plan, NULL);
  g_auto (TestRun) older = test_run (NULL, "describe", plan, "--on", "2026-05-14", NULL);
  g_auto (TestRun) law = test_run (NULL, "check", plan, "--rules", "eu-laying-hens", "--json",
                                   NULL);

  assert_says (young.out, "1 week old");
  assert_says (older.out, "6 weeks old");
  assert_says (law.out, "\"rules\": \"eu-laying-hens\"");
}

/* The reader goes away before anything is written. */
static void
test_a_broken_pipe_is_no_fault (void)
{
  const char *command = "sh -c '{ \"$HENCOTE_PLAN\" rules home-cold; echo $? >&2; } | true'";
  g_autofree char *err = NULL;
  int status;

  g_assert_true (g_spawn_command_line_sync (command, NULL, &err, &status, NULL));
  g_assert_true (WIFEXITED (status));
  g_assert_cmpstr (err, ==, "0\n");
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/calls/enough", test_nothing_too_little_ends_with_0);
  g_test_add_func ("/calls/too-little", test_too_little_ends_with_1);
  g_test_add_func ("/calls/no-words", test_a_call_without_words_tells_the_verbs);
  g_test_add_func ("/calls/help", test_every_verb_has_help);
  g_test_add_func ("/calls/wrong-words", test_wrong_words_end_with_2);
  g_test_add_func ("/calls/bad-files", test_bad_files_are_named_with_line_and_column);
  g_test_add_func ("/calls/standard-input", test_standard_input_is_read);
  g_test_add_func ("/calls/day-and-rules", test_the_day_and_rules_can_be_asked_for);
  g_test_add_func ("/calls/broken-pipe", test_a_broken_pipe_is_no_fault);
  return g_test_run ();
}
