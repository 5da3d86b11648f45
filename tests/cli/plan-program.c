/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A subprocess, its words, and what came of it. */
#include "config.h"

#include "plan-program.h"

/* Runs the program with the words given, %NULL last, and @input (nullable) on
 * its standard input. */
TestRun
test_run (const char *input, ...)
{
  g_autoptr (GPtrArray) words = g_ptr_array_new ();
  g_autoptr (GSubprocess) process = NULL;
  g_autoptr (GError) error = NULL;
  TestRun run = { 0 };
  const char *word;
  va_list more;

  g_ptr_array_add (words, (gpointer) g_getenv ("HENCOTE_PLAN"));
  va_start (more, input);
  while ((word = va_arg (more, const char *)) != NULL)
    g_ptr_array_add (words, (gpointer) word);
  va_end (more);
  g_ptr_array_add (words, NULL);

  process = g_subprocess_newv ((const char *const *) words->pdata,
                               G_SUBPROCESS_FLAGS_STDIN_PIPE | G_SUBPROCESS_FLAGS_STDOUT_PIPE
                                   | G_SUBPROCESS_FLAGS_STDERR_PIPE,
                               &error);
  g_assert_no_error (error);
  g_assert_true (g_subprocess_communicate_utf8 (process, input ? input : "", NULL, &run.out,
                                                &run.err, &error));
  g_assert_no_error (error);
  g_assert_true (g_subprocess_get_if_exited (process));
  run.status = g_subprocess_get_exit_status (process);
  return run;
}

void
test_run_clear (TestRun *run)
{
  g_clear_pointer (&run->out, g_free);
  g_clear_pointer (&run->err, g_free);
}

char *
test_plan_path (const char *name)
{
  return g_test_build_filename (G_TEST_DIST, "data", name, NULL);
}

JsonNode *
test_run_parse (const TestRun *run)
{
  g_autoptr (GError) error = NULL;
  JsonNode *node = json_from_string (run->out, &error);

  g_assert_no_error (error);
  g_assert_nonnull (node);
  return node;
}
